package rigspeak.quantity;

/**
 * A force; its sign is that of the direction it is measured along.
 *
 * <p>Made only by the factories, which name the unit.
 *
 * @param newtons newtons, finite
 */
public record Force(double newtons) implements Comparable<Force> {
  /** Standard gravity in metres a second squared, exact by convention (CGPM 1901). */
  public static final double STANDARD_GRAVITY = 9.80665;

  /** Exact. */
  private static final double KILONEWTON = 1000.0;

  /** Exact: a pound under standard gravity. */
  private static final double POUND_FORCE = 4.4482216152605;

  /**
   * @throws IllegalArgumentException if the value is infinite or not a number
   */
  public Force {
    Finite.require("force", newtons);
  }

  public static Force ofNewtons(double newtons) {
    return new Force(newtons);
  }

  public static Force ofKilonewtons(double kilonewtons) {
    return new Force(kilonewtons * KILONEWTON);
  }

  public static Force ofPoundsForce(double poundsForce) {
    return new Force(poundsForce * POUND_FORCE);
  }

  public double kilonewtons() {
    return newtons / KILONEWTON;
  }

  public double poundsForce() {
    return newtons / POUND_FORCE;
  }

  @Override
  public int compareTo(Force other) {
    return Double.compare(newtons, other.newtons);
  }
}
