package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.answer.PictureWords;
import rigspeak.answer.PlanWords;
import rigspeak.plan.PlanVerdict;
import rigspeak.plan.PlanVerdict.Hanging;
import rigspeak.plan.Step;

/** A plan in, a verdict on every support and every step of it out. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Judges every support and every change-over of a plan.",
      "A line that is not taken makes it \"cannot say\": nothing is judged on half a plan."
    })
final class PlanCheckCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "FILE",
      description = "the plan: utterances, one a line; - is standard input")
  private String file;

  @Option(names = "--json", description = "all numbers as one JSON object, see docs/formats.md")
  private boolean json;

  @Mixin private final Supplied supplied = new Supplied();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    PlanVerdict verdict = supplied.thinking().verdict(PlanFiles.read(file));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      new Report(out, true).line(PlanJson.of(verdict));
    } else {
      print(verdict, out);
    }
    return verdict.refused().isEmpty() ? 0 : Fault.BAD_INPUT;
  }

  private void print(PlanVerdict verdict, PrintWriter out) {
    out.println(PlanWords.title(verdict));
    out.println(PlanWords.outcome(verdict));
    PlanRefusals.print(file, verdict, out);
    for (Hanging hanging : verdict.ropes()) {
      out.println();
      out.println(where(hanging.until().number()) + PlanWords.rope(hanging));
      hanging
          .verdict()
          .supports()
          .keySet()
          .forEach(
              place ->
                  out.printf(
                      "  %s: %s %s%n",
                      PictureWords.title(place),
                      PictureWords.verdict(hanging.verdict(), place),
                      PictureWords.reason(hanging.verdict(), place)));
    }
    out.println();
    out.println(verdict.steps().isEmpty() ? PlanWords.noSteps() : PlanWords.steps() + ":");
    for (Step step : verdict.steps()) {
      out.println("  " + where(step.line().number()) + PlanWords.step(step));
    }
  }

  private String where(int line) {
    return PlanRefusals.where(file, line);
  }
}
