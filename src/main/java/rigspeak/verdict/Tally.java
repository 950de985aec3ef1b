package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rigspeak.mechanics.Arrival;
import rigspeak.mechanics.LettingGo;
import rigspeak.mechanics.TimedMotion;
import rigspeak.rig.Place;
import rigspeak.verdict.Trial.Held;

/** How far the numbers of a fall range over all that may be true; the first counted is as said. */
final class Tally {
  private final Spreading freeFall = new Spreading();
  private final Spreading drop = new Spreading();
  private final Spreading bearing = Spreading.ofDegreesRound();
  private final Spreading speed = new Spreading();
  private final Spreading peak = new Spreading();
  private final Meeting meeting = new Meeting();
  private boolean started;
  private OptionalDouble lowestAfterS = OptionalDouble.empty();
  private final List<CheckKind> kinds = new ArrayList<>();
  private final List<Spreading> utilisation = new ArrayList<>();

  void take(LettingGo fall, Optional<Arrival> arrival) {
    if (!started) {
      // Following the motion second by second takes long: only as said, which comes first.
      lowestAfterS = secondsToLowest(fall);
      started = true;
    }
    freeFall.take(fall.rope().freeFallM());
    drop.take(fall.dropM());
    bearing.take(Math.toDegrees(fall.rope().bearingRad()));
    speed.take(fall.swing().lowestSpeedMS());
    peak.take(fall.peakTensionN());
    arrival.ifPresent(meeting::take);
  }

  void take(List<Held> held) {
    for (int i = 0; i < held.size(); i++) {
      if (i == utilisation.size()) {
        kinds.add(held.get(i).kind());
        utilisation.add(new Spreading());
      }
      utilisation.get(i).take(held.get(i).utilisation());
    }
  }

  Loss.Falls falls(Place catching) {
    return new Loss.Falls(
        catching,
        freeFall.spread(),
        drop.spread(),
        bearing.spread(),
        speed.spread(),
        lowestAfterS,
        meeting.obstacle(),
        peak.spread(),
        left());
  }

  private static OptionalDouble secondsToLowest(LettingGo fall) {
    return TimedMotion.of(fall.rope()).moments().stream()
        .filter(moment -> moment.what() == TimedMotion.What.LOWEST)
        .mapToDouble(TimedMotion.Moment::timeS)
        .findFirst();
  }

  private Optional<Loss.Left> left() {
    Optional<Loss.Left> worst = Optional.empty();
    for (int i = 0; i < kinds.size(); i++) {
      Loss.Left left = new Loss.Left(kinds.get(i), utilisation.get(i).spread());
      if (worst.isEmpty() || left.utilisation().high() > worst.get().utilisation().high()) {
        worst = Optional.of(left);
      }
    }
    return worst;
  }
}
