package rigspeak.drill;

import static rigspeak.drill.Choice.ALL_RIGHT;
import static rigspeak.drill.Choice.FIRST;
import static rigspeak.drill.Choice.GO;
import static rigspeak.drill.Choice.HOLDS;
import static rigspeak.drill.Choice.INTO_UNION;
import static rigspeak.drill.Choice.KEEP;
import static rigspeak.drill.Choice.LEFT;
import static rigspeak.drill.Choice.LEVER;
import static rigspeak.drill.Choice.LIFT;
import static rigspeak.drill.Choice.PULL;
import static rigspeak.drill.Choice.REFUSE;
import static rigspeak.drill.Choice.RELEASE;
import static rigspeak.drill.Choice.RIGHT;
import static rigspeak.drill.Choice.SECOND;
import static rigspeak.drill.Choice.SIDE;
import static rigspeak.drill.Choice.SLIDES;
import static rigspeak.drill.Choice.THIRD;
import static rigspeak.drill.Choice.TOWARD_STEM;
import static rigspeak.drill.Choice.TOWARD_TIP;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is wanted of the trainee, and with it which words answer it. */
public enum Asking {
  /** What the load does to the limb. */
  WHERE,
  /** The inside angle between two legs, degrees. */
  INSIDE("degrees"),
  /** The bend that goes with an inside angle, degrees. */
  BEND("degrees"),
  /** The inside angle that goes with a bend, degrees. */
  INSIDE_OF_BEND("degrees"),
  /** How many times the rope's pull the sling takes. */
  FACTOR("times"),
  /** Which of two angles loads the sling more. */
  PULLS_MORE,
  /** Which of two unions uses less of what it holds. */
  STRONGER,
  /** How many times as much the limb takes after a change. */
  MORE("times"),
  SLIDE,
  /** The fewest wraps that hold. */
  WRAPS("wraps"),
  /** How far one drops if the redirect lets go, feet. */
  DROP("feet"),
  /** Which way one swings then. */
  WAY,
  /** The height of a free fall that is as hard as the swing, feet. */
  HARD("feet"),
  /** Which of the steps that were named comes first. */
  COMES_FIRST,
  LANYARD,
  /** Whether all was read back as planned, or which was not. */
  READ_BACK,
  /** A number that was heard, digit by digit. */
  DIGITS("digits"),
  /** Go, refuse, or too little is known. */
  GO_OR_REFUSE;

  private final String number;

  Asking() {
    this("");
  }

  Asking(String number) {
    this.number = number;
  }

  /** Whether a number is wanted. */
  public boolean wantsNumber() {
    return !number.isEmpty();
  }

  /** The words that it can be answered by, beside "nobody can say"; none where a number is. */
  public List<Choice> choices() {
    return switch (this) {
      case WHERE -> List.of(INTO_UNION, PULL, LEVER, LIFT, SIDE);
      case PULLS_MORE, STRONGER -> List.of(FIRST, SECOND);
      case COMES_FIRST -> List.of(FIRST, SECOND, THIRD);
      case SLIDE -> List.of(SLIDES, HOLDS);
      case WAY -> List.of(TOWARD_STEM, TOWARD_TIP, LEFT, RIGHT);
      case LANYARD -> List.of(KEEP, RELEASE);
      case READ_BACK -> List.of(ALL_RIGHT, FIRST, SECOND, THIRD);
      case GO_OR_REFUSE -> List.of(GO, REFUSE);
      case INSIDE, BEND, INSIDE_OF_BEND, FACTOR, MORE, WRAPS, DROP, HARD, DIGITS -> List.of();
    };
  }

  /** The answers of the grammar that are open: drill_degrees, drill_where and so on. */
  public String rule() {
    return wantsNumber() ? number : key();
  }

  /** The name that files use. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Asking> of(String key) {
    return Arrays.stream(values()).filter(asking -> asking.key().equals(key)).findFirst();
  }
}
