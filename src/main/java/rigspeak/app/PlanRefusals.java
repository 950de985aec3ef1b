package rigspeak.app;

import java.io.PrintWriter;
import java.util.stream.Collectors;
import rigspeak.answer.Utterance;
import rigspeak.plan.PlanVerdict;
import rigspeak.plan.Told;

/** The lines of a plan that were not taken, one a line, each with its file and number. */
final class PlanRefusals {
  private PlanRefusals() {}

  static void print(String file, PlanVerdict verdict, PrintWriter out) {
    for (Told told : verdict.refused()) {
      out.println(where(file, told.line().number()) + told.line().said() + ": " + why(told));
    }
  }

  /** As compilers write it, so that an editor finds the line. */
  static String where(String file, int line) {
    return file + ":" + line + ": ";
  }

  private static String why(Told told) {
    Exchange exchange = Exchange.of(told);
    return exchange.understood()
        ? exchange.answers().stream().map(Utterance::text).collect(Collectors.joining(" "))
        : "not understood";
  }
}
