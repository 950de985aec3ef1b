package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.ArrayList;
import java.util.List;
import rigspeak.answer.Amounts.Round;
import rigspeak.catalogue.Conflict;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Reply;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.rig.Value;
import rigspeak.verdict.Check;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.Load;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Refusal;
import rigspeak.verdict.Verdict;
import rigspeak.verdict.Verdict.Rating;

/** Verdicts: what comes of a rig, why, and what would help. */
final class VerdictWords {
  /** No message names more things than a listener keeps in mind. */
  private static final int MOST_ITEMS = 3;

  /** A part of the load that is smaller than this share of it is not worth a number. */
  private static final double NOTHING = 0.01;

  private static final double PLUMB = 90;

  private final Detail detail;
  private final SaidBack saidBack;

  private final Cases<Verdict, String> bodies =
      Cases.<Verdict, String>of(Verdict.class)
          .on(Verdict.Judged.class, judged -> text(reason(judged), change(judged)))
          .on(Verdict.RefusedOutright.class, this::refusals)
          .on(Verdict.CannotSay.class, this::unknown)
          .on(Verdict.WaitsFor.class, VerdictWords::waits)
          .all();

  private final Cases<Verdict, String> reasons =
      Cases.<Verdict, String>of(Verdict.class)
          .on(Verdict.Judged.class, this::why)
          .on(Verdict.RefusedOutright.class, this::refusals)
          .on(Verdict.CannotSay.class, this::unknown)
          .on(Verdict.WaitsFor.class, VerdictWords::waits)
          .all();

  private final Cases<Verdict, String> help =
      Cases.<Verdict, String>of(Verdict.class)
          .on(Verdict.Judged.class, this::wouldHelp)
          .on(
              Verdict.RefusedOutright.class,
              each -> "Nothing makes it good. Choose another limb or union.")
          .on(Verdict.CannotSay.class, this::unknown)
          .on(Verdict.WaitsFor.class, VerdictWords::waits)
          .all();

  VerdictWords(Detail detail, SaidBack saidBack) {
    this.detail = detail;
    this.saidBack = saidBack;
  }

  /** Verdict, load, reason, change; the values it hangs on; what stands above it. */
  List<Utterance> judged(Reply.Judged judged) {
    PathVerdict verdict = judged.verdict();
    String values =
        judged.governing().isEmpty()
            ? ""
            : text(or("By these values.", ""), saidBack.items(judged.governing()));
    String rules =
        verdict.isGood()
            ? or(
                "Local rules, your crew and a load test from the ground decide.",
                "Your crew and a load test decide.")
            : "";
    String rest = text(body(verdict), values, lanyard(), rules);
    Utterance head = head(verdict);
    return head.danger()
        ? List.of(head, Utterance.calm(rest))
        : List.of(Utterance.calm(text(head.text(), rest)));
  }

  /** The verdict alone, and which support it comes from if that is another one. */
  Utterance head(PathVerdict verdict) {
    String which = Places.title(verdict.asked());
    String because =
        verdict.governing().equals(verdict.asked())
            ? ""
            : "because of " + Places.name(verdict.governing());
    return switch (verdict.outcome()) {
      case GOOD -> Utterance.calm(sentence("good to load", which, "by the numbers you gave"));
      case MARGINAL -> Utterance.calm(sentence("marginal", which, because, "do not load it yet"));
      case CANNOT_SAY ->
          Utterance.calm(text(sentence("cannot say", which, because), "Do not load it yet."));
      case REFUSE -> Utterance.danger(sentence("do not load", which, because));
    };
  }

  String lanyard() {
    return or("Clip in before you set, move or take off a redirect.", "Clip in first.");
  }

  String why(PathVerdict verdict) {
    return text(
        of(verdict.governing(), verdict),
        reasons.make(verdict.ofGoverning()),
        or(otherPull(verdict), ""));
  }

  String wouldHelp(PathVerdict verdict) {
    return verdict.isGood()
        ? "It is good as it stands, by the numbers you gave."
        : text(of(verdict.governing(), verdict), help.make(verdict.ofGoverning()));
  }

  /** Names the support that is spoken of where it is not the one that was asked about. */
  private static String of(Place place, PathVerdict verdict) {
    return place.equals(verdict.asked()) ? "" : sentence(Places.title(place));
  }

  private String body(PathVerdict verdict) {
    String load = verdict.ofAsked() instanceof Verdict.Judged judged ? load(judged) : "";
    boolean elsewhere = !verdict.governing().equals(verdict.asked());
    String there =
        elsewhere && verdict.ofGoverning() instanceof Verdict.Judged judged
            ? pull(verdict.governing(), judged)
            : "";
    String go =
        elsewhere && verdict.outcome() == PathVerdict.Outcome.CANNOT_SAY
            ? sentence("say go to " + Places.name(verdict.governing()))
            : "";
    return text(load, there, bodies.make(verdict.ofGoverning()), go);
  }

  /** How the main point is pulled now, where nobody has heard it yet. */
  private static String otherPull(PathVerdict verdict) {
    Place main = Place.MAIN_POINT;
    boolean told = verdict.governing().equals(main);
    return !told && verdict.supports().get(main) instanceof Verdict.Judged judged
        ? pull(main, judged)
        : "";
  }

  /** A pull whose bearing was not said is told by how far it is off plumb. */
  private static String pull(Place place, Verdict.Judged judged) {
    Load load = judged.load();
    double offPlumb = PLUMB + load.elevationDeg().nominal();
    String size = Amounts.force(load.resultantN().high(), units(judged), Round.UP);
    String where =
        offPlumb < PLUMB ? Amounts.degrees(Math.rint(offPlumb)) + " off straight down" : "upward";
    return sentence(Places.name(place) + " is pulled " + where, "with at most " + size);
  }

  private static String waits(Verdict.WaitsFor waits) {
    return sentence("its pull is not known before " + Places.name(waits.place()) + " is");
  }

  /* ---- where the load goes ---- */

  private String load(Verdict.Judged judged) {
    Load load = judged.load();
    String size = Amounts.force(load.resultantN().nominal(), units(judged), Round.UP);
    String where = Pointing.about(load.elevationDeg().nominal(), load.bearingDeg().nominal());
    boolean left = load.sideN().nominal() > 0;
    String about = "the load points " + where + ", about " + size;
    return switch (load.loadClass()) {
      case NONE -> "Both legs cancel, so nothing pulls on the sling.";
      case INTO_UNION ->
          or(sentence(about, "mostly into the union"), sentence("into the union", size));
      case PULL ->
          or(
              sentence(about, "and pulls the limb away from the union"),
              sentence("pulls outward", size));
      case LEVER -> or(sentence(about, "and levers the limb down"), sentence("levers down", size));
      case LIFT -> or(sentence(about, "and lifts the limb"), sentence("lifts", size));
      case SIDE ->
          or(
              sentence(about, "and pulls the limb to its " + (left ? "left" : "right")),
              sentence("side load to the " + (left ? "left" : "right"), size));
    };
  }

  private static UnitSystem units(Verdict.Judged judged) {
    return judged
        .rig()
        .said()
        .value(Slot.ALL_UP, Value.Weight.class)
        .map(Value.Weight::said)
        .orElse(UnitSystem.INCH_POUND);
  }

  /* ---- the one reason ---- */

  private String reason(Verdict.Judged judged) {
    Check governing = judged.governing();
    boolean refused = judged.rating() == Rating.REFUSE;
    double use = refused ? governing.utilisation().nominal() : governing.utilisation().high();
    String subject = subject(governing.kind(), judged.rig().said());
    String takes = Amounts.shareOf(use, "what I count on");
    String full =
        switch (judged.rating()) {
          case GOOD -> sentence("closest to its limit is " + subject, "at worst " + takes);
          case MARGINAL ->
              sentence("it holds as you said it", "but at worst " + subject + " takes " + takes);
          case REFUSE -> sentence("even as you said it", subject + " takes " + takes);
        };
    return or(full, sentence(subject, takes));
  }

  private static String subject(CheckKind kind, Rig said) {
    return switch (kind) {
      case LIMB_AT_UNION -> "the limb at the union";
      case LIMB_AT_SLING -> "the limb under the sling";
      case LIMB_BETWEEN -> "the limb between union and sling";
      case STEM_BETWEEN -> "the stem up to the main point";
      case SHEAR_AT_UNION -> "the shear at the union";
      case SHEAR_AT_SLING -> "the shear under the sling";
      case COLUMN -> "the limb end on";
      case SHELL -> "the hollow";
      case SLING -> "the sling";
      case SLIP -> "the grip of the sling";
      case CONNECTOR -> connector(said);
      case ROPE -> "the rope";
    };
  }

  private static String connector(Rig said) {
    return said.value(Slot.RUNNING_OVER, Value.RunningOver.class)
        .map(
            over ->
                switch (over) {
                  case CARABINER -> "the carabiner";
                  case RING -> "the ring";
                  case PULLEY -> "the pulley";
                  case BARK -> "the bark";
                })
        .orElse("the connector");
  }

  /* ---- the change worth making ---- */

  private String change(Verdict.Judged judged) {
    return switch (judged.rating()) {
      case GOOD -> "";
      case REFUSE -> cheapest(judged);
      case MARGINAL -> text(cheapest(judged), measureAgain(judged));
    };
  }

  private String cheapest(Verdict.Judged judged) {
    return judged.remedies().stream()
        .findFirst()
        .map(remedy -> RemedyWords.of(remedy, judged.rig().said()))
        .map(change -> sentence(change, or("then check again", "")))
        .orElse("Choose another limb or union.");
  }

  private String measureAgain(Verdict.Judged judged) {
    return judged
        .measureAgain()
        .map(RemedyWords::measured)
        .map(
            what ->
                or(
                    sentence("or measure " + what + " again", "it matters most"),
                    sentence("or measure " + what + " again")))
        .orElse("");
  }

  private String wouldHelp(Verdict.Judged judged) {
    List<String> changes =
        judged.remedies().stream()
            .limit(MOST_ITEMS)
            .map(remedy -> RemedyWords.of(remedy, judged.rig().said()))
            .toList();
    String again = judged.rating() == Rating.MARGINAL ? measureAgain(judged) : "";
    if (changes.isEmpty()) {
      return text("No change I know makes it good.", "Choose another limb or union.", again);
    }
    List<String> sentences = new ArrayList<>();
    if (changes.size() > 1) {
      sentences.add(or("Each of these would do by itself.", ""));
    }
    for (String change : changes) {
      sentences.add(sentence((change.equals(changes.get(0)) ? "" : "or ") + change));
    }
    sentences.add(again);
    sentences.add("Then check again.");
    return text(sentences);
  }

  /* ---- why ---- */

  private String why(Verdict.Judged judged) {
    return text(
        or(parts(judged), ""),
        or(turn(judged.load()), ""),
        demand(judged),
        or(atItsLimit(judged), ""),
        assumptions(judged.rig()),
        provenance(judged.governing().sources()));
  }

  /** The load along the limb, across it and sideways; the parts are square to one another. */
  private static String parts(Verdict.Judged judged) {
    Load load = judged.load();
    UnitSystem units = units(judged);
    double all = load.resultantN().nominal();
    return text(
        part("along the limb", load.alongN().nominal(), all, units, "outward", "into the union"),
        part("across it", load.topN().nominal(), all, units, "up", "down"),
        part("sideways", load.sideN().nominal(), all, units, "to the left", "to the right"));
  }

  private static String part(
      String where,
      double newtons,
      double all,
      UnitSystem units,
      String positive,
      String negative) {
    double size = Math.abs(newtons);
    if (size <= NOTHING * all) {
      return sentence(where, "nothing");
    }
    String force = Amounts.force(size, units, Round.UP);
    return sentence(where, force + " " + (newtons > 0 ? positive : negative));
  }

  private static String turn(Load load) {
    String movement = "counted " + Amounts.times(load.peakFactor().nominal()) + " for movement";
    if (load.insideDeg().isEmpty() || load.angleFactor().isEmpty()) {
      return sentence(movement);
    }
    double factor = load.angleFactor().get().nominal();
    return sentence(
        "inside angle " + Amounts.degrees(Math.rint(load.insideDeg().get().nominal())),
        "the sling takes " + Amounts.times(factor) + " the pull of the rope",
        movement);
  }

  /** What gives first, and how. */
  private static String atItsLimit(Verdict.Judged judged) {
    boolean fork = judged.rig().union().codominant();
    return switch (judged.governing().kind()) {
      case LIMB_AT_UNION ->
          fork
              ? "At its limit the union would split."
              : "At its limit it would break at the union.";
      case LIMB_AT_SLING -> "At its limit it would break under the sling.";
      case LIMB_BETWEEN -> "At its limit it would break between union and sling.";
      case STEM_BETWEEN -> "At its limit the stem would bend and break below the main point.";
      case SHEAR_AT_UNION, SHEAR_AT_SLING -> "At its limit it would split along the grain.";
      case COLUMN -> "At its limit it would bow out.";
      case SHELL -> "At its limit the shell would cave in.";
      case SLIP -> "At its limit the sling would slide.";
      case SLING -> "At its limit the sling would tear.";
      case CONNECTOR, ROPE -> "At its limit it would break.";
    };
  }

  private String demand(Verdict.Judged judged) {
    Check check = judged.governing();
    double demand = check.demand().nominal();
    double capacity = check.capacity().nominal();
    UnitSystem units = units(judged);
    String taken =
        switch (check.kind().unit()) {
          case NEWTON -> Amounts.force(demand, units, Round.UP);
          case PASCAL -> Amounts.stress(demand, units, Round.UP);
          case RATIO -> Amounts.percent(demand, Round.UP) + " of the limb";
        };
    String counted =
        switch (check.kind().unit()) {
          case NEWTON -> Amounts.force(capacity, units, Round.DOWN);
          case PASCAL -> Amounts.stress(capacity, units, Round.DOWN);
          case RATIO -> Amounts.percent(capacity, Round.DOWN);
        };
    String subject = subject(check.kind(), judged.rig().said());
    String worst = Amounts.shareOf(check.utilisation().high(), "that");
    return text(
        sentence(subject + " takes " + taken + or(" as you said it", ""), "I count on " + counted),
        or(sentence("at worst it takes " + worst), ""));
  }

  private String assumptions(ResolvedRig rig) {
    List<String> taken = new ArrayList<>();
    Value.Species species =
        rig.said().value(Slot.SPECIES, Value.Species.class).orElse(Value.Species.unknown());
    if (species.isUnknown()) {
      taken.add("the weakest wood");
    } else if (rig.wood().species().isEmpty()) {
      taken.add("the weakest " + SpeciesName.of(species));
    }
    rig.assumptions().forEach(each -> taken.add(assumption(each.slot())));
    return taken.isEmpty()
        ? ""
        : sentence(or("for what you did not say I took ", "I took ") + list(taken));
  }

  private static String assumption(Slot slot) {
    return switch (slot) {
      case BARK -> "wet bark";
      case SEAT -> "a sling that hangs free";
      case SLING_RATING -> "the least rating of slings";
      case LIMB_LENGTH -> "a limb without weight";
      default -> "the worst that is usual for " + SlotWords.name(slot);
    };
  }

  private static String provenance(List<Source> sources) {
    List<String> kinds =
        sources.stream()
            .map(Source::provenance)
            .distinct()
            .sorted()
            .map(VerdictWords::provenance)
            .toList();
    return kinds.isEmpty() ? "" : sentence("the limit rests on " + list(kinds));
  }

  private static String provenance(Source.Provenance provenance) {
    return switch (provenance) {
      case PUBLISHED -> "published figures";
      case COMPUTED -> "textbook formulas";
      case COMMON_PRACTICE -> "common practice";
      case MEMORY -> "figures from memory";
      case JUDGEMENT -> "judgment";
      case SAID -> "what you said";
    };
  }

  /* ---- no verdict by numbers ---- */

  private String refusals(Verdict.RefusedOutright refused) {
    List<String> reasons = refused.refusals().stream().map(this::refusal).toList();
    return text(text(reasons), "Choose another limb or union.");
  }

  private String refusal(Refusal refusal) {
    return switch (refusal) {
      case DEAD_WOOD ->
          or("Dead wood is not loaded, nobody knows what it holds.", "Dead wood is not loaded.");
      case CRACKED_UNION ->
          or(
              "A cracked union is not loaded, nobody knows what it holds.",
              "A cracked union is not loaded.");
      case CONNECTOR_OVER_EDGE ->
          or(
              "A connector that bends over an edge is not loaded, nobody rates it so.",
              "No connector is loaded over an edge.");
    };
  }

  private String unknown(Verdict.CannotSay cannotSay) {
    List<Conflict> conflicts = cannotSay.conflicts();
    int most = detail == Detail.FULL ? MOST_ITEMS : MOST_ITEMS - 1;
    int told = Math.min(most, conflicts.size());
    List<String> sentences = new ArrayList<>();
    conflicts.subList(0, told).forEach(conflict -> sentences.add(ConflictWords.of(conflict)));
    if (conflicts.size() > told) {
      sentences.add(more(conflicts.size() - told, "thing does", "things do") + " not fit.");
    }
    sentences.add(missing(cannotSay.missing(), most - told));
    return text(sentences);
  }

  private static String more(int count, String one, String many) {
    String number = sentence(Numbers.whole(count));
    return number.substring(0, number.length() - 1) + " more " + (count == 1 ? one : many);
  }

  /** What has not been said yet, three at a time. */
  static String missing(List<Slot> slots) {
    return missing(slots, MOST_ITEMS);
  }

  private static String missing(List<Slot> slots, int most) {
    if (slots.isEmpty()) {
      return "";
    }
    int named = Math.min(most, slots.size());
    int more = slots.size() - named;
    if (named == 0) {
      return sentence("I still need " + Numbers.whole(more) + (more == 1 ? " value" : " values"));
    }
    String names = list(slots.subList(0, named).stream().map(SlotWords::name).toList());
    return sentence(
        "I still need " + names, more == 0 ? "" : "and " + Numbers.whole(more) + " more");
  }

  private String or(String full, String brief) {
    return detail == Detail.FULL ? full : brief;
  }
}
