package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Queue;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rigspeak.answer.LineNotice;
import rigspeak.answer.Mishap;
import rigspeak.audio.LostDevice;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;
import rigspeak.speaking.EarSound;

/**
 * A conversation by microphone and loudspeaker, which it outlives: if one of them is lost it is
 * looked for until it is back, and the conversation goes on where it was, with the same rig, gate
 * and question. What was being said into a lost microphone is dropped, never guessed at; what was
 * being answered on a lost loudspeaker is answered again.
 */
final class LiveConversation {
  private final Session session;
  private final Key key;
  private final Supplier<Ear> ears;
  private final Mouth mouth;
  private final ClosingPause pause;
  private final Lines lines;
  private final Queue<String> typed;
  private final ExchangeListener report;
  private final PrintWriter remarks;

  /** Where microphone and loudspeaker come from, each time they are needed. */
  interface Lines {
    Microphone microphone() throws NoSuchDevice;

    Loudspeaker loudspeaker() throws NoSuchDevice;

    /**
     * Lets some time go by before a lost device is looked for again.
     *
     * @param attempt how often it has been looked for already
     * @throws IOException if the search is given up
     */
    void beforeNext(int attempt) throws IOException;
  }

  /**
   * A conversation that has not begun.
   *
   * @param key what is as good as the call
   * @param typed what somebody else types for the climber; it is taken between two utterances
   * @param ears loads the recogniser; asked when microphone and loudspeaker are there, so that
   *     nobody waits for it only to be told that they are not, and again if it fails
   */
  LiveConversation(
      Session session,
      Key key,
      Queue<String> typed,
      Supplier<Ear> ears,
      Mouth mouth,
      ClosingPause pause,
      Lines lines,
      ExchangeListener report,
      PrintWriter remarks) {
    this.session = session;
    this.key = key;
    this.typed = typed;
    this.ears = ears;
    this.mouth = mouth;
    this.pause = pause;
    this.lines = lines;
    this.report = report;
    this.remarks = remarks;
  }

  /**
   * Listens and answers until nothing more comes.
   *
   * @param beginning begins the session; what it says before anything is listened to
   * @throws NoSuchDevice if there is no microphone or loudspeaker to begin with
   * @throws IOException if the search for a lost one was given up
   */
  void run(Supplier<List<Exchange>> beginning) throws IOException, NoSuchDevice {
    try (Speaking speaking = new Speaking(lines.loudspeaker());
        Hearing hearing = new Hearing(lines.microphone(), speaking)) {
      hearing.deafWhile(List.of(isHeard()));
      remarks.println("Listening on " + hearing.name() + ", speaking on " + speaking.name());
      for (Exchange exchange : beginning.get()) {
        answer(exchange, hearing);
      }
      for (Optional<Heard> heard = hearing.next(); heard.isPresent(); heard = hearing.next()) {
        Optional<Exchange> exchange = session.heard(heard.get());
        if (exchange.isPresent()) {
          answer(exchange.get(), hearing);
        }
        if (key.wasPressed()) {
          answer(session.called(), hearing);
        }
        for (String words = typed.poll(); words != null; words = typed.poll()) {
          answer(session.said(words), hearing);
        }
      }
    }
  }

  private void answer(Exchange exchange, Hearing hearing) throws IOException {
    hearing.expectSoon();
    tell(exchange);
    hearing.deafWhile(mouth.speak(exchange, session.manner().pace()));
  }

  private void tell(Exchange exchange) {
    report.exchange("heard", exchange);
  }

  /** Whether anything but the call is heard from now on. */
  private Sound isHeard() {
    return (session.isAsleep() ? EarSound.ASLEEP : EarSound.LISTENING).sound();
  }

  /** Made only while it is played, where a voice that fails is noticed. */
  private Iterable<Sound> spoken(LineNotice notice, Sound... then) {
    return () ->
        Stream.concat(Stream.of(mouth.speak(notice, session.manner().pace())), Stream.of(then))
            .iterator();
  }

  private interface Opening<D> {
    D open() throws NoSuchDevice;
  }

  private <D> D lookedFor(Opening<D> opening) throws IOException {
    for (int attempt = 0; ; attempt++) {
      lines.beforeNext(attempt);
      try {
        return opening.open();
      } catch (NoSuchDevice stillGone) {
        // It was said once that it is gone; that it still is need not be.
      }
    }
  }

  /** The loudspeaker, whichever device it is now. */
  private final class Speaking implements AutoCloseable {
    private Loudspeaker loudspeaker;

    Speaking(Loudspeaker loudspeaker) {
      this.loudspeaker = loudspeaker;
    }

    String name() {
      return loudspeaker.name();
    }

    /**
     * Plays to the end, from the beginning again if the loudspeaker is lost on the way, and says
     * when that was. Words that cannot be made are answered with a sound that was made before.
     */
    long play(Iterable<Sound> parts) throws IOException {
      try {
        return playWhole(parts);
      } catch (RuntimeException | OutOfMemoryError | StackOverflowError fault) {
        tell(session.failed(Mishap.VOICE_FAILED, "voice", fault));
        return playWhole(List.of(mouth.instead()));
      }
    }

    private long playWhole(Iterable<Sound> parts) throws IOException {
      OptionalLong ended = played(parts);
      while (ended.isEmpty()) {
        remarks.println("The loudspeaker " + name() + " is gone.");
        do {
          loudspeaker.close();
          loudspeaker = lookedFor(lines::loudspeaker);
          // A device that can be opened may still be dead.
        } while (played(spoken(LineNotice.LOUDSPEAKER_BACK)).isEmpty());
        remarks.println("Speaking on " + name() + " again.");
        ended = played(parts);
      }
      return ended.getAsLong();
    }

    /** When it ended; never if the loudspeaker was lost. */
    private OptionalLong played(Iterable<Sound> parts) {
      try {
        return OptionalLong.of(loudspeaker.play(parts));
      } catch (LostDevice lost) {
        session.wasLost("loudspeaker", lost);
        return OptionalLong.empty();
      }
    }

    @Override
    public void close() {
      loudspeaker.close();
    }
  }

  /** The microphone, whichever device it is now. */
  private final class Hearing implements AutoCloseable {
    private final Speaking speaking;
    private Microphone microphone;
    private Ear ear;
    private Listening listening;

    Hearing(Microphone microphone, Speaking speaking) {
      this.speaking = speaking;
      this.ear = ears.get();
      open(microphone);
    }

    private void open(Microphone now) {
      microphone = now;
      listening = ear.listen(microphone, pause);
    }

    String name() {
      return microphone.name();
    }

    /** The ear gets ready for what may come next while the answer is spoken. */
    void expectSoon() {
      listening.expectSoon(session.expected());
    }

    /** The microphone is shut meanwhile: the tool must not hear itself. */
    void deafWhile(Iterable<Sound> parts) throws IOException {
      microphone.shut();
      microphone.reopen(speaking.play(parts));
    }

    Optional<Heard> next() throws IOException {
      while (true) {
        try {
          return listening.next(session.expected(), session.patienceSeconds());
        } catch (LostDevice lost) {
          remarks.println(lost.getMessage());
          session.wasLost("microphone", lost);
          listening.close();
          session.streamEnded();
          speaking.play(spoken(LineNotice.MICROPHONE_GONE));
          open(lookedFor(lines::microphone));
          deafWhile(spoken(LineNotice.MICROPHONE_BACK, isHeard()));
          remarks.println("Listening on " + name() + " again.");
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError fault) {
          hearAnew(fault);
        }
      }
    }

    /**
     * What a recogniser is worth after a fault nobody knows, so another is loaded: for some seconds
     * it is deaf.
     */
    private void hearAnew(Throwable fault) throws IOException {
      listening.close();
      session.streamEnded();
      Exchange failed = session.failed(Mishap.EAR_FAILED, "hearing", fault);
      tell(failed);
      speaking.play(mouth.speak(failed, session.manner().pace()));
      ear = ears.get();
      open(lookedFor(lines::microphone));
      deafWhile(List.of(isHeard()));
    }

    @Override
    public void close() {
      listening.close();
    }
  }
}
