package rigspeak.verdict;

import rigspeak.mechanics.Arrival;

/** What a swing meets, over all that may be true; the first counted is as said. */
final class Meeting {
  private boolean started;
  private boolean reachedAsSaid;
  private boolean reached;
  private double leastSpareM = Double.MAX_VALUE;
  private double mostSpeedMS;
  private double mostFallM;

  void take(Arrival arrival) {
    if (arrival instanceof Arrival.Reached there) {
      reachedAsSaid |= !started;
      reached = true;
      mostSpeedMS = Math.max(mostSpeedMS, there.speedMS());
      mostFallM = Math.max(mostFallM, there.equivalentFallM());
    } else if (arrival instanceof Arrival.Clear clear) {
      leastSpareM = Math.min(leastSpareM, clear.spareM());
    }
    started = true;
  }

  Obstacle obstacle() {
    if (!started) {
      return new Obstacle.NotSaid();
    }
    return reached
        ? new Obstacle.Reached(reachedAsSaid, mostSpeedMS, mostFallM)
        : new Obstacle.Clear(leastSpareM);
  }
}
