package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/** What a row of words may be taken for: phones counted by hand from a general dictionary. */
class RivalsTest {
  private static final int MANY = 200;

  private static final Grammar GRAMMAR = Grammar.bundled();

  /** A few words by their phones; any other is spelt, far from all of them. */
  private static final Map<String, String> SAID = new LinkedHashMap<>();

  static {
    SAID.put("fifteen", "F IH F T IY N");
    SAID.put("fifty", "F IH F T IY");
    SAID.put("thirteen", "TH ER T IY N");
    SAID.put("thirty", "TH ER T IY");
    SAID.put("five", "F AY V");
    SAID.put("nine", "N AY N");
    SAID.put("one", "W AH N");
    SAID.put("two", "T UW");
    SAID.put("ten", "T EH N");
    SAID.put("up", "AH P");
    SAID.put("down", "D AW N");
    SAID.put("left", "L EH F T");
    SAID.put("right", "R AY T");
  }

  private static final WordGraph GRAPH = WordGraph.of(GRAMMAR, Expected.anything());

  private static final Rivals RIVALS =
      new Rivals(
          GRAPH,
          word ->
              List.of(
                  SAID.containsKey(word)
                      ? List.of(SAID.get(word).split(" ", -1))
                      : Arrays.asList(("_" + String.join(" _", word.split(""))).split(" ", -1))));

  private static List<String> words(String text) {
    return List.of(text.split(" ", -1));
  }

  @ParameterizedTest
  @CsvSource({
    // A phone more or less.
    "limb rises fifteen, limb rises fifty, 1",
    "limb rises fifty, limb rises fifteen, 1",
    "limb rises thirteen by tape, limb rises thirty by tape, 1",
    // Two exchanged; and of one kind each, half.
    "limb rises five, limb rises nine, 2",
    // A word more: T UW between.
    "limb rises five zero, limb rises five two zero, 2",
    // A word less.
    "limb rises five two zero, limb rises five zero, 2",
    // D and N left out or exchanged, AW for AH is half.
    "anchor leg down ten left, anchor leg up ten left, 2.5"
  })
  void aRivalAndHowFarItIs(String said, String rival, double phones) {
    List<Rivals.Rival> rivals = RIVALS.of(words(said), MANY);
    assertTrue(rivals.contains(new Rivals.Rival(words(rival), phones)), rivals.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"limb rises fifteen", "clipped in", "out two feet by tape", "bend five zero"})
  void theyAreOtherRowsThatMayBeSaidTheNearestFirst(String said) {
    List<Rivals.Rival> rivals = RIVALS.of(words(said), MANY);
    assertEquals(
        rivals,
        rivals.stream().sorted(Comparator.comparingDouble(Rivals.Rival::distance)).toList());
    for (Rivals.Rival rival : rivals) {
      assertTrue(GRAPH.allows(rival.words()), rival.toString());
      assertFalse(rival.words().equals(words(said)));
      assertTrue(rival.distance() > 0 && rival.distance() <= 3, rival.toString());
    }
    assertEquals(rivals.size(), Set.copyOf(rivals).size());
    assertEquals(rivals.subList(0, Math.min(2, rivals.size())), RIVALS.of(words(said), 2));
  }
}
