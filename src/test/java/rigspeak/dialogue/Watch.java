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
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import rigspeak.dialogue.Reply.Item;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.verdict.Loss;
import rigspeak.verdict.PathVerdict;

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
          Command.LETS_GO,
          Command.SWING,
          Command.STAND_BY,
          Command.STOP_TALKING,
          Command.BRIEF,
          Command.FULL,
          Command.SLOWER,
          Command.FASTER,
          Command.HELP,
          Command.MISSING,
          Command.WAKE);

  /** Each value that was read back, by slot. */
  private final Map<Slot, Set<Said>> readBack = new EnumMap<>(Slot.class);

  /** The verdict that stands, and the rope that it was given on, by the support asked about. */
  private final Map<Place, PathVerdict> verdicts = new HashMap<>();

  private final Map<Place, SortedMap<Place, Rig>> judgedRopes = new HashMap<>();

  /** Redirects that the rope runs over, and supports whose rope was said to be loaded. */
  private final Set<Place> on = new TreeSet<>();

  private final Set<Place> loaded = new TreeSet<>();
  private List<Item> waitingForAffirm = List.of();
  private boolean clippedInRepeated;
  private Place present = Place.redirectNumber(1);

  int releases;
  int good;
  int goodOfMany;
  int cancelled;
  int clippedIn;
  int takenOffKnowing;

  void see(Conversation before, Meaning meaning, Turn turn) {
    assertEquals(present, before.rope().present());
    note(before, meaning, turn);
    assertNeverMute(meaning, turn);
    assertTalkChangesNothing(before, meaning, turn);
    assertOnlyReadBackValuesStand(turn.next());
    assertNothingVanishesUnsaid(before, turn);
    assertVerdictsFallAloud(before, turn);
    assertGate(before, meaning, turn);
    assertMoved(before, meaning, turn);
    assertWrongIsGone(meaning, turn);
    assertWaiting(before, meaning, turn);
    assertSupports(before, meaning, turn);
    assertTold(meaning, turn);
  }

  // ---- the record ----

  private void note(Conversation before, Meaning meaning, Turn turn) {
    if (meaning == Command.AFFIRM) {
      waitingForAffirm.forEach(this::read);
    }
    for (Reply reply : turn.replies()) {
      if (meaning == Command.SAY_AGAIN) {
        continue;
      }
      if (reply instanceof Reply.Taken taken) {
        taken.items().forEach(this::read);
      } else if (reply instanceof Reply.Judged judged) {
        verdicts.put(present, judged.verdict());
        judgedRopes.put(present, rope(before, present));
        assertJudged(before, judged.verdict());
      } else if (reply instanceof Reply.VerdictCancelled fallen) {
        cancelled++;
        fallen.places().forEach(verdicts::remove);
      } else if (reply instanceof Reply.LoadHeard load) {
        loaded.add(load.place());
        on.add(load.place());
      } else if (reply instanceof Reply.ClippedIn in && in.change().isPresent()) {
        loaded.remove(in.place());
        if (in.change().get() == Reply.Change.SET) {
          on.add(in.place());
        } else {
          on.remove(in.place());
        }
      } else if (reply instanceof Reply.Turned turned) {
        present = turned.place();
      }
    }
    noteWhatWaits(meaning, turn);
  }

  private void noteWhatWaits(Meaning meaning, Turn turn) {
    if (meaning == Command.SAY_AGAIN) {
      return;
    }
    List<Item> asked =
        turn.replies().stream().flatMap(reply -> toBeAffirmed(reply).stream()).toList();
    boolean settled =
        meaning instanceof Meaning.Correction
            || meaning instanceof Meaning.Values
            || meaning == Command.AFFIRM
            || meaning == Command.NEGATIVE
            || meaning == Command.SCRAP;
    if (!asked.isEmpty() || (settled && !isAffirmFirst(turn))) {
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

  private static List<Item> toBeAffirmed(Reply reply) {
    if (reply instanceof Reply.AffirmValue affirm) {
      return List.of(affirm.item());
    }
    return reply instanceof Reply.AffirmDoubtful doubtful ? doubtful.items() : List.of();
  }

  private static boolean isAffirmFirst(Turn turn) {
    return turn.replies().stream().anyMatch(Reply.AffirmFirst.class::isInstance);
  }

  private void read(Item item) {
    readBack.computeIfAbsent(item.slot(), slot -> new HashSet<>()).add(item.said());
  }

  private Optional<PathVerdict> standing(Place place) {
    return Optional.ofNullable(verdicts.get(place));
  }

  /** What the rope runs over: the main point, what was set or loaded, and this one. */
  private SortedMap<Place, Rig> rope(Conversation now, Place place) {
    SortedMap<Place, Rig> rope = new TreeMap<>();
    List<Support> all = now.rope().all();
    for (int i = 0; i < all.size(); i++) {
      Place other = new Place(i);
      if (i == 0 || other.equals(place) || on.contains(other)) {
        rope.put(other, all.get(i).said());
      }
    }
    return rope;
  }

  // ---- the rules ----

  /** Good is said only of a whole rope of which nothing is missing, waits or was called wrong. */
  private void assertJudged(Conversation before, PathVerdict verdict) {
    assertEquals(present, verdict.asked());
    assertEquals(Optional.empty(), before.floor().pending());
    if (verdict.isGood()) {
      SortedMap<Place, Rig> rope = rope(before, present);
      good++;
      goodOfMany += rope.size() > 2 ? 1 : 0;
      assertEquals(rope.keySet(), verdict.supports().keySet());
      WholeRope.assertWhole(rope);
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
      assertEquals(before.rope(), turn.next().rope());
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
    if (!before.rope().present().equals(turn.next().rope().present())) {
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
    waitingItems(now).forEach(item -> held.add(item.slot()));
    return held;
  }

  private static List<Item> waitingItems(Conversation now) {
    Pending pending = now.floor().pending().orElse(null);
    if (pending instanceof Pending.Values values) {
      return values.items();
    }
    return pending instanceof Pending.Doubtful doubtful ? doubtful.items() : List.of();
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

  /** A verdict stands only on the very rope that it was given on, falls aloud, and stays down. */
  private void assertVerdictsFallAloud(Conversation before, Turn turn) {
    for (Place place : places(turn.next())) {
      Optional<PathVerdict> standing = turn.next().rope().standing(place);
      assertEquals(standing(place), standing, place.key());
      if (standing.isPresent()) {
        assertEquals(judgedRopes.get(place), rope(turn.next(), place), place.key());
      }
    }
    for (Place place : places(before)) {
      boolean fell =
          before.rope().standing(place).isPresent() && turn.next().rope().standing(place).isEmpty();
      assertTrue(!fell || names(turn, place), () -> "not said to be cancelled: " + place);
    }
  }

  private static List<Place> places(Conversation now) {
    return IntStream.range(0, now.rope().all().size()).mapToObj(Place::new).toList();
  }

  private static boolean names(Turn turn, Place place) {
    return turn.replies().stream()
        .anyMatch(
            reply ->
                reply instanceof Reply.VerdictCancelled fallen && fallen.places().contains(place));
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
      assertTrue(standing(present).filter(PathVerdict::isGood).isPresent(), "released, not good");
      assertEquals(judgedRopes.get(present), rope(before, present));
      assertTrue(loaded.contains(present), "released, not loaded");
      assertEquals(List.of(), waitingItems(before));
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

  /** Hands on a support: it is not loaded; moved or taken off, its verdict is gone. */
  private void assertMoved(Conversation before, Meaning meaning, Turn turn) {
    if (meaning == Command.SAY_AGAIN) {
      return;
    }
    for (Reply reply : turn.replies()) {
      if (reply instanceof Reply.ClippedIn in && in.change().isPresent()) {
        boolean set = in.change().get() == Reply.Change.SET;
        Rope rope = turn.next().rope();
        assertEquals(set ? Support.State.SET : Support.State.OFF, rope.support().state());
        assertEquals(rope.standing(present), in.standing());
        assertTrue(set || in.standing().isEmpty(), "moved and judged");
        assertLossTold(before.rope().standing(present), !set, turn);
      }
    }
  }

  /** Whoever takes a support off is told what its loss would do, where that is known. */
  private void assertLossTold(Optional<PathVerdict> stood, boolean off, Turn turn) {
    Optional<Loss> known =
        stood
            .map(verdict -> verdict.losses().get(present))
            .filter(loss -> off && !(loss instanceof Loss.NotKnown));
    assertEquals(
        known.stream().toList(),
        turn.replies().stream()
            .filter(Reply.LetsGo.class::isInstance)
            .map(reply -> ((Reply.LetsGo) reply).loss())
            .toList());
    takenOffKnowing += known.isPresent() ? 1 : 0;
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
      assertEquals(waitingForAffirm, List.of(values.items().get(0)));
    } else if (pending.orElse(null) instanceof Pending.Doubtful doubtful) {
      assertEquals(waitingForAffirm, doubtful.items());
    }
    for (Item item : waitingItems(turn.next())) {
      assertTrue(!turn.next().rig().has(item.slot()), () -> item + " waits and stands");
    }
    assertEquals(
        clippedInRepeated,
        pending.equals(Optional.of(new Pending.ClippedIn())),
        () -> before.floor().pending() + " " + meaning);
  }

  private void assertSupports(Conversation before, Meaning meaning, Turn turn) {
    List<Support> was = before.rope().all();
    List<Support> is = turn.next().rope().all();
    assertEquals(was.size() + (isBegun(meaning, turn) ? 1 : 0), is.size());
    for (int i = 0; i < is.size(); i++) {
      for (Slot slot : Slot.values()) {
        if (slot.scope() == Slot.Scope.CLIMB) {
          assertEquals(turn.next().rig().said(slot), is.get(i).said().said(slot));
        } else if (i >= was.size()) {
          assertTrue(!is.get(i).said().has(slot), () -> "taken along: " + slot);
        } else if (i != before.rope().present().redirect()) {
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
    assertEquals(List.copyOf(loaded), now.rope().loaded());
    if (meaning == Command.ATTACHMENTS) {
      assertEquals(
          List.of(new Reply.Attached(now.gate().lanyard(), List.copyOf(loaded))), turn.replies());
    }
  }
}
