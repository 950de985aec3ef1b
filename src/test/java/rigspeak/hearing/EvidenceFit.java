package rigspeak.hearing;

import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;

/**
 * Finds the weights of {@link Acceptance} that fit what {@link HearingComparison} wrote best, and
 * prints what each level of surety takes with the weights as they are in ear.xml. Argument: the
 * comparison's output folder.
 *
 * <p>Method: logistic regression, Newton's method, each weight held back by a normal prior; only
 * the recordings that are tuned on count for the weights.
 */
final class EvidenceFit {
  private static final String[] NAMES = {
    "always", "overRival", "overOtherSpeech", "overUnfinished", "worstWord", "aboveNoise"
  };
  private static final double[] LEVELS = {0.4, 0.5, 0.56, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95};

  /** How strongly the prior pulls each weight to nought: one over its variance. */
  private static final double PRIOR = 0.3;

  private static final int STEPS = 30;

  /** So often each sentence of talk counts, so that talk counts as much as commands do. */
  private static final double TALK = 6;

  /** Talk with one of these words was made to sound like the call. */
  private static final Set<String> LIKE_THE_CALL = Set.of("copper", "hopper", "lantern");

  private final List<Try> tries;

  /** A row that was found, and whether it means what was said. */
  private record Judged(FoundRow row, boolean right) {}

  /** One recording: what it was, and the rows that were found in it. */
  private record Try(HearingTables.Row row, List<Judged> found) {
    /** Without what is refused before anything is weighed. */
    Try weighed(Acceptance acceptance) {
      return new Try(
          row, found.stream().filter(f -> acceptance.surety(f.row().evidence()) > 0).toList());
    }

    /** Asleep, a stricter test stands before it. */
    boolean isLikeTheCall() {
      return row.talk()
          && CorpusMeasurement.normalised(row.said()).stream().anyMatch(LIKE_THE_CALL::contains);
    }

    private List<Judged> taken(Acceptance acceptance, double level) {
      List<Judged> sure =
          found.stream().filter(f -> acceptance.isSure(f.row().evidence(), level)).toList();
      return sure.isEmpty() ? askedBack(acceptance) : sure;
    }

    private List<Judged> askedBack(Acceptance acceptance) {
      return found.stream()
          .filter(f -> acceptance.isWorthAsking(f.row().evidence(), Caution.NORMAL))
          .filter(f -> Consequence.isAskedBack(row.asked(), String.join(" ", f.row().words())))
          .toList();
    }

    private boolean isDoubtful(Acceptance acceptance, double level) {
      return found.stream().noneMatch(f -> acceptance.isSure(f.row().evidence(), level));
    }

    boolean right(Acceptance acceptance, double level) {
      List<Judged> taken = taken(acceptance, level);
      return taken.size() == 1 && taken.get(0).right();
    }

    /** Taken, and not what was said. */
    boolean wrong(Acceptance acceptance, double level) {
      return misheard(acceptance, level, Consequence.STANDS);
    }

    /** Not what was said, but nothing stands before it has been affirmed. */
    boolean waits(Acceptance acceptance, double level) {
      return misheard(acceptance, level, Consequence.WAITS);
    }

    private boolean misheard(Acceptance acceptance, double level, Consequence consequence) {
      List<Judged> taken = taken(acceptance, level);
      if (taken.isEmpty() || right(acceptance, level)) {
        return false;
      }
      String heard =
          taken.stream().flatMap(t -> t.row().words().stream()).collect(Collectors.joining(" "));
      return Consequence.of(
              row.asked(), row.talk() ? "" : row.said(), heard, isDoubtful(acceptance, level))
          == consequence;
    }
  }

  private EvidenceFit(List<Try> tries) {
    this.tries = tries;
  }

  public static void main(String[] args) throws IOException {
    Grammar grammar = Grammar.bundled();
    List<Try> tries = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of(args[0]))) {
      for (Path file :
          files
              .filter(f -> f.getFileName().toString().startsWith("outcomes-rigspeak-"))
              .sorted()
              .toList()) {
        for (String line : Files.readAllLines(file).stream().skip(1).toList()) {
          HearingTables.Row row = HearingTables.Row.read(line);
          List<Judged> found =
              FoundRow.in(line).stream()
                  .map(f -> new Judged(f, !row.talk() && sameMeaning(grammar, row, f)))
                  .toList();
          tries.add(new Try(row, found));
        }
      }
    }
    new EvidenceFit(tries).print();
  }

  private static boolean sameMeaning(Grammar grammar, HearingTables.Row row, FoundRow found) {
    List<String> said = CorpusMeasurement.normalised(row.said());
    Expected expected = Recorded.expected(row.asked());
    return grammar.match(found.words(), expected).equals(grammar.match(said, expected));
  }

  private static RealVector vector(FoundRow found) {
    return new ArrayRealVector(found.evidence().scaled(), false);
  }

  private static double logistic(double sum) {
    return 1 / (1 + Math.exp(-sum));
  }

  private void print() {
    Acceptance ear =
        new ConfigurationManager(Ear.class.getResource("/rigspeak/hearing/ear.xml"))
            .lookup("acceptance");
    List<Try> tuning =
        tries.stream()
            .filter(t -> !t.row().keptAside() && !t.isLikeTheCall())
            .map(t -> t.weighed(ear))
            .toList();
    RealVector weights = fitted(tuning);
    System.out.printf(
        "%d rows, %d of them wrong%n",
        tuning.stream().mapToInt(t -> t.found().size()).sum(),
        tuning.stream().flatMap(t -> t.found().stream()).filter(f -> !f.right()).count());
    for (int i = 0; i < NAMES.length; i++) {
      System.out.printf(Locale.ROOT, "%s %.2f%n", NAMES[i], weights.getEntry(i));
    }
    table("clean, tuned on", ear, t -> t.row().clean() && !t.row().keptAside());
    table("clean, kept aside", ear, t -> t.row().clean() && t.row().keptAside());
    table("the rest, tuned on", ear, t -> !t.row().clean() && !t.row().keptAside());
    table("the rest, kept aside", ear, t -> !t.row().clean() && t.row().keptAside());
    tries.stream()
        .map(t -> t.row().condition())
        .distinct()
        .forEach(c -> table(c, ear, t -> t.row().condition().equals(c)));
  }

  private static RealVector fitted(List<Try> tuning) {
    RealVector weights = new ArrayRealVector(NAMES.length);
    for (int step = 0; step < STEPS; step++) {
      RealVector slope = weights.mapMultiply(-PRIOR);
      RealMatrix curve = new Array2DRowRealMatrix(NAMES.length, NAMES.length);
      for (int i = 0; i < NAMES.length; i++) {
        curve.setEntry(i, i, PRIOR);
      }
      for (Try one : tuning) {
        for (Judged found : one.found()) {
          RealVector x = vector(found.row());
          double p = logistic(weights.dotProduct(x));
          double counts = one.row().talk() ? TALK : 1;
          slope = slope.add(x.mapMultiply(counts * ((found.right() ? 1 : 0) - p)));
          curve = curve.add(x.outerProduct(x).scalarMultiply(counts * p * (1 - p)));
        }
      }
      weights = weights.add(new CholeskyDecomposition(curve).getSolver().solve(slope));
    }
    return weights;
  }

  private void table(String title, Acceptance acceptance, Predicate<Try> which) {
    List<Try> mine = tries.stream().filter(which).toList();
    List<Try> commands = mine.stream().filter(t -> !t.row().talk()).toList();
    List<Try> talk = mine.stream().filter(t -> t.row().talk() && !t.isLikeTheCall()).toList();
    if (commands.isEmpty()) {
      return;
    }
    System.out.printf(
        "%n| %s: %d commands, %d of talk | right | wrong | waits | talk taken |%n|---|---|---|---|---|%n",
        title, commands.size(), talk.size());
    Arrays.stream(LEVELS)
        .forEach(
            level ->
                System.out.printf(
                    Locale.ROOT,
                    "| %.2f | %.1f | %.1f | %.1f | %.1f |%n",
                    level,
                    share(commands, t -> t.right(acceptance, level)),
                    share(commands, t -> t.wrong(acceptance, level)),
                    share(commands, t -> t.waits(acceptance, level)),
                    share(talk, t -> t.wrong(acceptance, level))));
  }

  private static double share(List<Try> tries, Predicate<Try> which) {
    return tries.isEmpty()
        ? Double.NaN
        : 100.0 * tries.stream().filter(which).count() / tries.size();
  }
}
