package rigspeak.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.answer.Utterance;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;

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

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    Session session = new Session(Grammar.bundled());
    List<Exchange> refused = new ArrayList<>();
    Optional<Exchange> waiting = Optional.empty();
    try (Lines lines = Lines.of(file)) {
      for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
        Exchange exchange = session.said(line.get());
        if (exchange.refusedSomething()) {
          refused.add(exchange);
        } else if (exchange.waitsForLanyard()) {
          waiting = Optional.of(exchange);
        } else if (exchange.clippedIn()) {
          waiting = Optional.empty();
        }
      }
    }
    // What was never set is not on the rope; nobody is here to hear that.
    waiting.ifPresent(refused::add);
    if (refused.isEmpty()) {
      Exchange check = session.meant("check redirect", Meaning.Command.CHECK);
      if (check.verdict().isPresent()) {
        print(check);
        return 0;
      }
      refused.add(check);
    }
    print(refused);
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
    ArrayNode lines = node.putArray("not_taken");
    for (Exchange exchange : refused) {
      ObjectNode line = JsonNodeFactory.instance.objectNode();
      line.put("said", exchange.said());
      line.set("answers", Report.answers(exchange));
      lines.add(line);
    }
    new Report(spec.commandLine().getOut(), true).line(node);
  }
}
