package rigspeak.verdict;

import java.util.SortedMap;
import java.util.TreeMap;
import rigspeak.catalogue.Catalogue;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.RopePath;

/**
 * What a still climber puts on a support with every value at its word. It is no verdict: nothing is
 * held against a limit, and nothing that else may be true is tried.
 *
 * @param rig the numbers that were used
 * @param load its spreads have no width
 */
public record LoadAsSaid(ResolvedRig rig, Load load) {

  /** For each support of a rope whose numbers are known. */
  public static SortedMap<Place, LoadAsSaid> of(Catalogue catalogue, RopePath path) {
    SortedMap<Place, LoadAsSaid> loads = new TreeMap<>();
    Supports.of(catalogue, path).known().forEach((place, rig) -> loads.put(place, of(rig)));
    return loads;
  }

  static LoadAsSaid of(ResolvedRig rig) {
    Trial trial = Trial.of(rig, rig.nominal(), Creep.NONE);
    LoadRange range = new LoadRange(trial);
    range.take(trial);
    return new LoadAsSaid(rig, range.load());
  }
}
