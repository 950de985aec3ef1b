package rigspeak.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import rigspeak.mechanics.LoadClass;

/** An answer that is a word; the grammar calls it by the same name in lower case. */
public enum Choice {
  INTO_UNION,
  PULL,
  LEVER,
  LIFT,
  SIDE,

  FIRST,
  SECOND,
  THIRD,
  /** Everything was read back as it was planned. */
  ALL_RIGHT,

  SLIDES,
  HOLDS,

  TOWARD_STEM,
  TOWARD_TIP,
  LEFT,
  RIGHT,

  KEEP,
  RELEASE,

  GO,
  REFUSE,

  /** Too little is known. */
  NOBODY_CAN_SAY;

  /** The name that the grammar and the files use. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Choice> of(String key) {
    return Arrays.stream(values()).filter(choice -> choice.key().equals(key)).findFirst();
  }

  static Optional<Choice> of(LoadClass loadClass) {
    return switch (loadClass) {
      case NONE -> Optional.empty();
      case INTO_UNION -> Optional.of(INTO_UNION);
      case PULL -> Optional.of(PULL);
      case LEVER -> Optional.of(LEVER);
      case LIFT -> Optional.of(LIFT);
      case SIDE -> Optional.of(SIDE);
    };
  }
}
