package rigspeak.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.answer.Answers;
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
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;

/** One conversation; typed, recorded and live words all take this path. */
final class Session {
  /** Asleep, so often is looked whether a key was pressed. */
  private static final double LOOK_SECONDS = 0.25;

  private final Understanding understanding;
  private final Dialogue dialogue;
  private Conversation now = Conversation.begin();
  private Attention attention;

  /** How much of the present stream has been heard, seconds. */
  private double heardSeconds;

  /** One that takes everything at any time. */
  Session(Grammar grammar) {
    this(grammar, Attention.alwaysOpen());
  }

  Session(Grammar grammar, Attention attention) {
    this(new Supplied.Loaded(grammar, Catalogue.bundled()), attention);
  }

  Session(Supplied.Loaded supplied, Attention attention) {
    this.attention = attention;
    Catalogue catalogue = supplied.catalogue();
    this.understanding = new Understanding(supplied.grammar());
    this.dialogue = new Dialogue(catalogue, new Judge(catalogue));
  }

  /** Takes typed words. */
  Exchange said(String words) {
    return meant(words, understanding.understand(words, now.asked()));
  }

  private Exchange heard(String words) {
    return meant(words, understanding.hear(words, now.asked()));
  }

  /** Takes what the ear made of an utterance; nothing comes of it while nobody has called. */
  Optional<Exchange> heard(Heard heard) {
    heardSeconds = heard.when().endSeconds();
    if (attention.isAsleep()) {
      return heard instanceof Heard.Words words && understanding.isCall(words.text())
          ? Optional.of(called(words.text()))
          : Optional.empty();
    }
    if (heard instanceof Heard.Silence && attention.at(heardSeconds).isAsleep()) {
      return Optional.of(fallAsleep());
    }
    if (heard instanceof Heard.Silence && attention.sleeps() && !now.waitsForAnswer()) {
      return Optional.empty();
    }
    return Optional.of(
        heard instanceof Heard.Words words ? heard(words.text()) : meant("", unheard(heard)));
  }

  /** Called, perhaps with more in the same breath; what still waits for an affirm comes first. */
  private Exchange called(String words) {
    boolean waits = now.floor().pending().isPresent();
    return waits ? meant(words, Meaning.Command.WAKE) : heard(words);
  }

  /** Takes a key for the call. */
  Exchange called() {
    return meant("", Meaning.Command.WAKE);
  }

  private Exchange fallAsleep() {
    attention = attention.at(heardSeconds);
    Meaning nothing = new Meaning.NotUnderstood(Meaning.Reason.NOTHING_SAID, "");
    return new Exchange("", nothing, List.of(new Reply.FallenAsleep()), List.of(), now.asked());
  }

  /** Another stream follows, whose time begins again. */
  void streamEnded() {
    attention = attention.afterStream(heardSeconds);
    heardSeconds = 0;
  }

  /** Takes a meaning that no words stand behind. */
  Exchange meant(String words, Meaning meaning) {
    Turn turn = dialogue.step(now, meaning);
    now = turn.next();
    boolean wasOpen = !attention.isAsleep();
    attention = attention.after(meaning, turn, heardSeconds);
    List<Reply> replies = new ArrayList<>(turn.replies());
    if (wasOpen && attention.isAsleep()) {
      replies.add(new Reply.FallenAsleep());
    }
    return new Exchange(
        words, meaning, replies, Answers.say(replies, now.manner().detail()), now.asked());
  }

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
