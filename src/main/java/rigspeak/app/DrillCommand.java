package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.answer.Utterance;
import rigspeak.audio.Devices;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.catalogue.Catalogue;
import rigspeak.drill.Course;
import rigspeak.drill.Generator;
import rigspeak.drill.Skill;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Caution;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;
import rigspeak.speaking.EarSound;

/** Training by ear. */
@Command(
    name = "drill",
    mixinStandardHelpOptions = true,
    description = {
      "Training by ear, eyes shut, feet on the ground.",
      "States a situation, waits, takes the answer and how sure you are, tells what is right",
      "and why, and asks again when it is nearly forgotten. Say: again, speak slower, explain, stop.",
      "Nothing in it is a licence to load.",
      ""
    },
    subcommands = {DrillReportCommand.class, DrillDueCommand.class, DrillBenchCommand.class})
final class DrillCommand implements Callable<Integer> {
  private static final int MOST_QUESTIONS = 500;

  @Parameters(arity = "0..1", paramLabel = "TRAINEE", description = "whose answers are kept")
  private String trainee = "";

  @Option(names = "--file", paramLabel = "FILE", description = "where they are kept instead")
  private Path file;

  @Option(
      names = "--questions",
      paramLabel = "N",
      defaultValue = "10",
      description = "how many are asked (10)")
  private int questions;

  @Option(
      names = "--skill",
      paramLabel = "SKILL",
      description = "only these; say it again for another: ${COMPLETION-CANDIDATES}",
      completionCandidates = SkillNames.class)
  private List<String> skills = List.of();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "the same number asks the same questions; without it, others every time")
  private Long seed;

  @Option(
      names = "--script",
      paramLabel = "FILE",
      description = "the questions of a file instead, see docs/formats.md")
  private Path script;

  @Option(
      names = "--type",
      arity = "0..1",
      fallbackValue = "-",
      paramLabel = "FILE",
      description = "typed answers, a line each; - (the default) is standard input")
  private String typed;

  @Option(names = "--hear", paramLabel = "WAV", description = "recorded answers, or a folder")
  private List<Path> wavs = List.of();

  @Option(
      names = "--noise",
      paramLabel = "DB",
      description = "wind behind the voice, so many decibels below it, 0 to 40")
  private Double noise;

  @Option(names = "--out", paramLabel = "DIR", description = "write what is said as WAVs there")
  private Path out;

  @Option(names = "--mic", paramLabel = "NAME", description = "part of the microphone's name")
  private List<String> microphones = List.of();

  @Option(names = "--speaker", paramLabel = "NAME", description = "part of the loudspeaker's name")
  private List<String> loudspeakers = List.of();

  @Mixin private final EarOptions hearing = new EarOptions(Caution.EAGER);

  @Spec private CommandSpec spec;

  /** The names of the skills, for the help. */
  static final class SkillNames extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    SkillNames() {
      super(Arrays.stream(Skill.values()).map(Skill::key).toList());
    }
  }

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    checkOptions();
    Grammar grammar = Grammar.bundled();
    Path kept = file == null ? TraineeFiles.usual(trainee) : file;
    Clock clock = Clock.systemUTC();
    DrillTalk talk = new DrillTalk(grammar, course(grammar, clock), trainee, kept, clock);
    if (typed != null) {
      type(talk);
    } else if (!wavs.isEmpty()) {
      hear(talk, grammar);
    } else {
      listen(talk, grammar);
    }
    return 0;
  }

  private void checkOptions() {
    if (trainee.isEmpty()) {
      throw usage("Say whose answers are kept, for example: rigspeak drill juno.");
    }
    if (!trainee.matches("[\\p{L}\\p{N}_-]+")) {
      throw usage("A trainee's name is letters, figures, - and _, not " + trainee + ".");
    }
    if (questions < 1 || questions > MOST_QUESTIONS) {
      throw usage("--questions is a number from 1 to " + MOST_QUESTIONS + ".");
    }
    if (noise != null && !(noise >= 0 && noise <= 40)) {
      throw usage("--noise is a number of decibels from 0 to 40.");
    }
  }

  private ParameterException usage(String why) {
    return new ParameterException(spec.commandLine(), why);
  }

  private Course course(Grammar grammar, Clock clock) throws IOException {
    Catalogue catalogue = Catalogue.bundled();
    if (script != null) {
      return new Course.Written(new DrillScript(grammar, catalogue).read(script));
    }
    List<Skill> among = new ArrayList<>();
    for (String name : skills) {
      among.add(Skill.of(name).orElseThrow(() -> usage("There is no skill " + name + ".")));
    }
    return new Course.Spaced(
        new Generator(catalogue),
        among.isEmpty() ? List.of(Skill.values()) : among,
        questions,
        seed == null ? clock.millis() : seed);
  }

  // ---- typed ----

  private void type(DrillTalk talk) throws IOException {
    print(talk);
    try (Lines lines = Lines.of(typed)) {
      long asked = System.nanoTime();
      Optional<String> line = lines.next();
      while (line.isPresent() && !talk.isOver()) {
        talk.said(line.get(), seconds(asked));
        out().printf("%-9s %s%n", "said", line.get());
        print(talk);
        asked = System.nanoTime();
        line = talk.isOver() ? Optional.empty() : lines.next();
      }
    }
  }

  private static double seconds(long since) {
    return (System.nanoTime() - since) / 1e9;
  }

  private PrintWriter out() {
    return spec.commandLine().getOut();
  }

  private void print(DrillTalk talk) {
    for (Utterance utterance : talk.toSay()) {
      out().printf("%-9s %s%n", "answered", utterance.text());
    }
    out().println();
    out().flush();
  }

  // ---- recorded ----

  /** How long an answer took is told by the silence before it in its recording. */
  private void hear(DrillTalk talk, Grammar grammar) throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    Optional<DrillVoice> voice = out == null ? Optional.empty() : Optional.of(voice());
    int said = 0;
    Ear ear = hearing.open(grammar, talk.expected(), err);
    print(talk);
    said = write(voice, talk, said);
    for (Path wav : Recordings.named(wavs)) {
      try (WavFile recording = WavFile.open(wav);
          Listening listening = ear.listen(recording)) {
        while (!talk.isOver()) {
          Optional<Heard> heard = listening.next(talk.expected());
          if (heard.isEmpty()) {
            break;
          }
          talk.heard(heard.get(), Math.max(0, heard.get().when().startSeconds()));
          out().printf("%-9s %s%n", "heard", words(heard.get()));
          print(talk);
          said = write(voice, talk, said);
        }
      }
    }
  }

  private static String words(Heard heard) {
    return heard instanceof Heard.Words words ? words.text() : "-";
  }

  private int write(Optional<DrillVoice> voice, DrillTalk talk, int before) throws IOException {
    if (voice.isPresent()) {
      Files.createDirectories(out);
      Sound sound = voice.get().whole(talk);
      WavFile.write(out.resolve(String.format(Locale.ROOT, "%03d.wav", before + 1)), sound);
    }
    return before + 1;
  }

  private DrillVoice voice() {
    return new DrillVoice(new Mouth(), Optional.ofNullable(noise));
  }

  // ---- live ----

  private void listen(DrillTalk talk, Grammar grammar) throws IOException, NoSuchDevice {
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    try (Loudspeaker loudspeaker = Devices.loudspeaker(loudspeakers);
        Microphone microphone = Devices.microphone(microphones)) {
      DrillVoice voice = voice();
      Ear ear = hearing.open(grammar, talk.expected(), err);
      err.println("Listening on " + microphone.name() + ", speaking on " + loudspeaker.name());
      try (Listening listening = ear.listen(microphone)) {
        speak(talk, voice, microphone, loudspeaker);
        long asked = System.nanoTime();
        while (!talk.isOver()) {
          Optional<Heard> heard = listening.next(talk.expected());
          if (heard.isEmpty()) {
            return;
          }
          double spoke = heard.get().when().endSeconds() - heard.get().when().startSeconds();
          talk.heard(heard.get(), Math.max(0, seconds(asked) - spoke));
          out().printf("%-9s %s%n", "heard", words(heard.get()));
          if (!talk.isOver()) {
            listening.expectSoon(talk.expected());
          }
          speak(talk, voice, microphone, loudspeaker);
          asked = System.nanoTime();
        }
      }
    }
  }

  /** The microphone is shut meanwhile: the tool must not hear itself. */
  private void speak(
      DrillTalk talk, DrillVoice voice, Microphone microphone, Loudspeaker loudspeaker)
      throws IOException {
    print(talk);
    microphone.shut();
    loudspeaker.play(voice.parts(talk));
    microphone.reopen(loudspeaker.play(EarSound.LISTENING.sound()));
  }
}
