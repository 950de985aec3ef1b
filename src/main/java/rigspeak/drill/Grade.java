package rigspeak.drill;

/** How well something was remembered, as the schedule counts it. */
public enum Grade {
  AGAIN(1),
  HARD(2),
  GOOD(3),
  EASY(4);

  private final int number;

  Grade(int number) {
    this.number = number;
  }

  /** From 1 to 4, as the published formulas have it. */
  int number() {
    return number;
  }
}
