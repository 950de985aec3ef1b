package rigspeak.verdict;

/** What a swing meets. */
public sealed interface Obstacle {

  /** How far anything in the way is was not said. */
  record NotSaid() implements Obstacle {}

  /**
   * The swing ends before it, whatever may be true.
   *
   * @param spareM the least distance that is left, metres
   */
  record Clear(double spareM) implements Obstacle {}

  /**
   * The swing may reach it.
   *
   * @param asSaid it does so with every value at its word
   * @param speedMS the most, metres a second
   * @param equivalentFallM height of a free fall that ends with this speed, metres
   */
  record Reached(boolean asSaid, double speedMS, double equivalentFallM) implements Obstacle {}
}
