package rigspeak.app;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a crew said and was answered. */
@Command(
    name = "journal",
    mixinStandardHelpOptions = true,
    description = {
      "What a crew said and was answered, one file a day, kept by listen and resume, and by type,",
      "hear and ground where --crew or --journal is said. A line is on the disk before its answer",
      "is spoken. Print it, take it along, or see whether a line was changed."
    },
    subcommands = {
      JournalShowCommand.class,
      JournalExportCommand.class,
      JournalVerifyCommand.class
    })
final class JournalCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Say journal show, journal export --out FILE or journal verify.");
  }
}
