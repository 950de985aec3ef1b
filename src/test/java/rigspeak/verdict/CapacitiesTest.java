package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.rig.Spoken;
import rigspeak.verdict.Verdict.Judged;

/** Whoever hears a limit can hear what it rests on: every number in it, and nothing else. */
class CapacitiesTest {
  private static final Rig STOUT = Spoken.rig(Spoken.STOUT);

  private static Set<String> sources(Judged judged, CheckKind kind) {
    Set<String> keys = new TreeSet<>();
    judged.checks().stream()
        .filter(check -> check.kind() == kind)
        .flatMap(check -> check.sources().stream())
        .map(Source::key)
        .forEach(keys::add);
    return keys;
  }

  /**
   * What each limit is made of: strength of the wood or the gear, what brings it down, and for the
   * union what the union leaves.
   */
  @ParameterizedTest
  @CsvSource({
    "COLUMN, wood_handbook_memory wood_handbook_variation five_to_one",
    "CONNECTOR, connector_en362 five_to_one",
    "ROPE, line_z133 five_to_one",
    "SLING, said choker_factor five_to_one choke_angles sling_bend"
  })
  void ofTheStoutRig(CheckKind kind, String keys) {
    assertEquals(
        new TreeSet<>(Set.of(keys.split(" ", -1))), sources(QuickLook.judged(STOUT), kind));
  }

  @Test
  void theUnionNamesWhatItLeaves() {
    Judged judged = QuickLook.judged(STOUT);
    Set<String> union = Set.of("ratio_dahle_2022", "fork_slater_2013", "across_union", "said");
    Set<String> atUnion = new TreeSet<>(sources(judged, CheckKind.LIMB_AT_SLING));
    atUnion.addAll(union);
    assertEquals(atUnion, sources(judged, CheckKind.LIMB_AT_UNION));
    Set<String> shear = new TreeSet<>(sources(judged, CheckKind.SHEAR_AT_SLING));
    shear.addAll(union);
    assertEquals(shear, sources(judged, CheckKind.SHEAR_AT_UNION));
  }

  @Test
  void aBasketNamesItsAngleAndGripItsFriction() {
    Judged judged =
        QuickLook.judged(
            Spoken.with(STOUT.without(Slot.SEAT), "sling basket\nsling rated 30 kilonewtons"));
    assertEquals(
        Set.of("said", "five_to_one", "basket_angle", "sling_bend"),
        sources(judged, CheckKind.SLING));
    assertEquals(Set.of("sling_on_bark"), sources(judged, CheckKind.SLIP));
  }

  @Test
  void aHollowNamesItsLimitAndWhereItLies() {
    Judged centered =
        QuickLook.judged(Spoken.with(STOUT, "union codominant\ncavity one third\ncavity centered"));
    assertEquals(Set.of("shell_mattheck", "exact"), sources(centered, CheckKind.SHELL));
    Judged aside =
        QuickLook.judged(
            Spoken.with(STOUT, "union codominant\ncavity one quarter\ncavity off center"));
    assertEquals(Set.of("shell_mattheck", "exact", "off_center"), sources(aside, CheckKind.SHELL));
  }

  /** The stem is held to the wood's own strength, without a union. */
  @Test
  void theStemNamesItsWood() {
    Rig main =
        Spoken.with(STOUT.without(Slot.ANCHOR_LEG).without(Slot.WORKING_LEG), "canopy anchor");
    Rig redirect = Spoken.with(STOUT, "canopy anchor");
    Place one = Place.redirectNumber(1);
    RopePath path = RopePath.of(Map.of(Place.MAIN_POINT, main, one, redirect));
    Judged judged = (Judged) QuickLook.JUDGE.judge(path, one).ofAsked();
    assertEquals(sources(judged, CheckKind.LIMB_AT_SLING), sources(judged, CheckKind.STEM_BETWEEN));
  }
}
