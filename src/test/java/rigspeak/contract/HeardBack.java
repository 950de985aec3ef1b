package rigspeak.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.rig.Direction;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** What a climber knows from the words of a read-back alone: a value in each sentence. */
final class HeardBack {
  /** In metres, kilograms, newtons, radians: what words and numbers may lose on the way. */
  private static final double SAME = 1e-9;

  private HeardBack() {}

  /**
   * The values of the first sentences of a read-back.
   *
   * @param slots what each sentence is about
   */
  static List<Said> values(String spoken, List<Slot> slots) {
    String[] sentences = spoken.toLowerCase(Locale.ROOT).split("\\.\\s*", -1);
    if (sentences.length < slots.size()) {
      throw new AssertionError("fewer sentences than values: " + spoken);
    }
    List<Said> values = new ArrayList<>();
    for (int i = 0; i < slots.size(); i++) {
      values.add(value(sentences[i], slots.get(i)));
    }
    return values;
  }

  /** "Limb, now five inches, by tape, it was six inches" tells five inches. */
  private static Said value(String sentence, Slot slot) {
    String now = sentence.replaceFirst(", it was .*$", "");
    int bare = now.indexOf(", now ");
    Meaning meaning =
        bare < 0
            ? Talk.meaning(now, false, Optional.empty())
            : Talk.meaning(bare(now.substring(bare + 6), slot), false, Optional.of(slot));
    if (!(meaning instanceof Meaning.Values values)) {
      throw new AssertionError("no value is heard in: " + sentence);
    }
    Optional<Said> heard = Optional.empty();
    for (Statement statement : values.statements()) {
      if (!(statement instanceof Statement.Value value) || value.slot() != slot) {
        throw new AssertionError("something else than " + slot.key() + " in: " + sentence);
      }
      Said next = value.said();
      heard =
          Optional.of(
              heard
                  .map(said -> new Said(next.value().after(said.value()), next.how()))
                  .orElse(next));
    }
    return heard.orElseThrow();
  }

  private static String bare(String words, Slot slot) {
    return slot == Slot.STEM_CLEAR ? words.replaceFirst("^by ", "") : words;
  }

  /** Whether both are the same value, got in the same way, said in the same units. */
  static boolean same(Said one, Said other) {
    return one.how() == other.how() && same(one.value(), other.value());
  }

  private static boolean same(Value one, Value other) {
    if (one instanceof Value.Weight a && other instanceof Value.Weight b) {
      return a.said() == b.said() && near(a.mass().kilograms(), b.mass().kilograms());
    }
    if (one instanceof Value.Distance a && other instanceof Value.Distance b) {
      return a.said() == b.said() && near(a.length().metres(), b.length().metres());
    }
    if (one instanceof Value.Turned a && other instanceof Value.Turned b) {
      return near(a.angle().radians(), b.angle().radians());
    }
    if (one instanceof Value.Rating a && other instanceof Value.Rating b) {
      return a.said() == b.said() && near(a.force().newtons() / 1e4, b.force().newtons() / 1e4);
    }
    if (one instanceof Value.Toward a && other instanceof Value.Toward b) {
      return near(a.direction(), b.direction());
    }
    if (one instanceof Value.Leg a && other instanceof Value.Leg b) {
      boolean lengths = a.length().isPresent() == b.length().isPresent();
      return near(a.direction(), b.direction())
          && lengths
          && (a.length().isEmpty() || same(a.length().get(), b.length().get()));
    }
    return one.equals(other);
  }

  private static boolean near(Direction one, Direction other) {
    return near(one.elevation().radians(), other.elevation().radians())
        && near(one.bearing().radians(), other.bearing().radians());
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= SAME;
  }
}
