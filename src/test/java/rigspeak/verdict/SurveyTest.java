package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Spoken;

/** What a survey of a rig's box finds, held beside a search of another kind. */
class SurveyTest {
  private static final int SAMPLES = 200;

  /** What a search that ends at steps of a hundredth may miss of a smooth top. */
  private static final double MISSED = 0.002;

  private static final double NEARLY = 0.95;

  /** A check that is farther from its limit is looked at less. */
  private static final double CLOSE = 0.7;

  private static ResolvedRig rig(String said) {
    return QuickLook.resolved(Spoken.with(Spoken.rig(Spoken.STOUT), said.replace(" / ", "\n")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "limb 12 centimeters by eye / out 1 meter by eye",
        "limb 16 centimeters by eye / out 1 meter by eye / working leg down 40 left by eye",
        "limb 20 centimeters by eye / out 60 centimeters / over bark / moving rope both parts",
        "sling rated 12 kilonewtons / sling free / bark smooth",
        "limb rises 70 by eye / limb 10 centimeters by eye / out 2 meters by eye"
      })
  void theWorstIsAtLeastWhatAnotherSearchFinds(String said) {
    ResolvedRig rig = rig(said);
    List<Check> checks = Survey.whole(rig, SAMPLES).checks();
    Map<CheckKind, Double> outside =
        new OutsideLook(rig, 7).freshPoints(2_000).corners().climbs(0.1).worst();
    assertEquals(outside.keySet().size(), checks.size());
    int close = 0;
    for (Check check : checks) {
      double other = outside.get(check.kind());
      double worst = check.utilisation().high();
      if (other >= CLOSE) {
        assertTrue(worst >= other * (1 - MISSED), check.kind() + " " + worst + " " + other);
        close++;
      }
      assertTrue(check.utilisation().low() <= check.utilisation().nominal());
      assertTrue(check.utilisation().nominal() <= worst);
      assertTrue(
          check.utilisation95() <= worst && check.utilisation95() >= check.utilisation().low());
    }
    assertTrue(close > 0, "nothing comes close to its limit");
  }

  /** The quick searches, which remedies are solved with, find what the whole one does. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "limb 12 centimeters by eye / out 1 meter by eye",
        "limb 16 centimeters by eye / out 1 meter by eye / working leg down 40 left by eye",
        "limb 20 centimeters by eye / out 60 centimeters / over bark / moving rope both parts",
        "sling rated 12 kilonewtons / sling free / bark smooth"
      })
  void theQuickSearchesFindTheSame(String said) {
    ResolvedRig rig = rig(said);
    List<Check> checks = Survey.whole(rig, SAMPLES).checks();
    double worst = checks.stream().mapToDouble(c -> c.utilisation().high()).max().orElseThrow();
    double asSaid = checks.stream().mapToDouble(c -> c.utilisation().nominal()).max().orElseThrow();
    // It climbs with one check only, the one that its samples find worst.
    double quick = Survey.worst(rig, SAMPLES);
    assertTrue(quick > asSaid && quick <= worst && quick >= NEARLY * worst, quick + " " + worst);
    assertEquals(asSaid, Survey.asSaid(rig), 1e-12);
    assertEquals(worst <= Check.WELL_WITHIN, Survey.staysWithin(rig, SAMPLES));
    for (Check check : checks) {
      assertEquals(check.utilisation().high(), Survey.worst(rig, check.kind(), SAMPLES), 1e-12);
    }
  }
}
