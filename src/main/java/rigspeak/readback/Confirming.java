package rigspeak.readback;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Turn;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.meaning.Meaning.Procedure;
import rigspeak.readback.Readback.Outcome;
import rigspeak.readback.Readback.Stand;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;

/**
 * One step of a read-back: from where it stands and what was meant to where it goes and what is
 * spoken. Pure: the same step always gives the same result.
 *
 * <p>Values go through the dialogue as in any conversation, with its questions and corrections.
 * What stands then is held against the plan. Only when everything of the plan was said, every
 * difference was settled and nothing waits is the whole asked about, and only an affirm to that
 * question ends it.
 */
public final class Confirming {
  /** No transmission names more things than a listener keeps in mind. */
  static final int MOST_ITEMS = 3;

  private final Dialogue dialogue;

  public Confirming(Dialogue dialogue) {
    this.dialogue = dialogue;
  }

  /**
   * What comes of one step.
   *
   * @param replies each is a transmission or more, in order
   */
  public record Result(Readback next, List<RadioReply> replies) {
    public Result {
      replies = List.copyOf(replies);
    }
  }

  /**
   * @param now when it was said
   */
  public Result step(Readback before, Meaning meaning, TimeOfDay now) {
    Step step = new Step(before, now);
    step.take(meaning);
    return step.result();
  }

  private final class Step {
    private final List<RadioReply> replies = new ArrayList<>();
    private final TimeOfDay time;
    private Readback now;

    Step(Readback before, TimeOfDay time) {
      this.now = before;
      this.time = time;
    }

    Result result() {
      boolean worthRepeating =
          replies.stream()
              .anyMatch(
                  reply ->
                      !(reply instanceof RadioReply.Plain plain
                          && (plain.reply() instanceof Reply.Again
                              || plain.reply() instanceof Reply.Silent
                              || plain.reply() instanceof Reply.CannotHear)));
      return new Result(worthRepeating ? now.speaking(replies) : now, replies);
    }

    void take(Meaning meaning) {
      if (meaning == Command.SAY_AGAIN) {
        replies.addAll(now.spoken());
      } else if (now.stand() instanceof Stand.Ended) {
        afterTheEnd(meaning);
      } else if (meaning == Procedure.ROGER) {
        roger();
      } else if (meaning == Procedure.OVER
          || meaning == Command.READ_BACK
          || meaning == Command.MISSING) {
        whereItStands();
      } else if (now.talk().floor().pending().isPresent()) {
        talk(meaning);
      } else if (meaning == Command.AFFIRM) {
        affirm();
      } else if (meaning == Command.NEGATIVE) {
        negative(meaning);
      } else if (belongsHere(meaning)) {
        talk(meaning);
      } else {
        replies.add(new RadioReply.OnlyReadBack());
      }
    }

    /** It agrees to nothing; what waits for an answer is asked again. */
    private void roger() {
      boolean asked =
          !(now.stand() instanceof Stand.Hearing) || now.talk().floor().pending().isPresent();
      if (asked) {
        replies.add(new RadioReply.RogerIsNoAnswer());
        ask();
      } else {
        whereItStands();
      }
    }

    private static boolean belongsHere(Meaning meaning) {
      return !(meaning instanceof Command command)
          || switch (command) {
            case SCRAP, NEXT, STAND_BY, SLOWER, FASTER, STOP_TALKING -> true;
            default -> false;
          };
    }

    /** Once it has ended, only what changes the rig is taken, and that opens it again. */
    private void afterTheEnd(Meaning meaning) {
      boolean changes =
          meaning instanceof Meaning.Values
              || meaning instanceof Meaning.Correction
              || meaning == Command.SCRAP
              || meaning == Command.NEGATIVE;
      if (!changes) {
        Stand.Ended ended = (Stand.Ended) now.stand();
        replies.add(new RadioReply.Ended(ended.outcome(), ended.at()));
        return;
      }
      replies.add(new RadioReply.NoLongerEnded());
      now = now.with(meaning == Command.NEGATIVE ? new Stand.AskingAll() : new Stand.Hearing());
      take(meaning);
    }

    private void talk(Meaning meaning) {
      Turn turn = dialogue.step(now.talk(), meaning);
      // A value said again changes nothing, and may be one that is not as planned.
      boolean changed =
          !turn.next().rope().equals(now.talk().rope())
              || turn.replies().stream().anyMatch(Reply.Taken.class::isInstance);
      now = now.with(turn.next());
      turn.replies().forEach(this::tell);
      if (changed) {
        now = now.with(new Stand.Hearing());
      }
      if (changed || turn.replies().stream().anyMatch(Reply.Affirmed.class::isInstance)) {
        ask();
      }
    }

    /**
     * What is as planned is read back; what is not is asked about, even if it was affirmed before.
     */
    private void tell(Reply reply) {
      if (reply instanceof Reply.Taken taken) {
        Place present = now.talk().rope().present();
        Set<Slot> slots = taken.items().stream().map(Reply.Item::slot).collect(Collectors.toSet());
        Predicate<Difference> isOfThese =
            each ->
                slots.contains(each.slot())
                    && (each.slot().scope() == Slot.Scope.CLIMB || each.place().equals(present));
        Set<Difference> accepted = new HashSet<>(now.accepted());
        accepted.removeIf(isOfThese);
        now = now.accepting(accepted);
        now.differences().stream().filter(isOfThese).map(Difference::slot).forEach(slots::remove);
        List<Reply.Item> asPlanned =
            taken.items().stream().filter(item -> slots.contains(item.slot())).toList();
        if (!asPlanned.isEmpty()) {
          replies.add(new RadioReply.AsPlanned(asPlanned, now.notSaid().size()));
        }
      } else if (!isTheDialoguesOwn(reply)) {
        replies.add(new RadioReply.Plain(reply));
      }
    }

    /** Here the plan says what is asked next. */
    private static boolean isTheDialoguesOwn(Reply reply) {
      return reply instanceof Reply.Asked
          || reply instanceof Reply.Missing
          || reply instanceof Reply.MissingElsewhere
          || reply instanceof Reply.VerdictCancelled;
    }

    /** The next question, if there is one: what waits, what differs, the whole. */
    private void ask() {
      if (now.talk().floor().pending().isPresent()) {
        repeatPending();
        return;
      }
      List<Difference> unsettled = now.unsettled();
      if (!unsettled.isEmpty()) {
        List<Difference> first = firstOf(unsettled);
        now = now.with(new Stand.AskingAbout(first));
        replies.add(new RadioReply.Differ(now.talk().rope().present(), first));
      } else if (now.notSaid().isEmpty()) {
        now = now.with(new Stand.AskingAll());
        replies.add(new RadioReply.AllSaid(Differences.size(now.plan()), now.differences()));
      } else {
        now = now.with(new Stand.Hearing());
      }
    }

    /** The dialogue has just put its question, unless something else was said to it. */
    private void repeatPending() {
      boolean told =
          replies.stream()
              .anyMatch(
                  reply ->
                      reply instanceof RadioReply.Plain plain
                          && (plain.reply() instanceof Reply.AffirmValue
                              || plain.reply() instanceof Reply.AffirmDoubtful
                              || plain.reply() instanceof Reply.AffirmFirst));
      if (!told) {
        now.talk()
            .floor()
            .pending()
            .ifPresent(each -> replies.add(new RadioReply.Plain(new Reply.AffirmFirst(each))));
      }
    }

    private void whereItStands() {
      ask();
      if (replies.isEmpty()) {
        List<Difference.NotSaid> notSaid = now.notSaid();
        replies.add(
            new RadioReply.NotSaidYet(
                now.talk().rope().present(), firstOf(notSaid), notSaid.size()));
      }
    }

    private static <D> List<D> firstOf(List<D> all) {
      return all.subList(0, Math.min(MOST_ITEMS, all.size()));
    }

    private void affirm() {
      if (now.stand() instanceof Stand.AskingAbout asking) {
        Set<Difference> accepted = new HashSet<>(now.accepted());
        accepted.addAll(asking.items());
        now = now.accepting(accepted);
        replies.add(new RadioReply.Plain(new Reply.Affirmed()));
        ask();
      } else if (now.stand() instanceof Stand.AskingAll
          && now.unsettled().isEmpty()
          && now.notSaid().isEmpty()) {
        Outcome outcome = now.differences().isEmpty() ? Outcome.CONFIRMED : Outcome.DIFFERS;
        now = now.with(new Stand.Ended(outcome, time));
        replies.add(new RadioReply.Ended(outcome, time));
      } else {
        replies.add(new RadioReply.NothingAsked());
      }
    }

    private void negative(Meaning meaning) {
      if (now.stand() instanceof Stand.AskingAbout asking) {
        for (Difference each : asking.items()) {
          now = now.with(now.talk().withdrawing(each.place(), each.slot()));
        }
        now = now.with(new Stand.Hearing());
        replies.add(new RadioReply.SayThem(asking.items().stream().map(Difference::slot).toList()));
      } else if (now.stand() instanceof Stand.AskingAll) {
        now = now.with(new Stand.Hearing());
        replies.add(new RadioReply.WhatIsWrong());
      } else {
        talk(meaning);
      }
    }
  }
}
