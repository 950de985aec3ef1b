package rigspeak.dialogue;

import java.util.List;
import java.util.Optional;
import rigspeak.catalogue.Conflict;
import rigspeak.meaning.Meaning.Reason;
import rigspeak.meaning.Meaning.Trouble;
import rigspeak.quantity.Angle;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.verdict.Loss;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Swing;

/** What the tool has to say, before it is put into words. */
public sealed interface Reply {

  /**
   * A value on its way back to who said it.
   *
   * @param before what stood there until now, if it was something else
   */
  record Item(Slot slot, Said said, Optional<Said> before) {}

  /** Values just taken; they stand unless the next thing said is a correction. */
  record Taken(List<Item> items) implements Reply {
    public Taken {
      items = List.copyOf(items);
    }
  }

  /** A corrected value; it is taken only when it is affirmed. */
  record AffirmValue(Item item) implements Reply {}

  /** Values whose numbers have twins in sound: they are taken when affirmed or said in digits. */
  record AffirmDoubtful(List<Item> items) implements Reply {
    public AffirmDoubtful {
      items = List.copyOf(items);
    }
  }

  /** All values of the present support. */
  record ReadBack(Place place, List<Item> items) implements Reply {
    public ReadBack {
      items = List.copyOf(items);
    }
  }

  /** What was affirmed stands. */
  record Affirmed() implements Reply {}

  /** Values that were said to be wrong have been dropped. */
  record Dropped(List<Slot> slots) implements Reply {
    public Dropped {
      slots = List.copyOf(slots);
    }
  }

  /**
   * Verdicts that were given no longer stand, since something has changed.
   *
   * @param places whose verdicts, at least one
   */
  record VerdictCancelled(List<Place> places) implements Reply {
    public VerdictCancelled {
      places = List.copyOf(places);
    }
  }

  /** Two different values for one slot in one breath; neither is taken. */
  record SaidTwice(Slot slot) implements Reply {}

  /** A value that cannot be taken, with the reason; it is asked again. */
  record Implausible(Conflict.OutOfRange offence) implements Reply {}

  /** "Rope angle" alone: the inside angle or the bend? */
  record WhichAngle(Angle angle) implements Reply {}

  /** A question for one slot. */
  record Asked(Slot slot) implements Reply {}

  /** What has not been said yet of the present support. */
  record Missing(List<Slot> slots) implements Reply {
    public Missing {
      slots = List.copyOf(slots);
    }
  }

  /** Nothing is missing here, but of another support on the rope it is. */
  record MissingElsewhere(Place place, List<Slot> slots) implements Reply {
    public MissingElsewhere {
      slots = List.copyOf(slots);
    }
  }

  /**
   * The verdict on a support and on the rope it is part of.
   *
   * @param governing the values that it hangs on, read back with it
   */
  record Judged(PathVerdict verdict, List<Item> governing) implements Reply {
    public Judged {
      governing = List.copyOf(governing);
    }
  }

  /** Why the verdict is what it is. */
  record Why(PathVerdict verdict) implements Reply {}

  /** What would make the rig good. */
  record WouldHelp(PathVerdict verdict) implements Reply {}

  /**
   * What happens if a support lets go.
   *
   * @param units those that the climber speaks in
   */
  record LetsGo(Place place, Loss loss, UnitSystem units, Lanyard lanyard) implements Reply {}

  /**
   * The swing in the working position.
   *
   * @param units those that the climber speaks in
   */
  record WouldSwing(Swing swing, UnitSystem units) implements Reply {}

  /** The swing is not known before the leg to the climber was said with its length. */
  record SwingNotKnown(Place place) implements Reply {}

  /** There is no verdict to speak of. */
  record NotJudged() implements Reply {}

  /** The lanyard comes before anything is set, moved or taken off. */
  record LanyardFirst(Optional<Change> change) implements Reply {}

  /** "Clipped in" was heard; it counts only when affirmed. */
  record AffirmClippedIn() implements Reply {}

  /**
   * The lanyard is clipped in.
   *
   * @param change what may be done now
   * @param standing the verdict that stands for this support, if there is one
   */
  record ClippedIn(Place place, Optional<Change> change, Optional<PathVerdict> standing)
      implements Reply {}

  /** It was said that the rope is loaded. */
  record LoadHeard(Place place, Optional<PathVerdict> standing) implements Reply {}

  /** The lanyard must stay, for these reasons; its state has to be said again. */
  record HoldLanyard(List<Hold> reasons) implements Reply {
    public HoldLanyard {
      reasons = List.copyOf(reasons);
    }
  }

  /** The lanyard is released, on a good check and a loaded rope. */
  record LanyardReleased() implements Reply {}

  /** What holds the climber. */
  record Attached(Lanyard lanyard, List<Place> loaded) implements Reply {
    public Attached {
      loaded = List.copyOf(loaded);
    }
  }

  /** The talk is about this support now. */
  record Turned(Place place, boolean begun) implements Reply {}

  /** There is no redirect of this number. */
  record NoSuchRedirect(Place place, int howMany) implements Reply {}

  /** A removed value. */
  record Scrapped(Item item) implements Reply {}

  /** Say the right value for this slot. */
  record CorrectionAsked(Slot slot) implements Reply {}

  /** Nothing has been said that could be corrected, scrapped, affirmed or denied. */
  record NothingToTakeBack() implements Reply {}

  /** This waits for affirm or negative before anything else. */
  record AffirmFirst(Pending pending) implements Reply {}

  /** Not understood. */
  record Again(Rung rung, Reason reason, Optional<Slot> asked) implements Reply {}

  /** Nothing was heard. */
  record Silent(Rung rung, Optional<Slot> asked) implements Reply {}

  /** What was said could not be heard, and why. */
  record CannotHear(Trouble trouble) implements Reply {}

  /** Waiting; everything taken is kept. */
  record StandingBy() implements Reply {}

  /** Shorter or longer answers from now on. */
  record DetailSet(Detail detail) implements Reply {}

  /** Slower or faster answers from now on. */
  record PaceSet(Pace pace) implements Reply {}

  /** Called: from now on it listens. Told by an ear-sound, without a word. */
  record Listening() implements Reply {}

  /** Nobody spoke for some time: it waits for the call. Told by an ear-sound, without a word. */
  record FallenAsleep() implements Reply {}

  /**
   * A conversation that was broken off goes on from its record.
   *
   * @param lastWords what was taken last; empty if that was no words
   * @param place what the talk is about
   * @param judged whose verdicts stand
   */
  record GoesOn(String lastWords, Place place, List<Place> judged) implements Reply {
    public GoesOn {
      judged = List.copyOf(judged);
    }
  }

  /** There is no conversation to go on with; a new one begins. */
  record BeginsAnew(Why why) implements Reply {
    /** Why none goes on. */
    public enum Why {
      NONE_BEFORE,
      /** It was held by a version that answered otherwise. */
      ANSWERS_DIFFER
    }
  }

  /** What can be said. */
  record Help() implements Reply {}

  /** What is about to be done with a redirect. */
  enum Change {
    SET,
    MOVE,
    TAKE_OFF
  }

  /** Why a lanyard must stay. */
  enum Hold {
    NOT_JUDGED,
    NOT_GOOD,
    NOT_LOADED
  }

  /** The steps of the no-match ladder. */
  enum Rung {
    SAY_AGAIN,
    EXAMPLE,
    DIGITS,
    STAND_BY;

    Rung next() {
      return switch (this) {
        case SAY_AGAIN -> EXAMPLE;
        case EXAMPLE -> DIGITS;
        case DIGITS, STAND_BY -> STAND_BY;
      };
    }
  }
}
