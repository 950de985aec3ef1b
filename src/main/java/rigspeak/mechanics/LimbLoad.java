package rigspeak.mechanics;

/**
 * A force on the limb, split on the limb's own axes ({@link LimbAxes}).
 *
 * <p>Source: orthogonal components, source 1. Range: any finite force up to a giganewton each way.
 *
 * @param alongN newtons along the limb; positive pulls away from the union, negative pushes into it
 * @param topN newtons square to it; positive lifts, negative levers down (on a vertical leader:
 *     positive is toward the parent stem)
 * @param sideN newtons sideways; positive is left
 */
public record LimbLoad(double alongN, double topN, double sideN) {
  /** Far above any load in a tree; keeps every square and product finite. */
  private static final double MAX_N = 1e9;

  /**
   * @throws IllegalArgumentException if a component is infinite, not a number or above the range
   */
  public LimbLoad {
    Refuse.unlessWithin("force along the limb", alongN, -MAX_N, MAX_N);
    Refuse.unlessWithin("force on the top of the limb", topN, -MAX_N, MAX_N);
    Refuse.unlessWithin("force on the side of the limb", sideN, -MAX_N, MAX_N);
  }

  /** Newtons, at least zero. */
  public double sizeN() {
    return Math.sqrt(alongN * alongN + topN * topN + sideN * sideN);
  }

  /** The part that is square to the limb, in newtons, at least zero. */
  public double perpendicularN() {
    return Math.sqrt(topN * topN + sideN * sideN);
  }

  /** The part along the limb as a share of the whole, from 0 to 1; 0 when there is no load. */
  public double alongShare() {
    return share(alongN);
  }

  /** The part up or down as a share of the whole, from 0 to 1; 0 when there is no load. */
  public double topShare() {
    return share(topN);
  }

  /** The part sideways as a share of the whole, from 0 to 1; 0 when there is no load. */
  public double sideShare() {
    return share(sideN);
  }

  /**
   * What the largest part does. Equal parts go to the one that is harder on the union: side before
   * top, top before along.
   */
  public LoadClass dominant() {
    double along = Math.abs(alongN);
    double top = Math.abs(topN);
    double side = Math.abs(sideN);
    if (side >= top && side >= along) {
      return side == 0 ? LoadClass.NONE : LoadClass.SIDE;
    }
    if (top >= along) {
      return topN > 0 ? LoadClass.LIFT : LoadClass.LEVER;
    }
    return alongN > 0 ? LoadClass.PULL : LoadClass.INTO_UNION;
  }

  private double share(double partN) {
    double sizeN = sizeN();
    return sizeN > 0 ? Math.abs(partN) / sizeN : 0;
  }

  /** The same load, so many times as large. */
  public LimbLoad times(double factor) {
    return new LimbLoad(alongN * factor, topN * factor, sideN * factor);
  }
}
