package rigspeak;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * A value from outside the program beside what the program makes of it.
 *
 * @param what it is, with its unit
 * @param outside as it was printed
 * @param source its number in docs/sources.md, and a remark
 * @param provenance how far the outside value can be trusted
 * @param isBound whether ours is meant to be on the weak side of the outside value, not to meet it
 */
public record WorkedValue(
    String what, String outside, double ours, String source, String provenance, boolean isBound) {
  /** So many figures of ours are shown behind the last one of the outside value. */
  private static final int MORE = 2;

  private static final int MOST_DECIMALS = 9;

  /** One that ours is meant to meet. */
  public WorkedValue(String what, String outside, double ours, String source, String provenance) {
    this(what, outside, ours, source, provenance, false);
  }

  /** The values as a table in Markdown. */
  public static String table(List<WorkedValue> values) {
    StringBuilder text =
        new StringBuilder("| value | outside | ours | difference | source | provenance |\n");
    text.append("|---|--:|--:|--:|---|---|\n");
    values.forEach(value -> text.append(value.line()).append('\n'));
    return text.toString();
  }

  /** Whether ours is the outside value when it is rounded to as many decimals. */
  public boolean roundsToIt() {
    BigDecimal half = BigDecimal.valueOf(5, printed().scale() + 1);
    // A little more than half of the last figure, so that rounding by the machine tips nothing.
    return difference().abs().compareTo(half.multiply(BigDecimal.valueOf(1.000001))) <= 0;
  }

  /** The difference as a share of the outside value in percent, or 0 where that is 0. */
  public double percent() {
    return printed().signum() == 0
        ? 0
        : 100 * difference().doubleValue() / printed().abs().doubleValue();
  }

  private String line() {
    return String.join(
        " | ",
        "| " + cell(what),
        cell(outside),
        rounded(BigDecimal.valueOf(ours)),
        differenceInWords(),
        cell(source),
        provenance + " |");
  }

  private String differenceInWords() {
    if (isBound) {
      return "bound, "
          + BigDecimal.valueOf(ours).divide(printed(), new MathContext(3, RoundingMode.HALF_UP))
          + " times";
    }
    if (roundsToIt()) {
      return "none";
    }
    String percent =
        BigDecimal.valueOf(percent())
            .round(new MathContext(2, RoundingMode.HALF_UP))
            .toPlainString();
    return rounded(difference()) + " (" + percent + " %)";
  }

  private BigDecimal difference() {
    return BigDecimal.valueOf(ours).subtract(printed());
  }

  private BigDecimal printed() {
    return new BigDecimal(outside);
  }

  private String rounded(BigDecimal number) {
    int decimals = Math.min(MOST_DECIMALS, Math.max(0, printed().scale()) + MORE);
    BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_UP);
    return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }
}
