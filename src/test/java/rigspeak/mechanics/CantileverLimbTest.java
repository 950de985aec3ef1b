package rigspeak.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CantileverLimbTest {
  /** A level limb of 200 mm, 4 m long, of 1,000 kg/m3: 31.4159 kg a metre, 308.085 N a metre. */
  private static final OwnWeight HEAVY = new OwnWeight(4, 0.2, 1000, 0);

  private static final double NEWTONS_PER_METRE = 308.0850;

  /**
   * Source 6: 1 kN down at 1.5 m on 150 mm is 4.527 MPa and 0.0755 MPa; 1 kN times 75 mm twists.
   */
  @Test
  void limbOfThePublishedExample() {
    LimbLoad down = new LimbLoad(0, -1000, 0);
    RoundSection section = RoundSection.solid(0.15);
    CantileverLimb basket = CantileverLimb.basket(1.5, OwnWeight.UNSTATED);
    SectionStress atUnion = section.under(only(basket.atUnion(down)));
    assertEquals(4.527, atUnion.bendingPa() / 1e6, 0.0005);
    assertEquals(0.0755, atUnion.shearPa() / 1e6, 0.00005);
    assertEquals(0, atUnion.axialPa());

    SectionLoad choked = only(CantileverLimb.choked(1.5, 0.15, OwnWeight.UNSTATED).atUnion(down));
    assertLoad(new SectionLoad(0, -1500, 0, 0, 1000, 75), choked);
  }

  @Test
  void everyPartArrivesWhereItBelongs() {
    LimbLoad load = new LimbLoad(-800, 300, -400);
    CantileverLimb limb = CantileverLimb.choked(2, 0.2, OwnWeight.UNSTATED);
    assertLoad(new SectionLoad(-800, 600, -800, 80, 500, 50), only(limb.atUnion(load)));
    assertLoad(new SectionLoad(-800, 0, 0, 80, 500, 50), only(limb.atSling(load)));
    CantileverLimb centred = CantileverLimb.basket(2, OwnWeight.UNSTATED);
    assertLoad(new SectionLoad(-800, 600, -800, 0, 500, 0), only(centred.atUnion(load)));
    assertLoad(new SectionLoad(-800, 0, 0, 0, 500, 0), only(centred.atSling(load)));
  }

  /** Source 6: w l and w l^2 / 2. */
  @Test
  void ownWeightOfALevelLimb() {
    assertEquals(-4 * NEWTONS_PER_METRE, HEAVY.beyond(0).topN(), 0.001);
    assertEquals(0, HEAVY.beyond(0).alongN(), 0.0);
    assertEquals(0, HEAVY.beyond(0).sideN());
    assertEquals(-8 * NEWTONS_PER_METRE, HEAVY.topMomentNm(0), 0.001);
    assertEquals(-3 * NEWTONS_PER_METRE, HEAVY.beyond(1).topN(), 0.001);
    assertEquals(-4.5 * NEWTONS_PER_METRE, HEAVY.topMomentNm(1), 0.001);
    assertEquals(0, HEAVY.beyond(4).topN(), 0.0);
    assertEquals(0, HEAVY.topMomentNm(9), 0.0);
    assertEquals(0, OwnWeight.UNSTATED.topMomentNm(0), 0.0);
  }

  /** At 30 degrees the half presses into the union and the rest, times cos 30, bends. */
  @Test
  void ownWeightOfARisingAndOfAHangingLimb() {
    OwnWeight rising = new OwnWeight(4, 0.2, 1000, Math.PI / 6);
    assertEquals(-2 * NEWTONS_PER_METRE, rising.beyond(0).alongN(), 0.001);
    assertEquals(-4 * 0.8660254 * NEWTONS_PER_METRE, rising.beyond(0).topN(), 0.001);
    assertEquals(-8 * 0.8660254 * NEWTONS_PER_METRE, rising.topMomentNm(0), 0.001);
    OwnWeight hanging = new OwnWeight(4, 0.2, 1000, -Math.PI / 6);
    assertEquals(2 * NEWTONS_PER_METRE, hanging.beyond(0).alongN(), 0.001);
    assertEquals(-8 * 0.8660254 * NEWTONS_PER_METRE, hanging.topMomentNm(0), 0.001);
  }

  @Test
  void ownWeightAddsToALoadThatLevers() {
    CantileverLimb limb = CantileverLimb.basket(2, HEAVY);
    SectionLoad union = only(limb.atUnion(new LimbLoad(-100, -500, 0)));
    assertEquals(-1000 - 8 * NEWTONS_PER_METRE, union.topMomentNm(), 0.001);
    assertEquals(500 + 4 * NEWTONS_PER_METRE, union.shearN(), 0.001);
    assertEquals(-100, union.axialN());
    SectionLoad sling = only(limb.atSling(new LimbLoad(-100, -500, 0)));
    assertEquals(-2 * NEWTONS_PER_METRE, sling.topMomentNm(), 0.001);
    assertEquals(500 + 2 * NEWTONS_PER_METRE, sling.shearN(), 0.001);
  }

  @Test
  void ownWeightAndALiftAreNeverCreditedAgainstEachOther() {
    List<SectionLoad> union = CantileverLimb.basket(2, HEAVY).atUnion(new LimbLoad(0, 5000, 0));
    assertEquals(List.of(10_000.0, -8 * NEWTONS_PER_METRE), rounded(union));
    assertEquals(5000, union.get(0).shearN());
  }

  @Test
  void aSmallLiftIsNotCreditedAgainstOwnWeight() {
    List<SectionLoad> union = CantileverLimb.basket(2, HEAVY).atUnion(new LimbLoad(0, 100, 0));
    assertEquals(List.of(200.0, -8 * NEWTONS_PER_METRE), rounded(union));
    assertEquals(4 * NEWTONS_PER_METRE, union.get(1).shearN(), 0.001);
  }

  /** To a thousandth of the newton metre that the constant above is given to. */
  private static List<Double> rounded(List<SectionLoad> cases) {
    return cases.stream().map(load -> Math.rint(1e3 * load.topMomentNm()) / 1e3).toList();
  }

  @Test
  void theLimbsWeightPressesAndPullsAlongToo() {
    OwnWeight rising = new OwnWeight(4, 0.2, 1000, Math.PI / 6);
    CantileverLimb limb = CantileverLimb.basket(2, rising);
    SectionLoad pressed = only(limb.atUnion(new LimbLoad(-1000, 0, 0)));
    assertEquals(-1000 - 2 * NEWTONS_PER_METRE, pressed.axialN(), 0.001);
    List<SectionLoad> pulled = limb.atUnion(new LimbLoad(1000, 0, 0));
    assertEquals(2, pulled.size());
    assertEquals(1000, pulled.get(0).axialN());
    assertEquals(-2 * NEWTONS_PER_METRE, pulled.get(1).axialN(), 0.001);
  }

  @Test
  void mirroringMirrorsTheAnswer() {
    limbs(
        (limb, section, load) -> {
          LimbLoad mirrored = new LimbLoad(load.alongN(), load.topN(), -load.sideN());
          List<SectionLoad> here = limb.atUnion(load);
          List<SectionLoad> there = limb.atUnion(mirrored);
          for (int i = 0; i < here.size(); i++) {
            assertEquals(-here.get(i).sideMomentNm(), there.get(i).sideMomentNm());
            assertEquals(here.get(i).topMomentNm(), there.get(i).topMomentNm());
          }
          assertEquals(worst(section, here), worst(section, there));
          assertEquals(worst(section, limb.atSling(load)), worst(section, limb.atSling(mirrored)));
        });
  }

  @Test
  void doubleTheForcesDoubleTheStresses() {
    limbs(
        (limb, section, load) -> {
          CantileverLimb weightless =
              new CantileverLimb(limb.armM(), limb.eccentricityM(), OwnWeight.UNSTATED);
          SectionStress once = worst(section, weightless.atUnion(load));
          SectionStress twice =
              worst(
                  section,
                  weightless.atUnion(
                      new LimbLoad(2 * load.alongN(), 2 * load.topN(), 2 * load.sideN())));
          assertEquals(2 * once.axialPa(), twice.axialPa(), 1e-6 + 1e-9 * Math.abs(once.axialPa()));
          assertEquals(2 * once.bendingPa(), twice.bendingPa(), 1e-9 * once.bendingPa());
          assertEquals(2 * once.shearPa(), twice.shearPa(), 1e-9 * once.shearPa());
        });
  }

  /** Twice as long, thick and far, the same stresses need four times the force. */
  @Test
  void theSameRigInAnotherSizeIsStressedAlike() {
    limbs(
        (limb, section, load) -> {
          CantileverLimb weightless =
              new CantileverLimb(limb.armM(), limb.eccentricityM(), OwnWeight.UNSTATED);
          CantileverLimb large =
              new CantileverLimb(2 * limb.armM(), 2 * limb.eccentricityM(), OwnWeight.UNSTATED);
          SectionStress here = worst(section, weightless.atUnion(load));
          SectionStress there =
              worst(
                  new RoundSection(2 * section.diameterM(), section.hollowRatio()),
                  large.atUnion(
                      new LimbLoad(4 * load.alongN(), 4 * load.topN(), 4 * load.sideN())));
          assertEquals(here.bendingPa(), there.bendingPa(), 1e-9 * here.bendingPa());
          assertEquals(here.shearPa(), there.shearPa(), 1e-9 * here.shearPa());
        });
  }

  @Test
  void aLongerLeverNeverHelps() {
    limbs(
        (limb, section, load) -> {
          CantileverLimb longer =
              new CantileverLimb(limb.armM() * 1.1, limb.eccentricityM(), limb.ownWeight());
          noBetter(worst(section, limb.atUnion(load)), worst(section, longer.atUnion(load)));
        });
  }

  @Test
  void aThinnerLimbNeverHelps() {
    limbs(
        (limb, section, load) -> {
          OwnWeight weight = limb.ownWeight();
          OwnWeight lighter =
              new OwnWeight(
                  weight.lengthM(),
                  0.9 * weight.diameterM(),
                  weight.densityKgM3(),
                  weight.riseRad());
          CantileverLimb thin =
              new CantileverLimb(limb.armM(), 0.9 * limb.eccentricityM(), lighter);
          RoundSection thinner = new RoundSection(0.9 * section.diameterM(), section.hollowRatio());
          noBetter(worst(section, limb.atUnion(load)), worst(thinner, thin.atUnion(load)));
          noBetter(worst(section, limb.atSling(load)), worst(thinner, thin.atSling(load)));
        });
  }

  @Test
  void moreHollowNeverHelps() {
    limbs(
        (limb, section, load) -> {
          RoundSection hollower =
              new RoundSection(section.diameterM(), Math.min(0.99, section.hollowRatio() + 0.03));
          noBetter(worst(section, limb.atUnion(load)), worst(hollower, limb.atUnion(load)));
        });
  }

  @Test
  void moreWeightNeverHelps() {
    limbs(
        (limb, section, load) -> {
          LimbLoad more = new LimbLoad(1.1 * load.alongN(), 1.1 * load.topN(), 1.1 * load.sideN());
          noBetter(worst(section, limb.atUnion(load)), worst(section, limb.atUnion(more)));
          OwnWeight weight = limb.ownWeight();
          OwnWeight heavier =
              new OwnWeight(
                  weight.lengthM(),
                  weight.diameterM(),
                  1.1 * weight.densityKgM3(),
                  weight.riseRad());
          CantileverLimb sodden = new CantileverLimb(limb.armM(), limb.eccentricityM(), heavier);
          noBetter(worst(section, limb.atUnion(load)), worst(section, sodden.atUnion(load)));
        });
  }

  @Test
  void aChokeIsNeverEasierThanABasket() {
    limbs(
        (limb, section, load) -> {
          CantileverLimb basket = CantileverLimb.basket(limb.armM(), limb.ownWeight());
          noBetter(worst(section, basket.atUnion(load)), worst(section, limb.atUnion(load)));
        });
  }

  @Test
  void refusesAWeightThatIsAbsent() {
    assertThrows(IllegalArgumentException.class, () -> new CantileverLimb(1, 0.1, null));
  }

  private static SectionLoad only(List<SectionLoad> cases) {
    assertEquals(1, cases.size());
    return cases.get(0);
  }

  /** The largest of each stress over all cases. */
  private static SectionStress worst(RoundSection section, List<SectionLoad> cases) {
    SectionStress worst = new SectionStress(0, 0, 0);
    for (SectionLoad load : cases) {
      SectionStress stress = section.under(load);
      worst =
          new SectionStress(
              Math.max(worst.axialPa(), Math.abs(stress.axialPa())),
              Math.max(worst.bendingPa(), stress.bendingPa()),
              Math.max(worst.shearPa(), stress.shearPa()));
    }
    return worst;
  }

  private static void assertLoad(SectionLoad expected, SectionLoad load) {
    assertEquals(expected.axialN(), load.axialN(), 1e-9);
    assertEquals(expected.topMomentNm(), load.topMomentNm(), 1e-9);
    assertEquals(expected.sideMomentNm(), load.sideMomentNm(), 1e-9);
    assertEquals(expected.eccentricMomentNm(), load.eccentricMomentNm(), 1e-9);
    assertEquals(expected.shearN(), load.shearN(), 1e-9);
    assertEquals(expected.torsionNm(), load.torsionNm(), 1e-9);
  }

  private interface Check {
    void of(CantileverLimb limb, RoundSection section, LimbLoad load);
  }

  /** Choked limbs of all sizes, hollows, slopes and loads. */
  private static void limbs(Check check) {
    Samples.over(0.05, 1, 0, 0.95, 0.01, 6, 0, 10, -90, 90, -8000, 8000, -8000, 8000, -8000, 8000)
        .each(
            p -> {
              OwnWeight weight = new OwnWeight(p[3], p[0], 1000, Math.toRadians(p[4]));
              check.of(
                  CantileverLimb.choked(p[2], p[0], weight),
                  new RoundSection(p[0], p[1]),
                  new LimbLoad(p[5], p[6], p[7]));
            });
  }

  private static void noBetter(SectionStress before, SectionStress after) {
    double rounding = 1e-9;
    assertTrue(after.bendingPa() >= before.bendingPa() * (1 - rounding), "bending fell");
    assertTrue(after.shearPa() >= before.shearPa() * (1 - rounding), "shear fell");
    assertTrue(
        Math.abs(after.axialPa()) >= Math.abs(before.axialPa()) * (1 - rounding), "axial fell");
  }
}
