package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.answer.LineNotice;
import rigspeak.answer.Mishap;
import rigspeak.audio.Devices;
import rigspeak.audio.LostDevice;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.audio.VirtualLine;
import rigspeak.audio.WavFile;
import rigspeak.dialogue.Attention;
import rigspeak.dialogue.Pace;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.Entry;
import rigspeak.journal.Event;
import rigspeak.speaking.EarSound;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Voice;

/** The live conversation, on lines without a device. */
class LiveTest {
  private static final Path DAY = Path.of("demo-data/one-day");
  private static final Sound QUIET = Sound.silence(1);

  private static Grammar grammar;
  private static Ear ear;
  private static Mouth mouth;

  private final StringWriter out = new StringWriter();
  private final StringWriter remarks = new StringWriter();
  private final List<Integer> attempts = new ArrayList<>();

  @BeforeAll
  static void open() {
    grammar = Grammar.bundled();
    ear = Ear.open(grammar);
    mouth = new Mouth();
  }

  @TempDir Path folder;

  /** A headset is pulled out in the middle of a word and comes back at the fourth look. */
  @Test
  void whatWasSaidBeforeTheHeadsetWasLostStandsAndNothingHalfSaidIsTaken() throws Exception {
    Sound stem = recording("03-ground-stem");
    VirtualLine pulled = new VirtualLine("headset");
    Boom first =
        new Boom(
            pulled,
            () -> pulled.say(recording("02-climber-limb")),
            () -> {
              pulled.say(stem.part(0, stem.length() * 6 / 10));
              pulled.lose();
            });
    VirtualLine back = new VirtualLine("headset");
    Boom second =
        new Boom(back, () -> back.say(stem), () -> back.say(recording("12-ground-read-back")));

    converse(new Plugged(List.of(first, second), List.of(pulled, back), 3));

    assertEquals(
        List.of(
            "limb ten inches by tape limb level by eye",
            "stem one eight inches by tape",
            "read back"),
        heard());
    assertTrue(
        out.toString()
            .contains("Limb, ten inches, by tape. Limb level, by eye. Stem, one eight inches"),
        out.toString());
    assertEquals(
        List.of(
            "Listening on headset, speaking on headset",
            "The microphone headset is gone.",
            "The loudspeaker headset is gone.",
            "Speaking on headset again.",
            "Listening on headset again."),
        remarks.toString().lines().toList());
    assertEquals(List.of(0, 1, 2, 3, 0), attempts);
    assertEquals(
        List.of(
            mouth.speak(LineNotice.LOUDSPEAKER_BACK, Pace.NORMAL),
            mouth.speak(LineNotice.MICROPHONE_GONE, Pace.NORMAL)),
        back.played().subList(0, 2));
  }

  @Test
  void aQuestionIsStillOpenWhenTheMicrophoneIsBack() throws Exception {
    VirtualLine pulled = new VirtualLine("first");
    VirtualLine back = new VirtualLine("second");
    Boom first = new Boom(pulled, () -> pulled.say(recording("08-trainee-missing")), pulled::lose);
    Boom second = new Boom(back, () -> back.say(spoken("two hundred ten pounds")));
    VirtualLine loudspeaker = new VirtualLine("loudspeaker");

    converse(new Plugged(List.of(first, second), List.of(loudspeaker), 0));

    assertEquals(List.of("what is missing", "two hundred ten pounds"), heard());
    assertTrue(out.toString().contains("All up, two hundred ten pounds."), out.toString());
  }

  @Test
  void anAnswerOnALostLoudspeakerIsSpokenAgain() throws Exception {
    VirtualLine broken = new VirtualLine("first");
    VirtualLine sound = new VirtualLine("second");
    VirtualLine line = new VirtualLine("microphone");
    Boom boom =
        new Boom(
            line,
            () -> {
              line.say(recording("02-climber-limb"));
              broken.lose();
            },
            () -> line.say(recording("12-ground-read-back")));

    converse(new Plugged(List.of(boom), List.of(broken, sound), 0));

    Session twin = new Session(grammar);
    Exchange exchange = twin.said("limb ten inches by tape limb level by eye");
    assertEquals(
        List.of(
            mouth.speak(LineNotice.LOUDSPEAKER_BACK, Pace.NORMAL),
            mouth.whole(exchange, Pace.NORMAL)),
        sound.played().subList(0, 2));
    assertEquals(List.of("limb ten inches by tape limb level by eye", "read back"), heard());
  }

  @Test
  void withoutADeviceItDoesNotBegin() {
    NoSuchDevice fault =
        assertThrows(NoSuchDevice.class, () -> converse(new Plugged(List.of(), List.of(), 0)));

    // The exit code that README promises for an audio device.
    assertEquals(4, Fault.exitCode(fault));
    assertEquals(List.of(), attempts);
  }

  @Test
  void aPauseOutOfBoundsIsRefusedPlainly() {
    for (String pause : List.of("0.29", "2.1", "-1", "NaN", "Infinity")) {
      Cli cli = Cli.run("listen", "--pause", pause);
      assertEquals(2, cli.exitCode(), cli.err());
      assertTrue(
          cli.err().startsWith("The pause that ends what you say is 0.3 to 2.0 seconds, not "),
          cli.err());
    }
    assertEquals(2, Cli.run("listen", "--pause", "long").exitCode());
  }

  /** Asleep nothing but the call or the key is answered; what it hears is told by ear-sounds. */
  @Test
  void asleepItWaitsForTheCallOrTheKey() throws Exception {
    VirtualLine line = new VirtualLine("headset");
    Key key = new Key();
    Boom boom =
        new Boom(
            line,
            () -> {
              line.say(recording("02-climber-limb"));
              line.say(recording("37-climber-next"));
            },
            () -> line.say(Sound.silence(9)),
            () -> {
              key.press();
              line.say(recording("02-climber-limb"));
            },
            () -> line.say(recording("02-climber-limb")));

    converse(
        new Plugged(List.of(boom), List.of(line), 0),
        new Session(grammar, Attention.asleep(8), Scribe.none()),
        key);

    assertEquals(
        List.of(
            "copper lantern next redirect", "-", "-", "limb ten inches by tape limb level by eye"),
        heard());
    assertEquals(EarSound.ASLEEP.sound(), line.played().get(0), "it tells that it waits");
    assertEquals(EarSound.ASLEEP.sound(), line.played().get(2), "nobody spoke for eight seconds");
    assertEquals(EarSound.LISTENING.sound(), line.played().get(3), "the key");
  }

  /** By the seconds of the sound: a slow machine makes no silence. */
  @Test
  void awakeItSaysThatItHearsNothingAfterTenSeconds() throws Exception {
    VirtualLine line = new VirtualLine("headset");
    Boom boom =
        new Boom(
            line,
            () -> {
              line.say(Sound.silence(9));
              line.say(recording("02-climber-limb"));
            },
            () -> line.say(Sound.silence(10.5)),
            () -> line.say(recording("12-ground-read-back")));

    converse(new Plugged(List.of(boom), List.of(line), 0));

    assertEquals(List.of("limb ten inches by tape limb level by eye", "-", "read back"), heard());
    assertEquals(
        1, out.toString().lines().filter(told -> told.contains("I hear nothing.")).count());
  }

  /** The recogniser is loaded anew; what was said before is still there. */
  @Test
  void anEarThatFailsIsLoadedAnew() throws Exception {
    VirtualLine line = new VirtualLine("headset");
    VirtualLine again = new VirtualLine("headset");
    AtomicReference<Boom> failing = new AtomicReference<>();
    Boom first =
        new Boom(
            line, () -> line.say(recording("02-climber-limb")), () -> failing.get().breakDown());
    failing.set(first);
    Boom second = new Boom(again, () -> again.say(recording("12-ground-read-back")));
    AtomicInteger loaded = new AtomicInteger();

    converse(
        new Plugged(List.of(first, second), List.of(again), 0),
        new Session(grammar),
        new Key(),
        mouth,
        () -> {
          loaded.incrementAndGet();
          return ear;
        });

    assertEquals(2, loaded.get());
    assertEquals(List.of("limb ten inches by tape limb level by eye", "-", "read back"), heard());
    assertTrue(out.toString().contains("answered  " + Mishap.EAR_FAILED.text()), out.toString());
    assertTrue(out.toString().contains("Redirect one. Limb, ten inches, by tape."));
  }

  /** Danger has its sound before the words, and a sentence that was made before says the rest. */
  @Test
  void aVoiceThatFailsIsHeardToFail() throws Exception {
    VirtualLine line = new VirtualLine("headset");
    Boom boom =
        new Boom(
            line,
            () -> line.say(recording("02-climber-limb")),
            () -> line.say(recording("12-ground-read-back")));
    Voice voice = FreeTtsVoice.load();
    AtomicInteger answers = new AtomicInteger();
    Mouth failing =
        new Mouth(
            (words, pace) -> {
              if (words.contains("ten inches") && answers.incrementAndGet() == 1) {
                throw new IllegalStateException("made to fail");
              }
              return voice.phrases(words, pace);
            });
    failing.prepare();

    converse(
        new Plugged(List.of(boom), List.of(line), 0),
        new Session(grammar),
        new Key(),
        failing,
        () -> ear);

    assertEquals(List.of("limb ten inches by tape limb level by eye", "-", "read back"), heard());
    assertTrue(out.toString().contains("answered  " + Mishap.VOICE_FAILED.text()));
    assertTrue(line.played().contains(failing.instead()));
    Sound sentence = voice.speak(Mishap.VOICE_FAILED.text(), rigspeak.speaking.Pace.ORDINARY);
    assertEquals(
        Sound.joined(List.of(EarSound.NOT_UNDERSTOOD.sound(), sentence)), failing.instead());
  }

  /** What failed is in the record, whether it was the ear or a device. */
  @Test
  void aLostDeviceIsWrittenDown() throws Exception {
    VirtualLine pulled = new VirtualLine("first");
    VirtualLine back = new VirtualLine("second");
    Boom first = new Boom(pulled, pulled::lose);
    Boom second = new Boom(back, () -> back.say(recording("12-ground-read-back")));
    VirtualLine broken = new VirtualLine("loudspeaker");
    VirtualLine sound = new VirtualLine("another");
    broken.lose();
    CrewFolder crew = new CrewFolder(folder, "oak");
    try (Scribe scribe = new JournalScribe(crew, Clock.systemUTC(), new PrintWriter(remarks))) {
      converse(
          new Plugged(List.of(first, second), List.of(broken, sound), 0),
          new Session(grammar, Attention.alwaysOpen(), scribe),
          new Key());
    }

    List<String> failed =
        crew.entries(crew.days().get(0)).stream()
            .map(Entry::event)
            .filter(Event.Failed.class::isInstance)
            .map(event -> ((Event.Failed) event).what())
            .toList();
    assertEquals(List.of("loudspeaker", "microphone"), failed);
    assertEquals(List.of("read back"), heard());
  }

  /** Where not even that could be made there is a sound. */
  @Test
  void aVoiceThatNeverWorkedStillSounds() {
    Mouth mute =
        new Mouth(
            (words, pace) -> {
              throw new IllegalStateException("made to fail");
            });
    assertThrows(IllegalStateException.class, mute::prepare);
    assertEquals(EarSound.DANGER.sound(), mute.instead());
  }

  private void converse(Plugged lines) throws IOException, NoSuchDevice {
    converse(lines, new Session(grammar), new Key());
  }

  private void converse(Plugged lines, Session session, Key key) throws IOException, NoSuchDevice {
    converse(lines, session, key, mouth, () -> ear);
  }

  private void converse(Plugged lines, Session session, Key key, Mouth speaking, Supplier<Ear> ears)
      throws IOException, NoSuchDevice {
    new LiveConversation(
            session,
            key,
            new ArrayDeque<>(),
            ears,
            speaking,
            ClosingPause.ORDINARY,
            lines,
            new Report(new PrintWriter(out, true), false),
            new PrintWriter(remarks, true))
        .run(List::of);
  }

  private List<String> heard() {
    return out.toString()
        .lines()
        .filter(line -> line.startsWith("heard"))
        .map(line -> line.substring("heard".length()).strip())
        .toList();
  }

  private static Sound recording(String name) {
    try {
      return Sound.joined(List.of(WavFile.read(DAY.resolve(name + ".wav")), QUIET));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The tool's own voice serves as somebody's. */
  private static Sound spoken(String words) {
    Sound voice = FreeTtsVoice.load().speak(words, rigspeak.speaking.Pace.ORDINARY);
    return Sound.joined(List.of(QUIET, voice, QUIET));
  }

  /** A microphone into which the next thing is said whenever it is opened. */
  private static final class Boom implements Microphone {
    private final VirtualLine line;
    private final Deque<Runnable> script;
    private boolean broken;

    Boom(VirtualLine line, Runnable... script) {
      this.line = line;
      this.script = new ArrayDeque<>(List.of(script));
    }

    @Override
    public String name() {
      return line.name();
    }

    /** From now on nobody knows what it does. */
    void breakDown() {
      broken = true;
    }

    @Override
    public int read(short[] into, int from, int most) throws LostDevice {
      if (broken) {
        throw new IllegalStateException("made to fail");
      }
      return line.read(into, from, most);
    }

    @Override
    public void shut() {
      line.shut();
    }

    @Override
    public void reopen(long playedNanos) {
      line.reopen(playedNanos);
      if (script.isEmpty()) {
        line.end();
      } else {
        script.remove().run();
      }
    }

    @Override
    public void close() {
      line.close();
    }
  }

  /** The devices that are plugged in one after the other, after so many looks in vain. */
  private final class Plugged implements LiveConversation.Lines {
    private final Iterator<Boom> microphones;
    private final Iterator<VirtualLine> loudspeakers;
    private int inVain;

    Plugged(List<Boom> microphones, List<VirtualLine> loudspeakers, int inVain) {
      this.microphones = microphones.iterator();
      this.loudspeakers = loudspeakers.iterator();
      this.inVain = inVain;
    }

    @Override
    public Microphone microphone() throws NoSuchDevice {
      return next(microphones);
    }

    @Override
    public Loudspeaker loudspeaker() throws NoSuchDevice {
      return next(loudspeakers);
    }

    private <D> D next(Iterator<D> devices) throws NoSuchDevice {
      boolean lookedForAgain = !attempts.isEmpty();
      if (!devices.hasNext() || (lookedForAgain && inVain-- > 0)) {
        Devices.microphone(List.of("no such headset 7351")).close();
      }
      return devices.next();
    }

    @Override
    public void beforeNext(int attempt) {
      attempts.add(attempt);
    }
  }
}
