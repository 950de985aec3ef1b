package rigspeak.mechanics;

/** Whether a swing gets as far as something in its way, and how hard. */
public sealed interface Arrival {
  /**
   * The swing ends before it.
   *
   * @param spareM horizontal distance left at the end of the swing, above 0
   */
  record Clear(double spareM) implements Arrival {}

  /**
   * The swing gets there.
   *
   * @param fromPlumbRad angle of the rope from plumb, positive before the lowest point
   * @param speedMS along the arc, at least 0
   * @param equivalentFallM height of a free fall that ends with the same speed
   * @param belowStartM height lost since the swing began; negative when it is higher than there
   */
  record Reached(double fromPlumbRad, double speedMS, double equivalentFallM, double belowStartM)
      implements Arrival {}
}
