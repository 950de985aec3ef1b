package rigspeak.rig;

import java.util.ArrayList;
import java.util.List;

/**
 * What something holds: a published mean or rating, and the factors that bring it down to what is
 * counted on.
 *
 * @param base pascals for a stress, newtons for a force
 * @param factors each multiplies; none is above the size of a basket's two legs
 */
public record Strength(Sourced base, List<Sourced> factors) {
  public Strength {
    factors = List.copyOf(factors);
  }

  public Strength times(Sourced factor) {
    List<Sourced> more = new ArrayList<>(factors);
    more.add(factor);
    return new Strength(base, more);
  }

  /** Base times all factors, in the unit of the base. */
  public double allowed() {
    double allowed = base.value();
    for (Sourced factor : factors) {
      allowed *= factor.value();
    }
    return allowed;
  }

  /** The sources of base and factors, in order. */
  public List<Source> sources() {
    List<Source> sources = new ArrayList<>();
    sources.add(base.source());
    factors.forEach(factor -> sources.add(factor.source()));
    return List.copyOf(sources);
  }
}
