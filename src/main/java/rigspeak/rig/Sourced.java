package rigspeak.rig;

/**
 * A number and where it comes from.
 *
 * @param name what it is, in a few words
 * @param value in the SI unit of what it is, or a bare factor
 */
public record Sourced(String name, double value, Source source) {
  public Sourced {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(name + " cannot be " + value);
    }
  }
}
