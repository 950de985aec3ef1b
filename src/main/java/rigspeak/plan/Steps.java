package rigspeak.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.dialogue.Reply;
import rigspeak.meaning.Meaning;
import rigspeak.plan.Step.Kind;
import rigspeak.plan.Step.Trouble;
import rigspeak.rig.Place;
import rigspeak.verdict.PathVerdict;

/** Reads the steps of a walk off what the lanyard gate replied. */
final class Steps {
  private final List<Step> steps = new ArrayList<>();

  /** A change that was not let through yet. */
  private Optional<Step> wanted = Optional.empty();

  private Steps() {}

  static List<Step> of(Walk walk) {
    Steps steps = new Steps();
    walk.told().forEach(steps::take);
    steps.giveUpWaiting();
    return steps.steps;
  }

  private void take(Told told) {
    Place place = told.turn().next().rope().present();
    for (Reply reply : told.turn().replies()) {
      if (reply instanceof Reply.LanyardFirst first) {
        lanyardFirst(told, place, first);
      } else if (reply instanceof Reply.ClippedIn clipped) {
        clippedIn(told, place, clipped);
      } else if (reply instanceof Reply.LoadHeard heard) {
        add(told, Kind.LOAD, place, standing(heard.standing()));
      } else if (reply instanceof Reply.LanyardReleased) {
        add(told, Kind.RELEASE, place, List.of());
      } else if (reply instanceof Reply.HoldLanyard hold) {
        add(told, Kind.RELEASE, place, hold.reasons().stream().map(Steps::trouble).toList());
      }
    }
  }

  private void lanyardFirst(Told told, Place place, Reply.LanyardFirst first) {
    if (first.change().isEmpty()) {
      add(told, Kind.LOAD, place, List.of(Trouble.LANYARD_FIRST));
      return;
    }
    boolean saidAgain = told.meaning() == Meaning.Command.NEGATIVE;
    if (!saidAgain) {
      giveUpWaiting();
      wanted =
          Optional.of(
              new Step(
                  told.line(), kind(first.change().get()), place, List.of(Trouble.LANYARD_FIRST)));
    }
  }

  private void giveUpWaiting() {
    wanted.ifPresent(steps::add);
    wanted = Optional.empty();
  }

  private void clippedIn(Told told, Place place, Reply.ClippedIn clipped) {
    if (told.meaning() == Meaning.Command.AFFIRM) {
      add(told, Kind.CLIP_IN, place, List.of());
    }
    if (clipped.change().isEmpty()) {
      return;
    }
    Kind kind = kind(clipped.change().get());
    add(told, kind, place, kind == Kind.SET ? standing(clipped.standing()) : List.of());
    wanted = Optional.empty();
  }

  private void add(Told told, Kind kind, Place place, List<Trouble> troubles) {
    steps.add(new Step(told.line(), kind, place, troubles));
  }

  private static List<Trouble> standing(Optional<PathVerdict> verdict) {
    if (verdict.isEmpty()) {
      return List.of(Trouble.NOT_CHECKED);
    }
    return verdict.get().isGood() ? List.of() : List.of(Trouble.NOT_GOOD);
  }

  private static Kind kind(Reply.Change change) {
    return switch (change) {
      case SET -> Kind.SET;
      case MOVE -> Kind.MOVE;
      case TAKE_OFF -> Kind.TAKE_OFF;
    };
  }

  private static Trouble trouble(Reply.Hold hold) {
    return switch (hold) {
      case NOT_JUDGED -> Trouble.NOT_CHECKED;
      case NOT_GOOD -> Trouble.NOT_GOOD;
      case NOT_LOADED -> Trouble.NOT_LOADED;
    };
  }
}
