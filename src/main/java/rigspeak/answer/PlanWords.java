package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Lanyard;
import rigspeak.dialogue.Reply;
import rigspeak.plan.PlanVerdict;
import rigspeak.plan.PlanVerdict.Hanging;
import rigspeak.plan.Step;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Source;
import rigspeak.verdict.Check;
import rigspeak.verdict.Loss;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;

/** What is said of a plan, and what stands on the card of it. */
public final class PlanWords {
  private static final Form FORM = new Form(Detail.FULL);
  private static final LossWords LOSSES = new LossWords(FORM, Numerals.WRITTEN);
  private static final VerdictWords VERDICTS = new VerdictWords(FORM, new SaidBack(Detail.FULL));

  private PlanWords() {}

  /** "Plan: north side, Tuesday". */
  public static String title(PlanVerdict verdict) {
    return "Plan: " + verdict.plan().name();
  }

  /** What comes of the whole plan. */
  public static String outcome(PlanVerdict verdict) {
    return text(comesOf(verdict), supplied(verdict));
  }

  private static String supplied(PlanVerdict verdict) {
    return verdict.ropes().stream()
        .map(hanging -> Grounds.supplied(hanging.verdict()))
        .filter(said -> !said.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static String comesOf(PlanVerdict verdict) {
    if (!verdict.isInOrder()) {
      return "Do not climb by this plan. A step is not in order.";
    }
    if (!verdict.refused().isEmpty()) {
      return "Cannot say. A line of the plan was not taken.";
    }
    return switch (verdict.outcome()) {
      case GOOD -> "Good to load, every rope of the plan, by the numbers you gave.";
      case MARGINAL -> "Marginal. Do not climb by this plan yet.";
      case CANNOT_SAY ->
          verdict.ropes().isEmpty()
              ? "Cannot say. The plan names no redirect."
              : "Cannot say. Do not climb by this plan yet.";
      case REFUSE -> "Do not climb by this plan.";
    };
  }

  /** Which rope it is, by the lines that it is said in. */
  public static String rope(Hanging hanging) {
    List<String> places = hanging.verdict().path().places().stream().map(Places::title).toList();
    String path = "the rope over " + list(places);
    return sentence(hanging.set() ? path : path + ", planned only");
  }

  /** Which support it is, and on which rope. */
  public static String support(Hanging hanging, Place place) {
    String rest =
        list(
            hanging.verdict().path().places().stream()
                .filter(other -> !other.equals(place))
                .map(Places::title)
                .toList());
    String title = PictureWords.title(place);
    return rest.isEmpty() ? title : title + ", on the rope with " + rest;
  }

  /** The verdict on a rope in one line. */
  public static String verdict(PathVerdict verdict) {
    return VERDICTS.head(verdict).text();
  }

  /** Over a picture of a rope from end to end. */
  public static String overview() {
    return "The rope's path, unrolled";
  }

  public static String anchorEnd() {
    return "base";
  }

  public static String climber() {
    return "climber";
  }

  /** What was drawn without its length. */
  public static String lengthNotSaid() {
    return "Broken: length not said.";
  }

  /* ---- the steps ---- */

  public static String steps() {
    return "In this order, lanyard first";
  }

  public static String noSteps() {
    return "The plan sets nothing.";
  }

  /** One step in a few words. */
  public static String step(Step step) {
    String place = Places.name(step.place());
    String what =
        switch (step.kind()) {
          case CLIP_IN -> "clip in, look at it, affirm";
          case SET -> "set " + place;
          case MOVE -> "move " + place;
          case TAKE_OFF -> "take off " + place;
          case LOAD -> "load the rope on " + place;
          case RELEASE -> "release the lanyard";
        };
    return step.isInOrder() ? sentence(what) : text(sentence(what), trouble(step));
  }

  private static String trouble(Step step) {
    List<String> why = step.troubles().stream().map(PlanWords::trouble).toList();
    return sentence("not in order", list(why));
  }

  private static String trouble(Step.Trouble trouble) {
    return switch (trouble) {
      case LANYARD_FIRST -> "the lanyard is not clipped in";
      case NOT_CHECKED -> "it is not checked";
      case NOT_GOOD -> "it is not good to load";
      case NOT_LOADED -> "the rope is not loaded";
    };
  }

  /** "Line 12". */
  public static String line(int number) {
    return "Line " + number;
  }

  /* ---- of one support ---- */

  /** What happens if it lets go; nothing where that was not worked out. */
  public static String ifLost(PathVerdict verdict, Place place) {
    Loss loss = verdict.losses().get(place);
    UnitSystem units = PictureWords.units(verdict.path().at(place));
    return loss == null
        ? ""
        : LOSSES.letsGo(new Reply.LetsGo(place, loss, units, Lanyard.CLIPPED_IN));
  }

  /** What would help where a support is not good; empty where it is. */
  public static String help(PathVerdict verdict, Place place) {
    return verdict.supports().get(place) instanceof Verdict.Judged judged
            && judged.rating() != Verdict.Rating.GOOD
        ? VERDICTS.wouldHelp(asked(verdict, place))
        : "";
  }

  private static PathVerdict asked(PathVerdict verdict, Place place) {
    return new PathVerdict(
        verdict.path(), place, verdict.supports(), verdict.losses(), verdict.swing());
  }

  /* ---- at the foot ---- */

  public static String cautionsTitle() {
    return "Cautions";
  }

  public static List<String> cautions() {
    return List.of(
        "This card is a thinking aid, never a licence to load. Local codes, the crew's rules and"
            + " licensed practice stand above it.",
        "It knows what was said when it was made. Before anything is loaded, say the rig as it is"
            + " and hear its check.",
        "No number replaces inspecting tree and gear, and a load test from the ground.",
        "Clip in before you set, move or take off a redirect.");
  }

  public static String sourcesTitle() {
    return "Sources";
  }

  /** Where the limits come from, how far each can be relied on; what was said is left out. */
  public static List<String> sources(PlanVerdict verdict) {
    Set<Source> sources = new LinkedHashSet<>();
    for (Hanging hanging : verdict.ropes()) {
      sources.addAll(Grounds.suppliedSources(hanging.verdict()));
      for (Verdict each : hanging.verdict().supports().values()) {
        if (each instanceof Verdict.Judged judged) {
          Check governing = judged.governing();
          sources.addAll(governing.sources());
        }
      }
    }
    List<String> lines = new ArrayList<>();
    for (Source source : sources) {
      if (source.provenance() != Source.Provenance.SAID) {
        lines.add(provenance(source) + ": " + source.title());
      }
    }
    return lines;
  }

  private static String provenance(Source source) {
    return switch (source.provenance()) {
      case PUBLISHED -> "Published";
      case COMPUTED -> "Textbook";
      case COMMON_PRACTICE -> "Common practice";
      case MEMORY -> "From memory";
      case JUDGEMENT -> "Judgment";
      case SUPPLIED -> "Your crew's own";
      case SAID -> "Said";
    };
  }

  /** "Page 1 of 3". */
  public static String page(int page, int pages) {
    return "Page " + page + " of " + pages;
  }
}
