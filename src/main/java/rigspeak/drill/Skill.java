package rigspeak.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is trained, in the order in which it is best begun. */
public enum Skill {
  /** Thirteen or thirty, fifteen or fifty: heard, and said back in digits. */
  TEENS_AND_TENS,
  /** The inside angle of a described rope. */
  INSIDE_ANGLE,
  /** The bend against the inside angle. */
  BEND_OR_INSIDE,
  /** How many times the pull of the rope a sling takes. */
  ANGLE_FACTOR,
  /** Into the union, lever, lift, side or pull. */
  WHERE_IT_GOES,
  /** A plan of three items read back, with one of them wrong in some. */
  READ_BACK,
  /** The order of a change-over with the lanyard. */
  CHANGE_OVER,
  /** Which of two unions uses less of what it holds. */
  WHICH_UNION,
  /** What an inch more or a foot less is worth. */
  INCH_OR_FOOT,
  /** Whether a sling slides. */
  WILL_IT_SLIDE,
  /** How many wraps hold it. */
  HOW_MANY_WRAPS,
  /** How far, which way and how hard one falls. */
  IF_IT_LETS_GO,
  /** Whether enough is known to say anything. */
  TOO_LITTLE_KNOWN,
  /** Refuse, or go. */
  REFUSE_OR_GO;

  /** The name that files and options use: lower case with underscores. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Skill> of(String key) {
    return Arrays.stream(values()).filter(skill -> skill.key().equals(key)).findFirst();
  }
}
