package rigspeak.quantity;

/** The units that a person speaks in, and wants to hear. */
public enum UnitSystem {
  /** Feet, inches, pounds. */
  INCH_POUND,
  /** Metres, centimetres, kilograms. */
  METRIC
}
