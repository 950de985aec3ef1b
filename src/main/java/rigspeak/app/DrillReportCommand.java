package rigspeak.app;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Placeholder until the charts are there. */
@Command(name = "report", mixinStandardHelpOptions = true, description = "How it goes.")
final class DrillReportCommand implements Callable<Integer> {
  @Override
  public Integer call() {
    return 0;
  }
}
