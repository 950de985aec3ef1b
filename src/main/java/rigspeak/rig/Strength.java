package rigspeak.rig;

import java.util.ArrayList;
import java.util.List;

/**
 * What something holds: a published mean or rating, and the factors that bring it down to what is
 * counted on.
 */
public final class Strength {
  private final Sourced base;
  private final List<Sourced> factors;

  /** Multiplied once, for it is asked for at every point of a survey. */
  private final double allowed;

  /**
   * @param base pascals for a stress, newtons for a force
   * @param factors each multiplies
   */
  public Strength(Sourced base, List<Sourced> factors) {
    this.base = base;
    this.factors = List.copyOf(factors);
    double product = base.value();
    for (Sourced factor : factors) {
      product *= factor.value();
    }
    this.allowed = product;
  }

  public Sourced base() {
    return base;
  }

  public List<Sourced> factors() {
    return factors;
  }

  public Strength times(Sourced factor) {
    List<Sourced> more = new ArrayList<>(factors);
    more.add(factor);
    return new Strength(base, more);
  }

  /** Base times all factors, in the unit of the base. */
  public double allowed() {
    return allowed;
  }

  /** The sources of base and factors, in order. */
  public List<Source> sources() {
    List<Source> sources = new ArrayList<>();
    sources.add(base.source());
    factors.forEach(factor -> sources.add(factor.source()));
    return List.copyOf(sources);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Strength strength
        && base.equals(strength.base)
        && factors.equals(strength.factors);
  }

  @Override
  public int hashCode() {
    return 31 * base.hashCode() + factors.hashCode();
  }

  @Override
  public String toString() {
    return base + " times " + factors;
  }
}
