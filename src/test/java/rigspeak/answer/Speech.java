package rigspeak.answer;

import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** What the tool itself understands of a text: the judge of what can be said back. */
final class Speech {
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());

  private Speech() {}

  static Meaning understood(String text) {
    return UNDERSTANDING.understand(text, Optional.empty());
  }

  /** The one value that a text gives to this slot. */
  static Meaning.Statement.Value statement(Slot slot, String text) {
    if (understood(text) instanceof Meaning.Values values
        && values.statements().size() == 1
        && values.statements().get(0) instanceof Meaning.Statement.Value value
        && value.slot() == slot) {
      return value;
    }
    throw new AssertionError("\"" + text + "\" is no value of " + slot + ": " + understood(text));
  }

  static <V extends Value> V value(Slot slot, Class<V> type, String text) {
    return type.cast(statement(slot, text).said().value());
  }

  /**
   * Hands over evenly spread points of a unit cube, the same in every run; failures name theirs.
   */
  static void evenly(int dimensions, int samples, Consumer<double[]> check) {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
    for (int n = 0; n < samples; n++) {
      double[] point = sobol.nextVector();
      try {
        check.accept(point);
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("at sample " + n + ": " + e.getMessage(), e);
      }
    }
  }

  /** The choice that a share from 0 to below 1 falls on. */
  @SafeVarargs
  static <T> T pick(double share, T... choices) {
    return choices[(int) (share * choices.length)];
  }

  /** A number from low to high in whole steps. */
  static double grid(double share, double low, double high, double step) {
    double steps = Math.floor((high - low) / step + 1e-9);
    return low + step * Math.floor(share * (steps + 1));
  }
}
