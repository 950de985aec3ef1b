package rigspeak.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigspeak.catalogue.Catalogue;
import rigspeak.drill.AnswerKey;
import rigspeak.drill.Asking;
import rigspeak.drill.Change;
import rigspeak.drill.Choice;
import rigspeak.drill.Level;
import rigspeak.drill.Matter;
import rigspeak.drill.Question;
import rigspeak.drill.Skill;
import rigspeak.drill.Step;
import rigspeak.drill.Truth;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.HowGot;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.verdict.PathVerdict.Outcome;

/**
 * Questions that somebody has written down; docs/formats.md has the form. Whoever writes one writes
 * the answer too, and it must be the one that the tool comes to.
 */
final class DrillScript {
  private static final String AND = ";";
  private static final String UNSAID = "unsaid ";
  private static final int CELLS = 5;

  /** A line that is no question, or whose answer is another. */
  static final class Fault extends IOException {
    private static final long serialVersionUID = 1L;

    private static final int LONGEST_SHOWN = 200;

    private static String some(String words) {
      return words.length() <= LONGEST_SHOWN ? words : words.substring(0, LONGEST_SHOWN) + "...";
    }

    Fault(String line, String why) {
      super("\"" + some(line) + "\" " + why);
    }
  }

  private final Understanding understanding;
  private final AnswerKey key;

  DrillScript(Grammar grammar, Catalogue catalogue) {
    this.understanding = new Understanding(grammar);
    this.key = new AnswerKey(catalogue);
  }

  /**
   * The questions of a file, in their order.
   *
   * @throws IOException if it cannot be read, or a line of it is no question
   */
  List<Question> read(Path file) throws IOException {
    List<Question> questions = new ArrayList<>();
    try (Lines lines = Lines.of(file.toString())) {
      for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
        questions.add(question(line.get()));
      }
    }
    return questions;
  }

  private Question question(String line) throws Fault {
    List<String> cells = Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
    if (cells.size() != CELLS) {
      throw new Fault(
          line, "has not five parts: skill | level | what is asked | situation | answer.");
    }
    try {
      Skill skill = Skill.of(cells.get(0)).orElseThrow(() -> new Fault(line, "names no skill."));
      Asking asking =
          Asking.of(cells.get(2)).orElseThrow(() -> new Fault(line, "asks nothing known."));
      Level level = Level.of(Integer.parseInt(cells.get(1)));
      Question question =
          key.question(skill, level, asking, matter(line, asking, cells.get(3)))
              .orElseThrow(() -> new Fault(line, "has no clear answer."));
      if (!agrees(question.truth(), cells.get(4))) {
        throw new Fault(line, "has another answer.");
      }
      return question;
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      Fault fault = new Fault(line, "is no question.");
      fault.initCause(e);
      throw fault;
    }
  }

  /** A figure as far as it is written. */
  private static boolean agrees(Truth truth, String answer) {
    if (truth instanceof Truth.Named named) {
      return named.choice() == Choice.of(answer).orElseThrow(IllegalArgumentException::new);
    }
    int point = answer.indexOf('.');
    int decimals = point < 0 ? 0 : answer.length() - point - 1;
    double half = 0.5 * Math.pow(10, -decimals);
    double off = Math.abs(((Truth.Figure) truth).value() - Double.parseDouble(answer));
    return off <= half * (1 + 1e-6);
  }

  private Matter matter(String line, Asking asking, String situation) throws Fault {
    List<String> parts = Arrays.stream(situation.split("//", -1)).map(String::strip).toList();
    return switch (asking) {
      case COMES_FIRST -> new Matter.Steps(steps(parts.get(0)));
      case LANYARD -> lanyard(parts.get(0));
      case PULLS_MORE, STRONGER, MORE, READ_BACK ->
          new Matter.TwoRigs(
              changes(line, parts.get(0)), changes(line, parts.get(1)), beside(line, parts, 2));
      default -> new Matter.OneRig(changes(line, parts.get(0)), beside(line, parts, 1));
    };
  }

  private List<Change> beside(String line, List<String> parts, int at) throws Fault {
    return parts.size() > at ? changes(line, parts.get(at)) : List.of();
  }

  private static List<Step> steps(String names) {
    return Arrays.stream(names.split(AND, -1))
        .map(name -> Step.of(name.strip()).orElseThrow(IllegalArgumentException::new))
        .toList();
  }

  private static Matter.Lanyard lanyard(String words) {
    String[] names = words.split(AND, -1);
    return new Matter.Lanyard(
        Outcome.valueOf(names[0].strip().toUpperCase(Locale.ROOT)),
        Matter.Loading.valueOf(names[1].strip().toUpperCase(Locale.ROOT)));
  }

  /** Each as it is said to the tool; all by tape, unless it is said otherwise. */
  private List<Change> changes(String line, String words) throws Fault {
    List<Change> changes = new ArrayList<>();
    for (String one : words.split(AND, -1)) {
      String said = one.strip();
      if (said.startsWith(UNSAID)) {
        Slot slot =
            Slot.of(said.substring(UNSAID.length())).orElseThrow(IllegalArgumentException::new);
        changes.add(new Change(slot, Optional.empty()));
      } else if (!said.isEmpty()) {
        changes.addAll(statements(line, said));
      }
    }
    return changes;
  }

  private List<Change> statements(String line, String said) throws Fault {
    if (!(understanding.understand(said, Optional.empty()) instanceof Meaning.Values values)) {
      throw new Fault(line, "says something that is not understood: " + Fault.some(said) + ".");
    }
    List<Change> changes = new ArrayList<>();
    for (Meaning.Statement statement : values.statements()) {
      if (!(statement instanceof Meaning.Statement.Value value)) {
        throw new Fault(line, "says something that can mean two things: " + Fault.some(said) + ".");
      }
      Said given = value.said();
      HowGot how = given.how() == HowGot.BY_EYE ? HowGot.BY_TAPE : given.how();
      changes.add(new Change(value.slot(), Optional.of(new Said(given.value(), how))));
    }
    return changes;
  }
}
