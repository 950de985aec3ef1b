package rigspeak.dialogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rigspeak.dialogue.Reply.Item;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.verdict.Verdict;

/**
 * Keeps a record of its own of one conversation, from nothing but what was meant and what was
 * replied, and holds every turn against the rules that keep a climber from harm.
 */
final class Watch {
  /** Words that change nothing that was said, whatever they are answered. */
  private static final Set<Command> TALK =
      EnumSet.of(
          Command.WHY,
          Command.HELP_RIG,
          Command.READ_BACK,
          Command.SAY_AGAIN,
          Command.ATTACHMENTS,
          Command.STAND_BY,
          Command.STOP_TALKING,
          Command.BRIEF,
          Command.FULL,
          Command.SLOWER,
          Command.FASTER,
          Command.HELP,
          Command.MISSING);

  /** Each value that was read back, by slot. */
  private final Map<Slot, Set<Said>> readBack = new EnumMap<>(Slot.class);

  /** The verdict that stands, and the rig that it was given on, by redirect. */
  private final Map<Integer, Verdict> verdicts = new HashMap<>();

  private final Map<Integer, Rig> judgedRigs = new HashMap<>();
  private final Set<Integer> loaded = new TreeSet<>();
  private Optional<Item> waitingForAffirm = Optional.empty();
  private boolean clippedInRepeated;
  private int present = 1;

  int releases;
  int good;
  int cancelled;
  int clippedIn;

  void see(Conversation before, Meaning meaning, Turn turn) {
    assertEquals(present, before.redirects().number());
    note(before, meaning, turn);
    assertNeverMute(meaning, turn);
    assertTalkChangesNothing(before, meaning, turn);
    assertOnlyReadBackValuesStand(turn.next());
    assertNothingVanishesUnsaid(before, turn);
    assertVerdictsFallAloud(before, turn);
    assertGate(before, meaning, turn);
    assertMoved(meaning, turn);
    assertWrongIsGone(meaning, turn);
    assertWaiting(before, meaning, turn);
    assertRedirects(before, meaning, turn);
    assertTold(meaning, turn);
  }

  // ---- the record ----

  private void note(Conversation before, Meaning meaning, Turn turn) {
    if (meaning == Command.AFFIRM) {
      waitingForAffirm.ifPresent(item -> read(item));
    }
    for (Reply reply : turn.replies()) {
      if (meaning == Command.SAY_AGAIN) {
        continue;
      }
      if (reply instanceof Reply.Taken taken) {
        taken.items().forEach(this::read);
      } else if (reply instanceof Reply.Judged judged) {
        verdicts.put(judged.redirect(), judged.verdict());
        judgedRigs.put(judged.redirect(), before.rig());
        assertJudged(before, judged);
      } else if (reply instanceof Reply.VerdictCancelled fallen) {
        cancelled++;
        fallen.redirects().forEach(verdicts::remove);
      } else if (reply instanceof Reply.LoadHeard load) {
        loaded.add(load.redirect());
      } else if (reply instanceof Reply.ClippedIn in && in.change().isPresent()) {
        loaded.remove(in.redirect());
      } else if (reply instanceof Reply.Turned turned) {
        present = turned.redirect();
      }
    }
    noteWhatWaits(meaning, turn);
  }

  private void noteWhatWaits(Meaning meaning, Turn turn) {
    if (meaning == Command.SAY_AGAIN) {
      return;
    }
    Optional<Item> asked =
        turn.replies().stream()
            .filter(Reply.AffirmValue.class::isInstance)
            .map(reply -> ((Reply.AffirmValue) reply).item())
            .findFirst();
    boolean settled =
        meaning instanceof Meaning.Correction
            || meaning == Command.AFFIRM
            || meaning == Command.NEGATIVE
            || meaning == Command.SCRAP;
    if (asked.isPresent() || (settled && !isAffirmFirst(turn))) {
      waitingForAffirm = asked;
    }
    if (turn.replies().contains(new Reply.AffirmClippedIn())) {
      clippedInRepeated = true;
    } else if (settled && !isAffirmFirst(turn)) {
      clippedInRepeated = false;
    } else if (meaning == Command.LANYARD_RELEASED) {
      clippedInRepeated = false;
    }
  }

  private static boolean isAffirmFirst(Turn turn) {
    return turn.replies().stream().anyMatch(Reply.AffirmFirst.class::isInstance);
  }

  private void read(Item item) {
    readBack.computeIfAbsent(item.slot(), slot -> new HashSet<>()).add(item.said());
  }

  private Optional<Verdict> standing(int redirect) {
    return Optional.ofNullable(verdicts.get(redirect));
  }

  private static boolean isGood(Verdict verdict) {
    return verdict instanceof Verdict.Judged judged && judged.rating() == Verdict.Rating.GOOD;
  }

  // ---- the rules ----

  /** Good is said only of a rig of which every value was read back and none waits or is wrong. */
  private void assertJudged(Conversation before, Reply.Judged judged) {
    assertEquals(Optional.empty(), before.floor().pending());
    if (isGood(judged.verdict())) {
      good++;
      assertEquals(Set.of(), before.rig().withdrawn());
    }
  }

  private static void assertNeverMute(Meaning meaning, Turn turn) {
    boolean mayBeMute = meaning == Command.STOP_TALKING || meaning == Command.SAY_AGAIN;
    assertTrue(mayBeMute || !turn.replies().isEmpty());
  }

  private static void assertTalkChangesNothing(Conversation before, Meaning meaning, Turn turn) {
    boolean talk =
        meaning instanceof Meaning.NotUnderstood
            || meaning instanceof Meaning.CannotHear
            || (meaning instanceof Command command && TALK.contains(command))
            || isAffirmFirst(turn);
    if (talk) {
      assertEquals(before.redirects(), turn.next().redirects());
      assertEquals(before.gate(), turn.next().gate());
      assertEquals(before.floor().pending(), turn.next().floor().pending());
    }
  }

  private void assertOnlyReadBackValuesStand(Conversation now) {
    now.rig()
        .said()
        .forEach(
            (slot, said) ->
                assertTrue(
                    readBack.getOrDefault(slot, Set.of()).contains(said),
                    () -> "never read back: " + slot + " " + said));
  }

  /** A value that stood or waited and does so no longer is named in the reply. */
  private static void assertNothingVanishesUnsaid(Conversation before, Turn turn) {
    if (before.redirects().number() != turn.next().redirects().number()) {
      return;
    }
    Set<Slot> gone = heldSlots(before);
    gone.removeAll(heldSlots(turn.next()));
    turn.replies().forEach(reply -> gone.removeAll(named(reply)));
    assertEquals(Set.of(), gone);
  }

  private static Set<Slot> heldSlots(Conversation now) {
    Set<Slot> held = EnumSet.noneOf(Slot.class);
    held.addAll(now.rig().said().keySet());
    if (now.floor().pending().orElse(null) instanceof Pending.Values values) {
      values.items().forEach(item -> held.add(item.slot()));
    }
    return held;
  }

  private static Set<Slot> named(Reply reply) {
    if (reply instanceof Reply.Dropped dropped) {
      return Set.copyOf(dropped.slots());
    }
    if (reply instanceof Reply.Scrapped scrapped) {
      return Set.of(scrapped.item().slot());
    }
    if (reply instanceof Reply.CorrectionAsked asked) {
      return Set.of(asked.slot());
    }
    if (reply instanceof Reply.Implausible implausible) {
      return Set.of(implausible.offence().slot());
    }
    if (reply instanceof Reply.SaidTwice twice) {
      return Set.of(twice.slot());
    }
    return reply instanceof Reply.WhichAngle ? Set.of(Slot.INSIDE_ANGLE, Slot.BEND) : Set.of();
  }

  /** A verdict stands only on the very rig that it was given on, and falls aloud. */
  private void assertVerdictsFallAloud(Conversation before, Turn turn) {
    List<Support> after = turn.next().redirects().all();
    for (int i = 0; i < after.size(); i++) {
      Optional<Verdict> standing = after.get(i).verdict();
      assertEquals(standing(i + 1), standing, "redirect " + (i + 1));
      if (standing.isPresent()) {
        assertEquals(judgedRigs.get(i + 1), after.get(i).said());
      }
    }
    for (int i = 0; i < before.redirects().all().size(); i++) {
      Support old = before.redirects().all().get(i);
      if (old.verdict().isPresent() && !old.said().equals(after.get(i).said())) {
        assertTrue(names(turn, i + 1), "not said to be cancelled: " + (i + 1));
      }
    }
  }

  private static boolean names(Turn turn, int redirect) {
    return turn.replies().stream()
        .anyMatch(
            reply ->
                reply instanceof Reply.VerdictCancelled fallen
                    && fallen.redirects().contains(redirect));
  }

  private void assertGate(Conversation before, Meaning meaning, Turn turn) {
    Lanyard was = before.gate().lanyard();
    Lanyard is = turn.next().gate().lanyard();
    if (is == Lanyard.CLIPPED_IN && was != Lanyard.CLIPPED_IN) {
      clippedIn++;
      assertEquals(Command.AFFIRM, meaning);
      assertEquals(Optional.of(new Pending.ClippedIn()), before.floor().pending());
    }
    if (meaning == Command.NEGATIVE || meaning == Command.SCRAP) {
      boolean denied = before.floor().pending().equals(Optional.of(new Pending.ClippedIn()));
      assertEquals(denied ? Lanyard.UNKNOWN : was, is, "denied");
    }
    if (meaning == Command.LOADED && loadHeard(turn)) {
      assertEquals(Lanyard.CLIPPED_IN, was, "loaded before clipped in");
    }
    if (meaning == Command.LANYARD_RELEASED && !hasReleased(turn)) {
      assertEquals(Lanyard.UNKNOWN, is, "said to be released, held");
    }
    boolean released = meaning != Command.SAY_AGAIN && hasReleased(turn);
    if ((is == Lanyard.RELEASED && was != Lanyard.RELEASED) || released) {
      releases++;
      assertEquals(Command.LANYARD_RELEASED, meaning);
      assertTrue(released);
      assertTrue(standing(present).filter(Watch::isGood).isPresent(), "released, not good");
      assertEquals(judgedRigs.get(present), before.rig());
      assertTrue(loaded.contains(present), "released, not loaded");
      assertFalse(before.floor().pending().orElse(null) instanceof Pending.Values);
      assertEquals(Set.of(), before.rig().withdrawn());
    }
    if (was == Lanyard.CLIPPED_IN && is != Lanyard.CLIPPED_IN) {
      boolean denied = meaning == Command.NEGATIVE || meaning == Command.SCRAP;
      assertTrue(meaning == Command.LANYARD_RELEASED || denied, () -> "lost by " + meaning);
    }
  }

  private static boolean loadHeard(Turn turn) {
    return turn.replies().stream().anyMatch(Reply.LoadHeard.class::isInstance);
  }

  /** Hands on the redirect: nothing that was known of it stands, and nothing is loaded. */
  private static void assertMoved(Meaning meaning, Turn turn) {
    if (meaning == Command.SAY_AGAIN) {
      return;
    }
    for (Reply reply : turn.replies()) {
      if (reply instanceof Reply.ClippedIn in && in.change().isPresent()) {
        Support support = turn.next().redirects().support();
        assertFalse(support.loaded(), "in hand and loaded");
        assertEquals(support.verdict(), in.standing());
        if (in.change().get() != Reply.Change.SET) {
          assertEquals(Optional.empty(), support.verdict(), "moved and judged");
        }
      }
    }
  }

  /** A value that cannot be, or was called wrong, stands no longer. */
  private static void assertWrongIsGone(Meaning meaning, Turn turn) {
    if (meaning == Command.SAY_AGAIN) {
      return;
    }
    for (Reply reply : turn.replies()) {
      if (reply instanceof Reply.Implausible
          || reply instanceof Reply.SaidTwice
          || reply instanceof Reply.CorrectionAsked) {
        named(reply)
            .forEach(slot -> assertFalse(turn.next().rig().has(slot), () -> "wrong: " + slot));
      }
    }
  }

  private static boolean hasReleased(Turn turn) {
    return turn.replies().contains(new Reply.LanyardReleased());
  }

  private void assertWaiting(Conversation before, Meaning meaning, Turn turn) {
    Optional<Pending> pending = turn.next().floor().pending();
    if (pending.orElse(null) instanceof Pending.Values values) {
      assertEquals(waitingForAffirm, Optional.of(values.items().get(0)));
      for (Item item : values.items()) {
        assertTrue(!turn.next().rig().has(item.slot()), () -> item + " waits and stands");
      }
    }
    assertEquals(
        clippedInRepeated,
        pending.equals(Optional.of(new Pending.ClippedIn())),
        () -> before.floor().pending() + " " + meaning);
  }

  private void assertRedirects(Conversation before, Meaning meaning, Turn turn) {
    List<Support> was = before.redirects().all();
    List<Support> is = turn.next().redirects().all();
    assertEquals(was.size() + (isBegun(meaning, turn) ? 1 : 0), is.size());
    for (int i = 0; i < is.size(); i++) {
      for (Slot slot : Slot.values()) {
        if (slot.scope() == Slot.Scope.CLIMB) {
          assertEquals(turn.next().rig().said(slot), is.get(i).said().said(slot));
        } else if (i >= was.size()) {
          assertTrue(!is.get(i).said().has(slot), () -> "taken along: " + slot);
        } else if (i + 1 != before.redirects().number()) {
          assertEquals(was.get(i).said().said(slot), is.get(i).said().said(slot));
        }
      }
    }
  }

  private static boolean isBegun(Meaning meaning, Turn turn) {
    return meaning == Command.NEXT && !isAffirmFirst(turn);
  }

  /** What the tool says holds the climber is what holds him. */
  private void assertTold(Meaning meaning, Turn turn) {
    Conversation now = turn.next();
    assertEquals(List.copyOf(loaded), now.redirects().loaded());
    if (meaning == Command.ATTACHMENTS) {
      assertEquals(
          List.of(new Reply.Attached(now.gate().lanyard(), List.copyOf(loaded))), turn.replies());
    }
  }
}
