package rigspeak.app;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
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
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;

/** The recogniser alone. */
@Command(
    name = "transcribe",
    mixinStandardHelpOptions = true,
    description = "The recogniser alone: words, taken or not, meaning.")
final class TranscribeCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "WAV", description = "recordings or folders of them")
  private List<Path> wavs;

  @Option(names = "--json", description = "one JSON object a line, see docs/formats.md")
  private boolean json;

  @Option(
      names = "--expect",
      paramLabel = "SLOT",
      description = "open only this slot, as when the tool has asked for it: all_up, out, ...")
  private String expect;

  @Mixin private final EarOptions hearing = new EarOptions();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException {
    Optional<Slot> slot = slot();
    Expected expected = slot.map(Slot::key).map(Expected::only).orElseGet(Expected::anything);
    Grammar grammar = Grammar.bundled();
    Understanding understanding = new Understanding(grammar);
    hearing.read(spec.commandLine().getErr());
    Ear ear = hearing.open(grammar, spec.commandLine().getErr());
    boolean allRead = true;
    for (Path wav : Recordings.named(wavs)) {
      try (WavFile file = WavFile.open(wav);
          Listening listening = ear.listen(file)) {
        for (Optional<Heard> heard = listening.next(expected);
            heard.isPresent();
            heard = listening.next(expected)) {
          print(wav, heard.get(), understanding, slot);
        }
        file.remark().ifPresent(spec.commandLine().getErr()::println);
      } catch (IOException e) {
        spec.commandLine().getErr().println(Fault.sentence(e));
        allRead = false;
      }
    }
    return allRead ? 0 : Fault.BAD_INPUT;
  }

  private Optional<Slot> slot() {
    if (expect == null) {
      return Optional.empty();
    }
    Optional<Slot> slot = Slot.of(expect);
    if (slot.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "There is no slot named " + expect + "; see docs/formats.md.");
    }
    return slot;
  }

  private void print(Path wav, Heard heard, Understanding understanding, Optional<Slot> slot) {
    String words = words(heard);
    Optional<Meaning> meaning =
        words.isEmpty() ? Optional.empty() : Optional.of(understanding.understand(words, slot));
    boolean accepted =
        heard instanceof Heard.Words
            && meaning.filter(m -> !(m instanceof Meaning.NotUnderstood)).isPresent();
    String reason = accepted ? "" : reason(heard);
    if (json) {
      ObjectNode node = JsonNodeFactory.instance.objectNode();
      node.put("file", wav.toString());
      node.put("words", words);
      node.put("accepted", accepted);
      if (!accepted) {
        node.put("reason", reason);
      }
      meaning.ifPresent(m -> node.set("meaning", MeaningJson.of(m)));
      node.put("start_s", heard.when().startSeconds());
      node.put("end_s", heard.when().endSeconds());
      new Report(spec.commandLine().getOut(), true).line(node);
    } else {
      spec.commandLine()
          .getOut()
          .printf("%s: %s%n", wav, accepted ? words : "not taken (" + reason + ") " + words);
      spec.commandLine().getOut().flush();
    }
  }

  private static String words(Heard heard) {
    if (heard instanceof Heard.Words words) {
      return words.text();
    }
    return heard instanceof Heard.Doubtful doubtful ? doubtful.text() : "";
  }

  private static String reason(Heard heard) {
    if (heard instanceof Heard.NotUnderstood missed) {
      return VerdictJson.lower(missed.reason());
    }
    if (heard instanceof Heard.Words) {
      return "no_single_meaning";
    }
    return heard
        .getClass()
        .getSimpleName()
        .replaceAll("(?<=[a-z])(?=[A-Z])", "_")
        .toLowerCase(java.util.Locale.ROOT);
  }
}
