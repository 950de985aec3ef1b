package rigspeak.drawing;

/**
 * How wide letters are, as a share of their size: the advance widths of Liberation Sans, which
 * Arial and Helvetica share. Read from that font; whoever has none of them sees texts a little
 * longer or shorter.
 */
final class LetterWidths {
  private static final int FIRST = ' ';

  private static final int[] THOUSANDTHS = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, //
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, //
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, //
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, //
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, //
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
  };

  private static final int DEGREE = 400;

  /** Of a letter that is not in the table: as wide as a capital, or as two letters. */
  private static final int OTHER = 778;

  private static final int IDEOGRAPH = 1000;
  private static final int FIRST_IDEOGRAPH = 0x1100;

  /** Thick letters are at most so much wider, all in all. */
  private static final double BOLD = 1.08;

  private LetterWidths() {}

  static double of(String text, boolean bold) {
    int thousandths = text.codePoints().map(LetterWidths::of).sum();
    return thousandths / 1000.0 * (bold ? BOLD : 1);
  }

  private static int of(int letter) {
    int index = letter - FIRST;
    if (index >= 0 && index < THOUSANDTHS.length) {
      return THOUSANDTHS[index];
    }
    if (letter == '°') {
      return DEGREE;
    }
    return letter >= FIRST_IDEOGRAPH ? IDEOGRAPH : OTHER;
  }
}
