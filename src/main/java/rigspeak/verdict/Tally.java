package rigspeak.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.mechanics.Arrival;
import rigspeak.mechanics.LettingGo;
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
  private final List<CheckKind> kinds = new ArrayList<>();
  private final List<Spreading> utilisation = new ArrayList<>();

  void take(LettingGo fall, Optional<Arrival> arrival) {
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
        meeting.obstacle(),
        peak.spread(),
        left());
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
