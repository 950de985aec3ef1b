package rigspeak.verdict;

import java.util.Locale;

/** What is held against a limit. */
public enum CheckKind {
  /** Bending and axial load of the limb at its union. */
  LIMB_AT_UNION(Unit.PASCAL),
  /** Bending and axial load of the limb under the sling. */
  LIMB_AT_SLING(Unit.PASCAL),
  /** Bending and axial load between union and sling, where the limb tapers strongly. */
  LIMB_BETWEEN(Unit.PASCAL),
  /** Shear and torsion at the union. */
  SHEAR_AT_UNION(Unit.PASCAL),
  /** Shear and torsion under the sling. */
  SHEAR_AT_SLING(Unit.PASCAL),
  /** Bending of the stem between this redirect and the main point above it. */
  STEM_BETWEEN(Unit.PASCAL),
  /** Push along the limb against buckling. */
  COLUMN(Unit.NEWTON),
  /** The shell around a hollow against its least thickness. */
  SHELL(Unit.RATIO),
  /** The sling in its hitch. */
  SLING(Unit.NEWTON),
  /** The sling sliding along the limb. */
  SLIP(Unit.NEWTON),
  /** Carabiner, ring or pulley. */
  CONNECTOR(Unit.NEWTON),
  /** The rope in its tighter leg. */
  ROPE(Unit.NEWTON);

  /** The unit of demand and capacity. */
  public enum Unit {
    PASCAL("pa"),
    NEWTON("n"),
    RATIO("ratio");

    private final String symbol;

    Unit(String symbol) {
      this.symbol = symbol;
    }

    public String symbol() {
      return symbol;
    }
  }

  private final Unit unit;

  CheckKind(Unit unit) {
    this.unit = unit;
  }

  public Unit unit() {
    return unit;
  }

  /** Lower case with underscores, as the files write it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
