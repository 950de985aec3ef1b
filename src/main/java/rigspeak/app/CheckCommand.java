package rigspeak.app;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.answer.Utterance;
import rigspeak.dialogue.Turn;
import rigspeak.meaning.Meaning;
import rigspeak.plan.Plan;
import rigspeak.plan.Told;
import rigspeak.plan.Walk;

/** Utterances in, one verdict out. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Utterances in, one verdict out.",
      "A line that is not taken makes it \"cannot say\": nothing is judged on half a rig."
    })
final class CheckCommand implements Callable<Integer> {
  @Parameters(
      arity = "0..1",
      defaultValue = "-",
      paramLabel = "FILE",
      description = "the utterances, one a line; - (the default) is standard input")
  private String file;

  @Option(names = "--json", description = "all numbers as one JSON object, see docs/formats.md")
  private boolean json;

  @Mixin private final Supplied supplied = new Supplied();

  @Spec private CommandSpec spec;

  /** What is said where the file ends. */
  private static final Plan.Line CHECK = new Plan.Line(0, "check redirect");

  @Override
  public Integer call() throws IOException {
    Thinking thinking = supplied.thinking();
    Walk walk = thinking.walk(PlanFiles.read(file));
    List<Told> refused = new ArrayList<>(walk.refused());
    // What was never set is not on the rope; nobody is here to hear that.
    walk.waiting().ifPresent(refused::add);
    if (refused.isEmpty()) {
      Turn turn = thinking.dialogue().step(walk.end(), Meaning.Command.CHECK);
      Told check = new Told(CHECK, Meaning.Command.CHECK, turn);
      if (Exchange.of(check).verdict().isPresent()) {
        print(Exchange.of(check));
        return 0;
      }
      refused.add(check);
    }
    print(refused.stream().map(Exchange::of).toList());
    return Fault.BAD_INPUT;
  }

  private void print(Exchange judged) {
    Report report = new Report(spec.commandLine().getOut(), json);
    if (!json) {
      judged.answers().forEach(answer -> spec.commandLine().getOut().println(answer.text()));
      return;
    }
    ObjectNode node =
        judged
            .verdict()
            .map(VerdictJson::of)
            .orElseThrow(() -> new IllegalStateException("a check always has a verdict"));
    node.set("answers", Report.answers(judged));
    report.line(node);
  }

  /** Lines that were not taken: no verdict on the rest. */
  private void print(List<Exchange> refused) {
    if (!json) {
      spec.commandLine().getOut().println("Cannot say.");
      for (Exchange exchange : refused) {
        String why =
            exchange.understood()
                ? exchange.answers().stream().map(Utterance::text).collect(Collectors.joining(" "))
                : "not understood";
        spec.commandLine().getOut().println(exchange.said() + ": " + why);
      }
      return;
    }
    ObjectNode node = VerdictJson.notTaken();
    node.set("not_taken", Report.notTaken(refused));
    new Report(spec.commandLine().getOut(), true).line(node);
  }
}
