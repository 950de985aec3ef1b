package rigspeak.drill;

/** The right answer. */
public sealed interface Truth {

  /**
   * A number in the unit of what is asked.
   *
   * @param near how far off is still right
   */
  record Figure(double value, double near) implements Truth {
    public Figure {
      if (!(near >= 0) || !Double.isFinite(value)) {
        throw new IllegalArgumentException("no figure: " + value + " within " + near);
      }
    }
  }

  /** A word. */
  record Named(Choice choice) implements Truth {}

  /** Whether this answer is right. */
  default boolean admits(Response response) {
    if (this instanceof Named named) {
      return response instanceof Response.Named given && given.choice() == named.choice();
    }
    Figure figure = (Figure) this;
    // What is read from a file again may differ in its last digit.
    double near = figure.near() + 1e-9;
    return response instanceof Response.Amount given
        && Math.abs(given.value() - figure.value()) <= near;
  }
}
