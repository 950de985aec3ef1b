package rigspeak.verdict;

import static rigspeak.mechanics.LoadedSupport.anchorLeg;
import static rigspeak.mechanics.LoadedSupport.workingLeg;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import rigspeak.mechanics.Arrival;
import rigspeak.mechanics.Directions;
import rigspeak.mechanics.FreedRope;
import rigspeak.mechanics.LettingGo;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.mechanics.LostSupport;
import rigspeak.mechanics.Resultant;
import rigspeak.quantity.Force;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.ResolvedRig.Turn;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Trial.Held;

/**
 * What happens if one support of a rope lets go, tried all over what may be true of it and of the
 * support that catches.
 *
 * <p>If the redirect that the climber hangs from lets go, its two legs become one rope from the
 * support before it. If another one does, its slack runs through to the climber, who drops below
 * the last support; there, and where the two are neighbours, the anchor leg then comes from the
 * support before the lost one.
 */
final class IfLost {
  /** Two supports this near to one another leave no leg whose direction could be told. */
  private static final double NO_LEG_M = 1e-6;

  private final RopePath path;
  private final SortedMap<Place, ResolvedRig> known;
  private final int samples;

  IfLost(RopePath path, SortedMap<Place, ResolvedRig> known, int samples) {
    this.path = path;
    this.known = known;
    this.samples = samples;
  }

  Loss at(Place lost) {
    Optional<Place> before = path.before(lost);
    if (before.isEmpty()) {
      return new Loss.NothingElseHolds();
    }
    boolean last = lost.equals(path.last());
    Place hung = path.last();
    Place catching = last ? before.get() : hung;
    Optional<Loss> unknown = legsMissing(lost).or(() -> legsMissing(hung));
    return unknown.orElseGet(() -> new Falling(lost, hung, catching).loss());
  }

  private Optional<Loss> legsMissing(Place place) {
    ResolvedRig rig = known.get(place);
    List<Slot> missing = new ArrayList<>();
    if (rig == null || !isKnown(rig, Measure.ANCHOR_LEG_ELEVATION, Measure.ANCHOR_LEG_LENGTH)) {
      missing.add(Slot.ANCHOR_LEG);
    }
    if (rig == null || !isKnown(rig, Measure.WORKING_LEG_ELEVATION, Measure.WORKING_LEG_LENGTH)) {
      missing.add(Slot.WORKING_LEG);
    }
    return missing.isEmpty() ? Optional.empty() : Optional.of(new Loss.NotKnown(place, missing));
  }

  private static boolean isKnown(ResolvedRig rig, Measure leg, Measure length) {
    return rig.has(leg) && rig.has(length);
  }

  /** One fall in the making. */
  private final class Falling {
    private final Place lostPlace;
    private final Place catchingPlace;
    private final ResolvedRig lost;
    private final ResolvedRig hung;
    private final Optional<ResolvedRig> catching;
    private final boolean climberHungFromLost;
    private final Box lostBox;
    private final Optional<Box> catchingBox;
    private final Tally tally = new Tally();

    Falling(Place lostPlace, Place hungPlace, Place catchingPlace) {
      this.lostPlace = lostPlace;
      this.catchingPlace = catchingPlace;
      this.lost = known.get(lostPlace);
      this.hung = known.get(hungPlace);
      this.climberHungFromLost = lostPlace.equals(hungPlace);
      this.catching =
          Optional.ofNullable(known.get(catchingPlace))
              .filter(rig -> rig.turn() != Turn.ANGLE_AND_SLING);
      this.lostBox = Box.whole(lost);
      this.catchingBox = catching.map(Box::whole);
    }

    Loss loss() {
      int sides = lostBox.sides().size() + catchingBox.map(box -> box.sides().size()).orElse(0);
      take(lost.nominal(), catching.map(ResolvedRig::nominal), 1);
      SobolSequenceGenerator sobol = new SobolSequenceGenerator(sides + 1);
      sobol.nextVector();
      double[] worst = null;
      double most = 0;
      for (int i = 0; i < samples; i++) {
        double[] shares = sobol.nextVector();
        double use = takeAt(shares);
        if (use > most) {
          most = use;
          worst = shares;
        }
      }
      if (worst != null) {
        takeAt(Climb.from(worst, this::utilisation));
      }
      return tally.falls(catchingPlace);
    }

    private double takeAt(double[] shares) {
      return take(lostPoint(shares), catchingPoint(shares), shares[shares.length - 1]);
    }

    private Point lostPoint(double[] shares) {
      return lostBox.at(shares);
    }

    private Optional<Point> catchingPoint(double[] shares) {
      int from = lostBox.sides().size();
      return catchingBox.map(
          box -> box.at(Arrays.copyOfRange(shares, from, from + box.sides().size())));
    }

    private double utilisation(double[] shares) {
      Point point = lostPoint(shares);
      Optional<Point> there = catchingPoint(shares);
      return there
          .map(at -> largest(held(point, at, fall(point, at), shares[shares.length - 1])))
          .orElse(0.0);
    }

    /** Counts one possible truth; the largest utilisation of the support that is left. */
    private double take(Point point, Optional<Point> there, double share) {
      LettingGo fall = fall(point, there.orElse(point));
      tally.take(fall, obstacle(point, there, fall));
      if (there.isEmpty()) {
        return 0;
      }
      List<Held> held = held(point, there.get(), fall, share);
      tally.take(held);
      return largest(held);
    }

    private Optional<Arrival> obstacle(Point point, Optional<Point> there, LettingGo fall) {
      if (!hung.has(Measure.STEM_CLEAR)) {
        return Optional.empty();
      }
      Point at = climberHungFromLost ? point : there.orElse(point);
      return Optional.of(fall.arrivalAt(at.get(Measure.STEM_CLEAR)));
    }

    private LettingGo fall(Point point, Point there) {
      double weightN = point.get(Measure.ALL_UP) * Force.STANDARD_GRAVITY;
      return LettingGo.of(
          climberHungFromLost ? fromTheOneBefore(point) : belowTheLast(point, there),
          weightN,
          modulusN());
    }

    /** Two parts of a moving rope stretch half as far as one. */
    private double modulusN() {
      boolean moving =
          lost.said()
              .value(Slot.ROPE_SYSTEM, Value.RopeSystem.class)
              .filter(system -> system == Value.RopeSystem.MOVING)
              .isPresent();
      return lost.movement().ropeModulus().value() * (moving ? 2 : 1);
    }

    private FreedRope fromTheOneBefore(Point point) {
      return FreedRope.ofLegs(
          anchorLeg(point),
          point.get(Measure.ANCHOR_LEG_LENGTH),
          workingLeg(point),
          point.get(Measure.WORKING_LEG_LENGTH));
    }

    private FreedRope belowTheLast(Point point, Point there) {
      double slackM =
          LostSupport.slackM(
              point.get(Measure.ANCHOR_LEG_LENGTH),
              point.get(Measure.WORKING_LEG_LENGTH),
              Resultant.insideRad(anchorLeg(point), workingLeg(point)));
      double lengthM = there.get(Measure.WORKING_LEG_LENGTH);
      Vector3D toClimber = workingLeg(there).scalarMultiply(lengthM);
      double outM = Math.hypot(toClimber.getX(), toClimber.getY());
      double bearingRad =
          outM > 0
              ? Directions.bearingRad(new Vector3D(-toClimber.getX(), -toClimber.getY(), 0))
              : 0;
      return new FreedRope(lengthM + slackM, outM, -toClimber.getZ(), bearingRad);
    }

    /**
     * The checks of the support that catches, with the rope at a share of the way from the lowest
     * point back to where it came taut, at whichever end of the rope's friction is worse for each.
     */
    private List<Held> held(Point point, Point there, LettingGo fall, double share) {
      ResolvedRig rig = catching.orElseThrow();
      Vector3D leg = fall.rope().leg(share * fall.rope().tautFromPlumbRad());
      double turn = climberHungFromLost ? turnBetween(lost, point, rig, there) : 0;
      Point caught =
          there
              .with(Measure.WORKING_LEG_ELEVATION, Directions.elevationRad(leg))
              .with(Measure.WORKING_LEG_BEARING, within(Directions.bearingRad(leg) + turn));
      if (!climberHungFromLost && path.before(catchingPlace).equals(Optional.of(lostPlace))) {
        caught = fromTheOneBeforeLost(caught, point);
      }
      double tensionN = fall.peakTensionN() * rig.tensionShare();
      if (rig.turn() == Turn.ONE_LEG) {
        return Trial.caught(rig, caught, Creep.NONE, tensionN).held();
      }
      return Survey.worstOf(
          Trial.caught(rig, caught, Creep.TOWARD_ANCHOR, tensionN).held(),
          Trial.caught(rig, caught, Creep.TOWARD_CLIMBER, tensionN).held());
    }

    /** The rope now comes straight from the support before the lost one. */
    private Point fromTheOneBeforeLost(Point there, Point point) {
      double turn = turnBetween(lost, point, hung, there);
      Vector3D back = anchorLeg(point).scalarMultiply(point.get(Measure.ANCHOR_LEG_LENGTH));
      Vector3D seenFromThere = turned(back, turn);
      Vector3D toLost = anchorLeg(there).scalarMultiply(point.get(Measure.WORKING_LEG_LENGTH));
      Vector3D leg = toLost.add(seenFromThere);
      if (leg.getNorm() < NO_LEG_M) {
        return there;
      }
      return there
          .with(Measure.ANCHOR_LEG_ELEVATION, Directions.elevationRad(leg))
          .with(Measure.ANCHOR_LEG_BEARING, Directions.bearingRad(leg));
    }
  }

  /**
   * What must be added to a bearing at the lost support to see it from the other: the leg between
   * them has opposite bearings at its two ends.
   */
  private static double turnBetween(
      ResolvedRig lost, Point atLost, ResolvedRig other, Point atOther) {
    boolean otherIsNearerTheAnchor = other.place().compareTo(lost.place()) < 0;
    return otherIsNearerTheAnchor
        ? atOther.get(Measure.WORKING_LEG_BEARING)
            - atLost.get(Measure.ANCHOR_LEG_BEARING)
            - Math.PI
        : atOther.get(Measure.ANCHOR_LEG_BEARING)
            - atLost.get(Measure.WORKING_LEG_BEARING)
            + Math.PI;
  }

  private static Vector3D turned(Vector3D vector, double bearingRad) {
    double cos = Math.cos(bearingRad);
    double sin = Math.sin(bearingRad);
    return new Vector3D(
        vector.getX() * cos - vector.getY() * sin,
        vector.getX() * sin + vector.getY() * cos,
        vector.getZ());
  }

  private static double within(double bearingRad) {
    return Math.IEEEremainder(bearingRad, 2 * Math.PI);
  }

  private static double largest(List<Held> held) {
    double largest = 0;
    for (Held one : held) {
      largest = Math.max(largest, one.utilisation());
    }
    return largest;
  }
}
