package rigspeak.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigspeak.catalogue.Conflict;
import rigspeak.mechanics.Directions;
import rigspeak.quantity.Length;
import rigspeak.rig.Direction;
import rigspeak.rig.Estimate;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.PathVerdict.Outcome;
import rigspeak.verdict.Verdict.CannotSay;
import rigspeak.verdict.Verdict.Judged;
import rigspeak.verdict.Verdict.Rating;
import rigspeak.verdict.Verdict.RefusedOutright;
import rigspeak.verdict.Verdict.WaitsFor;

/**
 * What must be so of every rope: what is not known is never good, and the worst support governs.
 */
class RopePathTest {
  private static final int EVERYDAY_PATHS = 300;
  private static final int LONG_PATHS = 3_000;
  private static final int LESS_SAID_PATHS = 100;
  private static final int JUDGED_PATHS = 25;
  private static final int PLACES = 10;

  /** Exact but for the order in which floating point adds. */
  private static final double ROUNDING = 1e-9;

  /** A grid and three finer ones round its best still miss so much of what friction can do. */
  private static final double GRID_MISSES = 0.001;

  private static final int GRID = 24;
  private static final int FINER_GRIDS = 3;

  private static final Place MAIN = Place.MAIN_POINT;
  private static final Place FIRST = Place.redirectNumber(1);
  private static final Place SECOND = Place.redirectNumber(2);

  /** Enough to tell a rope that is known from one that is not. */
  private static final Judge QUICK = new Judge(QuickLook.CATALOGUE, 64);

  private static List<RopePath> everyday;

  private static synchronized List<RopePath> everyday() {
    if (everyday == null) {
      everyday = SampledPaths.first(EVERYDAY_PATHS);
    }
    return everyday;
  }

  private static RopePath worked(String name) throws IOException {
    return WorkedPath.in("worked-paths").stream()
        .filter(worked -> worked.name().startsWith(name))
        .findFirst()
        .orElseThrow()
        .path();
  }

  /** Good by the calculation apart from the program. */
  private static RopePath twoRedirects() throws IOException {
    return worked("two redirects from a canopy anchor");
  }

  private static Supports supports(RopePath path) {
    return Supports.of(QuickLook.CATALOGUE, path);
  }

  private static PathVerdict quick(RopePath path) {
    return QUICK.judge(path, path.last());
  }

  @Test
  void theRopeBesideWhichTheRestShowsSomethingIsGood() throws IOException {
    PathVerdict verdict = QuickLook.JUDGE.judge(twoRedirects(), SECOND);
    assertEquals(Outcome.GOOD, verdict.outcome());
    assertTrue(verdict.isGood());
  }

  /** By tape two angles are off by three degrees each, two lengths by two in a hundred each. */
  @ParameterizedTest
  @CsvSource({
    "anchor leg up 35 toward the stem 5 meters by tape, ",
    "anchor leg up 37 toward the stem 5 meters by tape, SharedLegTurns",
    "anchor leg up 23 toward the stem 5 meters by tape, SharedLegTurns",
    "anchor leg down 30 toward the stem 5 meters by tape, SharedLegTurns",
    "anchor leg up 42 toward the stem 5 meters by eye, ",
    "anchor leg up 30 toward the stem 5 point 2 meters by tape, ",
    "anchor leg up 30 toward the stem 5 point 3 meters by tape, SharedLegLengths",
    "anchor leg up 30 toward the stem 4 point 7 meters by tape, SharedLegLengths",
    "anchor leg up 30 toward the stem by tape, ",
  })
  void oneLegSaidAtBothItsEnds(String said, String conflict) throws IOException {
    RopePath path = SpokenPath.with(twoRedirects(), FIRST, said);
    PathVerdict verdict = quick(path);
    if (conflict == null) {
      assertInstanceOf(Judged.class, verdict.supports().get(MAIN));
      return;
    }
    CannotSay cannot = assertInstanceOf(CannotSay.class, verdict.supports().get(MAIN));
    assertEquals(List.of(), cannot.missing());
    assertEquals(List.of(conflict), names(cannot));
    assertEquals(Outcome.CANNOT_SAY, verdict.outcome());
    assertEquals(MAIN, verdict.governing());
    assertInstanceOf(Judged.class, verdict.supports().get(FIRST));
    assertInstanceOf(Judged.class, verdict.supports().get(SECOND));
  }

  private static List<String> names(CannotSay cannot) {
    return cannot.conflicts().stream()
        .map(conflict -> conflict.getClass().getSimpleName())
        .toList();
  }

  /** A leg between redirects is asked of at its end nearer the anchor, and named at both. */
  @Test
  void aLegBetweenRedirectsThatTurns() throws IOException {
    RopePath path =
        SpokenPath.with(
            twoRedirects(), SECOND, "anchor leg level toward the stem 4 meters by tape");
    PathVerdict verdict = quick(path);
    CannotSay cannot = assertInstanceOf(CannotSay.class, verdict.supports().get(FIRST));
    Conflict.SharedLegTurns turns =
        assertInstanceOf(Conflict.SharedLegTurns.class, cannot.conflicts().get(0));
    assertEquals(FIRST, turns.nearer());
    assertEquals(SECOND, turns.farther());
    assertEquals(-20, turns.elevation().degrees(), ROUNDING);
    assertEquals(0, turns.elevationBack().degrees(), ROUNDING);
    assertEquals(new WaitsFor(FIRST), verdict.supports().get(MAIN));
    assertEquals(FIRST, verdict.governing());
  }

  @Test
  void theLegFromTheMainPointOfABaseAnchorNeedsALength() throws IOException {
    RopePath base = worked("base anchor and one redirect");
    RopePath path = SpokenPath.with(base, FIRST, "anchor leg up 40 toward the stem by tape");
    PathVerdict verdict = quick(path);
    CannotSay cannot = assertInstanceOf(CannotSay.class, verdict.supports().get(FIRST));
    assertEquals(List.of(new Conflict.AnchorLegWithoutLength()), cannot.conflicts());
    assertEquals(new WaitsFor(FIRST), verdict.supports().get(MAIN));
    assertEquals(Outcome.CANNOT_SAY, verdict.outcome());
    assertFalse(verdict.isGood());
  }

  private static final Set<Slot> NEEDED =
      EnumSet.of(
          Slot.WOOD,
          Slot.LIMB_DIAMETER,
          Slot.LIMB_RISE,
          Slot.OUT,
          Slot.STEM_DIAMETER,
          Slot.UNION,
          Slot.HITCH,
          Slot.RUNNING_OVER);

  /** The supports nearer the climber are judged; those toward the anchor wait. */
  @Test
  void whateverIsNotKnownOfOneSupport() throws IOException {
    RopePath path = twoRedirects();
    for (Place place : path.places()) {
      for (Slot slot : NEEDED) {
        PathVerdict verdict = quick(SpokenPath.without(path, place, slot));
        assertEquals(Outcome.CANNOT_SAY, verdict.outcome());
        assertEquals(place, verdict.governing());
        CannotSay cannot = assertInstanceOf(CannotSay.class, verdict.ofGoverning());
        assertEquals(slot, cannot.missing().get(0));
        assertNeighbours(verdict, place);
      }
    }
  }

  private static void assertNeighbours(PathVerdict verdict, Place unknown) {
    verdict
        .supports()
        .forEach(
            (place, of) -> {
              if (place.compareTo(unknown) < 0) {
                assertEquals(new WaitsFor(unknown), of);
              } else if (place.compareTo(unknown) > 0) {
                assertInstanceOf(Judged.class, of);
              }
            });
  }

  /** Who waits for two waits for the one nearer the climber, with which it has to begin. */
  @Test
  void theFirstToBeKnownIsTheOneNearestTheClimber() throws IOException {
    RopePath path = SpokenPath.without(twoRedirects(), SECOND, Slot.OUT);
    path = SpokenPath.without(path, FIRST, Slot.WOOD);
    PathVerdict verdict = quick(path);
    assertInstanceOf(CannotSay.class, verdict.supports().get(FIRST));
    assertInstanceOf(CannotSay.class, verdict.supports().get(SECOND));
    assertEquals(new WaitsFor(SECOND), verdict.supports().get(MAIN));
  }

  @ParameterizedTest
  @CsvSource({
    "dead wood, DEAD_WOOD",
    "union cracked, CRACKED_UNION",
    "connector over an edge, CONNECTOR_OVER_EDGE"
  })
  void oneSupportThatIsRefusedRefusesTheRope(String said, Refusal refusal) throws IOException {
    for (Place place : twoRedirects().places()) {
      RopePath path = SpokenPath.with(twoRedirects(), place, said);
      PathVerdict verdict = quick(path);
      assertEquals(Outcome.REFUSE, verdict.outcome());
      assertEquals(place, verdict.governing());
      assertEquals(new RefusedOutright(List.of(refusal)), verdict.ofGoverning());
      assertNeighbours(verdict, place);
      // That nothing else is known saves nobody.
      Place other = place.equals(SECOND) ? FIRST : SECOND;
      PathVerdict less = quick(SpokenPath.without(path, other, Slot.LIMB_DIAMETER));
      assertEquals(Outcome.REFUSE, less.outcome());
      assertEquals(place, less.governing());
    }
  }

  /** From the mildest to the worst; of two the later one decides, wherever it stands. */
  @Test
  void theWorstSupportGoverns() throws IOException {
    List<Verdict> rising = new ArrayList<>();
    rising.add(full("two redirects from a canopy anchor", MAIN, Rating.GOOD));
    rising.add(full("one redirect from a canopy anchor", MAIN, Rating.MARGINAL));
    rising.add(new WaitsFor(SECOND));
    rising.add(new CannotSay(List.of(Slot.OUT), List.of()));
    rising.add(full("base anchor and one redirect", FIRST, Rating.REFUSE));
    rising.add(new RefusedOutright(List.of(Refusal.DEAD_WOOD)));
    for (int milder = 0; milder < rising.size(); milder++) {
      for (int worse = milder + 1; worse < rising.size(); worse++) {
        assertGoverns(rising.get(milder), rising.get(worse));
      }
      // Of two alike it is the one that was asked about.
      for (Place asked : List.of(MAIN, FIRST)) {
        Verdict same = rising.get(milder);
        assertEquals(asked, of(Map.of(MAIN, same, FIRST, same), asked).governing());
      }
    }
  }

  private static Judged full(String name, Place place, Rating rating) throws IOException {
    RopePath path = worked(name);
    Judged judged =
        assertInstanceOf(Judged.class, QuickLook.JUDGE.judge(path, place).supports().get(place));
    assertEquals(rating, judged.rating());
    return judged;
  }

  private static void assertGoverns(Verdict milder, Verdict worse) throws IOException {
    for (Place there : List.of(MAIN, FIRST)) {
      Place here = there.equals(MAIN) ? FIRST : MAIN;
      for (Place asked : List.of(MAIN, FIRST)) {
        PathVerdict verdict = of(Map.of(here, milder, there, worse), asked);
        assertEquals(there, verdict.governing(), milder + " beside " + worse);
        assertEquals(worse, verdict.ofGoverning());
        assertEquals(asked.equals(there) ? worse : milder, verdict.ofAsked());
        assertFalse(verdict.isGood());
      }
    }
  }

  private static PathVerdict of(Map<Place, Verdict> supports, Place asked) throws IOException {
    return new PathVerdict(
        twoRedirects(), asked, new TreeMap<>(supports), new TreeMap<>(), Optional.empty());
  }

  /** Of two that are refused the one farther over its limit, of two marginal ones the same. */
  @Test
  void ofTwoAlikeTheOneNearerToBreaking() throws IOException {
    Judged refused = full("base anchor and one redirect", FIRST, Rating.REFUSE);
    RopePath heavier =
        SpokenPath.with(worked("base anchor and one redirect"), FIRST, "all up 90 kilograms");
    Judged worse =
        assertInstanceOf(Judged.class, QuickLook.JUDGE.judge(heavier, FIRST).supports().get(FIRST));
    assertNotEquals(refused, worse);
    assertGoverns(refused, worse);
  }

  @Test
  @Tag("sampled")
  void nothingBeyondTheLastSupport() {
    for (RopePath path : everyday()) {
      Supports supports = supports(path);
      for (Place place : path.places()) {
        ResolvedRig rig = supports.known().get(place);
        assertEquals(!place.equals(path.last()), rig.has(Measure.BEYOND));
      }
    }
    assertEquals(1, Beyond.atClimber().most());
  }

  /** How near the legs may lie, by a grid of where they point instead of a formula. */
  @Test
  @Tag("sampled")
  void theMostThatFrictionDoes() {
    int tried = 0;
    for (RopePath path : everyday()) {
      for (ResolvedRig rig : supports(path).known().values()) {
        if (rig.turn() == ResolvedRig.Turn.LEGS) {
          double grid = mostByGrid(rig);
          double found = Beyond.mostRatio(rig);
          assertTrue(found >= grid * (1 - ROUNDING), found + " of " + grid + " " + rig.said());
          assertEquals(grid, found, GRID_MISSES * grid, rig.said().toString());
          tried++;
        }
      }
    }
    assertTrue(tried > 2 * EVERYDAY_PATHS, tried + " tried");
  }

  private static double mostByGrid(ResolvedRig rig) {
    Estimate up = rig.measures().get(Measure.ANCHOR_LEG_ELEVATION);
    Estimate down = rig.measures().get(Measure.WORKING_LEG_ELEVATION);
    Estimate here = rig.measures().get(Measure.ANCHOR_LEG_BEARING);
    Estimate there = rig.measures().get(Measure.WORKING_LEG_BEARING);
    double[] least = {up.low(), down.low(), here.low() - there.high()};
    double[] most = {up.high(), down.high(), here.high() - there.low()};
    double[] best = best(least, most);
    for (int finer = 0; finer < FINER_GRIDS; finer++) {
      double[] low = new double[3];
      double[] high = new double[3];
      for (int side = 0; side < 3; side++) {
        double step = (most[side] - least[side]) / Math.pow(GRID / 2.0, finer + 1);
        low[side] = Math.max(least[side], best[side] - step);
        high[side] = Math.min(most[side], best[side] + step);
      }
      best = best(low, high);
    }
    double friction = rig.measures().get(Measure.ROPE_FRICTION).high();
    return Math.exp(friction * (Math.PI - inside(best[0], best[1], best[2])));
  }

  /** Two elevations and the bearing between them at which the legs lie nearest. */
  private static double[] best(double[] low, double[] high) {
    double[] best = low;
    double least = Math.PI;
    for (int i = 0; i <= GRID; i++) {
      double up = low[0] + i * (high[0] - low[0]) / GRID;
      for (int j = 0; j <= GRID; j++) {
        double down = low[1] + j * (high[1] - low[1]) / GRID;
        for (int k = 0; k <= GRID; k++) {
          double turn = low[2] + k * (high[2] - low[2]) / GRID;
          double inside = inside(up, down, turn);
          if (inside < least) {
            least = inside;
            best = new double[] {up, down, turn};
          }
        }
      }
    }
    return best;
  }

  private static double inside(double upRad, double downRad, double turnRad) {
    return Vector3D.angle(Directions.unit(upRad, 0), Directions.unit(downRad, turnRad));
  }

  /** Every support more between the main point and the climber can only add friction. */
  @Test
  @Tag("sampled")
  void aRedirectMoreNeverLightensTheMainPointAtItsWorst() {
    int compared = 0;
    for (RopePath path : everyday()) {
      double before = 1;
      RopePath growing = RopePath.of(Map.of(MAIN, path.at(MAIN)));
      for (Place place : path.places().subList(1, path.places().size())) {
        growing = growing.with(place, path.at(place));
        Supports supports = supports(growing);
        if (supports.known().containsKey(MAIN)) {
          double most = supports.known().get(MAIN).measures().get(Measure.BEYOND).high();
          assertTrue(most >= before, most + " after " + before);
          before = most;
          compared++;
        }
      }
    }
    assertTrue(compared > EVERYDAY_PATHS, compared + " compared");
  }

  @Test
  @Tag("sampled")
  void aMirroredRopeGetsTheMirroredAnswer() {
    mirrored(everyday());
  }

  @Test
  @Tag("long")
  void manyMirroredRopesGetTheMirroredAnswer() {
    mirrored(SampledPaths.first(LONG_PATHS));
  }

  private static void mirrored(List<RopePath> paths) {
    RandomGenerator random = new MersenneTwister(31);
    for (RopePath path : paths) {
      RopePath other = changed(path, RopePathTest::mirrored);
      Supports here = supports(path);
      Supports there = supports(other);
      assertEquals(here.otherwise(), there.otherwise());
      for (Place place : here.known().keySet()) {
        ResolvedRig one = here.known().get(place);
        ResolvedRig two = there.known().get(place);
        for (int i = 0; i < PLACES; i++) {
          rigspeak.verdict.Place spot = rigspeak.verdict.Place.anywhere(random);
          alike(spot.utilisations(one), spot.mirrored().utilisations(two));
          assertEquals(spot.load(one).sideN(), -spot.mirrored().load(two).sideN(), 1e-6);
        }
      }
    }
  }

  private static void alike(Map<CheckKind, Double> one, Map<CheckKind, Double> other) {
    assertEquals(one.keySet(), other.keySet());
    one.forEach(
        (kind, used) ->
            assertEquals(used, other.get(kind), ROUNDING * Math.max(1, used), kind.key()));
  }

  private interface Change {
    Value of(Value value);
  }

  private static RopePath changed(RopePath path, Change change) {
    RopePath changed = path;
    for (Place place : path.places()) {
      Rig rig = path.at(place);
      for (Map.Entry<Slot, Said> entry : path.at(place).said().entrySet()) {
        Said said = entry.getValue();
        rig = rig.with(entry.getKey(), new Said(change.of(said.value()), said.how()));
      }
      changed = changed.with(place, rig);
    }
    return changed;
  }

  private static Value mirrored(Value value) {
    return value instanceof Value.Leg leg
        ? new Value.Leg(leg.direction().mirrored(), leg.length())
        : value;
  }

  private static Value doubled(Value value) {
    if (value instanceof Value.Distance distance) {
      return new Value.Distance(Length.ofMetres(2 * distance.length().metres()), distance.said());
    }
    return value instanceof Value.Leg leg
        ? new Value.Leg(leg.direction(), leg.length().map(l -> (Value.Distance) doubled(l)))
        : value;
  }

  /** The load knows no lengths; a fall grows with them, and its speed with their square root. */
  @Test
  @Tag("sampled")
  void aRopeTwiceAsLargeIsLoadedTheSameWay() {
    int compared = 0;
    int fallen = 0;
    for (RopePath path : everyday()) {
      Supports here = supports(path);
      Supports there = supports(changed(path, RopePathTest::doubled));
      for (Place place : there.known().keySet()) {
        Load one = load(here.known().get(place));
        Load two = load(there.known().get(place));
        assertEquals(one.resultantN().nominal(), two.resultantN().nominal(), 1e-6);
        assertEquals(one.elevationDeg().nominal(), two.elevationDeg().nominal(), 1e-6);
        assertEquals(one.bearingDeg().nominal(), two.bearingDeg().nominal(), 1e-6);
        assertEquals(one.loadClass(), two.loadClass());
        compared++;
      }
      if (there.otherwise().isEmpty() && compared % 5 == 0) {
        fallen += fallTwiceAsFar(path, here, there);
      }
    }
    assertTrue(compared > 2 * EVERYDAY_PATHS, compared + " compared");
    assertTrue(fallen > 50, fallen + " fallen");
  }

  private static Load load(ResolvedRig rig) {
    return Survey.whole(rig, 1).load();
  }

  private static int fallTwiceAsFar(RopePath path, Supports here, Supports there) {
    int fallen = 0;
    for (Place place : path.places()) {
      if (new IfLost(path, here.known(), 1).at(place) instanceof Loss.Falls one) {
        Loss.Falls two =
            assertInstanceOf(Loss.Falls.class, new IfLost(path, there.known(), 1).at(place));
        double metre = ROUNDING * (1 + one.dropM().nominal());
        assertEquals(2 * one.freeFallM().nominal(), two.freeFallM().nominal(), metre);
        assertEquals(2 * one.dropM().nominal(), two.dropM().nominal(), metre);
        assertEquals(
            Math.sqrt(2) * one.lowestSpeedMS().nominal(), two.lowestSpeedMS().nominal(), 1e-6);
        assertEquals(one.bearingDeg().nominal(), two.bearingDeg().nominal(), 1e-6);
        // The fall over the rope is the same, and so is the peak.
        assertEquals(one.peakN().nominal(), two.peakN().nominal(), 1e-6 * one.peakN().nominal());
        fallen++;
      }
    }
    return fallen;
  }

  /** Without any one thing that must be said of any one support no rope is good. */
  @Test
  @Tag("sampled")
  void whateverIsMissingOfAnySampledRope() {
    int tried = 0;
    for (RopePath path : everyday().subList(0, LESS_SAID_PATHS)) {
      for (Place place : path.places()) {
        for (Slot slot : NEEDED) {
          boolean bare =
              path.at(place)
                  .said(Slot.RUNNING_OVER)
                  .filter(said -> said.value() == Value.RunningOver.BARK)
                  .isPresent();
          if (slot == Slot.HITCH && bare) {
            continue;
          }
          Supports supports = supports(SpokenPath.without(path, place, slot));
          CannotSay cannot =
              assertInstanceOf(CannotSay.class, supports.otherwise().get(place), slot.key());
          assertTrue(cannot.missing().contains(slot));
          for (Place other : path.places()) {
            boolean waits = place.isMainPoint() && feelsBothLegs(path, other);
            assertEquals(other.compareTo(place) > 0 && !waits, supports.known().containsKey(other));
          }
          tried++;
        }
      }
    }
    assertTrue(tried > 20 * LESS_SAID_PATHS, tried + " tried");
  }

  /** The stem below it is bent by two legs of the main point, which must be known first. */
  private static boolean feelsBothLegs(RopePath path, Place place) {
    return supports(path).known().get(place).pullAbove() == ResolvedRig.PullAbove.TWO_LEGS;
  }

  /** A leg said the other way round at one of its ends. */
  @Test
  @Tag("sampled")
  void noSampledRopeWithALegThatTurns() {
    int tried = 0;
    for (RopePath path : everyday()) {
      for (Place place : path.places().subList(1, path.places().size())) {
        Said said = path.at(place).said(Slot.ANCHOR_LEG).orElseThrow();
        Value.Leg leg = (Value.Leg) said.value();
        double up = leg.direction().elevation().degrees();
        if (Math.abs(up) > 20) {
          Direction back = Direction.ofDegrees(-up, leg.direction().bearing().degrees());
          Value turned = new Value.Leg(back, leg.length());
          Rig rig = path.at(place).with(Slot.ANCHOR_LEG, new Said(turned, said.how()));
          Supports supports = supports(path.with(place, rig));
          Place nearer = path.before(place).orElseThrow();
          Verdict verdict = supports.otherwise().get(nearer);
          // The same turn may make the legs of the farther one coincide; then the nearer one waits.
          boolean told =
              verdict instanceof CannotSay cannot && names(cannot).contains("SharedLegTurns");
          assertTrue(told, verdict + " for " + path);
          tried++;
        }
      }
    }
    assertTrue(tried > EVERYDAY_PATHS / 2, tried + " tried");
  }

  /** The rope's outcome is that of its worst support, and good only if all of them are. */
  @Test
  @Tag("sampled")
  void theOutcomeIsThatOfTheWorst() {
    Set<Outcome> seen = EnumSet.noneOf(Outcome.class);
    for (RopePath path : everyday().subList(0, JUDGED_PATHS)) {
      PathVerdict verdict = quick(path);
      Rating worst = Rating.GOOD;
      for (Verdict support : verdict.supports().values()) {
        Rating rating = assertInstanceOf(Judged.class, support).rating();
        worst = rating.compareTo(worst) > 0 ? rating : worst;
      }
      assertEquals(worst.name(), verdict.outcome().name());
      assertEquals(worst == Rating.GOOD, verdict.isGood());
      seen.add(verdict.outcome());
    }
    assertTrue(seen.contains(Outcome.REFUSE), seen.toString());
  }

  /** However a leg was got, what the main point feels of the rest is never less by a worse eye. */
  @Test
  @Tag("sampled")
  void aWorseEyeNeverNarrowsWhatLiesBeyond() {
    for (RopePath path : everyday()) {
      double tape = beyondTheMainPoint(got(path, HowGot.BY_TAPE));
      double eye = beyondTheMainPoint(got(path, HowGot.BY_EYE));
      assertTrue(eye >= tape, eye + " by eye, " + tape + " by tape");
    }
  }

  private static double beyondTheMainPoint(RopePath path) {
    ResolvedRig main = supports(path).known().get(MAIN);
    return main == null ? Double.MAX_VALUE : main.measures().get(Measure.BEYOND).high();
  }

  private static RopePath got(RopePath path, HowGot how) {
    RopePath other = path;
    for (Place place : path.places()) {
      Rig rig = path.at(place);
      for (Map.Entry<Slot, Said> entry : path.at(place).said().entrySet()) {
        rig = rig.with(entry.getKey(), new Said(entry.getValue().value(), how));
      }
      other = other.with(place, rig);
    }
    return other;
  }
}
