package rigspeak.mechanics;

/** How a swing ends on the far side of its lowest point. */
public sealed interface SwingEnd {
  /** The angle of the rope from plumb there, at least 0. */
  double fromPlumbRad();

  /**
   * It comes to rest and swings back.
   *
   * @param fromPlumbRad from 0 to pi/2
   */
  record Turns(double fromPlumbRad) implements SwingEnd {}

  /**
   * It passes the height of the support and the rope goes slack: a second fall follows.
   *
   * @param fromPlumbRad above pi/2 up to pi
   */
  record GoesSlack(double fromPlumbRad) implements SwingEnd {}

  /**
   * It is fast enough to go right round.
   *
   * @param fromPlumbRad pi
   */
  record GoesRound(double fromPlumbRad) implements SwingEnd {}
}
