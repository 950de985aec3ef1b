package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.Squelch;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;

/** A rig read back over the radio, held against its plan. */
@Command(
    name = "confirm",
    mixinStandardHelpOptions = true,
    description = {
      "A rig read back over the radio, held against its plan.",
      "Whoever is aloft says each value by its name, \"over\" at the end of each transmission.",
      "What is as planned is read back, what is not is asked about: affirm, negative or correction.",
      "Roger is no answer. \"Over\" alone asks what has not been said yet.",
      "It never speaks on a busy channel, and says again what was stepped on.",
      "At the end stands who confirmed what and when, or what is not as planned."
    })
final class ConfirmCommand implements Callable<Integer> {
  private static final double LEAST_DECIBELS = -70;
  private static final double MOST_DECIBELS = -10;

  @Parameters(paramLabel = "PLAN", description = "the plan, see docs/formats.md")
  private String file;

  @Option(
      names = "--type",
      arity = "0..1",
      fallbackValue = "-",
      paramLabel = "FILE",
      description = "the read-back is typed, a line each; here, if no file is named")
  private String typed;

  @Option(
      names = "--from",
      paramLabel = "DIR",
      description = "the read-back is in these recordings, a folder's in the order of names")
  private List<Path> recordings = List.of();

  @Option(
      names = "--by",
      paramLabel = "ROLE",
      defaultValue = "climber",
      description = "what the one who reads back is called (climber)")
  private String by;

  @Option(
      names = "--to",
      paramLabel = "ROLE",
      defaultValue = "ground worker",
      description = "what the one who holds the plan is called (ground worker)")
  private String to;

  @Option(
      names = "--busy-above",
      paramLabel = "DB",
      defaultValue = "-45",
      description = "the level that makes the channel busy, dB below full scale (-45)")
  private double busyAbove;

  @Option(names = "--json", description = "one JSON object a line, see docs/formats.md")
  private boolean json;

  @Mixin private LiveOptions live;

  @Mixin private final EarOptions hearing = new EarOptions();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    Squelch squelch = squelch();
    Grammar grammar = Grammar.bundled();
    PlannedRig plan = PlannedRig.read(file);
    RadioTalk talk =
        new RadioTalk(grammar, plan.rope(), role(by), Clock.system(ZoneId.systemDefault()));
    RadioReport report = new RadioReport(spec.commandLine().getOut(), json, role(by), role(to));
    boolean allRead = true;
    try {
      if (typed != null) {
        type(talk, report);
      } else if (recordings.isEmpty()) {
        listen(grammar, talk, report, squelch);
      } else {
        allRead = hear(grammar, talk, report);
      }
    } finally {
      report.end(plan.name(), talk);
    }
    return allRead ? 0 : Fault.BAD_INPUT;
  }

  private Squelch squelch() {
    if (!(busyAbove >= LEAST_DECIBELS && busyAbove <= MOST_DECIBELS)) {
      throw new ParameterException(
          spec.commandLine(), "--busy-above is a level in decibels from -70 to -10.");
    }
    return new Squelch(busyAbove);
  }

  /** It is spoken, so it is made of words. */
  private String role(String role) {
    if (!role.matches("[A-Za-z]{1,20}( [A-Za-z]{1,20}){0,2}")) {
      throw new ParameterException(
          spec.commandLine(), "A role is one to three words of letters, such as ground worker.");
    }
    return role;
  }

  private void type(RadioTalk talk, RadioReport report) throws IOException {
    try (Lines lines = Lines.of(typed)) {
      for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
        report.passage("said", talk.said(line.get()));
      }
    }
  }

  private boolean hear(Grammar grammar, RadioTalk talk, RadioReport report) throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    Ear ear = open(grammar, err);
    boolean allRead = true;
    for (Path wav : Recordings.named(recordings)) {
      try (WavFile sound = WavFile.open(wav);
          Listening listening = ear.listen(sound)) {
        for (Optional<Heard> heard = listening.next(talk.expected());
            heard.isPresent();
            heard = listening.next(talk.expected())) {
          talk.heard(heard.get()).ifPresent(passage -> report.passage("heard", passage));
        }
        sound.remark().ifPresent(err::println);
      } catch (IOException e) {
        err.println(Fault.sentence(e));
        allRead = false;
      }
    }
    return allRead;
  }

  private Ear open(Grammar grammar, PrintWriter err) {
    return hearing.open(grammar, Expected.overTheRadio(), err);
  }

  private void listen(Grammar grammar, RadioTalk talk, RadioReport report, Squelch squelch)
      throws IOException, NoSuchDevice {
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    try (Loudspeaker loudspeaker = live.lines().loudspeaker();
        Microphone microphone = live.lines().microphone()) {
      err.println("Listening on " + microphone.name() + ", speaking on " + loudspeaker.name());
      new RadioLine(talk, report, new Mouth(), microphone, loudspeaker, squelch)
          .run(() -> open(grammar, err), live.pause());
    }
  }
}
