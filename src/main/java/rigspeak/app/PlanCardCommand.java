package rigspeak.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.answer.PlanWords;
import rigspeak.drawing.Card;
import rigspeak.drawing.Html;
import rigspeak.drawing.Picture;
import rigspeak.plan.PlanVerdict;
import rigspeak.printing.Paper;

/** A plan in, the card that people take to the tree out. */
@Command(
    name = "card",
    mixinStandardHelpOptions = true,
    description = {
      "Draws the card that people take to the tree: what comes of the plan, the steps,",
      "each rope, and each support from the side and from above, to scale.",
      "Letter or A4, by the units of the plan."
    })
final class PlanCardCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "FILE",
      description = "the plan: utterances, one a line; - is standard input")
  private String file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "CARD",
      description = {
        "where it goes; its ending says as what: .svg, .pdf, .png or .html",
        "More than one sheet as SVG or PNG are CARD, CARD-2 and so on."
      })
  private Path out;

  @Mixin private final Supplied supplied = new Supplied();

  @Spec private CommandSpec spec;

  /** What a card is written as. */
  private enum Form {
    SVG,
    PDF,
    PNG,
    HTML
  }

  @Override
  public Integer call() throws IOException {
    Form form = form();
    PlanVerdict verdict = supplied.thinking().verdict(PlanFiles.read(file));
    if (!verdict.refused().isEmpty()) {
      PlanRefusals.print(file, verdict, spec.commandLine().getErr());
      return Fault.BAD_INPUT;
    }
    List<Picture> sheets = Card.pages(verdict);
    for (Path written : write(form, sheets, PlanWords.title(verdict))) {
      spec.commandLine().getOut().println(written);
    }
    return 0;
  }

  private Form form() {
    String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
    for (Form form : Form.values()) {
      if (name.endsWith("." + form.name().toLowerCase(Locale.ROOT))) {
        return form;
      }
    }
    throw new ParameterException(
        spec.commandLine(), "A card is written as .svg, .pdf, .png or .html, not as " + out + ".");
  }

  private List<Path> write(Form form, List<Picture> sheets, String title) throws IOException {
    return switch (form) {
      case SVG -> write(sheets.stream().map(sheet -> utf8(sheet.svg())).toList());
      case PDF -> write(List.of(Paper.pdf(sheets)));
      case PNG -> write(Paper.png(sheets));
      case HTML -> write(List.of(utf8(Html.of(title, sheets))));
    };
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private List<Path> write(List<byte[]> files) throws IOException {
    List<Path> written = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      Path name = i == 0 ? out : numbered(i + 1);
      WholeFile.write(name, files.get(i));
      written.add(name);
    }
    return written;
  }

  private Path numbered(int number) {
    String name = String.valueOf(out.getFileName());
    int dot = name.lastIndexOf('.');
    return out.resolveSibling(name.substring(0, dot) + "-" + number + name.substring(dot));
  }
}
