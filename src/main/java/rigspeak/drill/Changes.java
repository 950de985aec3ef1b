package rigspeak.drill;

import java.util.Optional;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Length;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** Changes of the usual rig, every value by tape. */
final class Changes {
  /** The numbers of the clock at which something straight lies: the tip and the stem. */
  static final int TIP = 12;

  static final int STEM = 6;
  static final int RIGHT = 3;
  static final int LEFT = 9;

  private static final int DEGREES_AN_HOUR = 30;

  private Changes() {}

  static Change of(Slot slot, Value value) {
    return new Change(slot, Optional.of(new Said(value, HowGot.BY_TAPE)));
  }

  /** Of what nobody measures: how it was got is not said. */
  static Change word(Slot slot, Value value) {
    return new Change(slot, Optional.of(new Said(value, HowGot.BY_EYE)));
  }

  static Change inches(Slot slot, double inches) {
    return of(slot, distance(Length.ofInches(inches)));
  }

  static Change feet(Slot slot, double feet) {
    return of(slot, distance(Length.ofFeet(feet)));
  }

  static Change degrees(Slot slot, double degrees) {
    return of(slot, new Value.Turned(Angle.ofDegrees(degrees)));
  }

  static Change wraps(int turns) {
    return word(Slot.WRAPS, new Value.Wraps(turns));
  }

  /** A leg without a length. */
  static Change leg(Slot slot, double elevationDeg, int hour) {
    return of(slot, new Value.Leg(direction(elevationDeg, hour), Optional.empty()));
  }

  static Change leg(Slot slot, double elevationDeg, int hour, double feet) {
    return of(
        slot,
        new Value.Leg(direction(elevationDeg, hour), Optional.of(distance(Length.ofFeet(feet)))));
  }

  static Change slingPoints(double elevationDeg, int hour) {
    return of(Slot.SLING_POINTS, new Value.Toward(direction(elevationDeg, hour)));
  }

  private static Direction direction(double elevationDeg, int hour) {
    return Direction.ofDegrees(elevationDeg, -DEGREES_AN_HOUR * hour);
  }

  private static Value.Distance distance(Length length) {
    return new Value.Distance(length, UnitSystem.INCH_POUND);
  }
}
