package rigspeak.meaning;

import java.util.List;
import rigspeak.quantity.Angle;
import rigspeak.rig.Place;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;

/** What somebody meant by a row of words. */
public sealed interface Meaning {

  /**
   * One or more values in a breath.
   *
   * @param statements in the order they were said, at least one
   */
  record Values(List<Statement> statements) implements Meaning {
    public Values {
      statements = List.copyOf(statements);
    }
  }

  /**
   * Values that take the place of earlier ones.
   *
   * @param statements empty if only the word was said, which means the latest value
   */
  record Correction(List<Statement> statements) implements Meaning {
    public Correction {
      statements = List.copyOf(statements);
    }
  }

  /** Turn to this support. */
  record GoTo(Place place) implements Meaning {}

  /** A command that needs nothing else. */
  enum Command implements Meaning {
    /** The call, and nothing else in the breath. */
    WAKE,
    CHECK,
    WHY,
    HELP_RIG,
    MISSING,
    READ_BACK,
    SAY_AGAIN,
    SCRAP,
    AFFIRM,
    NEGATIVE,
    CLIPPED_IN,
    LANYARD_RELEASED,
    ATTACHMENTS,
    LETS_GO,
    SWING,
    SET,
    CHANGE,
    TAKE_OFF,
    LOADED,
    NEXT,
    STAND_BY,
    STOP_TALKING,
    BRIEF,
    FULL,
    SLOWER,
    FASTER,
    HELP
  }

  /** A word of the radio, which says nothing of the rig. */
  enum Procedure implements Meaning {
    /** Heard; that is all it says. Never an agreement. */
    ROGER,
    /** The other one may speak now. */
    OVER
  }

  /**
   * Nothing is taken from these words.
   *
   * @param words as they were heard; may be empty
   */
  record NotUnderstood(Reason reason, String words) implements Meaning {}

  /** Something was said, but not so that it could be heard. */
  record CannotHear(Trouble trouble) implements Meaning {}

  /** What keeps words from being heard. */
  enum Trouble {
    /** Noise nearly as loud as the voice. */
    TOO_NOISY,
    /** A voice so loud that the microphone cuts it off. */
    CLIPPED,
    /** A voice that hardly reaches the microphone. */
    TOO_QUIET
  }

  /** Why nothing is taken. */
  enum Reason {
    /** No words at all. */
    NOTHING_SAID,
    /** Words that the grammar does not have, or not in this order. */
    NO_SUCH_SENTENCE,
    /** Words that could mean two things. */
    TWO_MEANINGS,
    /** A direction that rises or falls by more than a right angle. */
    BEYOND_PLUMB
  }

  /** One thing said of the rig. */
  sealed interface Statement {
    /**
     * A value for a slot.
     *
     * @param doubtful whether the ear may have taken it for another, as fifteen for fifty
     */
    record Value(Slot slot, Said said, boolean doubtful) implements Statement {
      public Value(Slot slot, Said said) {
        this(slot, said, false);
      }
    }

    /** "Rope angle" alone could be the inside angle or the bend; the one loads far more. */
    record RopeAngle(Angle angle) implements Statement {}
  }
}
