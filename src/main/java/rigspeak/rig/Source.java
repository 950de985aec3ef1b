package rigspeak.rig;

/**
 * Where a number comes from.
 *
 * @param key short name, unique in the catalogue's list of sources
 * @param provenance how far it can be relied on
 * @param title the work, the rule or the reason in a few words
 */
public record Source(String key, Provenance provenance, String title) {

  /** How a number came into the catalogue. */
  public enum Provenance {
    /** Read in a published work. */
    PUBLISHED,
    /** Follows from a definition or a textbook formula. */
    COMPUTED,
    /** Known in the trade, without a work to name. */
    COMMON_PRACTICE,
    /** Remembered from a named work, not looked up. */
    MEMORY,
    /** Chosen by the authors, on the side of caution. */
    JUDGEMENT,
    /** From a table that the crew supplies; nobody but the crew has checked it. */
    SUPPLIED,
    /** Said by the climber. */
    SAID
  }
}
