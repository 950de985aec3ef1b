package rigspeak.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;
import rigspeak.verdict.CheckKind;
import rigspeak.verdict.HiddenWorst;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Sieve;
import rigspeak.verdict.Verdict;

/**
 * No rope is called good whose worst corner is over a limit: the worst is looked for by means that
 * the judge does not use, and the rope itself is moved to where the judge is most likely to miss
 * it.
 */
class HiddenWorstTest {
  private static final double OVER = 1.0;

  /** What was looked at, and the worst of it. */
  private static final class Tally {
    int drawn;
    int good;
    int searched;
    long points;
    double most;
    String where = "";
    final List<String> over = new ArrayList<>();

    void take(SaidRope rope, double worst, List<String> place) {
      if (worst > most) {
        most = worst;
        where = String.join(", ", place);
      }
      if (!(worst <= OVER)) {
        over.add("%s%n%s%n%s".formatted(worst, place, words(rope)));
      }
    }

    void report(String what) {
      System.out.printf(
          Locale.ROOT,
          "never wrongly good, %s: %d ropes drawn, %d good to load, %d searched at %d points, most used %.4f (%s)%n",
          what,
          drawn,
          good,
          searched,
          points,
          most,
          where);
    }
  }

  static String words(SaidRope rope) {
    return rope.lines().stream().map(SaidRope.Line::said).collect(Collectors.joining(", "));
  }

  /** As the conversation has it: every value said, heard back, then checked. */
  private static Optional<PathVerdict> checked(SaidRope rope) {
    List<PathVerdict> good = Talk.with(Talk.WHOLE).sayAll(rope).type("check redirect").good();
    return good.stream().findFirst();
  }

  private static RopePath path(SaidRope rope) {
    return Talk.with(Talk.BRIEF).sayAll(rope).rope();
  }

  private static void search(SaidRope rope, PathVerdict good, Tally tally, int evaluations) {
    int seed = 0;
    for (Map.Entry<Place, Verdict> support : good.supports().entrySet()) {
      HiddenWorst hidden =
          HiddenWorst.of(((Verdict.Judged) support.getValue()).rig(), seed++)
              .corners()
              .evolution(3, 0.6, 2, evaluations);
      tally.points += hidden.points();
      tally.take(rope, hidden.largest(), hidden.where());
    }
    tally.searched++;
  }

  /** The good ropes that come nearest to their limits. */
  @Test
  void noGoodRopeIsOverALimitInAnyCorner() {
    nearest("the nearest of those drawn", 300, 8, 1_000);
  }

  @Test
  @Tag("long")
  void noGoodRopeOfManyIsOverALimitInAnyCorner() {
    nearest("the nearest of many drawn", 4_000, 100, 4_000);
  }

  private static void nearest(String what, int draw, int search, int evaluations) {
    Tally tally = new Tally();
    record Near(SaidRope rope, double most) {}
    List<Near> near = new ArrayList<>();
    for (SaidRope rope : Ropes.drawn()) {
      if (tally.drawn == draw) {
        break;
      }
      tally.drawn++;
      RopePath path = path(rope);
      if (Sieve.mayBeGood(path)) {
        near.add(new Near(rope, quickMost(path)));
      }
    }
    near.sort(Comparator.comparingDouble(each -> -each.most()));
    for (Near each : near) {
      if (tally.searched < search) {
        Optional<PathVerdict> good = checked(each.rope());
        if (good.isPresent()) {
          search(each.rope(), good.get(), tally, evaluations);
        }
      }
    }
    tally.good = near.size();
    tally.report(what);
    assertEquals(List.of(), tally.over);
    assertTrue(tally.searched >= search, () -> tally.searched + " good ropes");
  }

  private static double quickMost(RopePath path) {
    return Sieve.known(path).orElseThrow().values().stream()
        .flatMap(rig -> Sieve.quickWorst(rig).values().stream())
        .mapToDouble(Double::doubleValue)
        .max()
        .orElseThrow();
  }

  /** Which friction is worst is known at the top of a climb, not where it starts. */
  @Test
  void theWorstIsFoundUnderWhicheverFriction() {
    Ropes.read("friction-ropes.txt")
        .forEach(
            (name, rope) ->
                Sieve.known(path(rope))
                    .orElseThrow()
                    .values()
                    .forEach(
                        rig -> {
                          HiddenWorst hidden = HiddenWorst.of(rig, 1).corners();
                          Map<CheckKind, Double> judges = Sieve.judgesWorst(rig);
                          hidden
                              .worst()
                              .forEach(
                                  (kind, worst) ->
                                      assertTrue(
                                          judges.get(kind) >= 0.999 * worst,
                                          name
                                              + ": "
                                              + kind
                                              + " "
                                              + judges.get(kind)
                                              + " of "
                                              + worst));
                        }));
  }

  /** Moved to where the judge misses most, and from there to where it is only just good. */
  @Test
  void noRopeMovedToWhereTheJudgeMissesMostIsOverALimit() {
    moved("moved a little", 2, 9, 300);
  }

  @Test
  @Tag("long")
  void noRopeMovedFarToWhereTheJudgeMissesMostIsOverALimit() {
    moved("moved far", 8, 200, 1_000);
  }

  private static void moved(String what, int searches, int steps, int evaluations) {
    Tally tally = new Tally();
    for (int seed = 0; seed < searches; seed++) {
      WorstRope search = new WorstRope(seed, evaluations);
      search.move(steps);
      tally.drawn += search.tried();
      tally.points += search.points();
      Optional<SaidRope> just = search.worstGood();
      if (just.isPresent()) {
        Optional<PathVerdict> good = checked(just.get());
        tally.good += good.isPresent() ? 1 : 0;
        good.ifPresent(verdict -> search(just.get(), verdict, tally, 4 * evaluations));
      }
      System.out.printf(
          Locale.ROOT,
          "  search %d: %d ropes, the judge finds %.4f, there is %.4f: %s%n",
          seed,
          search.tried(),
          search.look().judges(),
          search.look().hidden(),
          search.look().where());
    }
    tally.report(what);
    assertEquals(List.of(), tally.over);
    assertTrue(tally.drawn >= searches * steps / 2, () -> tally.drawn + " ropes");
    assertTrue(tally.good >= searches / 2, () -> "only " + tally.good + " good ropes to search");
  }
}
