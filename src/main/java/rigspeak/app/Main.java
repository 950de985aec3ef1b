package rigspeak.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. */
@Command(
    name = "rigspeak",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    description = {
      "Judges a climbing arborist's redirect by ear and voice, without a network.",
      "",
      "State the rig a value at a time or several in a breath, hear each read back,",
      "say \"check redirect\", hear the verdict.",
      "A thinking aid, never a licence to load.",
      ""
    },
    footer = {
      "",
      "Try it:  rigspeak hear demo-data/one-day",
      "         rigspeak type < demo-data/one-day.txt",
      "Exit codes: 0 done, 2 usage, 3 bad input, 4 audio device."
    },
    subcommands = {
      ListenCommand.class,
      ResumeCommand.class,
      HearCommand.class,
      TypeCommand.class,
      CheckCommand.class,
      PlanCommand.class,
      ConfirmCommand.class,
      GroundCommand.class,
      TranscribeCommand.class,
      SayCommand.class,
      EnrollCommand.class,
      DrillCommand.class,
      JournalCommand.class,
      DevicesCommand.class,
      SoundCheckCommand.class,
      BenchCommand.class,
      SoakCommand.class
    })
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, arguments));
  }

  /** Runs one command and gives its exit code; no stack trace reaches the user. */
  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    try {
      return commandLine(out, err).execute(arguments);
    } catch (VirtualMachineError e) {
      err.println(Fault.sentence(e));
      return Fault.exitCode(e);
    }
  }

  private static CommandLine commandLine(PrintWriter out, PrintWriter err) {
    return new CommandLine(new Main())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setOut(out)
        .setErr(err)
        .setExecutionExceptionHandler(
            (exception, commandLine, parsed) -> {
              commandLine.getErr().println(Fault.sentence(exception));
              return Fault.exitCode(exception);
            });
  }

  /** The version that the build wrote into the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"rigspeak " + version()};
    }
  }

  static String version() {
    String version = Main.class.getPackage().getImplementationVersion();
    return version == null ? "(not from a jar)" : version;
  }
}
