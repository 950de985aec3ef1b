package rigspeak.answer;

import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigspeak.dialogue.Detail;
import rigspeak.drill.Asking;
import rigspeak.drill.Change;
import rigspeak.drill.Level;
import rigspeak.drill.Matter;
import rigspeak.drill.Question;
import rigspeak.drill.Step;
import rigspeak.quantity.Length;
import rigspeak.rig.HowGot;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.PathVerdict.Outcome;

/** Situations and questions of a drill. */
final class DrillQuestions {
  private static final SaidBack SAID_BACK = new SaidBack(Detail.BRIEF);
  private static final List<String> PLACES = List.of("the first", "the second", "the third");

  private DrillQuestions() {}

  static String of(Question question) {
    return text(situation(question), ask(question));
  }

  // ---- the situation ----

  private static String situation(Question question) {
    return Cases.<Matter, String>of(Matter.class)
        .on(Matter.OneRig.class, rig -> oneRig(question, rig))
        .on(Matter.TwoRigs.class, rigs -> twoRigs(question.asking(), rigs))
        .on(Matter.Steps.class, steps -> steps(steps.named()))
        .on(Matter.Lanyard.class, DrillQuestions::lanyard)
        .all()
        .make(question.matter());
  }

  private static String oneRig(Question question, Matter.OneRig rig) {
    return switch (question.asking()) {
      case DIGITS -> sentence(inOneWord(rig.told().get(0)));
      case SLIDE, WRAPS ->
          text(sentences(rig.told()), "The sling hangs free and points straight down.");
      case DROP, WAY, HARD -> text(sentences(rig.told()), "The redirect lets go.");
      default -> sentences(rig.told());
    };
  }

  private static String twoRigs(Asking asking, Matter.TwoRigs rigs) {
    return switch (asking) {
      case READ_BACK ->
          text("The plan.", sentences(rigs.first()), "Read back.", sentences(rigs.second()));
      case MORE -> {
        List<Change> changed = new ArrayList<>(rigs.second());
        changed.removeAll(rigs.first());
        yield text(sentences(rigs.first()), "Now instead.", sentences(changed));
      }
      case STRONGER ->
          text(
              "The first.",
              sentences(rigs.first()),
              "The second.",
              sentences(rigs.second()),
              "Both are pulled alike, three feet out.");
      default ->
          text("The first.", sentences(rigs.first()), "The second.", sentences(rigs.second()));
    };
  }

  private static String sentences(List<Change> changes) {
    return text(changes.stream().map(DrillQuestions::sentenceOf).toList());
  }

  /** By tape, as all of it is; that was said once. */
  private static String sentenceOf(Change change) {
    return change
        .said()
        .map(said -> sentence(SAID_BACK.phrase(change.slot(), bare(said))))
        .orElseGet(() -> sentence("nobody has said " + SlotWords.name(change.slot())));
  }

  /** One value after these words. */
  static String said(String start, Change change) {
    return change
        .said()
        .map(said -> sentence(start + SAID_BACK.phrase(change.slot(), bare(said))))
        .orElse("");
  }

  private static Said bare(Said said) {
    return new Said(said.value(), HowGot.BY_EYE);
  }

  /** As it is said by somebody who does not think of twins. */
  private static String inOneWord(Change change) {
    Value value = change.said().orElseThrow().value();
    if (value instanceof Value.Distance distance) {
      Length length = distance.length();
      return SlotWords.title(change.slot()) + " by " + Numbers.label(length.feet()) + " feet";
    }
    String degrees = Numbers.label(((Value.Turned) value).angle().degrees()) + " degrees";
    return change.slot() == Slot.LIMB_RISE
        ? "limb rises " + degrees
        : SlotWords.title(change.slot()) + " " + degrees;
  }

  private static String steps(List<Step> named) {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < named.size(); i++) {
      sentences.add(sentence(PLACES.get(i), step(named.get(i))));
    }
    return text(sentences);
  }

  static String step(Step step) {
    return switch (step) {
      case CLIP_IN -> "clip in the lanyard";
      case CHECK -> "check the redirect";
      case SET -> "set the sling";
      case MOVE -> "move the sling";
      case TAKE_OFF -> "take the sling off";
      case LOAD -> "load the rope";
      case RELEASE -> "release the lanyard";
    };
  }

  private static String lanyard(Matter.Lanyard lanyard) {
    return text(
        sentence("the check said " + outcome(lanyard.check())),
        lanyard.rope() == Matter.Loading.LOADED
            ? "The rope is loaded."
            : "The rope is not loaded yet.");
  }

  private static String outcome(Outcome outcome) {
    return switch (outcome) {
      case GOOD -> "good to load";
      case MARGINAL -> "marginal";
      case CANNOT_SAY -> "cannot say";
      case REFUSE -> "do not load";
    };
  }

  // ---- the question ----

  private static String ask(Question question) {
    return switch (question.asking()) {
      case WHERE ->
          question.level() == Level.FIRST
              ? "What does the load do, into the union, lever, lift, side or pull?"
              : "What does the load do to the limb?";
      case INSIDE, INSIDE_OF_BEND -> "What is the inside angle?";
      case BEND -> "What is the bend?";
      case FACTOR -> "The sling takes how many times the pull of the rope?";
      case PULLS_MORE -> "Which loads the sling more?";
      case STRONGER -> "Which union is used less?";
      case MORE -> "The limb takes how many times as much?";
      case SLIDE -> "Slides, or holds?";
      case WRAPS -> "At least how many wraps hold it?";
      case DROP -> "You drop how many feet?";
      case WAY -> "Which way do you swing?";
      case HARD -> "Your swing is as hard as a fall of how many feet?";
      case COMES_FIRST -> "Which has to be done before?";
      case LANYARD -> "Keep the lanyard, or release the lanyard?";
      case READ_BACK -> "Affirm, or which one is wrong?";
      case DIGITS -> "Say the number, digit by digit.";
      case GO_OR_REFUSE -> "Go, refuse, or can nobody say?";
    };
  }

  /** An answer that can be said, with how sure it is. */
  static String example(Asking asking) {
    String answer =
        switch (asking) {
          case WHERE -> "into the union";
          case INSIDE, BEND, INSIDE_OF_BEND -> "one two zero degrees";
          case FACTOR, MORE -> "one point four times";
          case PULLS_MORE, STRONGER, COMES_FIRST -> "the second";
          case SLIDE -> "holds";
          case WRAPS -> "three wraps";
          case DROP, HARD -> "three and a half feet";
          case WAY -> "toward the stem";
          case LANYARD -> "keep the lanyard";
          case READ_BACK -> "affirm, or the second";
          case DIGITS -> "one five";
          case GO_OR_REFUSE -> Asking.GO_OR_REFUSE.choices().get(1).name().toLowerCase(Locale.ROOT);
        };
    return answer + ", ninety percent";
  }
}
