package rigspeak.answer;

import static rigspeak.answer.Sentences.sentence;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Reply;
import rigspeak.rig.HowGot;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;

/** Values in the words in which they can be said. */
final class SaidBack {
  /** How much of a limb a cavity can be said to take. */
  private static final Map<Double, String> FRACTIONS =
      Map.of(
          1.0 / 4, "one quarter",
          1.0 / 3, "one third",
          1.0 / 2, "one half",
          2.0 / 3, "two thirds",
          3.0 / 4, "three quarters");

  private static final String NONE = "none";

  private final Detail detail;
  private final Cases<Value, String> words =
      Cases.<Value, String>of(Value.class)
          .on(Value.Weight.class, Amounts::weight)
          .on(Value.Distance.class, Amounts::distance)
          .on(Value.Turned.class, turned -> Amounts.degrees(turned.angle()))
          .on(Value.Rating.class, Amounts::rating)
          .on(Value.Wraps.class, wraps -> wraps(wraps.turns()))
          .on(Value.Share.class, SaidBack::share)
          .on(Value.Toward.class, toward -> Pointing.exact(toward.direction()))
          .on(Value.Leg.class, SaidBack::leg)
          .on(Value.Species.class, SpeciesName::of)
          .on(Value.Union.class, SaidBack::union)
          .on(Value.Wood.class, wood -> lower(wood) + " wood")
          .on(Value.Hitch.class, SaidBack::lower)
          .on(Value.Seat.class, SaidBack::seat)
          .on(Value.Bark.class, SaidBack::lower)
          .on(Value.RunningOver.class, SaidBack::lower)
          .on(Value.CavityShape.class, SaidBack::cavityShape)
          .on(Value.ConnectorLies.class, SaidBack::connectorLies)
          .on(Value.RopeSystem.class, system -> lower(system) + " rope")
          .on(Value.Anchor.class, anchor -> lower(anchor) + " anchor")
          .on(
              Value.Captured.class,
              captured -> captured == Value.Captured.BOTH ? "both parts" : "single part")
          .all();

  /** Full form says how each value was got; brief form leaves "by eye" out, as a climber may. */
  SaidBack(Detail detail) {
    this.detail = detail;
  }

  /** One sentence: the value, and what it was before. */
  String item(Reply.Item item) {
    return item.before()
        .map(before -> changed(item.slot(), item.said(), before))
        .orElseGet(() -> sentence(phrase(item.slot(), item.said())));
  }

  /** One sentence for each. */
  String items(List<Reply.Item> items) {
    return Sentences.text(items.stream().map(this::item).toList());
  }

  private String changed(Slot slot, Said now, Said before) {
    String was = detail == Detail.FULL ? "it was " + bare(slot, before) : "";
    return sentence(SlotWords.title(slot), "now " + bare(slot, now), was);
  }

  /** With the slot's name, as it can be said at any time. */
  String phrase(Slot slot, Said said) {
    String bare = bare(slot, said);
    return switch (slot) {
      case WOOD, WRAPS, SEAT, ROPE_SYSTEM, ANCHOR, CAPTURED -> bare;
      case CAVITY, SLACK -> bare.equals(NONE) ? "no " + SlotWords.title(slot) : titled(slot, bare);
      case LIMB_RISE, UNION, HITCH, BARK, RUNNING_OVER, SLING_RATING, SLING_POINTS, STEM_CLEAR ->
          SlotWords.title(slot) + " " + bare;
      case CAVITY_SHAPE, CONNECTOR_LIES -> SlotWords.title(slot) + " " + bare;
      case ALL_UP, SPECIES, LIMB_DIAMETER, LIMB_LENGTH, OUT, STEM_DIAMETER -> titled(slot, bare);
      case THICK_END, SLING_THICKNESS, CHOKE_ANGLE, BASKET_ANGLE -> titled(slot, bare);
      case ANCHOR_LEG, WORKING_LEG, INSIDE_ANGLE, BEND -> titled(slot, bare);
    };
  }

  private static String titled(Slot slot, String bare) {
    return SlotWords.title(slot) + ", " + bare;
  }

  /** Without the slot's name. */
  private String bare(Slot slot, Said said) {
    return switch (slot) {
      case LIMB_DIAMETER, THICK_END, STEM_DIAMETER ->
          Amounts.diameter((Value.Distance) said.value()) + how(said.how());
      case SLING_THICKNESS -> Amounts.thickness((Value.Distance) said.value()) + how(said.how());
      case LIMB_RISE -> rise((Value.Turned) said.value()) + how(said.how());
      case OUT -> isNothing(said) ? "at the union" : measure(said);
      case SLACK -> isNothing(said) ? NONE : measure(said);
      case STEM_CLEAR -> "by " + measure(said);
      case ALL_UP ->
          words.make(said.value()) + (said.how() == HowGot.BY_EYE ? "" : how(said.how()));
      case LIMB_LENGTH, ANCHOR_LEG, WORKING_LEG, INSIDE_ANGLE, BEND, SLING_POINTS -> measure(said);
      case CHOKE_ANGLE, BASKET_ANGLE -> measure(said);
      case SPECIES, WOOD, UNION, CAVITY, HITCH, WRAPS, SEAT, BARK -> words.make(said.value());
      case CAVITY_SHAPE, CONNECTOR_LIES -> words.make(said.value());
      case SLING_RATING, RUNNING_OVER, ROPE_SYSTEM, ANCHOR, CAPTURED -> words.make(said.value());
    };
  }

  private String measure(Said said) {
    return words.make(said.value()) + how(said.how());
  }

  /** Nothing at all, in the words for nothing, which leave no room for how it was got. */
  private static boolean isNothing(Said said) {
    return ((Value.Distance) said.value()).length().metres() == 0 && said.how() == HowGot.BY_EYE;
  }

  private String how(HowGot how) {
    return switch (how) {
      case BY_TAPE -> ", by tape";
      case BY_HAND_SPAN -> ", by hand span";
      case BY_EYE -> detail == Detail.FULL ? ", by eye" : "";
      case BY_PACING -> ", by pacing";
      case GUESSED -> ", a guess";
      case ASSUMED -> "";
    };
  }

  private static String rise(Value.Turned rise) {
    String slope = Amounts.degrees(rise.angle());
    if (slope.equals(Amounts.degrees(0))) {
      return "level";
    }
    if (rise.angle().degrees() < 0) {
      return "drops " + slope;
    }
    return slope.equals(Amounts.degrees(90)) ? "upright" : "rises " + slope;
  }

  static String wraps(int turns) {
    return Numbers.whole(turns) + (turns == 1 ? " wrap" : " wraps");
  }

  private static String share(Value.Share share) {
    if (share.ofDiameter() == 0) {
      return NONE;
    }
    String percent = Amounts.percent(share.ofDiameter(), Amounts.Round.UP);
    return FRACTIONS.getOrDefault(share.ofDiameter(), percent);
  }

  private static String leg(Value.Leg leg) {
    String direction = Pointing.exact(leg.direction());
    return leg.length()
        .map(length -> direction + ", " + Amounts.distance(length))
        .orElse(direction);
  }

  /** Two conditions fit one statement; a third takes another. */
  private static String union(Value.Union union) {
    List<String> conditions = new ArrayList<>();
    for (Value.UnionCondition condition : union.conditions()) {
      conditions.add(condition(condition));
    }
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < conditions.size(); i += 2) {
      pairs.add(Sentences.list(conditions.subList(i, Math.min(i + 2, conditions.size()))));
    }
    return String.join(", union ", pairs);
  }

  private static String condition(Value.UnionCondition condition) {
    return switch (condition) {
      case SOUND -> "sound";
      case CODOMINANT -> "codominant";
      case INCLUDED_BARK -> "included bark";
      case CRACKED -> "cracked";
      case DECAYED -> "decayed";
    };
  }

  private static String seat(Value.Seat seat) {
    return switch (seat) {
      case FREE -> "sling free";
      case STUB -> "seated on a stub";
      case UNION -> "seated at the union";
    };
  }

  private static String cavityShape(Value.CavityShape shape) {
    return switch (shape) {
      case CENTERED -> "centered";
      case OFF_CENTER -> "off center";
      case OPEN -> "open";
    };
  }

  private static String connectorLies(Value.ConnectorLies lies) {
    return switch (lies) {
      case IN_LINE -> "in line";
      case CROSS_LOADED -> "cross loaded";
      case OVER_EDGE -> "over an edge";
    };
  }

  /** A value whose name is its word. */
  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
