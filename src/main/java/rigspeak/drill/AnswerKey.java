package rigspeak.drill;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigspeak.catalogue.Catalogue;
import rigspeak.drill.Matter.Loading;
import rigspeak.drill.Matter.OneRig;
import rigspeak.drill.Matter.TwoRigs;
import rigspeak.drill.Truth.Figure;
import rigspeak.drill.Truth.Named;
import rigspeak.quantity.Force;
import rigspeak.quantity.Length;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.AtItsWord;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.Judge;
import rigspeak.verdict.Load;
import rigspeak.verdict.Loss;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.PathVerdict.Outcome;
import rigspeak.verdict.Refusal;
import rigspeak.verdict.Verdict;

/**
 * The right answer to a question, worked out by what judges a rig. A question whose answer is too
 * close to call is none.
 */
public final class AnswerKey {
  /** Fewer samples than a verdict takes; so "go" and "holds" keep more back than a verdict does. */
  private static final int SAMPLES = 64;

  /** What may be used of a limit at worst where the answer is "go" or "holds". */
  private static final double WELL_WITHIN = 0.9;

  /** What must be used of a limit at its word where the answer is "refuse" or "slides". */
  private static final double WELL_OVER = 1.1;

  /** Of the fewest wraps that hold, one fewer uses at worst more than this. */
  private static final double NOT_WITHIN = 1.02;

  private static final int MOST_WRAPS = 6;
  private static final double HALF_TURN = 180;
  private static final double QUARTER_TURN = 90;

  private final Catalogue catalogue;
  private final Judge judge;

  public AnswerKey(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.judge = new Judge(catalogue, SAMPLES);
  }

  /** The question with its answer; nothing where there is no clear one. */
  public Optional<Question> question(Skill skill, Level level, Asking asking, Matter matter) {
    return new Asked(skill, level, asking, matter).question();
  }

  /** One question on its way to its answer. */
  private final class Asked {
    private final Skill skill;
    private final Level level;
    private final Asking asking;
    private final Matter matter;

    Asked(Skill skill, Level level, Asking asking, Matter matter) {
      this.skill = skill;
      this.level = level;
      this.asking = asking;
      this.matter = matter;
    }

    Optional<Question> question() {
      return switch (asking) {
        case WHERE -> ofLoad(this::where);
        case INSIDE ->
            ofLoad(load -> load.insideDeg().map(in -> degrees(in.nominal(), 15, 10, 10)));
        case BEND ->
            ofLoad(load -> load.insideDeg().map(in -> degrees(HALF_TURN - in.nominal(), 1, 1, 1)));
        case INSIDE_OF_BEND ->
            ofLoad(load -> load.insideDeg().map(in -> degrees(in.nominal(), 1, 1, 1)));
        case FACTOR ->
            ofLoad(
                load ->
                    load.angleFactor().map(f -> new Figure(f.nominal(), level.of(0.2, 0.15, 0.1))));
        case PULLS_MORE -> pullsMore();
        case STRONGER -> unions().flatMap(this::stronger);
        case MORE -> unions().map(this::more);
        case SLIDE -> slide();
        case WRAPS -> wraps();
        case DROP, WAY, HARD -> fall();
        case COMES_FIRST -> comesFirst(((Matter.Steps) matter).named());
        case LANYARD -> Optional.of(lanyard((Matter.Lanyard) matter));
        case READ_BACK -> readBack((TwoRigs) matter);
        case DIGITS -> digits();
        case GO_OR_REFUSE -> goOrRefuse();
      };
    }

    private Question answered(Truth truth, Grounds grounds) {
      return new Question(skill, level, matter, asking, truth, grounds);
    }

    private Optional<Question> named(Choice choice, Grounds grounds) {
      return Optional.of(answered(new Named(choice), grounds));
    }

    private Truth degrees(double value, double first, double second, double third) {
      return new Figure(value, level.of(first, second, third));
    }

    private RopePath path() {
      OneRig rig = (OneRig) matter;
      return UsualRig.with(rig.told(), rig.beside());
    }

    private RopePath first() {
      TwoRigs rigs = (TwoRigs) matter;
      return UsualRig.with(rigs.first(), rigs.beside());
    }

    private RopePath second() {
      TwoRigs rigs = (TwoRigs) matter;
      return UsualRig.with(rigs.second(), rigs.beside());
    }

    private Optional<AtItsWord> atItsWord(RopePath path) {
      return AtItsWord.of(catalogue, path, UsualRig.PLACE);
    }

    // ---- the load ----

    private interface FromLoad {
      Optional<Truth> truth(Load load);
    }

    /** Nobody can say what the load does where something is missing. */
    private Optional<Question> ofLoad(FromLoad from) {
      RopePath path = path();
      List<Slot> missing = catalogue.missing(path, UsualRig.PLACE);
      if (!missing.isEmpty()) {
        return named(Choice.NOBODY_CAN_SAY, new Grounds.Unsaid(missing));
      }
      return atItsWord(path)
          .map(AtItsWord::load)
          .flatMap(
              load -> from.truth(load).map(truth -> answered(truth, new Grounds.OfLoad(load))));
    }

    /** The part of the load that dominates must do so clearly. */
    private Optional<Truth> where(Load load) {
      double[] parts = {
        Math.abs(load.alongN().nominal()),
        Math.abs(load.topN().nominal()),
        Math.abs(load.sideN().nominal())
      };
      Arrays.sort(parts);
      boolean clear = parts[2] > level.of(1.5, 1.25, 1.1) * parts[1];
      return Choice.of(load.loadClass()).filter(choice -> clear).map(Named::new);
    }

    private Optional<Question> pullsMore() {
      Optional<Load> one = atItsWord(first()).map(AtItsWord::load);
      Optional<Load> other = atItsWord(second()).map(AtItsWord::load);
      if (one.isEmpty() || other.isEmpty()) {
        return Optional.empty();
      }
      return larger(
          one.get().resultantN().nominal(),
          other.get().resultantN().nominal(),
          new Grounds.OfLoads(one.get(), other.get()));
    }

    private Optional<Question> larger(double one, double other, Grounds grounds) {
      double apart = level.of(1.3, 1.2, 1.1);
      if (one > apart * other) {
        return named(Choice.FIRST, grounds);
      }
      return other > apart * one ? named(Choice.SECOND, grounds) : Optional.empty();
    }

    // ---- the limb at its union ----

    private Optional<Grounds.OfUnions> unions() {
      Optional<Double> one = atUnion(first());
      Optional<Double> other = atUnion(second());
      return one.isEmpty() || other.isEmpty()
          ? Optional.empty()
          : Optional.of(new Grounds.OfUnions(one.get(), other.get()));
    }

    private Optional<Double> atUnion(RopePath path) {
      return atItsWord(path).map(rig -> rig.uses().get(CheckKind.LIMB_AT_UNION).share());
    }

    /** The one that uses less of what it holds. */
    private Optional<Question> stronger(Grounds.OfUnions shares) {
      return larger(shares.second(), shares.first(), shares);
    }

    private Question more(Grounds.OfUnions shares) {
      double near = level.of(0.3, 0.2, 0.15);
      return answered(new Figure(shares.first() / shares.second(), near), shares);
    }

    // ---- the sling ----

    private Optional<Question> slide() {
      return atItsWord(path())
          .flatMap(
              rig -> {
                AtItsWord.Use use = rig.uses().get(CheckKind.SLIP);
                Grounds grounds = new Grounds.OfGrip(use.demand(), use.capacity());
                if (use.share() > WELL_OVER) {
                  return named(Choice.SLIDES, grounds);
                }
                return rig.worst(CheckKind.SLIP, SAMPLES) <= WELL_WITHIN
                    ? named(Choice.HOLDS, grounds)
                    : Optional.empty();
              });
    }

    private Optional<Question> wraps() {
      for (int turns = 1; turns <= MOST_WRAPS; turns++) {
        Optional<AtItsWord> rig = atItsWord(wrapped(turns));
        if (rig.isEmpty()) {
          return Optional.empty();
        }
        AtItsWord.Use use = rig.get().uses().get(CheckKind.SLIP);
        if (use.share() > NOT_WITHIN) {
          continue;
        }
        double worst = rig.get().worst(CheckKind.SLIP, SAMPLES);
        if (worst <= WELL_WITHIN) {
          return Optional.of(
              answered(new Figure(turns, 0), new Grounds.OfGrip(use.demand(), use.capacity())));
        }
        if (worst < NOT_WITHIN) {
          return Optional.empty();
        }
      }
      return Optional.empty();
    }

    private RopePath wrapped(int turns) {
      RopePath path = path();
      return path.with(UsualRig.PLACE, Changes.wraps(turns).in(path.at(UsualRig.PLACE)));
    }

    // ---- the fall ----

    private Optional<Question> fall() {
      Optional<Loss.Falls> loss =
          atItsWord(path())
              .map(AtItsWord::ifLost)
              .filter(Loss.Falls.class::isInstance)
              .map(Loss.Falls.class::cast);
      if (loss.isEmpty()) {
        return Optional.empty();
      }
      double speed = loss.get().lowestSpeedMS().nominal();
      Grounds.OfFall fall =
          new Grounds.OfFall(
              loss.get().freeFallM().nominal(),
              loss.get().dropM().nominal(),
              loss.get().bearingDeg().nominal(),
              speed * speed / (2 * Force.STANDARD_GRAVITY));
      return switch (asking) {
        case DROP -> Optional.of(answered(feet(fall.dropM()), fall));
        case HARD -> Optional.of(answered(feet(fall.asHardAsM()), fall));
        default -> way(fall);
      };
    }

    private Truth feet(double metres) {
      double feet = Length.ofMetres(metres).feet();
      return new Figure(feet, Math.max(level.of(1.0, 0.75, 0.5), level.of(0.3, 0.2, 0.15) * feet));
    }

    /** Which of the four ways is nearest; half way between two it is none. */
    private Optional<Question> way(Grounds.OfFall fall) {
      double off = level.of(10, 25, 35);
      Map<Choice, Double> ways =
          Map.of(
              Choice.TOWARD_TIP, 0.0,
              Choice.LEFT, QUARTER_TURN,
              Choice.TOWARD_STEM, HALF_TURN,
              Choice.RIGHT, -QUARTER_TURN);
      return ways.entrySet().stream()
          .filter(
              way ->
                  Math.abs(Math.IEEEremainder(fall.bearingDeg() - way.getValue(), 2 * HALF_TURN))
                      <= off)
          .findFirst()
          .map(way -> answered(new Named(way.getKey()), fall));
    }

    // ---- what needs no rig ----

    /** The one that every other one needs. */
    private Optional<Question> comesFirst(List<Step> steps) {
      List<Choice> places = List.of(Choice.FIRST, Choice.SECOND, Choice.THIRD);
      for (int i = 0; i < Math.min(steps.size(), places.size()); i++) {
        Step one = steps.get(i);
        if (steps.stream().allMatch(other -> other == one || other.needs(one))) {
          return named(places.get(i), new Grounds.Itself());
        }
      }
      return Optional.empty();
    }

    private Question lanyard(Matter.Lanyard lanyard) {
      boolean released = lanyard.check() == Outcome.GOOD && lanyard.rope() == Loading.LOADED;
      return answered(new Named(released ? Choice.RELEASE : Choice.KEEP), new Grounds.Itself());
    }

    private Optional<Question> readBack(TwoRigs plan) {
      List<Choice> places = List.of(Choice.FIRST, Choice.SECOND, Choice.THIRD);
      Choice wrong = Choice.ALL_RIGHT;
      for (int i = 0; i < places.size(); i++) {
        if (!plan.first().get(i).equals(plan.second().get(i))) {
          if (wrong != Choice.ALL_RIGHT) {
            return Optional.empty();
          }
          wrong = places.get(i);
        }
      }
      return named(wrong, new Grounds.Itself());
    }

    private Optional<Question> digits() {
      Said said = ((OneRig) matter).told().get(0).said().orElseThrow();
      double number =
          said.value() instanceof Value.Turned turned
              ? turned.angle().degrees()
              : ((Value.Distance) said.value()).length().feet();
      return Optional.of(answered(new Figure(Math.rint(number), 0), new Grounds.Itself()));
    }

    // ---- go, refuse, or nobody can say ----

    private Optional<Question> goOrRefuse() {
      RopePath path = path();
      Optional<AtItsWord> rig = atItsWord(path);
      if (rig.isPresent()) {
        double most = rig.get().mostUsed();
        if (most > WELL_WITHIN && most < WELL_OVER) {
          return Optional.empty();
        }
        if (most >= WELL_OVER) {
          return named(Choice.REFUSE, overItsLimit(rig.get()));
        }
        if (rig.get().worst(SAMPLES) > WELL_WITHIN) {
          return Optional.empty();
        }
      }
      PathVerdict verdict = judge.judge(path, UsualRig.PLACE);
      return switch (verdict.outcome()) {
        case GOOD -> go(verdict);
        case MARGINAL -> Optional.empty();
        case REFUSE -> outright(verdict);
        case CANNOT_SAY -> cannotSay(verdict);
      };
    }

    private Grounds overItsLimit(AtItsWord rig) {
      Map.Entry<CheckKind, AtItsWord.Use> worst =
          rig.uses().entrySet().stream()
              .max(Comparator.comparingDouble(use -> use.getValue().share()))
              .orElseThrow();
      return new Grounds.OfCheck(worst.getKey(), worst.getValue().share());
    }

    /** Every support must keep so much back that more samples find nothing. */
    private Optional<Question> go(PathVerdict verdict) {
      double worst = 0;
      for (Verdict each : verdict.supports().values()) {
        worst = Math.max(worst, ((Verdict.Judged) each).governing().utilisation().high());
      }
      Verdict.Judged here = (Verdict.Judged) verdict.ofGoverning();
      return worst <= WELL_WITHIN
          ? named(
              Choice.GO,
              new Grounds.OfCheck(here.governing().kind(), here.governing().utilisation().high()))
          : Optional.empty();
    }

    private Optional<Question> outright(PathVerdict verdict) {
      if (!(verdict.ofAsked() instanceof Verdict.RefusedOutright refused)) {
        return Optional.empty();
      }
      Refusal first = refused.refusals().get(0);
      return named(Choice.REFUSE, new Grounds.Outright(first));
    }

    /** Where something is missing, not where what was said cannot be. */
    private Optional<Question> cannotSay(PathVerdict verdict) {
      Place place = verdict.governing();
      if (verdict.supports().get(place) instanceof Verdict.CannotSay cannot
          && cannot.conflicts().isEmpty()) {
        return named(Choice.NOBODY_CAN_SAY, new Grounds.Unsaid(cannot.missing()));
      }
      return Optional.empty();
    }
  }
}
