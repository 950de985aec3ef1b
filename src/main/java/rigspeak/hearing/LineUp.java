package rigspeak.hearing;

import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.FloatData;
import edu.cmu.sphinx.linguist.acoustic.HMM;
import edu.cmu.sphinx.linguist.acoustic.HMMState;
import edu.cmu.sphinx.linguist.acoustic.HMMStateArc;
import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.acoustic.UnitManager;
import edu.cmu.sphinx.linguist.dictionary.Dictionary;
import edu.cmu.sphinx.linguist.dictionary.Pronunciation;
import edu.cmu.sphinx.util.LogMath;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * How well whole rows of words fit what was heard, beside each other.
 *
 * <p>The search keeps at each place of the network the best way there and drops the others, so it
 * cannot say how near the second best row was. Here each row is laid along the sound by itself: its
 * phones in their order, a pause between words where there is one, the likeliest times (Viterbi).
 */
final class LineUp {
  /** What a pause costs, in natural logarithms: as likely as not would let pauses eat words. */
  private static final double PAUSE = -4;

  /** States so far behind the best of their row are given up. */
  private static final double HOPELESS = 150;

  private static final int BEFORE_ALL = -1;

  private final double perWord;
  private final Triphones triphones;
  private final Dictionary dictionary;

  /**
   * @param wordInsertionProbability what each further word costs, the same as in the search
   */
  LineUp(Triphones triphones, Dictionary dictionary, double wordInsertionProbability) {
    this.perWord = Math.log(wordInsertionProbability);
    this.triphones = triphones;
    this.dictionary = dictionary;
  }

  /**
   * The natural logarithm of each row's likelihood, its words paid for; minus infinity where the
   * sound is too short for it.
   */
  double[] likelihoods(List<Data> frames, List<List<String>> rows) {
    Sounds sounds = new Sounds();
    List<Path> paths = rows.stream().map(row -> new Path(row, sounds)).toList();
    for (Data frame : frames) {
      sounds.hear(FloatData.toFloatData(frame));
      paths.forEach(Path::step);
    }
    return paths.stream().mapToDouble(Path::likelihood).toArray();
  }

  /** The sounds that all rows are made of; each is compared with a frame at most once. */
  private static final class Sounds {
    private final IdentityHashMap<HMMState, Integer> numbers = new IdentityHashMap<>();
    private final List<HMMState> states = new ArrayList<>();
    private double[] fit = new double[0];
    private FloatData frame;

    int number(HMMState state) {
      Integer number = numbers.get(state);
      if (number == null) {
        number = states.size();
        numbers.put(state, number);
        states.add(state);
      }
      return number;
    }

    void hear(FloatData next) {
      frame = next;
      fit = fit.length == states.size() ? fit : new double[states.size()];
      Arrays.fill(fit, Double.NaN);
    }

    double fit(int number) {
      if (Double.isNaN(fit[number])) {
        fit[number] = LogMath.getLogMath().logToLn(states.get(number).getScore(frame));
      }
      return fit[number];
    }
  }

  /** A way into a state: from which one, at what cost. */
  private record Way(int from, double cost) {}

  /** One state of a row, which is passed some hundred thousand times: plain arrays. */
  private static final class Step {
    private final int sound;
    private final double stay;
    private final int[] from;
    private final double[] costs;

    Step(int sound, double stay, List<Way> ways) {
      this.sound = sound;
      this.stay = stay;
      this.from = ways.stream().mapToInt(Way::from).toArray();
      this.costs = ways.stream().mapToDouble(Way::cost).toArray();
    }
  }

  /** One row along the sound. */
  private final class Path {
    private final Sounds sounds;
    private final List<Step> steps = new ArrayList<>();
    private final List<Way> ends;
    private final double words;
    private double[] now;
    private double[] next;
    private boolean begun;

    Path(List<String> row, Sounds sounds) {
      this.sounds = sounds;
      this.words = row.size() * perWord;
      List<List<Unit[]>> ways = row.stream().map(LineUp.this::ways).toList();
      List<Way> at = List.of(new Way(BEFORE_ALL, 0));
      for (int i = 0; i < ways.size(); i++) {
        at = withPause(at);
        Unit before = i == 0 ? UnitManager.SILENCE : last(ways.get(i - 1));
        Unit after = i == ways.size() - 1 ? UnitManager.SILENCE : first(ways.get(i + 1));
        List<Way> left = new ArrayList<>();
        for (Unit[] way : ways.get(i)) {
          left.addAll(word(way, before, after, at));
        }
        at = left;
      }
      this.ends = withPause(at);
      this.now = new double[steps.size()];
      this.next = new double[steps.size()];
      Arrays.fill(now, Double.NEGATIVE_INFINITY);
    }

    private List<Way> withPause(List<Way> at) {
      HMM pause = triphones.alone(UnitManager.SILENCE);
      List<Way> in = at.stream().map(way -> new Way(way.from(), way.cost() + PAUSE)).toList();
      List<Way> both = new ArrayList<>(at);
      both.addAll(phone(pause, in));
      return both;
    }

    private List<Way> word(Unit[] phones, Unit before, Unit after, List<Way> in) {
      List<Way> at = in;
      for (int i = 0; i < phones.length; i++) {
        Unit left = i == 0 ? before : phones[i - 1];
        Unit right = i == phones.length - 1 ? after : phones[i + 1];
        at = phone(triphones.among(phones, i, left, right), at);
      }
      return at;
    }

    private List<Way> phone(HMM hmm, List<Way> in) {
      List<Way> at = in;
      for (int i = 0; i < hmm.getOrder(); i++) {
        HMMState state = hmm.getState(i);
        double stay = Double.NEGATIVE_INFINITY;
        double goOn = 0;
        for (HMMStateArc arc : state.getSuccessors()) {
          double cost = LogMath.getLogMath().logToLn(arc.getLogProbability());
          if (arc.getHMMState() == state) {
            stay = cost;
          } else if (arc.getHMMState().getState() == i + 1) {
            goOn = cost;
          }
        }
        steps.add(new Step(sounds.number(state), stay, at));
        at = List.of(new Way(steps.size() - 1, goOn));
      }
      return at;
    }

    void step() {
      double best = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < next.length; i++) {
        Step step = steps.get(i);
        double likeliest = now[i] + step.stay;
        for (int k = 0; k < step.from.length; k++) {
          likeliest = Math.max(likeliest, from(step.from[k]) + step.costs[k]);
        }
        next[i] = likeliest;
        best = Math.max(best, likeliest);
      }
      for (int i = 0; i < next.length; i++) {
        next[i] =
            next[i] < best - HOPELESS
                ? Double.NEGATIVE_INFINITY
                : next[i] + sounds.fit(steps.get(i).sound);
      }
      double[] before = now;
      now = next;
      next = before;
      begun = true;
    }

    private double from(int state) {
      if (state == BEFORE_ALL) {
        return begun ? Double.NEGATIVE_INFINITY : 0;
      }
      return now[state];
    }

    double likelihood() {
      return ends.stream().mapToDouble(way -> from(way.from()) + way.cost()).max().orElseThrow()
          + words;
    }
  }

  private List<Unit[]> ways(String word) {
    return Arrays.stream(dictionary.getWord(word).getPronunciations())
        .map(Pronunciation::getUnits)
        .toList();
  }

  private static Unit first(List<Unit[]> ways) {
    return ways.get(0)[0];
  }

  private static Unit last(List<Unit[]> ways) {
    Unit[] way = ways.get(0);
    return way[way.length - 1];
  }
}
