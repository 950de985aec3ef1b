package rigspeak.catalogue;

/** The catalogue's tables of what a choke and a bend leave of a sling, for tests beside others. */
public final class Reductions {
  private static final SlingRules RULES =
      new SlingRules(new Sources(Supplement.none()), Supplement.none());

  private Reductions() {}

  public static double choke(double degrees) {
    return RULES.choke().factor(degrees);
  }

  public static double bend(double ratio) {
    return RULES.bend().factor(ratio);
  }
}
