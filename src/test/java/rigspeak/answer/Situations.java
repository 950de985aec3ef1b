package rigspeak.answer;

import static rigspeak.answer.Speech.grid;
import static rigspeak.answer.Speech.pick;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Conflict;
import rigspeak.dialogue.Detail;
import rigspeak.dialogue.Lanyard;
import rigspeak.dialogue.Pace;
import rigspeak.dialogue.Pending;
import rigspeak.dialogue.Reply;
import rigspeak.meaning.Meaning;
import rigspeak.mechanics.LoadClass;
import rigspeak.quantity.Angle;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.quantity.Mass;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Direction;
import rigspeak.rig.HowGot;
import rigspeak.rig.Measure;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.rig.Value;
import rigspeak.verdict.Check;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.Judge;
import rigspeak.verdict.Load;
import rigspeak.verdict.Loss;
import rigspeak.verdict.Obstacle;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Refusal;
import rigspeak.verdict.Remedy;
import rigspeak.verdict.Spread;
import rigspeak.verdict.Swing;
import rigspeak.verdict.Verdict;

/** Everything that the tool may have to answer: each case by hand, rigs by even samples. */
final class Situations {
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Judge JUDGE = new Judge(CATALOGUE);

  private static final Place ONE = Place.redirectNumber(1);
  private static final Place TWO = Place.redirectNumber(2);

  private Situations() {}

  // ---- rigs ----

  /** A rig that is wholly known and, at these values, good to load. */
  static Rig known(UnitSystem units) {
    Value weight =
        units == UnitSystem.METRIC
            ? new Value.Weight(Mass.ofKilograms(95), units)
            : new Value.Weight(Mass.ofPounds(210), units);
    return Rig.empty()
        .with(Slot.ALL_UP, eye(weight))
        .with(Slot.SPECIES, eye(new Value.Species(Set.of("northern", "red", "oak"))))
        .with(Slot.ROPE_SYSTEM, eye(Value.RopeSystem.STATIONARY))
        .with(Slot.WOOD, eye(Value.Wood.LIVE))
        .with(Slot.LIMB_DIAMETER, tape(metres(0.25, units)))
        .with(Slot.LIMB_RISE, eye(new Value.Turned(Angle.ofDegrees(0))))
        .with(Slot.OUT, tape(metres(0, units)))
        .with(Slot.STEM_DIAMETER, tape(metres(0.45, units)))
        .with(Slot.UNION, eye(Value.Union.of(Value.UnionCondition.SOUND)))
        .with(Slot.HITCH, eye(Value.Hitch.CHOKED))
        .with(Slot.WRAPS, eye(new Value.Wraps(3)))
        .with(Slot.SEAT, eye(Value.Seat.UNION))
        .with(Slot.BARK, eye(Value.Bark.ROUGH))
        .with(Slot.RUNNING_OVER, eye(Value.RunningOver.RING))
        .with(Slot.ANCHOR_LEG, eye(leg(60, 180)))
        .with(Slot.WORKING_LEG, eye(new Value.Leg(Direction.straightDown(), Optional.empty())));
  }

  private static Value.Leg leg(double elevation, double bearing, double length, UnitSystem units) {
    return new Value.Leg(
        Direction.ofDegrees(elevation, bearing), Optional.of(metres(length, units)));
  }

  private static Value.Leg leg(double elevation, double bearing) {
    return new Value.Leg(Direction.ofDegrees(elevation, bearing), Optional.empty());
  }

  private static Value.Distance metres(double metres, UnitSystem units) {
    return new Value.Distance(Length.ofMetres(metres), units);
  }

  private static Said eye(Value value) {
    return new Said(value, HowGot.BY_EYE);
  }

  private static Said tape(Value value) {
    return new Said(value, HowGot.BY_TAPE);
  }

  /** Any rig, whole or with something left out, in either units. */
  static Rig sampled(double[] at) {
    UnitSystem units = pick(at[0], UnitSystem.values());
    Rig rig =
        known(units)
            .with(Slot.LIMB_DIAMETER, tape(metres(grid(at[1], 0.08, 0.6, 0.01), units)))
            .with(Slot.LIMB_RISE, eye(new Value.Turned(Angle.ofDegrees(grid(at[2], -80, 90, 10)))))
            .with(Slot.OUT, eye(metres(grid(at[3], 0, 4, 0.25), units)))
            .with(Slot.STEM_DIAMETER, tape(metres(grid(at[4], 0.15, 0.9, 0.05), units)))
            .with(Slot.ANCHOR_LEG, eye(leg(grid(at[5], -40, 80, 20), grid(at[6], -180, 150, 30))))
            .with(Slot.WORKING_LEG, eye(leg(grid(at[7], -90, 10, 10), grid(at[8], -180, 150, 30))))
            .with(Slot.WRAPS, eye(new Value.Wraps(1 + (int) (4 * at[9]))))
            .with(Slot.SEAT, eye(pick(at[10], Value.Seat.values())))
            .with(Slot.BARK, eye(pick(at[11], Value.Bark.values())))
            .with(Slot.RUNNING_OVER, eye(pick(at[12], Value.RunningOver.values())))
            .with(Slot.HITCH, eye(pick(at[13], Value.Hitch.values())));
    if (at[14] < 0.2) {
      rig = rig.with(Slot.UNION, eye(Value.Union.of(Value.UnionCondition.CODOMINANT)));
      rig = rig.with(Slot.CAVITY, eye(new Value.Share(pick(at[15], 0.0, 0.25, 0.5, 0.75))));
    }
    if (at[16] < 0.15) {
      rig = rig.without(pick(at[15], Slot.values())).without(pick(at[17], Slot.values()));
    }
    if (at[17] < 0.3) {
      rig = rig.without(Slot.BARK).without(Slot.SEAT);
      rig = rig.with(Slot.SPECIES, eye(pick(at[16], Value.Species.unknown(), species("oak"))));
    }
    return rig;
  }

  private static Value.Species species(String word) {
    return new Value.Species(Set.of(word));
  }

  static final int RIG_DIMENSIONS = 18;

  /** A redirect by itself. */
  static PathVerdict judged(Rig rig) {
    return JUDGE.judge(RopePath.alone(rig), ONE);
  }

  static PathVerdict judged(RopePath path, Place asked) {
    return JUDGE.judge(path, asked);
  }

  static Verdict.Judged judgedKnown(UnitSystem units) {
    return (Verdict.Judged) judged(known(units)).ofAsked();
  }

  // ---- ropes ----

  /** The verdict on a rope that runs over a single redirect. */
  static PathVerdict alone(Verdict verdict) {
    return rope(ONE, Map.of(ONE, verdict));
  }

  /** A verdict on one support, with another that may be better or worse. */
  static PathVerdict rope(Place asked, Map<Place, Verdict> supports) {
    Map<Place, Rig> said = new TreeMap<>();
    supports.keySet().forEach(place -> said.put(place, Rig.empty()));
    return new PathVerdict(
        RopePath.of(said), asked, new TreeMap<>(supports), new TreeMap<>(), Optional.empty());
  }

  /** Main point and two redirects, wholly known, with legs that have lengths, in either units. */
  static RopePath wholeRope(UnitSystem units) {
    Rig main =
        known(units)
            .with(Slot.ANCHOR, eye(Value.Anchor.BASE))
            .with(Slot.ANCHOR_LEG, eye(leg(-88, 180, 12, units)));
    Rig first =
        known(units)
            .with(Slot.ANCHOR, eye(Value.Anchor.BASE))
            .with(Slot.ANCHOR_LEG, eye(leg(50, 180, 5, units)))
            .with(Slot.WORKING_LEG, eye(leg(-30, 0, 3, units)));
    Rig second =
        known(units)
            .with(Slot.ANCHOR, eye(Value.Anchor.BASE))
            .with(Slot.ANCHOR_LEG, eye(leg(30, 180, 3, units)))
            .with(Slot.WORKING_LEG, eye(leg(-60, 0, 4, units)))
            .with(Slot.STEM_CLEAR, eye(metres(1, units)));
    return RopePath.of(
        Map.of(Place.MAIN_POINT, main.without(Slot.WORKING_LEG), ONE, first, TWO, second));
  }

  /** Every support of a judged rope asked about, and ropes put together by hand. */
  static List<PathVerdict> ropes() {
    List<PathVerdict> all = new ArrayList<>();
    for (UnitSystem units : UnitSystem.values()) {
      RopePath whole = wholeRope(units);
      for (Place place : whole.places()) {
        all.add(JUDGE.judge(whole, place));
      }
      RopePath gap = whole.with(ONE, whole.at(ONE).without(Slot.UNION).without(Slot.HITCH));
      all.add(JUDGE.judge(gap, TWO));
      all.add(JUDGE.judge(gap, Place.MAIN_POINT));
      Rig dead = whole.at(TWO).with(Slot.WOOD, eye(Value.Wood.DEAD));
      all.add(JUDGE.judge(whole.with(TWO, dead), ONE));
      Rig thin = whole.at(Place.MAIN_POINT).with(Slot.LIMB_DIAMETER, eye(metres(0.05, units)));
      all.add(JUDGE.judge(whole.with(Place.MAIN_POINT, thin), TWO));
    }
    List<Verdict> verdicts = new ArrayList<>();
    for (Verdict.Rating rating : Verdict.Rating.values()) {
      judgedByHand().stream()
          .filter(judged -> judged.rating() == rating)
          .limit(20)
          .forEach(verdicts::add);
    }
    otherVerdicts().stream().limit(8).forEach(verdicts::add);
    for (Verdict here : List.of(verdicts.get(0), verdicts.get(20), new Verdict.WaitsFor(TWO))) {
      for (Verdict there : verdicts) {
        all.add(rope(ONE, Map.of(Place.MAIN_POINT, there, ONE, here)));
        all.add(rope(ONE, Map.of(ONE, here, TWO, there)));
        all.add(rope(Place.MAIN_POINT, Map.of(Place.MAIN_POINT, here, ONE, there)));
      }
    }
    all.add(rope(TWO, Map.of(ONE, new Verdict.WaitsFor(TWO), TWO, new Verdict.WaitsFor(TWO))));
    return all;
  }

  // ---- falls ----

  static List<Loss> losses() {
    List<Loss> all = new ArrayList<>();
    all.add(new Loss.NothingElseHolds());
    all.add(new Loss.NotKnown(ONE, List.of(Slot.WORKING_LEG)));
    all.add(new Loss.NotKnown(Place.MAIN_POINT, List.of(Slot.ANCHOR_LEG, Slot.WORKING_LEG)));
    Speech.evenly(
        6,
        256,
        at ->
            all.add(
                new Loss.Falls(
                    pick(at[0], Place.MAIN_POINT, ONE, TWO),
                    spread(3 * at[1], 1.3),
                    spread(4 * at[1], 1.3),
                    bearing(360 * at[2] - 180, 200 * at[3]),
                    spread(9 * at[3], 1.2),
                    OptionalDouble.of(at[0] + at[1]),
                    obstacle(at[4]),
                    spread(500 + 12_000 * at[5], 1.4),
                    left(at[2], at[5]))));
    return all;
  }

  private static Spread bearing(double nominal, double width) {
    return new Spread(nominal - width / 2, nominal, nominal + width / 2);
  }

  private static Obstacle obstacle(double share) {
    return pick(
        share,
        new Obstacle.NotSaid(),
        new Obstacle.Clear(0.2),
        new Obstacle.Reached(true, 9 * share, 4 * share),
        new Obstacle.Reached(false, 9 * share, 4 * share),
        new Obstacle.Reached(false, 0.1, 0.001));
  }

  private static Optional<Loss.Left> left(double kind, double use) {
    return use < 0.1
        ? Optional.empty()
        : Optional.of(
            new Loss.Left(
                pick(kind, CheckKind.values()), spread(Math.pow(10, 1.5 * use - 0.5), 1.2)));
  }

  static List<Swing> swings() {
    List<Swing> all = new ArrayList<>();
    Speech.evenly(
        4,
        128,
        at ->
            all.add(
                new Swing(
                    pick(at[0], Place.MAIN_POINT, ONE, TWO),
                    spread(80 * at[1], 1.1),
                    spread(6 * at[2], 1.2),
                    spread(8 * at[1], 1.2),
                    spread(4 * at[1] * at[2], 1.2),
                    obstacle(at[3]),
                    45)));
    return all;
  }

  // ---- verdicts put together by hand ----

  /** A judged rig with every kind of check, load and use in its place. */
  static List<Verdict.Judged> judgedByHand() {
    List<Verdict.Judged> all = new ArrayList<>();
    for (UnitSystem units : UnitSystem.values()) {
      Verdict.Judged real = judgedKnown(units);
      for (CheckKind kind : CheckKind.values()) {
        Speech.evenly(6, 48, at -> all.add(byHand(real, kind, at)));
      }
    }
    return all;
  }

  private static Verdict.Judged byHand(Verdict.Judged real, CheckKind kind, double[] at) {
    Verdict.Rating rating = pick(at[0], Verdict.Rating.values());
    double use = Math.pow(10, at[1]) * (rating == Verdict.Rating.GOOD ? 0.1 : 1);
    double nominal =
        switch (rating) {
          case GOOD -> use / 2;
          case MARGINAL -> 0.9;
          case REFUSE -> use;
        };
    double capacity = kind == CheckKind.SHELL ? 0.7 : Math.pow(10, 2 + 6 * at[2]);
    Check check =
        new Check(
            kind,
            spread(nominal * capacity, 1.2),
            spread(capacity, 1.1),
            new Spread(nominal / 2, nominal, Math.max(nominal, use)),
            nominal,
            sources(at[3]));
    List<Remedy> remedies = rating == Verdict.Rating.GOOD ? List.of() : remedies(at[4]);
    Optional<Measure> again =
        rating == Verdict.Rating.MARGINAL
            ? Optional.of(pick(at[5], Measure.values()))
            : Optional.empty();
    return new Verdict.Judged(rating, load(at), List.of(check), check, again, remedies, real.rig());
  }

  /** A judged rig that is refused and has these ways out. */
  static Verdict.Judged refused(Verdict.Judged real, List<Remedy> remedies) {
    return new Verdict.Judged(
        Verdict.Rating.REFUSE,
        real.load(),
        real.checks(),
        real.governing(),
        Optional.empty(),
        remedies,
        real.rig());
  }

  /** A judged rig in which another check governs. */
  static Verdict.Judged governedBy(Verdict.Judged real, CheckKind kind) {
    Check check =
        new Check(kind, spread(900, 1.2), spread(1000, 1.1), spread(0.9, 1.3), 1, List.of());
    return new Verdict.Judged(
        Verdict.Rating.MARGINAL,
        real.load(),
        List.of(check),
        check,
        Optional.empty(),
        List.of(),
        real.rig());
  }

  /** A judged rig whose rope governs, in newtons. */
  static Verdict.Judged onRope(Verdict.Judged real, double demand, double capacity) {
    Check check =
        new Check(
            CheckKind.ROPE,
            spread(demand, 1.2),
            spread(capacity, 1.1),
            spread(demand / capacity, 1.3),
            demand / capacity,
            List.of());
    return new Verdict.Judged(
        demand > capacity ? Verdict.Rating.REFUSE : Verdict.Rating.GOOD,
        real.load(),
        List.of(check),
        check,
        Optional.empty(),
        List.of(),
        real.rig());
  }

  /** A judged rig with this load, in newtons along the limb, square to it and sideways. */
  static Verdict.Judged loaded(
      Verdict.Judged real, LoadClass loadClass, double along, double top, double side) {
    Load load = real.load();
    double size = Math.sqrt(along * along + top * top + side * side);
    return new Verdict.Judged(
        Verdict.Rating.REFUSE,
        new Load(
            spread(size, 1.1),
            load.elevationDeg(),
            load.bearingDeg(),
            around(along),
            around(top),
            around(side),
            loadClass,
            load.insideDeg(),
            load.angleFactor(),
            load.anchorLegN(),
            load.workingLegN(),
            load.peakFactor()),
        real.checks(),
        real.governing(),
        Optional.empty(),
        List.of(),
        real.rig());
  }

  private static Spread spread(double nominal, double factor) {
    return new Spread(nominal / factor, nominal, nominal * factor);
  }

  private static List<Source> sources(double share) {
    Source.Provenance[] kinds = Source.Provenance.values();
    List<Source> sources = new ArrayList<>();
    for (int i = 0; i < kinds.length * share; i++) {
      sources.add(new Source("key" + i, kinds[i], "title"));
    }
    return sources;
  }

  private static List<Remedy> remedies(double share) {
    List<Remedy> all = remedies();
    int from = (int) (share * (all.size() + 1));
    return all.subList(from, all.size());
  }

  static List<Remedy> remedies() {
    return List.of(
        new Remedy.Wraps(4),
        new Remedy.Choke(2),
        new Remedy.Basket(),
        new Remedy.StrongerSling(Force.ofKilonewtons(31)),
        new Remedy.StrongerSling(Force.ofPoundsForce(6500)),
        new Remedy.SeatAtTheUnion(),
        new Remedy.NearerTheUnion(Length.ofMetres(1.1)),
        new Remedy.NearerTheUnion(Length.ofMetres(0)),
        new Remedy.WorkingLeg(Direction.straightDown()),
        new Remedy.WorkingLeg(Direction.ofDegrees(-65, 150)),
        new Remedy.WiderAngle(Angle.ofDegrees(125)),
        new Remedy.SecondRedirect(Direction.ofDegrees(-45, 0)),
        new Remedy.ThickerLimb(Length.ofMetres(0.2345)));
  }

  private static Load load(double[] at) {
    double size = 10 + 5000 * at[5];
    double side = size * (at[1] - 0.5);
    return new Load(
        spread(size, 1.3),
        new Spread(-90, -90 + 180 * at[3], 90),
        new Spread(-400, -180 + 360 * at[4], 400),
        around(-size * at[2]),
        around(size * (at[0] - 0.5)),
        around(side),
        pick(at[2], LoadClass.values()),
        at[0] < 0.2 ? Optional.empty() : Optional.of(new Spread(0, 180 * at[5], 180)),
        at[0] < 0.2
            ? Optional.empty()
            : Optional.of(new Spread(0, 2 * Math.cos(Math.PI / 2 * at[5]), 2)),
        spread(size, 1.1),
        spread(size, 1.1),
        spread(2 + 3 * at[0], 1.1));
  }

  private static Spread around(double nominal) {
    return new Spread(nominal - 1, nominal, nominal + 1);
  }

  static List<Conflict> conflicts() {
    List<Conflict> all = new ArrayList<>();
    for (Slot slot : Slot.values()) {
      implausible(slot).forEach(value -> CATALOGUE.offence(slot, value).ifPresent(all::add));
    }
    Angle wide = Angle.ofDegrees(119.6);
    Angle narrow = Angle.ofDegrees(61);
    all.add(new Conflict.AnglesDisagree(Slot.INSIDE_ANGLE, wide, Slot.BEND, narrow));
    all.add(new Conflict.AnglesDisagree(Slot.ANCHOR_LEG, wide, Slot.INSIDE_ANGLE, narrow));
    all.add(new Conflict.AnglesDisagree(Slot.ANCHOR_LEG, wide, Slot.BEND, narrow));
    all.add(new Conflict.LegsCoincide());
    all.add(new Conflict.LegsInLine());
    all.add(new Conflict.WorkingLegUp());
    Speech.evenly(
        4,
        64,
        at ->
            all.add(
                new Conflict.SlingElsewhere(
                    Angle.ofDegrees(180 * at[0]),
                    Angle.ofDegrees(180 * at[1] - 90),
                    Angle.ofDegrees(360 * at[2] - 180),
                    Angle.ofDegrees(grid(at[3], -90, 90, 10)),
                    Angle.ofDegrees(grid(at[0], -180, 150, 30)))));
    all.add(new Conflict.LimbThickerThanStem());
    all.add(new Conflict.SoundAndFaulty());
    all.add(new Conflict.DecayWithoutExtent());
    all.add(new Conflict.LegAwayFromSling(Slot.ANCHOR_LEG, wide, narrow));
    all.add(new Conflict.LegAwayFromSling(Slot.WORKING_LEG, narrow, wide));
    all.add(new Conflict.SeatedButOut());
    all.add(new Conflict.OutBeyondLimb());
    all.add(new Conflict.BothPartsOfStationaryRope());
    all.add(new Conflict.SlackWithoutLengths());
    all.add(new Conflict.ThickEndThinnerThanLimb());
    all.add(new Conflict.ShapeOfNoCavity());
    for (Slot slot : List.of(Slot.CHOKE_ANGLE, Slot.BASKET_ANGLE, Slot.WRAPS)) {
      all.add(new Conflict.NotOfThisHitch(slot));
    }
    all.add(new Conflict.ConnectorOverBark());
    all.add(new Conflict.MovingRopeFromBase());
    all.add(new Conflict.AnchorLegWithoutLength());
    all.add(new Conflict.SharedLegTurns(Place.MAIN_POINT, wide, ONE, narrow));
    all.add(new Conflict.SharedLegTurns(ONE, Angle.ofDegrees(0.2), TWO, Angle.ofDegrees(-39.6)));
    for (UnitSystem units : UnitSystem.values()) {
      all.add(new Conflict.SharedLegLengths(ONE, metres(3, units), TWO, metres(4.5, units)));
    }
    return all;
  }

  /** Too little and too much, in both units. */
  private static List<Value> implausible(Slot slot) {
    return switch (slot) {
      case ALL_UP ->
          List.of(
              new Value.Weight(Mass.ofPounds(20), UnitSystem.INCH_POUND),
              new Value.Weight(Mass.ofKilograms(999), UnitSystem.METRIC),
              new Value.Weight(Mass.ofKilograms(1e15), UnitSystem.METRIC));
      case LIMB_DIAMETER,
          THICK_END,
          STEM_DIAMETER,
          SLING_THICKNESS,
          LIMB_LENGTH,
          OUT,
          SLACK,
          STEM_CLEAR ->
          List.of(
              metres(Length.ofInches(1).metres(), UnitSystem.INCH_POUND),
              metres(0.01, UnitSystem.METRIC),
              metres(Length.ofFeet(199).metres(), UnitSystem.INCH_POUND),
              metres(999, UnitSystem.METRIC),
              metres(1e15, UnitSystem.METRIC));
      case LIMB_RISE, INSIDE_ANGLE, BEND, CHOKE_ANGLE, BASKET_ANGLE ->
          List.of(
              new Value.Turned(Angle.ofDegrees(-85)),
              new Value.Turned(Angle.ofDegrees(200)),
              new Value.Turned(Angle.ofDegrees(1e12)));
      case SLING_RATING ->
          List.of(
              new Value.Rating(Force.ofPoundsForce(1000), UnitSystem.INCH_POUND),
              new Value.Rating(Force.ofKilonewtons(2.5), UnitSystem.METRIC),
              new Value.Rating(Force.ofKilonewtons(1e15), UnitSystem.METRIC));
      case ANCHOR_LEG, WORKING_LEG ->
          List.of(
              new Value.Leg(Direction.straightDown(), Optional.of(metres(500, UnitSystem.METRIC))));
      default -> List.of();
    };
  }

  static List<Verdict> otherVerdicts() {
    List<Verdict> all = new ArrayList<>();
    all.add(new Verdict.RefusedOutright(List.of(Refusal.DEAD_WOOD)));
    all.add(new Verdict.RefusedOutright(List.of(Refusal.CRACKED_UNION)));
    all.add(new Verdict.RefusedOutright(List.of(Refusal.CONNECTOR_OVER_EDGE)));
    all.add(new Verdict.RefusedOutright(List.of(Refusal.values())));
    all.add(new Verdict.WaitsFor(TWO));
    List<Slot> slots = List.of(Slot.values());
    for (int missing = 1; missing <= slots.size(); missing++) {
      all.add(new Verdict.CannotSay(slots.subList(0, missing), List.of()));
      all.add(
          new Verdict.CannotSay(slots.subList(slots.size() - missing, slots.size()), List.of()));
    }
    for (Conflict conflict : conflicts()) {
      all.add(new Verdict.CannotSay(List.of(), List.of(conflict)));
    }
    for (int many = 2; many < 7; many++) {
      all.add(new Verdict.CannotSay(List.of(Slot.BARK), conflicts().subList(0, many)));
      all.add(new Verdict.CannotSay(slots, conflicts().subList(0, many)));
    }
    return all;
  }

  // ---- replies ----

  /** At least one reply of every case, and of every case within a case. */
  static List<Reply> replies() {
    List<Reply> all = new ArrayList<>();
    Rig rig = known(UnitSystem.INCH_POUND);
    List<Reply.Item> items = items(rig);
    List<PathVerdict> verdicts = new ArrayList<>();
    judgedByHand().forEach(verdict -> verdicts.add(alone(verdict)));
    otherVerdicts().forEach(verdict -> verdicts.add(alone(verdict)));
    verdicts.addAll(ropes());
    for (PathVerdict verdict : verdicts) {
      boolean numbers = verdict.ofGoverning() instanceof Verdict.Judged;
      all.add(new Reply.Judged(verdict, numbers ? items.subList(0, 3) : List.of()));
      all.add(new Reply.Why(verdict));
      all.add(new Reply.WouldHelp(verdict));
      for (Reply.Change change : Reply.Change.values()) {
        all.add(new Reply.ClippedIn(verdict.asked(), Optional.of(change), Optional.of(verdict)));
      }
      all.add(new Reply.LoadHeard(verdict.asked(), Optional.of(verdict)));
      verdict
          .losses()
          .forEach(
              (place, loss) ->
                  all.add(new Reply.LetsGo(place, loss, UnitSystem.METRIC, Lanyard.CLIPPED_IN)));
    }
    all.add(new Reply.Judged(verdicts.get(0), List.of()));
    for (UnitSystem units : UnitSystem.values()) {
      losses().forEach(loss -> all.add(new Reply.LetsGo(TWO, loss, units, Lanyard.UNKNOWN)));
      all.add(
          new Reply.LetsGo(Place.MAIN_POINT, new Loss.NothingElseHolds(), units, Lanyard.RELEASED));
      swings().forEach(swing -> all.add(new Reply.WouldSwing(swing, units)));
    }
    all.add(new Reply.SwingNotKnown(TWO));
    all.add(new Reply.MissingElsewhere(Place.MAIN_POINT, List.of(Slot.values())));
    all.add(new Reply.MissingElsewhere(ONE, List.of(Slot.UNION)));
    for (Reply.Item item : items) {
      all.add(new Reply.Taken(List.of(item)));
      all.add(new Reply.AffirmValue(item));
      all.add(new Reply.AffirmDoubtful(List.of(item)));
      all.add(new Reply.AffirmFirst(new Pending.Values(List.of(item))));
      all.add(new Reply.AffirmFirst(new Pending.Doubtful(List.of(item), false)));
      all.add(new Reply.Scrapped(item));
      Reply.Item changed = new Reply.Item(item.slot(), item.said(), Optional.of(item.said()));
      all.add(new Reply.Taken(List.of(changed, item)));
      all.add(new Reply.AffirmValue(changed));
    }
    all.add(new Reply.AffirmFirst(new Pending.ClippedIn()));
    all.add(new Reply.ReadBack(Place.MAIN_POINT, items));
    all.add(new Reply.ReadBack(new Place(12), List.of()));
    all.add(new Reply.Affirmed());
    all.add(new Reply.VerdictCancelled(List.of(ONE)));
    all.add(new Reply.VerdictCancelled(List.of(Place.MAIN_POINT, ONE, TWO)));
    all.add(new Reply.WhichAngle(Angle.ofDegrees(60)));
    for (Conflict conflict : conflicts()) {
      if (conflict instanceof Conflict.OutOfRange offence) {
        all.add(new Reply.Implausible(offence));
      }
    }
    for (Slot slot : Slot.values()) {
      all.add(new Reply.Asked(slot));
      all.add(new Reply.SaidTwice(slot));
      all.add(new Reply.Missing(List.of(slot)));
      all.add(new Reply.CorrectionAsked(slot));
      all.add(new Reply.Dropped(List.of(slot)));
      all.add(new Reply.Dropped(List.of(slot, Slot.SPECIES)));
      addLadders(all, Optional.of(slot));
    }
    addLadders(all, Optional.empty());
    all.add(new Reply.Missing(List.of()));
    all.add(new Reply.Missing(List.of(Slot.values())));
    all.add(new Reply.NotJudged());
    all.add(new Reply.LanyardFirst(Optional.empty()));
    all.add(new Reply.AffirmClippedIn());
    for (Reply.Change change : Reply.Change.values()) {
      all.add(new Reply.LanyardFirst(Optional.of(change)));
      all.add(new Reply.ClippedIn(ONE, Optional.of(change), Optional.empty()));
    }
    all.add(new Reply.ClippedIn(Place.MAIN_POINT, Optional.empty(), Optional.empty()));
    all.add(new Reply.LoadHeard(ONE, Optional.empty()));
    for (Reply.Hold hold : Reply.Hold.values()) {
      all.add(new Reply.HoldLanyard(List.of(hold)));
    }
    all.add(new Reply.HoldLanyard(List.of(Reply.Hold.values())));
    all.add(new Reply.LanyardReleased());
    for (Lanyard lanyard : Lanyard.values()) {
      all.add(new Reply.Attached(lanyard, List.of()));
      all.add(new Reply.Attached(lanyard, List.of(ONE)));
      all.add(new Reply.Attached(lanyard, List.of(Place.MAIN_POINT, ONE, TWO)));
    }
    all.add(new Reply.Turned(TWO, true));
    all.add(new Reply.Turned(ONE, false));
    all.add(new Reply.Turned(Place.MAIN_POINT, false));
    all.add(new Reply.NoSuchRedirect(new Place(5), 1));
    all.add(new Reply.NoSuchRedirect(new Place(5), 3));
    all.add(new Reply.NothingToTakeBack());
    all.add(new Reply.StandingBy());
    all.add(new Reply.Listening());
    all.add(new Reply.FallenAsleep());
    for (List<Place> judged : List.of(List.<Place>of(), List.of(Place.redirectNumber(1)))) {
      all.add(new Reply.GoesOn("", Place.redirectNumber(2), judged));
      all.add(new Reply.GoesOn("limb ten inches by tape", Place.redirectNumber(2), judged));
    }
    for (Reply.BeginsAnew.Why why : Reply.BeginsAnew.Why.values()) {
      all.add(new Reply.BeginsAnew(why));
    }
    for (Meaning.Trouble trouble : Meaning.Trouble.values()) {
      all.add(new Reply.CannotHear(trouble));
    }
    for (Detail detail : Detail.values()) {
      all.add(new Reply.DetailSet(detail));
    }
    for (Pace pace : Pace.values()) {
      all.add(new Reply.PaceSet(pace));
    }
    all.add(new Reply.Help());
    return all;
  }

  private static void addLadders(List<Reply> all, Optional<Slot> asked) {
    for (Reply.Rung rung : Reply.Rung.values()) {
      for (Meaning.Reason reason : EnumSet.allOf(Meaning.Reason.class)) {
        all.add(new Reply.Again(rung, reason, asked));
      }
      all.add(new Reply.Silent(rung, asked));
    }
  }

  static List<Reply.Item> items(Rig rig) {
    List<Reply.Item> items = new ArrayList<>();
    rig.said().forEach((slot, said) -> items.add(new Reply.Item(slot, said, Optional.empty())));
    return items;
  }
}
