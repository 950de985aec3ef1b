package rigspeak.readback;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When a half-duplex channel may be spoken on. Pure: it is driven by what happens and when, and
 * never looks at a clock.
 *
 * <p>It never begins on a busy channel and waits for a silence first. What is stepped on, while it
 * is spoken or just before its end, has not been heard: it is spoken again from its beginning after
 * a longer silence, so that two that wait for each other do not meet again.
 *
 * @param traffic what goes on
 * @param waiting what is to be spoken, the first perhaps on its way
 * @param steppedOn how often the first was stepped on
 */
public record Channel(Traffic traffic, List<String> waiting, int steppedOn) {
  /** So long must the channel be clear before anything is spoken, seconds. A judgement. */
  static final double SILENCE_SECONDS = 0.7;

  /**
   * Whoever is on the air so soon after the end of a transmission began before it ended, and has
   * not heard it: a person takes longer to answer. Seconds; a judgement.
   */
  static final double TOO_SOON_SECONDS = 0.25;

  /** The silence is doubled so often at most. */
  private static final int MOST_DOUBLINGS = 3;

  /** A difference of time that is none. */
  private static final double ROUNDING = 1e-9;

  public Channel {
    waiting = List.copyOf(waiting);
  }

  /** What goes on, and since when, in seconds. */
  public sealed interface Traffic {
    double since();

    /** Nobody is on the air. */
    record Clear(double since) implements Traffic {}

    /** Somebody else is. */
    record Busy(double since) implements Traffic {}

    /** We are. */
    record Speaking(double since) implements Traffic {}

    /** We were a moment ago; whether it was heard shows in the next one. */
    record JustSpoken(double since) implements Traffic {}
  }

  /** What happens, and when, in seconds that never go back. */
  public sealed interface Event {
    double at();

    /** Somebody else is on the air. */
    record BecameBusy(double at) implements Event {}

    /** Nobody is any more. */
    record BecameClear(double at) implements Event {}

    /** These are to be spoken, one transmission each. */
    record Wanted(double at, List<String> texts) implements Event {
      public Wanted {
        texts = List.copyOf(texts);
      }
    }

    /** The transmission has been spoken to its end. */
    record Spoken(double at) implements Event {}

    /** Time has passed. */
    record Passed(double at) implements Event {}
  }

  /** What is to be done. */
  public sealed interface Action {
    /** Speak this from its beginning. */
    record Speak(String text) implements Action {}

    /** Be silent at once. */
    record Stop() implements Action {}
  }

  /** What comes of an event. */
  public record Step(Channel next, Optional<Action> action) {}

  /** A channel of which nothing is known yet: it counts as clear from this moment. */
  public static Channel clearSince(double seconds) {
    return new Channel(new Traffic.Clear(seconds), List.of(), 0);
  }

  /** Whether something that was to be said has not been heard. */
  public boolean owes() {
    return !waiting.isEmpty();
  }

  /** When it should be looked at again, if nothing happens before; in the time of the events. */
  public Optional<Double> lookAgainAt() {
    if (traffic instanceof Traffic.JustSpoken) {
      return Optional.of(traffic.since() + TOO_SOON_SECONDS);
    }
    return traffic instanceof Traffic.Clear && owes()
        ? Optional.of(traffic.since() + silenceSeconds())
        : Optional.empty();
  }

  /** What comes of an event. */
  public Step after(Event event) {
    if (event instanceof Event.BecameBusy) {
      return busy(event.at());
    }
    if (event instanceof Event.BecameClear && traffic instanceof Traffic.Busy) {
      return with(new Traffic.Clear(event.at())).speakIfMay(event.at());
    }
    if (event instanceof Event.Wanted wanted) {
      List<String> more = new ArrayList<>(waiting);
      more.addAll(wanted.texts());
      return new Channel(traffic, more, steppedOn).settled(event.at()).speakIfMay(event.at());
    }
    if (event instanceof Event.Spoken && traffic instanceof Traffic.Speaking) {
      return new Step(with(new Traffic.JustSpoken(event.at())), Optional.empty());
    }
    return settled(event.at()).speakIfMay(event.at());
  }

  private Step busy(double at) {
    if (traffic instanceof Traffic.Speaking) {
      return new Step(steppedOnAt(at), Optional.of(new Action.Stop()));
    }
    boolean tooSoon =
        traffic instanceof Traffic.JustSpoken && at - traffic.since() < TOO_SOON_SECONDS - ROUNDING;
    Channel next = tooSoon ? steppedOnAt(at) : settled(at).with(new Traffic.Busy(at));
    return new Step(next, Optional.empty());
  }

  private Channel steppedOnAt(double at) {
    return new Channel(new Traffic.Busy(at), waiting, steppedOn + 1);
  }

  /** What nobody stepped on has been heard. */
  private Channel settled(double at) {
    boolean heard =
        traffic instanceof Traffic.JustSpoken
            && at - traffic.since() >= TOO_SOON_SECONDS - ROUNDING;
    return heard
        ? new Channel(new Traffic.Clear(traffic.since()), waiting.subList(1, waiting.size()), 0)
        : this;
  }

  private Step speakIfMay(double at) {
    boolean may =
        traffic instanceof Traffic.Clear
            && owes()
            && at - traffic.since() >= silenceSeconds() - ROUNDING;
    return may
        ? new Step(with(new Traffic.Speaking(at)), Optional.of(new Action.Speak(waiting.get(0))))
        : new Step(this, Optional.empty());
  }

  private double silenceSeconds() {
    return SILENCE_SECONDS * (1 << Math.min(steppedOn, MOST_DOUBLINGS));
  }

  private Channel with(Traffic changed) {
    return new Channel(changed, waiting, steppedOn);
  }
}
