package rigspeak.app;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rigspeak.dialogue.Attention;

/** The option that says for how long it listens once it has been called. */
final class Window {
  private static final double LONGEST_SECONDS = 600;

  @Option(
      names = "--window",
      paramLabel = "SECONDS",
      defaultValue = "8",
      description = "after the call and after each answer, listen so long (${DEFAULT-VALUE})")
  private double seconds;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /** Waits for the call. */
  Attention asleep() {
    if (!(seconds > 0 && seconds <= LONGEST_SECONDS)) {
      throw new ParameterException(
          spec.commandLine(), "--window is a number of seconds above 0, at most 600.");
    }
    return Attention.asleep(seconds);
  }
}
