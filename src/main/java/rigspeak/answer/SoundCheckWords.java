package rigspeak.answer;

import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.Locale;

/** What is said while a headset is tried on the ground. */
public final class SoundCheckWords {
  private SoundCheckWords() {}

  /** The sounds that come before words or in their place. */
  public enum Signal {
    LISTENING("I listen"),
    TAKEN("taken"),
    NOT_UNDERSTOOD("not understood"),
    DANGER("danger"),
    ASLEEP("I sleep until I am called");

    private final String meaning;

    Signal(String meaning) {
      this.meaning = meaning;
    }
  }

  /** How loud it is where nobody speaks. */
  public enum Place {
    QUIET,
    LOUD,
    TOO_LOUD
  }

  /** What came of the words that were asked for. */
  public enum Attempt {
    FINE,
    OTHER_WORDS,
    NOT_UNDERSTOOD,
    NOTHING_SAID,
    TOO_QUIET,
    CLIPPED,
    TOO_NOISY
  }

  /** Which devices they are; of their names what can be spoken. */
  public static Utterance devices(String microphone, String loudspeaker) {
    return Utterance.calm(
        text(
            "Sound check.",
            sentence("microphone", spoken(microphone)),
            sentence("loudspeaker", spoken(loudspeaker))));
  }

  /** Said before the sound itself. */
  public static Utterance signal(Signal signal) {
    return Utterance.calm(sentence("this means", signal.meaning));
  }

  /** Asks for quiet. */
  public static Utterance sayNothing() {
    return Utterance.calm("Now say nothing for three seconds.");
  }

  /** Asks for it once more. */
  public static Utterance somebodySpoke() {
    return Utterance.calm("Somebody spoke. Once more, say nothing.");
  }

  /** How loud the place is. */
  public static Utterance place(Place place) {
    return Utterance.calm(
        switch (place) {
          case QUIET -> "It is quiet enough here.";
          case LOUD -> "It is loud here. Speak up, with the microphone near.";
          case TOO_LOUD -> "It is too loud here.";
        });
  }

  /** Asks for the words. */
  public static Utterance ask(String phrase) {
    return Utterance.calm(text("After the tone say.", sentence(phrase)));
  }

  /**
   * What was heard.
   *
   * @param heard the words, empty where none were made out
   */
  public static Utterance heard(Attempt attempt, String heard) {
    return Utterance.calm(
        switch (attempt) {
          case FINE -> text(sentence("I heard", heard), "The level is fine.");
          case OTHER_WORDS -> text(sentence("I heard", heard), "That is something else.");
          case NOT_UNDERSTOOD -> "I heard something and did not understand it.";
          case NOTHING_SAID -> "I heard nothing.";
          case TOO_QUIET -> "You are too quiet.";
          case CLIPPED -> "You are too loud in the microphone.";
          case TOO_NOISY -> "The noise is nearly as loud as your voice.";
        });
  }

  /** The end of a check that went well. */
  public static Utterance ready() {
    return Utterance.calm("Ready. I hear you well.");
  }

  /** The end of a check that did not, with the one thing to change: noise before all else. */
  public static Utterance notReady(Place place, Attempt last) {
    return notReady(remedy(place == Place.TOO_LOUD ? Attempt.TOO_NOISY : last));
  }

  /** There is nothing to listen on. */
  public static Utterance noMicrophone() {
    return notReady("There is no microphone that I can use.");
  }

  private static Utterance notReady(String remedy) {
    return Utterance.calm(text("Not ready.", remedy));
  }

  private static String remedy(Attempt last) {
    return switch (last) {
      case TOO_QUIET -> "Bring the microphone nearer to the mouth, or turn it up.";
      case CLIPPED -> "Turn the microphone down, or move it away from the mouth.";
      case TOO_NOISY -> "Stop the engine, or turn the microphone away from the wind.";
      case NOTHING_SAID -> "Switch the microphone on, and see that it is the right one.";
      case NOT_UNDERSTOOD, OTHER_WORDS ->
          "Move the microphone to the corner of the mouth. If that is no help, enroll your voice.";
      case FINE -> throw new IllegalArgumentException("nothing stands in the way");
    };
  }

  /** Letters and figures of the name, without what the system adds in brackets. */
  private static String spoken(String device) {
    String name = device.replaceAll("\\[.*", "").replaceAll("[^A-Za-z0-9]+", " ").strip();
    return name.isEmpty() ? "without a name" : name.toLowerCase(Locale.ROOT);
  }
}
