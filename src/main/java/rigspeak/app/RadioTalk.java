package rigspeak.app;

import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import rigspeak.answer.RadioAnswers;
import rigspeak.answer.Utterance;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Dialogue;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Heard;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.readback.Confirming;
import rigspeak.readback.RadioReply;
import rigspeak.readback.Readback;
import rigspeak.readback.TimeOfDay;
import rigspeak.rig.RopePath;
import rigspeak.verdict.Judge;

/** One read-back; typed, recorded and live words all take this path. */
final class RadioTalk {
  private final Understanding understanding;
  private final Confirming confirming;
  private final RadioAnswers answers;
  private final Clock clock;
  private Readback now;
  private Optional<ZonedDateTime> ended = Optional.empty();

  /**
   * One thing said and all that came of it.
   *
   * @param said the words, empty if there were none
   * @param transmissions what is spoken to it
   */
  record Passage(
      String said, Meaning meaning, List<RadioReply> replies, List<Utterance> transmissions) {
    boolean understood() {
      return !(meaning instanceof Meaning.NotUnderstood || meaning instanceof Meaning.CannotHear);
    }
  }

  /**
   * A read-back that has not begun.
   *
   * @param role what the one who reads back is called
   * @param clock the wall clock, for who confirmed when
   */
  RadioTalk(Grammar grammar, RopePath plan, String role, Clock clock) {
    Catalogue catalogue = Catalogue.bundled();
    this.understanding = new Understanding(grammar);
    this.confirming = new Confirming(new Dialogue(catalogue, new Judge(catalogue)));
    this.answers = new RadioAnswers(role);
    this.clock = clock;
    this.now = Readback.of(plan);
  }

  /** Takes typed words. */
  Passage said(String words) {
    return meant(words, understanding.understandRadio(words));
  }

  /** Takes what the ear made of an utterance; where nobody spoke there is nothing to remark on. */
  Optional<Passage> heard(Heard heard) {
    boolean nobodySpoke =
        heard instanceof Heard.Silence
            || (heard instanceof Heard.NotUnderstood not && not.reason() == Heard.Reason.NO_VOICE);
    if (nobodySpoke) {
      return Optional.empty();
    }
    if (heard instanceof Heard.Words words) {
      return Optional.of(meant(words.text(), understanding.hearRadio(words.text())));
    }
    if (heard instanceof Heard.Doubtful doubtful) {
      Meaning meaning = understanding.hearRadioDoubtful(doubtful.text());
      return Optional.of(
          meaning instanceof Meaning.NotUnderstood
              ? meant("", Session.unheard(doubtful.otherwise()))
              : meant(doubtful.text(), meaning));
    }
    return Optional.of(meant("", Session.unheard(heard)));
  }

  /**
   * The same while something that was to be spoken has not been heard yet: whoever affirms then
   * affirms something else, and it is not taken.
   */
  Optional<Passage> heardTooEarly(Heard heard) {
    boolean affirms =
        heard instanceof Heard.Words words
            && understanding.hearRadio(words.text()) == Meaning.Command.AFFIRM;
    return affirms ? Optional.empty() : heard(heard);
  }

  Passage meant(String words, Meaning meaning) {
    ZonedDateTime time = ZonedDateTime.now(clock);
    Confirming.Result result =
        confirming.step(now, meaning, new TimeOfDay(time.getHour(), time.getMinute()));
    boolean wasOver = now.stand() instanceof Readback.Stand.Ended;
    now = result.next();
    boolean isOver = now.stand() instanceof Readback.Stand.Ended;
    if (isOver != wasOver) {
      ended = isOver ? Optional.of(time) : Optional.empty();
    }
    return new Passage(words, meaning, result.replies(), answers.transmissions(result.replies()));
  }

  Expected expected() {
    return Expected.overTheRadio();
  }

  Readback readback() {
    return now;
  }

  RadioAnswers answers() {
    return answers;
  }

  /** When it was confirmed, or the differences affirmed. */
  Optional<ZonedDateTime> ended() {
    return ended;
  }
}
