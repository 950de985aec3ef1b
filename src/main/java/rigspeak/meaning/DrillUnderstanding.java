package rigspeak.meaning;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Breath.Piece;

/** From words to exactly one meaning in a drill, or to none. */
public final class DrillUnderstanding {
  private final Grammar grammar;

  public DrillUnderstanding(Grammar grammar) {
    this.grammar = grammar;
  }

  /** What typed words mean while this is expected. */
  public DrillMeaning understand(String text, Expected expected) {
    return understand(text, expected, false);
  }

  /** What heard words mean: the same, but a fifteen may have been a fifty. */
  public DrillMeaning hear(String text, Expected expected) {
    return understand(text, expected, true);
  }

  private DrillMeaning understand(String text, Expected expected, boolean heard) {
    Set<DrillMeaning> meanings = new LinkedHashSet<>();
    for (List<String> tags : grammar.match(Spelling.words(text), expected)) {
      meanings.add(obey(tags, heard));
    }
    return meanings.size() == 1 ? meanings.iterator().next() : new DrillMeaning.NotUnderstood();
  }

  private static DrillMeaning obey(List<String> tags, boolean heard) {
    Breath breath = new Breath();
    OptionalInt sure = OptionalInt.empty();
    Optional<DrillMeaning> wish = Optional.empty();
    for (String tag : tags) {
      int space = tag.indexOf(' ');
      String verb = space < 0 ? tag : tag.substring(0, space);
      String argument = space < 0 ? "" : tag.substring(space + 1);
      switch (verb) {
        case "do" ->
            wish = Optional.of(DrillMeaning.Wish.valueOf(argument.toUpperCase(Locale.ROOT)));
        case "sure" -> sure = OptionalInt.of(Integer.parseInt(argument));
        default -> breath.take(verb, argument);
      }
    }
    if (wish.isPresent()) {
      return wish.get();
    }
    if (breath.isEmpty()) {
      return new DrillMeaning.Sure(sure.orElseThrow());
    }
    Piece piece = breath.pieces().get(0);
    return piece instanceof Piece.Amount amount
        ? new DrillMeaning.Amount(amount.number(), heard && breath.hasTwin(), sure)
        : new DrillMeaning.Word(((Piece.Word) piece).word(), sure);
  }
}
