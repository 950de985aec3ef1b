package rigspeak.drill;

/** How hard a question is: rounder numbers in one plane, or any, and how near is near enough. */
public enum Level {
  FIRST(1),
  SECOND(2),
  THIRD(3);

  private final int number;

  Level(int number) {
    this.number = number;
  }

  public int number() {
    return number;
  }

  /**
   * @throws IllegalArgumentException if there is no such level
   */
  public static Level of(int number) {
    if (number < 1 || number > values().length) {
      throw new IllegalArgumentException("there is no level " + number);
    }
    return values()[number - 1];
  }

  Level harder() {
    return this == FIRST ? SECOND : THIRD;
  }

  Level easier() {
    return this == THIRD ? SECOND : FIRST;
  }

  /** The one of three that belongs to this level. */
  <T> T of(T first, T second, T third) {
    return switch (this) {
      case FIRST -> first;
      case SECOND -> second;
      case THIRD -> third;
    };
  }
}
