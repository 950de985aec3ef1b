package rigspeak.drill;

import java.util.List;

/**
 * Values drawn from a seed, one after the other; the same seed always gives the same row.
 * SplitMix64 (Steele, Lea and Flood, Fast splittable pseudorandom number generators, 2014).
 */
final class Lots {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final int UNUSED_BITS = 11;
  private static final double ONE = 0x1.0p-53;

  private long state;

  Lots(long seed) {
    this.state = seed;
  }

  /** From 0 to less than 1. */
  double share() {
    state += GOLDEN;
    long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return ((mixed ^ (mixed >>> 31)) >>> UNUSED_BITS) * ONE;
  }

  /** A whole number from 0 to less than the bound. */
  int below(int bound) {
    return (int) (share() * bound);
  }

  /** A whole number of steps between two whole ends, both included. */
  int stepped(int low, int high, int step) {
    return low + step * below((high - low) / step + 1);
  }

  <T> T of(List<T> all) {
    return all.get(below(all.size()));
  }

  @SafeVarargs
  final <T> T of(T... all) {
    return all[below(all.length)];
  }
}
