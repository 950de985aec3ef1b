package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import rigspeak.mechanics.Impact;
import rigspeak.mechanics.LoadedSupport;
import rigspeak.mechanics.LoadedSupport.Creep;
import rigspeak.quantity.Force;
import rigspeak.rig.Measure;
import rigspeak.rig.Point;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.ResolvedRig.PullAbove;
import rigspeak.rig.ResolvedRig.Turn;
import rigspeak.rig.Value;

/**
 * A support at one point of its box and one state of the rope's friction.
 *
 * @param support the still load
 * @param peakFactor from still to the peak of movement
 */
record Trial(ResolvedRig rig, Point point, LoadedSupport support, double peakFactor) {
  private static final List<CheckKind> KINDS = List.of(CheckKind.values());

  /**
   * A demand held against a capacity, both in the kind's unit.
   *
   * @param demand at least zero
   * @param capacity above zero
   */
  record Held(CheckKind kind, double demand, double capacity) {
    /** So small a capacity is none; it keeps the ratio finite. */
    private static final double NO_CAPACITY = 1e-9;

    double utilisation() {
      return demand / Math.max(capacity, NO_CAPACITY);
    }
  }

  static Trial of(ResolvedRig rig, Point point, Creep creep) {
    LoadedSupport support = LoadedSupport.of(rig, point, creep);
    return new Trial(rig, point, support, peakFactor(rig, point));
  }

  /**
   * The support when it catches a climber.
   *
   * @param workingN tension of its working leg at the peak, newtons
   */
  static Trial caught(ResolvedRig rig, Point point, Creep creep, double workingN) {
    return new Trial(rig, point, LoadedSupport.pulled(rig, point, creep, workingN), 1);
  }

  /** What is checked of this support; it depends on the rig alone, not on the point. */
  static List<CheckKind> kinds(ResolvedRig rig) {
    return KINDS.stream().filter(kind -> isChecked(rig, kind)).toList();
  }

  private static boolean isChecked(ResolvedRig rig, CheckKind kind) {
    return switch (kind) {
      case LIMB_AT_UNION, LIMB_AT_SLING, SHEAR_AT_UNION, SHEAR_AT_SLING, COLUMN, ROPE -> true;
      case LIMB_BETWEEN -> rig.has(Measure.THICK_END);
      case STEM_BETWEEN -> rig.pullAbove() != PullAbove.NONE;
      case SHELL -> rig.has(Measure.CAVITY);
      case SLING -> rig.gear().sling().isPresent();
      case CONNECTOR -> rig.gear().connector().isPresent();
      case SLIP -> rig.seat() != Value.Seat.STUB;
    };
  }

  /** Whether any check of this support looks at this measure; others need not be tried. */
  static boolean looksAt(ResolvedRig rig, Measure measure) {
    return switch (measure) {
      case WORKING_LEG_LENGTH, STEM_CLEAR -> false;
      case ANCHOR_LEG_LENGTH -> rig.has(Measure.BASE_LEG_RATIO);
      case SLING_ELEVATION, SLING_BEARING, INSIDE_ANGLE -> rig.turn() == Turn.ANGLE_AND_SLING;
      default -> true;
    };
  }

  /** Every check, in the order of the kinds. */
  List<Held> held() {
    Bench bench = new Bench(this);
    List<Held> held = new ArrayList<>();
    for (CheckKind kind : KINDS) {
      if (isChecked(rig, kind)) {
        held.add(bench.hold(kind));
      }
    }
    return held;
  }

  Held held(CheckKind kind) {
    return new Bench(this).hold(kind);
  }

  /** Ordinary movement, or the fall through the stated slack if that is worse. */
  private static double peakFactor(ResolvedRig rig, Point point) {
    double working = rig.movement().workingPeak().value();
    if (!rig.has(Measure.SLACK)) {
      return working;
    }
    double climberN = point.get(Measure.ALL_UP) * Force.STANDARD_GRAVITY * rig.tensionShare();
    double fallFactor = Impact.fallFactor(point.get(Measure.SLACK), point.get(Measure.ROPE_OUT));
    double arrestN = Impact.peakN(climberN, rig.movement().ropeModulus().value(), fallFactor);
    return Math.max(working, arrestN / climberN);
  }
}
