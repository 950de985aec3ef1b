package rigspeak.answer;

import static rigspeak.answer.Sentences.list;
import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigspeak.catalogue.Conflict;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Lanyard;
import rigspeak.dialogue.Pace;
import rigspeak.dialogue.Pending;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Reply.Change;
import rigspeak.dialogue.Reply.Hold;
import rigspeak.meaning.Meaning.Reason;
import rigspeak.meaning.Meaning.Trouble;
import rigspeak.quantity.Angle;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;
import rigspeak.verdict.PathVerdict;

/** Puts replies into the words that are spoken and printed. */
public final class Answers {
  private static final Map<Detail, Answers> BY_DETAIL = new EnumMap<>(Detail.class);

  static {
    for (Detail detail : Detail.values()) {
      BY_DETAIL.put(detail, new Answers(detail));
    }
  }

  private static final String STANDING_BY = "Standing by. Every value is kept.";

  private final Form form;
  private final SaidBack saidBack;
  private final VerdictWords verdicts;
  private final LossWords losses;
  private final Cases<Reply, List<Utterance>> words;

  private Answers(Detail detail) {
    this.form = new Form(detail);
    this.saidBack = new SaidBack(detail);
    this.verdicts = new VerdictWords(form, saidBack);
    this.losses = new LossWords(form, Numerals.SPOKEN);
    this.words = cases();
  }

  /**
   * What is said to these replies, in their order.
   *
   * @param replies of one step of the conversation
   * @param detail how much is said
   */
  public static List<Utterance> say(List<Reply> replies, Detail detail) {
    Answers answers = BY_DETAIL.get(detail);
    return replies.stream().flatMap(reply -> answers.words.make(reply).stream()).toList();
  }

  private Cases<Reply, List<Utterance>> cases() {
    return Cases.<Reply, List<Utterance>>of(Reply.class)
        // values
        .on(Reply.Taken.class, taken -> calm(saidBack.items(taken.items())))
        .on(Reply.AffirmValue.class, affirm -> calm(affirmValue(affirm.item())))
        .on(Reply.AffirmDoubtful.class, doubtful -> calm(affirmDoubtful(doubtful.items())))
        .on(Reply.ReadBack.class, readBack -> calm(readBack(readBack)))
        .on(Reply.Affirmed.class, affirmed -> calm("Affirmed."))
        .on(Reply.Dropped.class, dropped -> calm(dropped(dropped.slots())))
        .on(Reply.Scrapped.class, scrapped -> calm(scrapped(scrapped.item())))
        .on(Reply.CorrectionAsked.class, asked -> calm(sentence(SlotWords.question(asked.slot()))))
        .on(Reply.NothingToTakeBack.class, nothing -> calm("There is nothing to take back."))
        .on(Reply.AffirmFirst.class, first -> calm(affirmFirst(first.pending())))
        .on(Reply.Implausible.class, implausible -> calm(implausible(implausible.offence())))
        .on(Reply.SaidTwice.class, twice -> calm(saidTwice(twice.slot())))
        .on(Reply.WhichAngle.class, which -> calm(whichAngle(which.angle())))
        .on(Reply.Asked.class, asked -> calm(asked(asked.slot())))
        .on(Reply.Missing.class, missing -> calm(missing(missing.slots())))
        .on(Reply.MissingElsewhere.class, missing -> calm(missingElsewhere(missing)))
        // verdicts
        .on(Reply.Judged.class, verdicts::judged)
        .on(Reply.VerdictCancelled.class, cancelled -> calm(verdictCancelled(cancelled.places())))
        .on(Reply.Why.class, why -> calm(verdicts.why(why.verdict())))
        .on(Reply.WouldHelp.class, help -> calm(verdicts.wouldHelp(help.verdict())))
        .on(Reply.NotJudged.class, not -> calm("Not checked yet. Say check redirect."))
        // what a fall would be
        .on(Reply.LetsGo.class, lets -> calm(losses.letsGo(lets)))
        .on(Reply.WouldSwing.class, swing -> calm(losses.wouldSwing(swing)))
        .on(Reply.SwingNotKnown.class, unknown -> calm(losses.swingNotKnown(unknown)))
        // the lanyard
        .on(Reply.LanyardFirst.class, first -> calm("Lanyard first. Say clipped in."))
        .on(Reply.AffirmClippedIn.class, clipped -> calm(affirmClippedIn()))
        .on(Reply.ClippedIn.class, this::clippedIn)
        .on(Reply.LoadHeard.class, this::loadHeard)
        .on(Reply.HoldLanyard.class, hold -> danger(holdLanyard(hold.reasons())))
        .on(Reply.LanyardReleased.class, released -> calm("Lanyard released."))
        .on(Reply.Attached.class, attached -> calm(attached(attached)))
        // from redirect to redirect
        .on(Reply.Turned.class, turned -> calm(turned(turned)))
        .on(Reply.NoSuchRedirect.class, none -> calm(noSuchRedirect(none)))
        // when nothing was understood or heard
        .on(Reply.Again.class, again -> calm(again(again)))
        .on(Reply.Silent.class, silent -> calm(silent(silent)))
        .on(Reply.CannotHear.class, cannot -> calm(cannotHear(cannot.trouble())))
        .on(Reply.StandingBy.class, standing -> calm(STANDING_BY))
        // an ear-sound says it all
        .on(Reply.Listening.class, listening -> List.of())
        .on(Reply.FallenAsleep.class, asleep -> List.of())
        // how answers are given
        .on(Reply.DetailSet.class, set -> calm(detail(set.detail())))
        .on(Reply.PaceSet.class, set -> calm(pace(set.pace())))
        .on(Reply.GoesOn.class, goesOn -> calm(goesOn(goesOn)))
        .on(Reply.BeginsAnew.class, anew -> calm(beginsAnew(anew.why())))
        .on(Reply.Help.class, help -> calm(help()))
        .all();
  }

  private static List<Utterance> calm(String text) {
    return List.of(Utterance.calm(text));
  }

  private static List<Utterance> danger(String text) {
    return List.of(Utterance.danger(text));
  }

  // ---- values ----

  private String affirmValue(Reply.Item item) {
    return text(saidBack.item(item), or("Say affirm or negative.", "Affirm or negative."));
  }

  private String affirmDoubtful(List<Reply.Item> items) {
    String values = saidBack.items(items);
    return Digits.areIn(values)
        ? text(values, or("Say affirm, or each digit.", "Affirm, or each digit."))
        : text(values, or("Say affirm or negative.", "Affirm or negative."));
  }

  private String readBack(Reply.ReadBack readBack) {
    String which = sentence(Places.title(readBack.place()));
    return readBack.items().isEmpty()
        ? text(which, "Nothing has been said of it.")
        : text(which, saidBack.items(readBack.items()));
  }

  /** All of them were wrong; the first is waited for. */
  private static String dropped(List<Slot> slots) {
    String names = list(slots.stream().map(SlotWords::name).toList());
    return text(sentence("dropped", names), sentence(SlotWords.question(slots.get(0))));
  }

  private static String implausible(Conflict.OutOfRange offence) {
    return text(ConflictWords.of(offence), "Say it again.");
  }

  private String scrapped(Reply.Item item) {
    return sentence("scrapped", saidBack.phrase(item.slot(), item.said()));
  }

  private String affirmFirst(Pending pending) {
    return Cases.<Pending, String>of(Pending.class)
        .on(Pending.Values.class, values -> affirmValue(values.items().get(0)))
        .on(Pending.Doubtful.class, doubtful -> affirmDoubtful(doubtful.items()))
        .on(Pending.ClippedIn.class, clipped -> "Clipped in. First say affirm or negative.")
        .all()
        .make(pending);
  }

  private String whichAngle(Angle angle) {
    String degrees = Amounts.degrees(angle);
    String choice = sentence("say inside angle " + degrees, "or bend " + degrees);
    return text(or("A rope angle can be two things.", ""), choice);
  }

  private String asked(Slot slot) {
    return or(sentence(SlotWords.question(slot)), sentence(SlotWords.name(slot)));
  }

  private String missing(List<Slot> slots) {
    return slots.isEmpty()
        ? or("Nothing is missing. Say check redirect.", "Nothing is missing.")
        : NoNumbers.missing(slots);
  }

  private String missingElsewhere(Reply.MissingElsewhere missing) {
    String place = Places.name(missing.place());
    return text(
        or(
            sentence("nothing is missing here, but " + place + " is not known yet"),
            sentence(Places.title(missing.place()))),
        NoNumbers.missing(missing.slots()),
        sentence("say go to " + place));
  }

  private static String saidTwice(Slot slot) {
    return text(sentence("you said two things for " + SlotWords.name(slot)), "Say it again.");
  }

  private String verdictCancelled(List<Place> places) {
    String which = list(places.stream().map(Places::name).toList());
    String cancelled = "the verdict on " + which + " no longer stands";
    return or(sentence("that changes the rope", "so " + cancelled), sentence(cancelled));
  }

  // ---- the lanyard ----

  private String affirmClippedIn() {
    return or(
        "Clipped in. Look at it, then say affirm or negative.", "Clipped in. Affirm or negative.");
  }

  private List<Utterance> clippedIn(Reply.ClippedIn clipped) {
    String done = "Lanyard clipped in.";
    if (clipped.change().isEmpty()) {
      return calm(done);
    }
    Change change = clipped.change().get();
    String now = sentence("now " + change(change) + " " + Places.name(clipped.place()));
    if (change != Change.SET) {
      return calm(text(done, now));
    }
    Utterance standing = toBeLoaded(clipped.place(), clipped.standing());
    boolean good = clipped.standing().filter(PathVerdict::isGood).isPresent();
    return List.of(Utterance.calm(text(done, good ? now : "")), standing);
  }

  static String change(Change change) {
    return switch (change) {
      case SET -> "set";
      case MOVE -> "move";
      case TAKE_OFF -> "take off";
    };
  }

  /** What stands of a support that is about to be loaded. */
  private Utterance toBeLoaded(Place place, Optional<PathVerdict> standing) {
    String unchecked = sentence(Places.name(place) + " is not checked");
    return standing
        .map(verdicts::head)
        .orElseGet(() -> Utterance.calm(text(unchecked, "Do not load it yet.")));
  }

  /** A rope that hangs on anything but a good redirect holds the lanyard. */
  private List<Utterance> loadHeard(Reply.LoadHeard heard) {
    String support = Places.name(heard.place());
    String loaded = sentence("rope loaded on " + support);
    if (heard.standing().filter(PathVerdict::isGood).isPresent()) {
      return calm(text(loaded, "Its check is good, by the numbers you gave."));
    }
    String state = heard.standing().isPresent() ? " is not good to load" : " is not checked";
    return List.of(
        Utterance.calm(loaded), Utterance.danger(sentence(support + state, "the lanyard stays")));
  }

  private static String holdLanyard(List<Hold> reasons) {
    String why = list(reasons.stream().map(Answers::hold).toList());
    return text(sentence("the lanyard stays", why), "Say clipped in.");
  }

  private static String hold(Hold reason) {
    return switch (reason) {
      case NOT_JUDGED -> "not checked yet";
      case NOT_GOOD -> "not good to load";
      case NOT_LOADED -> "the rope is not loaded";
    };
  }

  private String attached(Reply.Attached attached) {
    List<String> loaded = attached.loaded().stream().map(Places::name).toList();
    String rope =
        loaded.isEmpty()
            ? "No redirect is loaded."
            : sentence("the rope is loaded on " + list(loaded));
    return text(lanyard(attached.lanyard()), rope);
  }

  private static String lanyard(Lanyard lanyard) {
    return switch (lanyard) {
      case UNKNOWN -> "I do not know if the lanyard is clipped in.";
      case CLIPPED_IN -> "The lanyard is clipped in.";
      case RELEASED -> "The lanyard is released.";
    };
  }

  // ---- from redirect to redirect ----

  private String turned(Reply.Turned turned) {
    String place = sentence(Places.title(turned.place()));
    return turned.begun()
        ? text(place, or("What you said of yourself, rope and tree is kept.", ""))
        : place;
  }

  private String noSuchRedirect(Reply.NoSuchRedirect none) {
    String there =
        none.howMany() == 1
            ? "there is only redirect one"
            : "the last is " + Places.title(Place.redirectNumber(none.howMany()));
    return sentence("there is no " + Places.title(none.place()), there);
  }

  private String goesOn(Reply.GoesOn goesOn) {
    String last =
        goesOn.lastWords().isEmpty()
            ? "Nothing was said yet."
            : sentence("the last I took was", goesOn.lastWords());
    String judged =
        goesOn.judged().isEmpty()
            ? "Nothing is checked."
            : text(
                sentence(
                    "the check of "
                        + list(goesOn.judged().stream().map(Places::name).toList())
                        + " is kept"),
                "If anything has moved, say so, and check again.");
    return text("I go on from the record.", sentence(Places.title(goesOn.place())), last, judged);
  }

  private static String beginsAnew(Reply.BeginsAnew.Why why) {
    String begins = "I begin anew. Nothing is known yet.";
    return switch (why) {
      case NONE_BEFORE -> text("There is no talk to go on with.", begins);
      case ANSWERS_DIFFER -> text("The last talk was held by another version of me.", begins);
    };
  }

  // ---- when nothing was understood or heard ----

  private String again(Reply.Again again) {
    return switch (again.rung()) {
      case SAY_AGAIN -> sentence("say again", reason(again.reason()));
      case EXAMPLE -> example(again.asked());
      case DIGITS -> inDigits(again.asked());
      case STAND_BY -> STANDING_BY;
    };
  }

  private static String reason(Reason reason) {
    return switch (reason) {
      case NOTHING_SAID, NO_SUCH_SENTENCE -> "";
      case TWO_MEANINGS -> "that can mean two things";
      case BEYOND_PLUMB -> "no direction is steeper than straight up or straight down";
    };
  }

  private static String example(Optional<Slot> asked) {
    return sentence("for example", SlotWords.example(asked.orElse(Slot.LIMB_DIAMETER)));
  }

  private static String inDigits(Optional<Slot> asked) {
    Slot slot = asked.orElse(Slot.LIMB_DIAMETER);
    return SlotWords.inDigits(slot)
        .map(example -> sentence("say each digit", "for example", example))
        .orElseGet(() -> sentence("say only this", SlotWords.example(slot)));
  }

  private String silent(Reply.Silent silent) {
    return switch (silent.rung()) {
      case SAY_AGAIN -> "I hear nothing.";
      case EXAMPLE -> example(silent.asked());
      case DIGITS -> "I still hear nothing. Look at your microphone.";
      case STAND_BY -> STANDING_BY;
    };
  }

  private static String cannotHear(Trouble trouble) {
    return switch (trouble) {
      case TOO_NOISY -> "Too loud out there. Stop the saw and say again.";
      case CLIPPED -> "Too loud in the microphone. Speak softer and say again.";
      case TOO_QUIET -> "I can hardly hear you. Speak up and say again.";
    };
  }

  // ---- how answers are given ----

  private static String detail(Detail detail) {
    return detail == Detail.BRIEF ? "Brief answers." : "Full answers.";
  }

  private static String pace(Pace pace) {
    return switch (pace) {
      case SLOW -> "Slow answers.";
      case NORMAL -> "Answers at the usual pace.";
      case FAST -> "Fast answers.";
    };
  }

  private String help() {
    String values =
        sentence("say values by name", "for example", SlotWords.example(Slot.LIMB_DIAMETER));
    String commands = "Say what is missing, read back, correction, scrap that, or check redirect.";
    String after = "After a verdict, say what would help, tell me why, or what if it lets go.";
    return text(values, commands, or(after, ""));
  }

  private String or(String full, String brief) {
    return form.or(full, brief);
  }
}
