package rigspeak.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.rig.Spoken;
import rigspeak.rig.Strength;

/** No number without a source, and no source that stands for nothing. */
class SourcesTest {
  private static final List<String> TABLES = List.of("wood", "factors", "friction", "bounds");

  private static final Map<String, Source> DEFINED = Resolved.CATALOGUE.sources();

  @ParameterizedTest
  @ValueSource(strings = {"wood", "factors", "friction", "bounds"})
  void everyRowNamesASourceThatIsDefined(String table) {
    assertFalse(Table.rows(table).isEmpty());
    for (var row : Table.rows(table)) {
      assertTrue(DEFINED.containsKey(row.get("source")), row.toString());
    }
  }

  @Test
  void everySourceSaysWhatItIs() {
    assertEquals(Table.rows("sources").size(), DEFINED.size(), "no key twice");
    DEFINED.forEach(
        (key, source) -> {
          assertEquals(key, source.key());
          assertTrue(source.title().length() >= 5 || key.equals("said"), key);
        });
  }

  @Test
  void everySourceThatIsNamedIsUsed() {
    Set<String> used = new TreeSet<>();
    for (String table : TABLES) {
      Table.rows(table).forEach(row -> used.add(row.get("source")));
    }
    Rig stout = Spoken.rig(Spoken.STOUT);
    for (String lines :
        List.of(
            "",
            "sling basket",
            "out 0 inches",
            "union decayed\ncavity one quarter\ncavity centered")) {
      addUsed(Resolved.stoutBut(lines), used);
    }
    Rig bare =
        stout
            .without(Slot.LIMB_LENGTH)
            .without(Slot.SEAT)
            .without(Slot.BARK)
            .without(Slot.SLING_RATING);
    addUsed(Resolved.known(bare), used);
    used.add(Resolved.known(stout).gear().choke().source().key());
    used.add(Resolved.known(stout).gear().bend().source().key());
    Rig main = Spoken.with(stout.without(Slot.WORKING_LEG), "canopy anchor");
    RopePath path = RopePath.of(Map.of(Place.MAIN_POINT, main, Place.redirectNumber(1), stout));
    addUsed(((Resolution.Known) Resolved.CATALOGUE.resolve(path, Place.MAIN_POINT)).rig(), used);
    // Of the verdict's own: what the friction of the other supports does.
    used.add("friction_beyond");
    assertEquals(new TreeSet<>(DEFINED.keySet()), used);
  }

  private static void addUsed(ResolvedRig rig, Set<String> used) {
    rig.measures().values().forEach(estimate -> used.add(estimate.source().key()));
    rig.assumptions().forEach(assumption -> used.add(assumption.source().key()));
    used.add(rig.union().condition().source().key());
    used.add(rig.hollow().widening().source().key());
    add(rig.gear().rope(), used);
    rig.gear().sling().ifPresent(strength -> add(strength, used));
    rig.gear().connector().ifPresent(strength -> add(strength, used));
    add(rig.wood().bending(), used);
  }

  private static void add(Strength strength, Set<String> used) {
    strength.sources().forEach(source -> used.add(source.key()));
  }
}
