package rigspeak.drill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** What the answers of one trainee add up to. */
public final class Results {
  /** Certainties are put together by tenths. */
  private static final int BINS = 10;

  /** Days since a skill was last asked, by which it is told how much is remembered. */
  private static final List<Integer> DAYS = List.of(1, 3, 7, 14, 30);

  /** Fewer answers after a day or more tell nothing of forgetting. */
  private static final int FEWEST_TO_FIT = 20;

  private static final double SHORTEST_DAYS = 0.02;
  private static final double LONGEST_DAYS = 36_500;
  private static final double LIKELY_LEAST = 1e-6;

  private final List<Answered> answers;

  public Results(List<Answered> answers) {
    this.answers = List.copyOf(answers);
  }

  public List<Answered> answers() {
    return answers;
  }

  /**
   * What was asked of one kind of number or word, over all that was asked.
   *
   * @param asked how many questions
   * @param right how many right answers
   * @param meanError the mean size of the error of numbers, in the unit of what is asked
   * @param bias the mean error of numbers with its sign: positive is too large
   * @param brier mean, of those that said how sure they were
   * @param medianSeconds the middle of the answer times
   */
  public record Tally(
      int asked,
      int right,
      OptionalDouble meanError,
      OptionalDouble bias,
      OptionalDouble brier,
      double medianSeconds) {

    /** Of those that were asked. */
    public double share() {
      return (double) right / asked;
    }
  }

  /**
   * How often somebody who was so sure was right.
   *
   * @param stated mean certainty, 0 to 1
   * @param right share of right answers
   * @param count how many answers
   */
  public record Bin(double stated, double right, int count) {}

  /**
   * How much is remembered after some days.
   *
   * @param days mean days since the skill was asked the time before
   * @param right share of right answers
   * @param count how many answers
   */
  public record After(double days, double right, int count) {}

  /** By skill, in the order of the skills; only those that were asked. */
  public Map<Skill, Tally> bySkill() {
    return by(Answered::skill, Skill.class);
  }

  /** By what was asked: errors of one kind have one unit. */
  public Map<Asking, Tally> byAsking() {
    return by(Answered::asking, Asking.class);
  }

  private <K extends Enum<K>> Map<K, Tally> by(Function<Answered, K> what, Class<K> type) {
    Map<K, List<Answered>> groups = new EnumMap<>(type);
    for (Answered answer : answers) {
      groups.computeIfAbsent(what.apply(answer), key -> new ArrayList<>()).add(answer);
    }
    Map<K, Tally> tallies = new EnumMap<>(type);
    groups.forEach((key, group) -> tallies.put(key, tally(group)));
    return tallies;
  }

  /** Of all answers; nothing if there are none. */
  public Optional<Tally> all() {
    return answers.isEmpty() ? Optional.empty() : Optional.of(tally(answers));
  }

  private static Tally tally(List<Answered> answers) {
    double[] errors = numbers(answers, Answered::error);
    double[] seconds = answers.stream().mapToDouble(Answered::tookSeconds).sorted().toArray();
    return new Tally(
        answers.size(),
        (int) answers.stream().filter(Answered::isRight).count(),
        Arrays.stream(errors).map(Math::abs).average(),
        Arrays.stream(errors).average(),
        Arrays.stream(numbers(answers, Answered::brier)).average(),
        seconds[seconds.length / 2]);
  }

  private static double[] numbers(List<Answered> answers, Function<Answered, OptionalDouble> what) {
    return answers.stream().map(what).flatMapToDouble(OptionalDouble::stream).toArray();
  }

  /** The errors of one kind of number, in the order in which they were made. */
  public List<Double> errors(Asking asking) {
    return of(asking).map(Answered::error).flatMap(Results::present).toList();
  }

  private static Stream<Double> present(OptionalDouble number) {
    return number.isPresent() ? Stream.of(number.getAsDouble()) : Stream.empty();
  }

  private Stream<Answered> of(Asking asking) {
    return answers.stream().filter(answer -> answer.asking() == asking);
  }

  /** Stated certainty against hits, by tenths; only those that somebody was ever in. */
  public List<Bin> calibration() {
    List<List<Answered>> bins = new ArrayList<>();
    for (int i = 0; i < BINS; i++) {
      bins.add(new ArrayList<>());
    }
    for (Answered answer : answers) {
      if (answer.sure().isPresent()) {
        int bin = Math.min(BINS - 1, (int) (answer.sure().getAsDouble() * BINS + 1e-9));
        bins.get(bin).add(answer);
      }
    }
    return bins.stream()
        .filter(bin -> !bin.isEmpty())
        .map(
            bin ->
                new Bin(
                    bin.stream().mapToDouble(a -> a.sure().orElse(0)).average().orElseThrow(),
                    bin.stream().mapToDouble(a -> a.isRight() ? 1 : 0).average().orElseThrow(),
                    bin.size()))
        .toList();
  }

  // ---- forgetting ----

  private record Gap(double days, Answered answer) {}

  /**
   * Each answer with the days since the one before it to the same skill, where it is one or more.
   */
  private List<Gap> gaps() {
    Map<Skill, Answered> before = new EnumMap<>(Skill.class);
    List<Gap> gaps = new ArrayList<>();
    for (Answered answer : answers) {
      Answered last = before.put(answer.skill(), answer);
      double days =
          last == null ? 0 : (double) (answer.atSeconds() - last.atSeconds()) / Schedule.DAY;
      if (days >= 1) {
        gaps.add(new Gap(days, answer));
      }
    }
    gaps.sort(Comparator.comparingDouble(Gap::days));
    return gaps;
  }

  /** How much was remembered by how many days went by, the fewest first. */
  public List<After> forgetting() {
    List<Gap> gaps = gaps();
    List<After> all = new ArrayList<>();
    for (int i = 0; i < DAYS.size(); i++) {
      double from = DAYS.get(i);
      double to = i + 1 < DAYS.size() ? DAYS.get(i + 1) : Double.POSITIVE_INFINITY;
      List<Gap> within =
          gaps.stream().filter(gap -> gap.days() >= from && gap.days() < to).toList();
      if (!within.isEmpty()) {
        all.add(
            new After(
                within.stream().mapToDouble(Gap::days).average().orElseThrow(),
                within.stream()
                    .mapToDouble(gap -> gap.answer().isRight() ? 1 : 0)
                    .average()
                    .orElseThrow(),
                within.size()));
      }
    }
    return all;
  }

  /**
   * After how many days nine in ten would still be right: the stability whose forgetting curve
   * makes these answers most likely. Nothing from too few of them.
   */
  public OptionalDouble stabilityDays() {
    List<Gap> gaps = gaps();
    if (gaps.size() < FEWEST_TO_FIT) {
      return OptionalDouble.empty();
    }
    double best =
        new BrentOptimizer(1e-6, 1e-6)
            .optimize(
                GoalType.MAXIMIZE,
                new UnivariateObjectiveFunction(log -> likelihood(gaps, Math.exp(log))),
                new SearchInterval(Math.log(SHORTEST_DAYS), Math.log(LONGEST_DAYS)),
                new MaxEval(500))
            .getPoint();
    return OptionalDouble.of(Math.exp(best));
  }

  private static double likelihood(List<Gap> gaps, double stability) {
    double sum = 0;
    for (Gap gap : gaps) {
      double remembered = Schedule.remembered(gap.days(), stability);
      double chance = gap.answer().isRight() ? remembered : 1 - remembered;
      sum += Math.log(Math.max(chance, LIKELY_LEAST));
    }
    return sum;
  }
}
