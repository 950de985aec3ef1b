package rigspeak.dialogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Situation.Exchange;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Trouble;
import rigspeak.meaning.Notation;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;

/** Whole conversations as an arborist would have them, from the data files beside this class. */
class SituationTest {
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Dialogue DIALOGUE = new Dialogue(CATALOGUE, new Judge(CATALOGUE));
  private static final Map<String, List<String>> RIGS = Situation.rigs();

  /** By ear a fifteen may have been a fifty; typed it is what it is. */
  private static final String HEARD = "(heard) ";

  /** By ear, and not surely. */
  private static final String PERHAPS = "(perhaps) ";

  static Stream<Situation> situations() {
    return Situation.all();
  }

  @ParameterizedTest
  @MethodSource("situations")
  void goesAsWritten(Situation situation) {
    Conversation now = Conversation.begin();
    for (Exchange exchange : situation.exchanges()) {
      if (isRig(exchange)) {
        now = sayRig(now, exchange.said());
        continue;
      }
      Turn turn = DIALOGUE.step(now, meaning(exchange.said(), now));
      now = turn.next();
      String where = situation.theme() + ".txt, line " + exchange.line() + ": " + exchange.said();
      assertReplies(exchange.replies(), turn.replies(), where);
      for (String state : exchange.states()) {
        assertStands(state, now, where);
      }
    }
  }

  @Test
  void thereAreEnoughSituations() {
    List<Situation> all = situations().toList();
    assertTrue(all.size() >= 35, () -> all.size() + " situations");
    Set<String> titles = new HashSet<>();
    for (Situation situation : all) {
      assertTrue(titles.add(situation.title()), () -> "twice: " + situation);
      assertTrue(!situation.exchanges().isEmpty(), situation::toString);
      for (Exchange exchange : situation.exchanges()) {
        assertTrue(
            isRig(exchange) != !exchange.replies().isEmpty(),
            () -> situation + ", line " + exchange.line());
      }
    }
  }

  /** Nothing that the tool can reply is left out. */
  @Test
  void everyReplyIsHeardInSomeSituation() {
    Set<Class<?>> heard = new HashSet<>();
    situations()
        .forEach(
            situation -> {
              Conversation now = Conversation.begin();
              for (Exchange exchange : situation.exchanges()) {
                if (isRig(exchange)) {
                  now = sayRig(now, exchange.said());
                } else if (!exchange.said().equals("check redirect")) {
                  Turn turn = DIALOGUE.step(now, meaning(exchange.said(), now));
                  turn.replies().forEach(reply -> heard.add(reply.getClass()));
                  now = turn.next();
                } else {
                  exchange.replies().forEach(line -> heard.add(Reply.Judged.class));
                }
              }
            });
    Set<Class<?>> all =
        new LinkedHashSet<>(
            Arrays.stream(Reply.class.getPermittedSubclasses())
                .filter(reply -> !isOutOfReach(reply))
                .toList());
    all.removeAll(heard);
    assertEquals(Set.of(), all, "never replied");
  }

  /**
   * Given only on a verdict, which is costly; the situations of verdicts have them by name. Or not
   * to anything said, but when it falls asleep, or goes on after it was broken off.
   */
  private static boolean isOutOfReach(Class<?> reply) {
    return Set.of(
            Reply.FallenAsleep.class,
            Reply.GoesOn.class,
            Reply.BeginsAnew.class,
            Reply.Why.class,
            Reply.WouldHelp.class,
            Reply.VerdictCancelled.class,
            Reply.LanyardReleased.class)
        .contains(reply);
  }

  private static Meaning meaning(String said, Conversation now) {
    if (said.startsWith(HEARD)) {
      return UNDERSTANDING.hear(said.substring(HEARD.length()), now.asked());
    }
    if (said.startsWith(PERHAPS)) {
      return UNDERSTANDING.hearDoubtful(said.substring(PERHAPS.length()), now.asked());
    }
    return switch (said) {
      case "(silence)" -> UNDERSTANDING.understand("", now.asked());
      case "(too noisy)" -> new Meaning.CannotHear(Trouble.TOO_NOISY);
      case "(clipped)" -> new Meaning.CannotHear(Trouble.CLIPPED);
      case "(too quiet)" -> new Meaning.CannotHear(Trouble.TOO_QUIET);
      default -> UNDERSTANDING.understand(said, now.asked());
    };
  }

  private static boolean isRig(Exchange exchange) {
    return exchange.said().matches("\\((rig|support) \\w+\\)");
  }

  /** "(support x)" says x alone; "(rig x)" describes the main point first, then turns back. */
  private static Conversation sayRig(Conversation before, String call) {
    String name = call.substring(call.indexOf(' ') + 1, call.length() - 1);
    if (call.startsWith("(support ")) {
      return saySupport(before, name);
    }
    Conversation now = DIALOGUE.step(before, new Meaning.GoTo(Place.MAIN_POINT)).next();
    now = saySupport(now, "main");
    now = DIALOGUE.step(now, new Meaning.GoTo(before.rope().present())).next();
    return saySupport(now, name);
  }

  /** Every line is taken as it stands, without a word of doubt. */
  private static Conversation saySupport(Conversation before, String name) {
    Conversation now = before;
    for (String line : RIGS.get(name)) {
      Turn turn = DIALOGUE.step(now, meaning(line, now));
      assertEquals(1, turn.replies().size(), line);
      assertInstanceOf(Reply.Taken.class, turn.replies().get(0), line);
      now = turn.next();
    }
    return now;
  }

  private static void assertReplies(List<String> expected, List<Reply> replies, String where) {
    List<String> actual = replies.stream().map(ReplyNotation::of).toList();
    List<String> wanted =
        expected.equals(List.of("(nothing)"))
            ? List.of()
            : expected.stream().map(ReplyNotation::expected).toList();
    boolean fits = wanted.size() == actual.size();
    for (int i = 0; fits && i < wanted.size(); i++) {
      fits = ReplyNotation.fits(wanted.get(i), actual.get(i));
    }
    if (!fits) {
      assertEquals(String.join("\n", wanted), String.join("\n", actual), where);
    }
  }

  private static void assertStands(String state, Conversation now, String where) {
    String[] words = state.split(" ", 2);
    switch (words[0]) {
      case "rig" -> assertEquals(words[1], orNothing(saidSlots(now.rig())), where);
      case "lanyard" -> assertEquals(words[1], Notation.key(now.gate().lanyard()), where);
      case "asked" -> assertEquals(words[1], now.asked().map(Slot::key).orElse("nothing"), where);
      case "withdrawn" ->
          assertEquals(
              words[1], orNothing(ReplyNotation.slots(List.copyOf(now.rig().withdrawn()))), where);
      case "waiting" -> assertEquals(words[1], waiting(now.floor().pending()), where);
      default -> {
        Slot slot = Slot.of(words[0]).orElseThrow(() -> new IllegalArgumentException(where));
        String stands = now.rig().said(slot).map(said -> Notation.of(slot, said)).orElse("nothing");
        assertEquals(Notation.expected(state), stands, where);
      }
    }
  }

  private static String saidSlots(Rig rig) {
    return ReplyNotation.slots(new ArrayList<>(rig.said().keySet()));
  }

  private static String waiting(Optional<Pending> pending) {
    return pending.map(SituationTest::waiting).orElse("nothing");
  }

  private static String waiting(Pending pending) {
    List<Reply.Item> items = List.of();
    if (pending instanceof Pending.Values values) {
      items = values.items();
    } else if (pending instanceof Pending.Doubtful doubtful) {
      items = doubtful.items();
    }
    return items.isEmpty()
        ? "clipped in"
        : items.stream().map(item -> item.slot().key()).collect(Collectors.joining(", "));
  }

  private static String orNothing(String text) {
    return text.isEmpty() ? "nothing" : text;
  }
}
