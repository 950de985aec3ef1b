package rigspeak.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.answer.Answers;
import rigspeak.answer.Mishap;
import rigspeak.answer.Utterance;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Attention;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Manner;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Turn;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;
import rigspeak.journal.Journal.Kept;
import rigspeak.journal.NotKept;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;

/**
 * One conversation; typed, recorded and live words all take this path. What is said is written down
 * before it is taken: what could not be kept is answered with why, and the conversation stays where
 * it was.
 */
final class Session {
  /** Asleep, so often is looked whether a key was pressed. */
  private static final double LOOK_SECONDS = 0.25;

  private final Understanding understanding;
  private final Reckoning reckoning;
  private final Scribe scribe;
  private Conversation now = Conversation.begin();
  private Attention attention;

  /** How much of the present stream has been heard, seconds. */
  private double heardSeconds;

  /** One that takes everything at any time and keeps nothing. */
  Session(Grammar grammar) {
    this(grammar, Attention.alwaysOpen(), Scribe.none());
  }

  Session(Grammar grammar, Attention attention, Scribe scribe) {
    this(new Supplied.Loaded(grammar, Catalogue.bundled()), attention, scribe);
  }

  Session(Supplied.Loaded loaded, Attention attention, Scribe scribe) {
    this(new Understanding(loaded.grammar()), loaded.catalogue(), attention, scribe);
  }

  private Session(
      Understanding understanding, Catalogue catalogue, Attention attention, Scribe scribe) {
    this(
        understanding,
        new Reckoning(understanding, new Dialogue(catalogue, new Judge(catalogue))),
        attention,
        scribe);
  }

  Session(Understanding understanding, Reckoning reckoning, Attention attention, Scribe scribe) {
    this.understanding = understanding;
    this.reckoning = reckoning;
    this.attention = attention;
    this.scribe = scribe;
  }

  // ---- the beginning ----

  /** Begins; what has to be said before anything else, if anything has. */
  Optional<Exchange> begin() {
    try {
      return scribe.begin() == Kept.CLOCK_SET_BACK
          ? Optional.of(unsaid(List.of(), Optional.of(Mishap.CLOCK_SET_BACK)))
          : Optional.empty();
    } catch (NotKept e) {
      return Optional.of(mishap("", mishap(e)));
    }
  }

  /** Takes once more what was taken in a conversation that was broken off. */
  Exchange again(Input input) {
    Reckoning.Result result = reckoning.of(now, input);
    if (result instanceof Reckoning.Result.Reckoned reckoned) {
      now = reckoned.turn().next();
      return exchange(input, reckoned);
    }
    return mishap(input.words(), ((Reckoning.Result.Failed) result).mishap());
  }

  /** Says where it goes on, after everything was taken again. */
  Exchange goesOn(String lastWords) {
    attention = attention.after(Meaning.Command.WAKE, new Turn(now, List.of()), heardSeconds);
    return unsaid(Dialogue.goingOn(now, lastWords), Optional.empty());
  }

  /** Forgets whatever was taken again, and says so and why. */
  Exchange beginsAnew(Reply.BeginsAnew.Why why) {
    now = Conversation.begin();
    return unsaid(List.of(new Reply.BeginsAnew(why)), Optional.empty());
  }

  private Exchange unsaid(List<Reply> replies, Optional<Mishap> remark) {
    List<Utterance> answers = new ArrayList<>(Answers.say(replies, now.manner().detail()));
    remark.map(Mishap::utterance).ifPresent(answers::add);
    return new Exchange("", Meaning.Command.WAKE, replies, answers, now.asked(), Optional.empty());
  }

  // ---- what comes ----

  /** Takes typed words. */
  Exchange said(String words) {
    return take(new Input.Typed(words));
  }

  /**
   * Takes what the ear made of an utterance. Nothing comes of it while nobody has called, nor if
   * nobody spoke: a gust is not to be answered.
   */
  Optional<Exchange> heard(Heard heard) {
    heardSeconds = heard.when().endSeconds();
    if (attention.isAsleep()) {
      return heard instanceof Heard.Words words && understanding.isCall(words.text())
          ? Optional.of(called(words.text()))
          : Optional.empty();
    }
    if (heard instanceof Heard.NotUnderstood not && not.reason() == Heard.Reason.NO_VOICE) {
      return Optional.empty();
    }
    if (heard instanceof Heard.Silence && attention.at(heardSeconds).isAsleep()) {
      return Optional.of(fallAsleep());
    }
    if (heard instanceof Heard.Silence && attention.sleeps() && !now.waitsForAnswer()) {
      return Optional.empty();
    }
    return Optional.of(take(input(heard)));
  }

  private Input input(Heard heard) {
    if (heard instanceof Heard.Words words) {
      return new Input.Heard(words.text());
    }
    if (heard instanceof Heard.Doubtful doubtful) {
      Meaning meaning = understanding.hearDoubtful(doubtful.text(), now.asked());
      return meaning instanceof Meaning.NotUnderstood
          ? new Input.Unheard(unheard(doubtful.otherwise()))
          : new Input.Doubtful(doubtful.text());
    }
    return new Input.Unheard(unheard(heard));
  }

  /** Called, perhaps with more in the same breath; what still waits for an affirm comes first. */
  private Exchange called(String words) {
    boolean waits = now.floor().pending().isPresent();
    return take(waits ? new Input.Called(words) : new Input.Heard(words));
  }

  /** Takes a key for the call. */
  Exchange called() {
    return take(new Input.Called(""));
  }

  private Exchange fallAsleep() {
    attention = attention.at(heardSeconds);
    Meaning nothing = new Meaning.NotUnderstood(Meaning.Reason.NOTHING_SAID, "");
    return new Exchange(
        "", nothing, List.of(new Reply.FallenAsleep()), List.of(), now.asked(), Optional.empty());
  }

  /** Another stream follows, whose time begins again. */
  void streamEnded() {
    attention = attention.afterStream(heardSeconds);
    heardSeconds = 0;
  }

  private Exchange take(Input input) {
    Reckoning.Result result = reckoning.of(now, input);
    if (result instanceof Reckoning.Result.Failed failed) {
      scribe.failed("reckoning", failed.fault());
      return mishap(input.words(), failed.mishap());
    }
    Reckoning.Result.Reckoned reckoned = (Reckoning.Result.Reckoned) result;
    Exchange exchange = exchange(input, reckoned);
    try {
      Kept kept = scribe.write(input, exchange);
      now = reckoned.turn().next();
      Exchange told = attended(exchange, reckoned.turn());
      return kept == Kept.CLOCK_SET_BACK ? told.with(Mishap.CLOCK_SET_BACK.utterance()) : told;
    } catch (NotKept e) {
      return mishap(input.words(), mishap(e));
    }
  }

  private static Exchange exchange(Input input, Reckoning.Result.Reckoned reckoned) {
    Turn turn = reckoned.turn();
    return new Exchange(
        input.words(),
        reckoned.meaning(),
        turn.replies(),
        reckoned.answers(),
        turn.next().asked(),
        Optional.empty());
  }

  private Exchange attended(Exchange exchange, Turn turn) {
    boolean wasOpen = !attention.isAsleep();
    attention = attention.after(exchange.meaning(), turn, heardSeconds);
    return wasOpen && attention.isAsleep() ? exchange.with(new Reply.FallenAsleep()) : exchange;
  }

  // ---- what goes wrong in the machine ----

  /** Something else in the machine failed; the conversation stays where it is. */
  Exchange failed(Mishap mishap, String what, Throwable fault) {
    scribe.failed(what, fault);
    return mishap("", mishap);
  }

  /** A device was lost, which is told by whoever looks for it. */
  void wasLost(String device, Throwable fault) {
    scribe.failed(device, fault);
  }

  /** Nothing is taken, and it is listened to as after anything that was not understood. */
  private Exchange mishap(String words, Mishap mishap) {
    Meaning nothing = new Meaning.NotUnderstood(Meaning.Reason.NO_SUCH_SENTENCE, words);
    attention = attention.after(nothing, new Turn(now, List.of()), heardSeconds);
    return new Exchange(
        words, nothing, List.of(), List.of(mishap.utterance()), now.asked(), Optional.of(mishap));
  }

  private static Mishap mishap(NotKept fault) {
    return switch (fault.why()) {
      case DISK_FULL -> Mishap.DISK_FULL;
      case READ_ONLY -> Mishap.READ_ONLY;
      case IN_USE -> Mishap.IN_USE;
      case CHANGED -> Mishap.CHANGED;
      case GONE -> Mishap.GONE;
      case FAILED -> Mishap.NOT_KEPT;
    };
  }

  // ---- where it stands ----

  /** What may be said next. */
  Expected expected() {
    if (attention.isAsleep()) {
      return Expected.call();
    }
    return now.asked().map(Slot::key).map(Expected::answerFor).orElseGet(Expected::anything);
  }

  boolean isAsleep() {
    return attention.isAsleep();
  }

  /** For how long it is waited for, seconds of sound. */
  double patienceSeconds() {
    return attention.isAsleep()
        ? LOOK_SECONDS
        : Math.min(Listening.PATIENCE_SECONDS, attention.leftSeconds(heardSeconds));
  }

  Manner manner() {
    return now.manner();
  }

  /** Everything that it has come to. */
  Conversation conversation() {
    return now;
  }

  /** What it means that an utterance could not be heard. */
  static Meaning unheard(Heard heard) {
    if (heard instanceof Heard.Silence) {
      return new Meaning.NotUnderstood(Meaning.Reason.NOTHING_SAID, "");
    }
    if (heard instanceof Heard.TooNoisy) {
      return new Meaning.CannotHear(Meaning.Trouble.TOO_NOISY);
    }
    if (heard instanceof Heard.Clipped) {
      return new Meaning.CannotHear(Meaning.Trouble.CLIPPED);
    }
    if (heard instanceof Heard.TooQuiet) {
      return new Meaning.CannotHear(Meaning.Trouble.TOO_QUIET);
    }
    return new Meaning.NotUnderstood(Meaning.Reason.NO_SUCH_SENTENCE, "");
  }
}
