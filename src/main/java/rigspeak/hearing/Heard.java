package rigspeak.hearing;

import java.util.List;

/** What came of one utterance. Nothing is guessed: it is words, or one of the reasons why not. */
public sealed interface Heard {

  /** When it was said. */
  Stretch when();

  /**
   * Words that the grammar allows in this order.
   *
   * @param words lower case, without punctuation, at least one
   */
  record Words(List<String> words, Stretch when) implements Heard {
    public Words {
      words = List.copyOf(words);
    }

    /** The words with a space between each. */
    public String text() {
      return String.join(" ", words);
    }
  }

  /**
   * Words that were probably said, and not more than that. Whoever is told them asks back; nothing
   * is done and no value stands for them.
   *
   * @param words as in {@link Words}
   * @param otherwise what is told if there is nothing in the words that could be asked back
   */
  record Doubtful(List<String> words, Heard otherwise, Stretch when) implements Heard {
    public Doubtful {
      words = List.copyOf(words);
    }

    /** The words with a space between each. */
    public String text() {
      return String.join(" ", words);
    }
  }

  /** Something was said that is not taken. */
  record NotUnderstood(Reason reason, Stretch when) implements Heard {}

  /** The noise is nearly as loud as the voice, so that a guess would be all there is. */
  record TooNoisy(Stretch when) implements Heard {}

  /** The microphone is overdriven: the tops of the sound are cut off. */
  record Clipped(Stretch when) implements Heard {}

  /** The voice hardly reaches the microphone. */
  record TooQuiet(Stretch when) implements Heard {}

  /** For some seconds nobody spoke. */
  record Silence(Stretch when) implements Heard {}

  /** Why an utterance was not taken. */
  enum Reason {
    /** It sounds more like other speech than like anything that can be said now. */
    OTHER_SPEECH,
    /** Something was loud, but nobody spoke. */
    NO_VOICE,
    /** It began like something that can be said now and did not come to its end. */
    UNFINISHED,
    /** It did not end within the longest time an utterance may take. */
    TOO_LONG
  }

  /**
   * Where in the stream an utterance lies, and what hearing it took.
   *
   * @param startSeconds from the beginning of the stream to the first sample
   * @param endSeconds from the beginning of the stream to the last sample, the closing pause
   *     included
   * @param busySeconds processor time spent on recognising
   * @param lagSeconds time from the arrival of the last sample to the result
   */
  record Stretch(double startSeconds, double endSeconds, double busySeconds, double lagSeconds) {}
}
