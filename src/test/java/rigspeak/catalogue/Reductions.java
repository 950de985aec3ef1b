package rigspeak.catalogue;

/** The catalogue's tables of what a choke and a bend leave of a sling, for tests beside others. */
public final class Reductions {
  private static final Sources SOURCES = new Sources();
  private static final ChokeAngles CHOKE = new ChokeAngles(SOURCES);
  private static final Bends BEND = new Bends(SOURCES);

  private Reductions() {}

  public static double choke(double degrees) {
    return CHOKE.factor(degrees).value();
  }

  public static double bend(double ratio) {
    return BEND.factor(ratio).value();
  }
}
