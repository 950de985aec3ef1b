package rigspeak.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rigspeak.answer.Speech.grid;
import static rigspeak.answer.Speech.pick;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Reply;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Phrase;
import rigspeak.meaning.Meaning;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** Whoever says a read-back back to the tool says the same value. */
class SaidBackTest {
  private static final int SAMPLES = 1024;

  /** Metres, kilograms, newtons or radians: far below what anybody can say. */
  private static final double SAME = 1e-9;

  static Stream<List<Object>> slotsAndDetails() {
    return Stream.of(Slot.values())
        .flatMap(slot -> Stream.of(Detail.values()).map(detail -> List.<Object>of(slot, detail)));
  }

  @ParameterizedTest
  @MethodSource("slotsAndDetails")
  void everyReadBackMeansTheValueThatItReadsBack(List<Object> slotAndDetail) {
    Slot slot = (Slot) slotAndDetail.get(0);
    Detail detail = (Detail) slotAndDetail.get(1);
    Speech.evenly(
        8,
        SAMPLES,
        point -> {
          Said said = new Said(value(slot, point), how(slot, point[7]));
          String text = spoken(detail, List.of(item(slot, said)));
          assertSame(said, Speech.statement(slot, text).said(), text);
        });
  }

  @ParameterizedTest
  @EnumSource
  void severalReadBacksInABreathMeanAllTheirValues(Detail detail) {
    Slot[] slots = Slot.values();
    Speech.evenly(
        16,
        4096,
        point -> {
          Map<Slot, Said> said = new LinkedHashMap<>();
          for (int i = 0; i < 3; i++) {
            Slot slot = pick(point[i], slots);
            double[] part = new double[8];
            System.arraycopy(point, 3 + i, part, 0, 8);
            said.put(slot, new Said(value(slot, part), how(slot, point[13 + i])));
          }
          List<Reply.Item> items = new ArrayList<>();
          said.forEach((slot, value) -> items.add(item(slot, value)));
          assertAllSame(said, spoken(detail, items));
        });
  }

  private static void assertAllSame(Map<Slot, Said> said, String text) {
    assertTrue(Speech.understood(text) instanceof Meaning.Values, text);
    Meaning.Values values = (Meaning.Values) Speech.understood(text);
    assertEquals(said.size(), values.statements().size(), text);
    for (Meaning.Statement statement : values.statements()) {
      Meaning.Statement.Value value = (Meaning.Statement.Value) statement;
      assertSame(said.get(value.slot()), value.said(), text);
    }
  }

  /** Everything that is said in the demo and the recordings, read back and said again. */
  @Test
  void readBacksOfRealSentencesMeanTheSame() throws IOException {
    int checked = 0;
    for (String sentence : recordedSentences()) {
      if (Speech.understood(sentence) instanceof Meaning.Values values) {
        Map<Slot, Said> said = new LinkedHashMap<>();
        for (Meaning.Statement statement : values.statements()) {
          if (statement instanceof Meaning.Statement.Value value) {
            said.put(value.slot(), value.said());
          }
        }
        if (said.size() == values.statements().size()) {
          List<Reply.Item> items = new ArrayList<>();
          said.forEach((slot, value) -> items.add(item(slot, value)));
          assertAllSame(said, spoken(Detail.FULL, items));
          assertAllSame(said, spoken(Detail.BRIEF, items));
          checked++;
        }
      }
    }
    assertTrue(checked > 50, "only " + checked + " sentences had values");
  }

  private static Set<String> recordedSentences() throws IOException {
    Set<String> sentences = new TreeSet<>(Files.readAllLines(Path.of("demo-data/one-day.txt")));
    try (Stream<Path> files = Files.walk(Path.of("src/test/resources/corpus"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".txt")).toList()) {
        sentences.addAll(Files.readAllLines(file));
      }
    }
    return sentences;
  }

  @Test
  void everySpeciesIsNamedInWordsAndOrderOfTheGrammar() {
    Phrase.Choice names = (Phrase.Choice) Grammar.bundled().phrase("species_value");
    List<String> sayable = names.options().stream().map(SaidBackTest::words).toList();
    assertTrue(sayable.size() > 50);
    for (String name : sayable) {
      Said said = Speech.statement(Slot.SPECIES, "species " + name).said();
      String text = spoken(Detail.FULL, List.of(item(Slot.SPECIES, said)));
      String back = text.toLowerCase(Locale.ROOT).replaceAll("^species, |\\.$", "");
      assertTrue(sayable.contains(back), text);
      assertEquals(said, Speech.statement(Slot.SPECIES, text).said(), text);
    }
  }

  private static String words(Phrase phrase) {
    if (phrase instanceof Phrase.Word word) {
      return word.text();
    }
    if (phrase instanceof Phrase.Tagged tagged) {
      return words(tagged.part());
    }
    if (phrase instanceof Phrase.Sequence sequence) {
      return String.join(" ", sequence.parts().stream().map(SaidBackTest::words).toList());
    }
    throw new AssertionError("no name of a species: " + phrase);
  }

  @Test
  void anyUnionCanBeSaidBackEvenInTwoStatements() {
    Value.UnionCondition[] all = Value.UnionCondition.values();
    for (int subset = 1; subset < 1 << all.length; subset++) {
      Set<Value.UnionCondition> conditions = EnumSet.noneOf(Value.UnionCondition.class);
      for (int i = 0; i < all.length; i++) {
        if ((subset & 1 << i) != 0) {
          conditions.add(all[i]);
        }
      }
      Value union = new Value.Union(conditions);
      String text = spoken(Detail.FULL, List.of(item(Slot.UNION, eye(union))));
      Meaning.Values values = (Meaning.Values) Speech.understood(text);
      Value heard = null;
      for (Meaning.Statement statement : values.statements()) {
        Value next = ((Meaning.Statement.Value) statement).said().value();
        heard = heard == null ? next : next.after(heard);
      }
      assertEquals(union, heard, text);
    }
  }

  @Test
  void aChangedValueIsSaidWithWhatItWas() {
    Said before = new Said(inches(8), HowGot.BY_EYE);
    Said now = new Said(inches(9), HowGot.BY_TAPE);
    Reply.Item item = new Reply.Item(Slot.LIMB_DIAMETER, now, Optional.of(before));
    assertEquals(
        "Limb, now nine inches, by tape, it was eight inches, by eye.",
        spoken(Detail.FULL, List.of(item)));
    assertEquals("Limb, now nine inches, by tape.", spoken(Detail.BRIEF, List.of(item)));
  }

  private static Value.Distance inches(double inches) {
    return new Value.Distance(Length.ofInches(inches), UnitSystem.INCH_POUND);
  }

  private static Said eye(Value value) {
    return new Said(value, HowGot.BY_EYE);
  }

  private static Reply.Item item(Slot slot, Said said) {
    return new Reply.Item(slot, said, Optional.empty());
  }

  private static String spoken(Detail detail, List<Reply.Item> items) {
    List<Utterance> utterances = Answers.say(List.of(new Reply.Taken(items)), detail);
    assertEquals(1, utterances.size());
    return utterances.get(0).text();
  }

  // ---- what can be said of each slot ----

  private static HowGot how(Slot slot, double share) {
    return switch (slot) {
      case ALL_UP,
          LIMB_DIAMETER,
          THICK_END,
          LIMB_RISE,
          LIMB_LENGTH,
          OUT,
          STEM_DIAMETER,
          CHOKE_ANGLE,
          BASKET_ANGLE,
          SLING_THICKNESS,
          ANCHOR_LEG,
          WORKING_LEG,
          INSIDE_ANGLE,
          BEND,
          SLING_POINTS,
          SLACK,
          STEM_CLEAR ->
          pick(
              share,
              HowGot.BY_TAPE,
              HowGot.BY_HAND_SPAN,
              HowGot.BY_EYE,
              HowGot.BY_PACING,
              HowGot.GUESSED);
      default -> HowGot.BY_EYE;
    };
  }

  private static Value value(Slot slot, double[] at) {
    return switch (slot) {
      case ALL_UP -> weight(at);
      case SPECIES ->
          pick(
              at[0],
              Value.Species.unknown(),
              new Value.Species(Set.of("red", "oak")),
              new Value.Species(Set.of("douglas-fir")),
              new Value.Species(Set.of("eastern", "white", "pine")),
              new Value.Species(Set.of("honeylocust")));
      case WOOD -> pick(at[0], Value.Wood.values());
      case LIMB_DIAMETER, THICK_END, STEM_DIAMETER -> diameter(at);
      case SLING_THICKNESS -> thickness(at);
      case LIMB_RISE -> new Value.Turned(Angle.ofDegrees(grid(at[0], -90, 90, 0.5)));
      case LIMB_LENGTH, OUT, SLACK, STEM_CLEAR -> distance(at);
      case UNION ->
          at[0] < 0.4
              ? Value.Union.of(pick(at[1], Value.UnionCondition.values()))
              : Value.Union.of(
                  pick(at[1], Value.UnionCondition.values()),
                  pick(at[2], Value.UnionCondition.values()));
      case CAVITY -> new Value.Share(pick(at[0], 0.0, 1.0 / 4, 1.0 / 3, 1.0 / 2, 2.0 / 3, 3.0 / 4));
      case CAVITY_SHAPE -> pick(at[0], Value.CavityShape.values());
      case CONNECTOR_LIES -> pick(at[0], Value.ConnectorLies.values());
      case HITCH -> pick(at[0], Value.Hitch.values());
      case WRAPS -> new Value.Wraps(1 + (int) (6 * at[0]));
      case SEAT -> pick(at[0], Value.Seat.values());
      case BARK -> pick(at[0], Value.Bark.values());
      case SLING_RATING -> rating(at);
      case RUNNING_OVER -> pick(at[0], Value.RunningOver.values());
      case ROPE_SYSTEM -> pick(at[0], Value.RopeSystem.values());
      case ANCHOR -> pick(at[0], Value.Anchor.values());
      case CAPTURED -> pick(at[0], Value.Captured.values());
      case ANCHOR_LEG, WORKING_LEG ->
          new Value.Leg(
              direction(at),
              at[6] < 0.3
                  ? Optional.empty()
                  : Optional.of(distance(new double[] {at[3], at[4], at[5]})));
      case INSIDE_ANGLE, BEND, CHOKE_ANGLE, BASKET_ANGLE ->
          new Value.Turned(Angle.ofDegrees(grid(at[0], 0, 180, 0.5)));
      case SLING_POINTS -> new Value.Toward(direction(at));
    };
  }

  private static Value weight(double[] at) {
    return at[1] < 0.5
        ? new Value.Weight(
            Mass.ofPounds(grid(at[0], 80, 560, pick(at[2], 1.0, 0.5))), UnitSystem.INCH_POUND)
        : new Value.Weight(
            Mass.ofKilograms(grid(at[0], 40, 250, pick(at[2], 1.0, 0.1))), UnitSystem.METRIC);
  }

  private static Value diameter(double[] at) {
    return at[1] < 0.5
        ? inches(grid(at[0], 0.5, 60, pick(at[2], 1.0, 0.5, 0.25, 0.1)))
        : new Value.Distance(
            Length.ofCentimetres(grid(at[0], 1, 300, pick(at[2], 1.0, 0.5, 0.1))),
            UnitSystem.METRIC);
  }

  private static Value thickness(double[] at) {
    return at[1] < 0.5
        ? inches(grid(at[0], 0.25, 4, pick(at[2], 1.0, 0.5, 0.25)))
        : new Value.Distance(
            Length.ofCentimetres(grid(at[0], 0.5, 10, pick(at[2], 0.1, 0.5, 0.05))),
            UnitSystem.METRIC);
  }

  private static Value.Distance distance(double[] at) {
    if (at[1] < 0.3) {
      return inches(grid(at[0], 0, 600, pick(at[2], 1.0, 0.5)));
    }
    if (at[1] < 0.6) {
      double feet = grid(at[0], 0, 195, pick(at[2], 1.0, 0.5, 0.1, 0.25));
      return new Value.Distance(Length.ofFeet(feet), UnitSystem.INCH_POUND);
    }
    double metres = grid(at[0], 0, 60, pick(at[2], 1.0, 0.5, 0.05));
    return at[1] < 0.8
        ? new Value.Distance(Length.ofMetres(metres), UnitSystem.METRIC)
        : new Value.Distance(Length.ofCentimetres(Math.rint(metres)), UnitSystem.METRIC);
  }

  private static Value rating(double[] at) {
    if (at[1] < 0.4) {
      double kilonewtons = grid(at[0], 1.1, 60, pick(at[2], 1.0, 0.1, 0.5));
      return new Value.Rating(Force.ofKilonewtons(kilonewtons), UnitSystem.METRIC);
    }
    double pounds = at[1] < 0.7 ? grid(at[0], 1000, 9900, 100) : grid(at[0], 10_000, 19_000, 1000);
    return new Value.Rating(Force.ofPoundsForce(pounds), UnitSystem.INCH_POUND);
  }

  private static Direction direction(double[] at) {
    double elevation = grid(at[0], -90, 90, pick(at[1], 1.0, 0.5, 45.0));
    return Direction.ofDegrees(elevation, grid(at[2], -180, 150, 30));
  }

  // ---- the same value, but for what conversions leave ----

  private static void assertSame(Said expected, Said heard, String text) {
    assertEquals(expected.how(), heard.how(), text);
    assertSame(expected.value(), heard.value(), text);
  }

  private static void assertSame(Value expected, Value heard, String text) {
    if (expected instanceof Value.Weight weight) {
      Value.Weight other = (Value.Weight) heard;
      assertEquals(weight.mass().kilograms(), other.mass().kilograms(), SAME, text);
      assertEquals(weight.said(), other.said(), text);
    } else if (expected instanceof Value.Distance distance) {
      assertSameDistance(distance, (Value.Distance) heard, text);
    } else if (expected instanceof Value.Turned turned) {
      assertEquals(turned.angle().radians(), ((Value.Turned) heard).angle().radians(), SAME, text);
    } else if (expected instanceof Value.Rating rating) {
      Value.Rating other = (Value.Rating) heard;
      assertEquals(rating.force().newtons(), other.force().newtons(), 1e-6, text);
      assertEquals(rating.said(), other.said(), text);
    } else if (expected instanceof Value.Toward toward) {
      assertSameDirection(toward.direction(), ((Value.Toward) heard).direction(), text);
    } else if (expected instanceof Value.Leg leg) {
      Value.Leg other = (Value.Leg) heard;
      assertSameDirection(leg.direction(), other.direction(), text);
      assertEquals(leg.length().isPresent(), other.length().isPresent(), text);
      leg.length()
          .ifPresent(length -> assertSameDistance(length, other.length().orElseThrow(), text));
    } else {
      assertEquals(expected, heard, text);
    }
  }

  /** Nothing has no unit. */
  private static void assertSameDistance(
      Value.Distance expected, Value.Distance heard, String text) {
    assertEquals(expected.length().metres(), heard.length().metres(), SAME, text);
    if (expected.length().metres() > 0) {
      assertEquals(expected.said(), heard.said(), text);
    }
  }

  private static void assertSameDirection(Direction expected, Direction heard, String text) {
    assertEquals(expected.elevation().radians(), heard.elevation().radians(), SAME, text);
    assertEquals(expected.bearing().radians(), heard.bearing().radians(), SAME, text);
  }
}
