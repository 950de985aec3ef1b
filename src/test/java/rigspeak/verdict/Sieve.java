package rigspeak.verdict;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rigspeak.catalogue.Catalogue;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.RopePath;

/**
 * Ropes looked at quickly, to find those that are worth the whole judge: it tries fewer samples and
 * so lets through all that the judge would call good, and some more.
 */
public final class Sieve {
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final int SAMPLES = 32;
  private static final int WHOLE_SAMPLES = 10_000;

  private Sieve() {}

  /** Whether the judge could call the whole rope good. */
  public static boolean mayBeGood(RopePath path) {
    Supports supports = Supports.of(CATALOGUE, path);
    return supports.otherwise().isEmpty()
        && supports.known().size() == path.places().size()
        && supports.known().values().stream().allMatch(rig -> Survey.staysWithin(rig, SAMPLES));
  }

  /** The supports with their numbers, if every one has its numbers. */
  public static Optional<Map<Place, ResolvedRig>> known(RopePath path) {
    Supports supports = Supports.of(CATALOGUE, path);
    return supports.otherwise().isEmpty()
        ? Optional.of(new TreeMap<>(supports.known()))
        : Optional.empty();
  }

  /** The largest utilisation of any check with every value at its word. */
  public static double asSaid(ResolvedRig rig) {
    return Survey.asSaid(rig);
  }

  /** The worst of each check that a quick look finds. */
  public static Map<CheckKind, Double> quickWorst(ResolvedRig rig) {
    return worst(rig, SAMPLES);
  }

  /** The worst of each check as the judge itself finds it. */
  public static Map<CheckKind, Double> judgesWorst(ResolvedRig rig) {
    return worst(rig, WHOLE_SAMPLES);
  }

  private static Map<CheckKind, Double> worst(ResolvedRig rig, int samples) {
    Map<CheckKind, Double> worst = new TreeMap<>();
    Survey.whole(rig, samples)
        .checks()
        .forEach(check -> worst.put(check.kind(), check.utilisation().high()));
    return worst;
  }
}
