package rigspeak.app;

/**
 * Text from outside as it may be printed. A sign that steers a terminal could wipe an answer away
 * and write another in its place.
 */
final class Shown {
  private static final char NOT_SHOWN = '\uFFFD';

  private Shown() {}

  /** The same, with a sign for each that cannot be seen; a tab is a blank. */
  static String of(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            sign -> shown.appendCodePoint(isSeen(sign) ? sign : sign == '\t' ? ' ' : NOT_SHOWN));
    return shown.toString();
  }

  private static boolean isSeen(int sign) {
    return switch (Character.getType(sign)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          false;
      default -> true;
    };
  }
}
