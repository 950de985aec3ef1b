package rigspeak.readback;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rigspeak.dialogue.Rope;
import rigspeak.quantity.Angle;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/**
 * What of a rig is not as planned, slot by slot.
 *
 * <p>Two values are the same if they mean the same, in whatever units they were said; a bend is
 * half a turn less the inside angle. How a value was got is no difference: a plan is made by eye
 * from the ground, and aloft there is a tape.
 */
public final class Differences {
  private static final double HALF_A_TURN = Math.PI;

  /**
   * What is left of a number that went from one unit to another, as a share of it: far below the
   * last digit that anybody says.
   */
  private static final double CONVERSION = 1e-6;

  private Differences() {}

  /**
   * All of them, in the order of the rope and of the slots.
   *
   * @param said everything that was said of each support, see {@link #asSaid}
   */
  public static List<Difference> between(RopePath planned, RopePath said) {
    List<Difference> found = new ArrayList<>();
    TreeSet<Place> places = new TreeSet<>(planned.places());
    places.addAll(said.places());
    climb(planned, said, found);
    for (Place place : places) {
      compare(
          place,
          Slot.Scope.SUPPORT,
          planned.has(place) ? planned.at(place) : Rig.empty(),
          said.has(place) ? said.at(place) : Rig.empty(),
          found);
    }
    return List.copyOf(found);
  }

  /** What was said of each support of a conversation, whether the rope runs over it yet or not. */
  public static RopePath asSaid(Rope rope) {
    SortedMap<Place, Rig> supports = new TreeMap<>();
    for (int i = 0; i < rope.all().size(); i++) {
      Rig rig = rope.all().get(i).said();
      boolean anything =
          rig.said().keySet().stream().anyMatch(Differences::isOfSupport)
              || rig.withdrawn().stream().anyMatch(Differences::isOfSupport);
      if (anything) {
        supports.put(new Place(i), rig);
      }
    }
    if (supports.isEmpty()) {
      supports.put(rope.present(), rope.all().get(rope.present().redirect()).said());
    }
    return new RopePath(supports);
  }

  /** How many values a plan has. */
  public static int size(RopePath planned) {
    int size = 0;
    boolean first = true;
    for (Rig rig : planned.supports().values()) {
      boolean withClimb = first;
      size += (int) rig.said().keySet().stream().filter(s -> withClimb || isOfSupport(s)).count();
      first = false;
    }
    return size;
  }

  private static boolean isOfSupport(Slot slot) {
    return slot.scope() == Slot.Scope.SUPPORT;
  }

  private static void climb(RopePath planned, RopePath said, List<Difference> found) {
    Place first = planned.places().get(0);
    Rig anySaid = said.at(said.places().get(0));
    compare(first, Slot.Scope.CLIMB, planned.at(first), anySaid, found);
  }

  private static void compare(
      Place place, Slot.Scope scope, Rig planned, Rig said, List<Difference> found) {
    Map<Slot, Said> plan = asTurnedIn(said, planned);
    Map<Slot, Said> there = said.said();
    for (Slot slot : Slot.values()) {
      if (slot.scope() == scope) {
        difference(
                place,
                slot,
                Optional.ofNullable(plan.get(slot)),
                Optional.ofNullable(there.get(slot)),
                said.withdrawn().contains(slot))
            .ifPresent(found::add);
      }
    }
  }

  private static Optional<Difference> difference(
      Place place, Slot slot, Optional<Said> planned, Optional<Said> said, boolean withdrawn) {
    if (said.isEmpty()) {
      return planned.isPresent() || withdrawn
          ? Optional.of(new Difference.NotSaid(place, slot))
          : Optional.empty();
    }
    if (planned.isEmpty()) {
      return Optional.of(new Difference.NotPlanned(place, slot, said.get()));
    }
    return same(planned.get().value(), said.get().value())
        ? Optional.empty()
        : Optional.of(new Difference.Other(place, slot, planned.get(), said.get()));
  }

  /** A plan whose turn of the rope is said by the angle by which the rig has it. */
  private static Map<Slot, Said> asTurnedIn(Rig rig, Rig planned) {
    Map<Slot, Said> plan = new EnumMap<>(Slot.class);
    plan.putAll(planned.said());
    turnTo(Slot.INSIDE_ANGLE, Slot.BEND, rig, plan);
    turnTo(Slot.BEND, Slot.INSIDE_ANGLE, rig, plan);
    return plan;
  }

  private static void turnTo(Slot wanted, Slot other, Rig rig, Map<Slot, Said> plan) {
    boolean onlyWanted = rig.has(wanted) && !rig.has(other);
    if (onlyWanted && plan.containsKey(other) && !plan.containsKey(wanted)) {
      Said said = plan.remove(other);
      double rest = HALF_A_TURN - ((Value.Turned) said.value()).angle().radians();
      plan.put(wanted, new Said(new Value.Turned(Angle.ofRadians(rest)), said.how()));
    }
  }

  /** Whether two values of one slot mean the same. */
  static boolean same(Value one, Value other) {
    if (one instanceof Value.Weight a && other instanceof Value.Weight b) {
      return near(a.mass().kilograms(), b.mass().kilograms());
    }
    if (one instanceof Value.Distance a && other instanceof Value.Distance b) {
      return near(a.length().metres(), b.length().metres());
    }
    if (one instanceof Value.Rating a && other instanceof Value.Rating b) {
      return near(a.force().newtons(), b.force().newtons());
    }
    if (one instanceof Value.Turned a && other instanceof Value.Turned b) {
      return Math.abs(a.angle().radians() - b.angle().radians()) <= CONVERSION;
    }
    if (one instanceof Value.Share a && other instanceof Value.Share b) {
      return near(a.ofDiameter(), b.ofDiameter());
    }
    if (one instanceof Value.Toward a && other instanceof Value.Toward b) {
      return a.direction().angleTo(b.direction()).radians() <= CONVERSION;
    }
    if (one instanceof Value.Leg a && other instanceof Value.Leg b) {
      return a.direction().angleTo(b.direction()).radians() <= CONVERSION
          && sameLength(a.length(), b.length());
    }
    return one.equals(other);
  }

  private static boolean sameLength(Optional<Value.Distance> one, Optional<Value.Distance> other) {
    return one.isPresent() == other.isPresent() && (one.isEmpty() || same(one.get(), other.get()));
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= CONVERSION * Math.max(Math.abs(one), Math.abs(other));
  }
}
