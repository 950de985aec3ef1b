package rigspeak.plan;

import java.util.List;
import java.util.Locale;
import rigspeak.rig.Place;

/**
 * Something that is done with the lanyard, a redirect or the rope.
 *
 * @param line where the plan says so
 * @param place the support that the talk is about
 * @param troubles why it is not in order; empty if it is
 */
public record Step(Plan.Line line, Kind kind, Place place, List<Trouble> troubles) {
  public Step {
    troubles = List.copyOf(troubles);
  }

  /** What is done. */
  public enum Kind {
    CLIP_IN,
    SET,
    MOVE,
    TAKE_OFF,
    LOAD,
    RELEASE;

    /** Lower case with underscores, as the files write it. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Why it must not be done there. */
  public enum Trouble {
    /** The lanyard was not clipped in, read back and affirmed before. */
    LANYARD_FIRST,
    /** Nobody has asked for a verdict that would still stand. */
    NOT_CHECKED,
    /** The verdict that stands is not good. */
    NOT_GOOD,
    /** The rope was not said to be loaded. */
    NOT_LOADED;

    /** Lower case with underscores, as the files write it. */
    public String key() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public boolean isInOrder() {
    return troubles.isEmpty();
  }
}
