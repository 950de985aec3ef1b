package rigspeak.rig;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A rig of which every number is known within bounds, each with its source.
 *
 * @param place where on the rope it is
 * @param said the rig as it was said
 * @param measures the box of what may be true
 * @param turn how the turn of the rope is known
 * @param tensionShare of the climber's weight that one captured leg carries: 1 or one half
 * @param grip the friction that keeps the sling from sliding along the limb
 * @param seat what else keeps it from sliding
 * @param wood strength of the limb's wood
 * @param union how the union weakens it
 * @param hollow how a cavity counts
 * @param pullAbove what the main point pulls at, where it is the next support toward the anchor
 * @param gear strength of sling, connector and rope
 * @param movement from a still load to its peak
 * @param assumptions what nobody said and what was taken instead
 */
public record ResolvedRig(
    Place place,
    Rig said,
    Map<Measure, Estimate> measures,
    Turn turn,
    double tensionShare,
    Grip grip,
    Value.Seat seat,
    Wood wood,
    UnionRule union,
    HollowRule hollow,
    PullAbove pullAbove,
    Gear gear,
    Movement movement,
    List<Assumption> assumptions) {

  public ResolvedRig {
    measures = Collections.unmodifiableMap(new EnumMap<>(measures));
    assumptions = List.copyOf(assumptions);
  }

  /** How the sling holds on to the bark. */
  public sealed interface Grip {
    /**
     * Friction of a choked or girthed sling.
     *
     * @param turns full turns around the limb
     */
    record Choked(int turns) implements Grip {}

    /** Friction of a sling or rope that lies over the limb with both its legs hanging. */
    record Laid() implements Grip {}
  }

  /** What bends the stem between a redirect and the main point above it. */
  public enum PullAbove {
    /** The main point is not the next support toward the anchor. */
    NONE,
    /** The leg from the main point to this redirect. */
    ONE_LEG,
    /** That leg, and one more that leaves the main point. */
    TWO_LEGS
  }

  /** How the turn of the rope is known. */
  public enum Turn {
    /** By where its two legs go. */
    LEGS,
    /** By the angle between them and where the sling points. */
    ANGLE_AND_SLING,
    /** All that the rope carries leaves along its working leg: it ends here, or runs back. */
    ONE_LEG
  }

  /**
   * Strength of the green wood before the union is looked at.
   *
   * @param bending pascals
   * @param compression along the grain, pascals
   * @param shear along the grain, pascals
   * @param stiffness modulus of elasticity in bending, pascals, before the design factor
   * @param design the share of its critical load that a column is trusted with
   * @param density of the green wood, kilograms a cubic metre
   */
  public record Wood(
      String species,
      Strength bending,
      Strength compression,
      Strength shear,
      Strength stiffness,
      Sourced design,
      Sourced density) {}

  /**
   * How much strength the union leaves to the limb.
   *
   * @param fullRatio limb over stem diameter up to which the union counts in full
   * @param codominantRatio from which it counts as codominant
   * @param codominantFactor what is left then; in between it falls in a straight line
   * @param codominant it was called codominant, whatever the diameters say
   * @param condition what included bark leaves of it; 1 if there is none
   * @param across what is left against lifting and side load
   */
  public record UnionRule(
      Sourced fullRatio,
      Sourced codominantRatio,
      Sourced codominantFactor,
      boolean codominant,
      Sourced condition,
      Sourced across) {

    /**
     * What is left of the limb's strength at the union.
     *
     * @param limbOverStem ratio of their diameters
     */
    public double factor(double limbOverStem) {
      return ratioFactor(limbOverStem) * condition.value();
    }

    private double ratioFactor(double limbOverStem) {
      double full = fullRatio.value();
      double least = codominantRatio.value();
      if (codominant || limbOverStem >= least) {
        return codominantFactor.value();
      }
      if (limbOverStem <= full) {
        return 1;
      }
      return 1 - (1 - codominantFactor.value()) * (limbOverStem - full) / (least - full);
    }
  }

  /**
   * How a hollow counts.
   *
   * @param widening what its diameter is multiplied by, more than 1 where the outer wood decays
   * @param limit hollow over limb diameter beyond which the shell is not counted on
   * @param shape where it lies
   * @param shift of an off-center hollow: share of the way from the middle to the bark
   * @param openRad of an open one: the angle of the circumference that is gone
   * @param warping of an open one: how much harder it is bent for its twisting
   */
  public record HollowRule(
      Sourced widening,
      Sourced limit,
      Value.CavityShape shape,
      Sourced shift,
      Sourced openRad,
      Sourced warping) {}

  /**
   * What the angle at a choke leaves of the choker rating.
   *
   * <p>Printed by bands; between the end of one band and the start of the next (89 and 90 degrees)
   * the lower one still counts.
   *
   * @param bands in rising order; the first starts at 0
   */
  public record ChokeRule(List<Band> bands, Source source) {
    /**
     * @param fromDeg where it starts
     * @param startCounts whether the start itself belongs to it, else only what is above
     */
    public record Band(double fromDeg, boolean startCounts, double factor) {
      private boolean reachedBy(double degrees) {
        return startCounts ? degrees >= fromDeg : degrees > fromDeg;
      }
    }

    public ChokeRule {
      bands = List.copyOf(bands);
    }

    /**
     * @param degrees 0 to 180
     * @throws IllegalArgumentException below 0
     */
    public double factor(double degrees) {
      for (int band = bands.size() - 1; band >= 0; band--) {
        if (bands.get(band).reachedBy(degrees)) {
          return bands.get(band).factor();
        }
      }
      throw new IllegalArgumentException("no choke makes " + degrees);
    }
  }

  /**
   * What a bend leaves of a sling's strength, by the diameter of the bend over its own.
   *
   * <p>A straight line between the printed points; beyond the last its factor stays; below the
   * first, where the table knows nothing, half the first one's counts.
   *
   * @param points in rising order
   */
  public record BendRule(List<Printed> points, Source source) {
    private static final double BELOW_THE_TABLE = 0.5;

    /** A point of the table. */
    public record Printed(double ratio, double factor) {}

    public BendRule {
      points = List.copyOf(points);
    }

    /**
     * @param ratio above 0
     */
    public double factor(double ratio) {
      Printed below = points.get(0);
      if (ratio < below.ratio()) {
        return BELOW_THE_TABLE * below.factor();
      }
      for (Printed above : points) {
        if (ratio < above.ratio()) {
          double way = (ratio - below.ratio()) / (above.ratio() - below.ratio());
          return below.factor() + way * (above.factor() - below.factor());
        }
        below = above;
      }
      return below.factor();
    }
  }

  /**
   * Strength in newtons of what the climber brought.
   *
   * @param sling of one straight leg; none where the rope runs over the limb itself
   * @param choke of a choked or girthed sling
   * @param bend of the sling over the limb
   * @param connector none where the rope runs over the limb itself
   */
  public record Gear(
      Optional<Strength> sling,
      ChokeRule choke,
      BendRule bend,
      Optional<Strength> connector,
      Strength rope) {}

  /**
   * What movement makes of a still load.
   *
   * @param workingPeak factor of ordinary movement
   * @param ropeModulus newtons a unit strain, for slack that is fallen through
   */
  public record Movement(Sourced workingPeak, Sourced ropeModulus) {}

  /**
   * Something taken for granted.
   *
   * @param slot what was not said
   * @param source why this was taken
   */
  public record Assumption(Slot slot, Source source) {}

  public Point nominal() {
    return Point.nominal(measures);
  }

  public boolean has(Measure measure) {
    return measures.containsKey(measure);
  }

  /** Where its numbers come from, all of them. */
  public Set<Source> sources() {
    Set<Source> sources = new LinkedHashSet<>();
    measures.values().forEach(estimate -> sources.add(estimate.source()));
    assumptions.forEach(assumption -> sources.add(assumption.source()));
    Stream.of(
            Stream.of(wood.bending(), wood.compression(), wood.shear(), wood.stiffness()),
            Stream.of(gear.rope()),
            gear.sling().stream(),
            gear.connector().stream())
        .flatMap(strengths -> strengths)
        .forEach(strength -> sources.addAll(strength.sources()));
    Stream.of(
            wood.design(),
            wood.density(),
            union.fullRatio(),
            union.codominantRatio(),
            union.codominantFactor(),
            union.condition(),
            union.across(),
            hollow.widening(),
            hollow.limit(),
            hollow.shift(),
            hollow.openRad(),
            hollow.warping(),
            movement.workingPeak(),
            movement.ropeModulus())
        .forEach(number -> sources.add(number.source()));
    sources.add(gear.choke().source());
    sources.add(gear.bend().source());
    return sources;
  }

  /** The same numbers, said in these words: in other units, for whoever reads them. */
  public ResolvedRig saidAs(Rig words) {
    return changed(words, measures);
  }

  /** This rig with a number more, which follows from the rest of the rope. */
  public ResolvedRig with(Measure measure, Estimate estimate) {
    Map<Measure, Estimate> more = new EnumMap<>(Measure.class);
    more.putAll(measures);
    more.put(measure, estimate);
    return changed(said, more);
  }

  private ResolvedRig changed(Rig words, Map<Measure, Estimate> numbers) {
    return new ResolvedRig(
        place,
        words,
        numbers,
        turn,
        tensionShare,
        grip,
        seat,
        wood,
        union,
        hollow,
        pullAbove,
        gear,
        movement,
        assumptions);
  }
}
