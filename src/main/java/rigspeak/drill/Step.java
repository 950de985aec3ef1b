package rigspeak.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A step of a change-over, and what must have been done before it. */
public enum Step {
  CLIP_IN,
  CHECK,
  SET,
  MOVE,
  TAKE_OFF,
  LOAD,
  RELEASE;

  /** Whether this one is let through only after that one. */
  public boolean needs(Step other) {
    return switch (this) {
      case CLIP_IN, CHECK -> false;
      case SET, MOVE, TAKE_OFF, LOAD -> other == CLIP_IN;
      case RELEASE -> other == CLIP_IN || other == CHECK || other == LOAD;
    };
  }

  /** The name that files use. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Step> of(String key) {
    return Arrays.stream(values()).filter(step -> step.key().equals(key)).findFirst();
  }
}
