package rigspeak.contract;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import rigspeak.answer.Answers;
import rigspeak.answer.Utterance;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Reply.Change;
import rigspeak.dialogue.Reply.Item;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.rig.Place;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.verdict.Check;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;

/**
 * Never wrongly good. Listens to one conversation as somebody who stands beside the climber: what
 * was said, what was answered. Keeps its own record of what was read back, affirmed, set, loaded
 * and clipped in, and holds every "good" that is spoken against it:
 *
 * <ul>
 *   <li>it is said of the rope that the climber hangs on or asks about, and of every support of it;
 *   <li>each value it rests on is, word for word, what the climber heard back last, and nothing
 *       that was called wrong, that waits or that the ear doubted is open;
 *   <li>nothing was set, moved, taken off or loaded, and no lanyard released, but by the gate.
 * </ul>
 *
 * That no corner of the bounds is over a limit is for {@code HiddenWorst} to say of the verdicts
 * that this one lets through.
 */
final class Contract {
  /** Any "good" that is spoken, unless it is denied in the same words. */
  private static final Pattern GOOD = Pattern.compile("(?i)(?<!not )(?<!makes it )\\bgood\\b");

  /** A number with a twin in sound; a ten with a digit after it has none. */
  private static final Pattern TWIN =
      Pattern.compile(
          "\\b(thir|four|fif|six|seven|eigh|nine)teen\\b"
              + "|\\b(thirty|forty|fifty|sixty|seventy|eighty|ninety)\\b"
              + "(?! (one|two|three|four|five|fife|six|seven|eight|nine|niner)\\b)");

  private Place present = Place.redirectNumber(1);
  private final Map<Place, Map<Slot, Said>> heardBack = new TreeMap<>();
  private final Map<Place, Set<Slot>> open = new TreeMap<>();
  private final Map<Place, Set<Slot>> doubted = new TreeMap<>();
  private final Map<Slot, Said> waiting = new LinkedHashMap<>();

  private final Set<Place> on = new TreeSet<>();
  private final Set<Place> loaded = new TreeSet<>();
  private boolean askedClippedIn;
  private boolean clippedIn;
  private Optional<Wish> wish = Optional.empty();

  /** What was heard back of the whole rope when its verdict was spoken, while that stands. */
  private final Map<Place, Map<Place, Map<Slot, Said>>> good = new HashMap<>();

  /** What somebody wants to do, where. */
  private record Wish(Place place, Change change) {}

  Contract() {}

  private Contract(Contract other) {
    present = other.present;
    other.heardBack.forEach((place, said) -> heardBack.put(place, new EnumMap<>(said)));
    other.open.forEach((place, slots) -> open.put(place, EnumSet.copyOf(slots)));
    other.doubted.forEach((place, slots) -> doubted.put(place, EnumSet.copyOf(slots)));
    waiting.putAll(other.waiting);
    on.addAll(other.on);
    loaded.addAll(other.loaded);
    askedClippedIn = other.askedClippedIn;
    clippedIn = other.clippedIn;
    wish = other.wish;
    good.putAll(other.good);
  }

  Contract copy() {
    return new Contract(this);
  }

  /** All that it remembers, to tell two records apart. */
  List<Object> record() {
    return List.of(
        present,
        heardBack,
        open,
        doubted,
        waiting,
        on,
        loaded,
        askedClippedIn,
        clippedIn,
        wish,
        good);
  }

  /**
   * Takes note of a step, and throws where it breaks the contract.
   *
   * @param words as they were heard or typed
   * @param byEar whether the ear may have taken them for others
   * @return the good verdicts that were spoken
   */
  List<PathVerdict> see(
      String words, boolean byEar, Meaning meaning, List<Reply> replies, Detail detail) {
    boolean passedOver = replies.stream().anyMatch(Reply.AffirmFirst.class::isInstance);
    boolean waited = !waiting.isEmpty();
    if (!passedOver) {
      settle(words, byEar, meaning, replies);
    }
    List<PathVerdict> spoken = new ArrayList<>();
    for (Reply reply : replies) {
      String text = text(reply, detail);
      if (meaning != Command.SAY_AGAIN) {
        note(meaning, reply, text, waited);
      }
      if (GOOD.matcher(text).find()) {
        spoken.add(assertMayBeCalledGood(meaning, reply, text));
      }
      if (meaning != Command.SAY_AGAIN && reply instanceof Reply.Judged judged) {
        good.remove(present);
        if (judged.verdict().isGood()) {
          assertTrue(GOOD.matcher(text).find(), "good and not spoken: " + text);
          good.put(present, rope());
        }
      }
    }
    return spoken;
  }

  private static String text(Reply reply, Detail detail) {
    List<String> texts = new ArrayList<>();
    for (Utterance utterance : Answers.say(List.of(reply), detail)) {
      texts.add(utterance.text());
    }
    return String.join(" ", texts);
  }

  // ---- what the words said do ----

  private void settle(String words, boolean byEar, Meaning meaning, List<Reply> replies) {
    if (meaning == Command.AFFIRM) {
      waiting.forEach(this::take);
      waiting.clear();
      clippedIn |= askedClippedIn;
      askedClippedIn = false;
    } else if (meaning == Command.NEGATIVE || meaning == Command.SCRAP) {
      waiting.clear();
      clippedIn &= !askedClippedIn;
      askedClippedIn = false;
    } else if (meaning == Command.LANYARD_RELEASED) {
      askedClippedIn = false;
    } else if (meaning instanceof Meaning.Correction || meaning instanceof Meaning.Values) {
      waiting.clear();
    }
    wish(meaning)
        .filter(change -> replies.stream().anyMatch(Reply.LanyardFirst.class::isInstance))
        .ifPresent(change -> wish = Optional.of(new Wish(present, change)));
    if (byEar) {
      doubt(words, meaning);
    }
  }

  private static Optional<Change> wish(Meaning meaning) {
    if (!(meaning instanceof Command command)) {
      return Optional.empty();
    }
    return switch (command) {
      case SET -> Optional.of(Change.SET);
      case CHANGE -> Optional.of(Change.MOVE);
      case TAKE_OFF -> Optional.of(Change.TAKE_OFF);
      default -> Optional.empty();
    };
  }

  /** Of a breath with several values the grammar tells which of them was doubtful. */
  private void doubt(String words, Meaning meaning) {
    List<Statement> statements = List.of();
    if (meaning instanceof Meaning.Values values) {
      statements = values.statements();
    } else if (meaning instanceof Meaning.Correction correction) {
      statements = correction.statements();
    }
    for (Statement statement : statements) {
      if (statement instanceof Statement.Value value) {
        boolean twin = statements.size() == 1 ? TWIN.matcher(words).find() : value.doubtful();
        Set<Slot> slots = at(doubted, value.slot());
        if (twin) {
          slots.add(value.slot());
        } else {
          slots.remove(value.slot());
        }
      }
    }
  }

  // ---- what the words spoken tell ----

  private void note(Meaning meaning, Reply reply, String text, boolean waited) {
    if (reply instanceof Reply.Taken taken) {
      heard(text, taken.items()).forEach(this::take);
    } else if (reply instanceof Reply.AffirmValue affirm) {
      await(text, List.of(affirm.item()));
    } else if (reply instanceof Reply.AffirmDoubtful doubtful) {
      await(text, doubtful.items());
    } else if (reply instanceof Reply.Dropped dropped) {
      // "Scrap that" where a wrong value should be said again leaves it as if never spoken of.
      boolean forgotten = meaning == Command.SCRAP && !waited;
      dropped.slots().forEach(slot -> lose(slot, !forgotten));
    } else if (reply instanceof Reply.Scrapped scrapped) {
      lose(scrapped.item().slot(), false);
    } else if (reply instanceof Reply.CorrectionAsked asked) {
      lose(asked.slot(), true);
    } else if (reply instanceof Reply.Implausible implausible) {
      lose(implausible.offence().slot(), true);
    } else if (reply instanceof Reply.SaidTwice twice) {
      lose(twice.slot(), true);
    } else if (reply instanceof Reply.VerdictCancelled cancelled) {
      cancelled.places().forEach(good::remove);
    } else if (reply instanceof Reply.Turned turned) {
      present = turned.place();
    } else {
      noteOfTheGate(meaning, reply);
    }
  }

  private void noteOfTheGate(Meaning meaning, Reply reply) {
    if (reply instanceof Reply.AffirmClippedIn) {
      askedClippedIn = true;
    } else if (reply instanceof Reply.HoldLanyard) {
      clippedIn = false;
    } else if (reply instanceof Reply.LanyardReleased) {
      assertMayBeReleased(meaning);
      clippedIn = false;
    } else if (reply instanceof Reply.ClippedIn through && through.change().isPresent()) {
      assertGated(meaning, through.place(), through.change().get());
    } else if (reply instanceof Reply.LoadHeard load) {
      assertTrue(clippedIn, "loaded without a lanyard");
      assertEquals(present, load.place(), "loaded elsewhere");
      on.add(present);
      loaded.add(present);
    }
  }

  private void await(String text, List<Item> items) {
    Map<Slot, Said> heard = heard(text, items);
    heard.keySet().forEach(slot -> forget(slot, true));
    waiting.putAll(heard);
  }

  private static Map<Slot, Said> heard(String text, List<Item> items) {
    List<Slot> slots = items.stream().map(Item::slot).toList();
    List<Said> values = HeardBack.values(text, slots);
    Map<Slot, Said> heard = new LinkedHashMap<>();
    for (int i = 0; i < slots.size(); i++) {
      heard.put(slots.get(i), values.get(i));
    }
    return heard;
  }

  private void take(Slot slot, Said said) {
    heardBack.computeIfAbsent(home(slot), none -> new EnumMap<>(Slot.class)).put(slot, said);
    at(open, slot).remove(slot);
    if (waiting.containsKey(slot)) {
      at(doubted, slot).remove(slot);
    }
  }

  private void lose(Slot slot, boolean mustBeSaidAgain) {
    at(doubted, slot).remove(slot);
    forget(slot, mustBeSaidAgain);
  }

  private void forget(Slot slot, boolean mustBeSaidAgain) {
    heardBack.getOrDefault(home(slot), new EnumMap<>(Slot.class)).remove(slot);
    if (mustBeSaidAgain) {
      at(open, slot).add(slot);
    } else {
      at(open, slot).remove(slot);
    }
  }

  private Set<Slot> at(Map<Place, Set<Slot>> slots, Slot slot) {
    return slots.computeIfAbsent(home(slot), none -> EnumSet.noneOf(Slot.class));
  }

  /** What belongs to the climb is kept with the main point. */
  private Place home(Slot slot) {
    return home(slot, present);
  }

  private static Place home(Slot slot, Place place) {
    return slot.scope() == Slot.Scope.CLIMB ? Place.MAIN_POINT : place;
  }

  // ---- the rules ----

  private void assertGated(Meaning meaning, Place place, Change change) {
    assertTrue(clippedIn, change + " without a lanyard that was affirmed");
    assertEquals(present, place, change + " of another support than the talk is about");
    boolean now = wish(meaning).equals(Optional.of(change));
    assertTrue(
        now || wish.equals(Optional.of(new Wish(place, change))),
        change + " of " + place.key() + ", which nobody asked for there; wanted was " + wish);
    wish = Optional.empty();
    loaded.remove(place);
    if (change == Change.SET) {
      on.add(place);
    } else {
      on.remove(place);
      good.remove(place);
    }
  }

  private void assertMayBeReleased(Meaning meaning) {
    assertEquals(Command.LANYARD_RELEASED, meaning, "released unasked");
    assertEquals(rope(), good.get(present), "released without a good check of this very rope");
    assertTrue(loaded.contains(present), "released before the rope was loaded");
  }

  private PathVerdict assertMayBeCalledGood(Meaning meaning, Reply reply, String text) {
    PathVerdict verdict = verdictBehind(reply, text);
    assertTrue(verdict.isGood(), "spoken as good: " + text);
    assertTrue(text.contains("by the numbers you gave"), text);
    assertEquals(present, verdict.asked(), "good, but of another support");
    verdict.supports().forEach(Contract::assertWithinLimits);
    assertEquals(rope().keySet(), verdict.path().supports().keySet(), "another rope");
    assertEquals(rope().keySet(), verdict.supports().keySet(), "a support was left out");
    rope().forEach((place, heard) -> assertHeardBack(verdict, place, heard));
    assertTrue(waiting.isEmpty(), "good, while there waits " + waiting);
    assertTrue(!askedClippedIn, "good, while clipped in waits");
    if (reply instanceof Reply.Judged) {
      assertTrue(text.contains("Clip in"), text);
    }
    if (meaning != Command.CHECK) {
      assertEquals(rope(), good.get(present), "good by a verdict that does not stand");
    }
    if (reply instanceof Reply.ClippedIn || reply instanceof Reply.LoadHeard) {
      assertTrue(clippedIn, "good to be loaded without a lanyard");
    }
    return verdict;
  }

  private static PathVerdict verdictBehind(Reply reply, String text) {
    Optional<PathVerdict> verdict = Optional.empty();
    if (reply instanceof Reply.Judged judged) {
      verdict = Optional.of(judged.verdict());
    } else if (reply instanceof Reply.ClippedIn clipped) {
      verdict = clipped.standing();
    } else if (reply instanceof Reply.LoadHeard load) {
      verdict = load.standing();
    } else if (reply instanceof Reply.WouldHelp help) {
      verdict = Optional.of(help.verdict());
    }
    return verdict.orElseThrow(() -> new AssertionError("good, by no verdict: " + text));
  }

  /** Every support has its numbers, and no check of it uses more than the tool's own margin. */
  private static void assertWithinLimits(Place place, Verdict verdict) {
    assertTrue(verdict instanceof Verdict.Judged, place.key() + " is not judged by numbers");
    for (Check check : ((Verdict.Judged) verdict).checks()) {
      assertTrue(check.utilisation().high() <= Check.WELL_WITHIN, place.key() + " " + check);
    }
  }

  private void assertHeardBack(PathVerdict verdict, Place place, Map<Slot, Said> heard) {
    Map<Slot, Said> judged = verdict.path().at(place).said();
    assertEquals(heard.keySet(), judged.keySet(), "heard back, and judged, of " + place.key());
    judged.forEach(
        (slot, said) ->
            assertTrue(
                HeardBack.same(heard.get(slot), said),
                place.key() + " is judged by " + said + ", heard back was " + heard.get(slot)));
    for (Place home : List.of(place, Place.MAIN_POINT)) {
      assertEquals(Set.of(), open.getOrDefault(home, Set.of()), "not said again");
      assertEquals(Set.of(), doubted.getOrDefault(home, Set.of()), "never affirmed");
    }
  }

  /** What was heard back of the main point, of what was set or loaded, and of this support. */
  private Map<Place, Map<Slot, Said>> rope() {
    Map<Place, Map<Slot, Said>> rope = new TreeMap<>();
    Set<Place> places = new TreeSet<>(on);
    places.add(Place.MAIN_POINT);
    places.add(present);
    Map<Slot, Said> main = heardBack.getOrDefault(Place.MAIN_POINT, Map.of());
    for (Place place : places) {
      Map<Slot, Said> heard = new EnumMap<>(Slot.class);
      heard.putAll(heardBack.getOrDefault(place, Map.of()));
      main.forEach(
          (slot, said) -> {
            if (slot.scope() == Slot.Scope.CLIMB) {
              heard.put(slot, said);
            }
          });
      rope.put(place, heard);
    }
    return rope;
  }

  private static void assertTrue(boolean holds, String broken) {
    if (!holds) {
      throw new AssertionError(broken);
    }
  }

  private static void assertEquals(Object wanted, Object there, String broken) {
    assertTrue(wanted.equals(there), broken + ": " + wanted + ", there is " + there);
  }
}
