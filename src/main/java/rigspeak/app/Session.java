package rigspeak.app;

import rigspeak.answer.Answers;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Manner;
import rigspeak.dialogue.Turn;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Heard;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;

/** One conversation; typed, recorded and live words all take this path. */
final class Session {
  private final Understanding understanding;
  private final Dialogue dialogue;
  private Conversation now = Conversation.begin();

  Session(Grammar grammar) {
    Catalogue catalogue = Catalogue.bundled();
    this.understanding = new Understanding(grammar);
    this.dialogue = new Dialogue(catalogue, new Judge(catalogue));
  }

  /** Takes typed words. */
  Exchange said(String words) {
    return meant(words, understanding.understand(words, now.asked()));
  }

  /** Takes what the ear made of an utterance. */
  Exchange heard(Heard heard) {
    if (heard instanceof Heard.Words words) {
      return said(words.text());
    }
    return meant("", unheard(heard));
  }

  /** Takes a meaning that no words stand behind. */
  Exchange meant(String words, Meaning meaning) {
    Turn turn = dialogue.step(now, meaning);
    now = turn.next();
    return new Exchange(
        words,
        meaning,
        turn.replies(),
        Answers.say(turn.replies(), now.manner().detail()),
        now.asked());
  }

  /** What may be said next. */
  Expected expected() {
    return now.asked().map(Slot::key).map(Expected::answerFor).orElseGet(Expected::anything);
  }

  Manner manner() {
    return now.manner();
  }

  private static Meaning unheard(Heard heard) {
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
