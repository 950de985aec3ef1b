package rigspeak.hearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A voice is drawn from the acoustic model itself and bent by a known map: the estimate has to undo
 * it. So the expected values come from the map that the test chose.
 */
final class AdaptationTest {
  private static final int SIZE = CepstrumMap.SIZE;

  private static TiedLoader model;
  private static Densities densities;

  @BeforeAll
  static void load() throws IOException {
    model = new ConfigurationManager(Ear.resource("ear.xml")).lookup("modelLoader");
    model.load();
    densities = new Densities(model);
  }

  @Test
  void aBentVoiceIsStraightened() {
    Voice voice = new Voice(6_000, 1.0);

    double bent = voice.distance(CepstrumMap.none());
    double straightened = voice.distance(Adaptation.estimate(voice.frames, densities));

    // In standard deviations of each number of the cepstrum, root mean square.
    assertTrue(bent > 0.3, "it was bent: " + bent);
    assertTrue(straightened < 0.06, "left: " + straightened);
  }

  @Test
  void aVoiceThatFitsStaysAsItIs() {
    Voice voice = new Voice(6_000, 0.0);

    assertTrue(voice.distance(Adaptation.estimate(voice.frames, densities)) < 0.06);
  }

  /** With little speech the likeliest map would be a wild one. */
  @Test
  void moreSpeechHelpsMoreAndALittleDoesNoHarm() {
    Voice voice = new Voice(6_000, 1.0);
    double before = voice.distance(CepstrumMap.none());
    for (int frames : new int[] {5, 50, 300, 1_000}) {
      List<Aligned.Frame> little = voice.frames.subList(0, frames);

      double after = voice.distance(Adaptation.estimate(little, densities));

      assertTrue(after < before, frames + " frames: " + after + ", before " + before);
      before = after;
    }
  }

  @Test
  void noSpeechChangesNothing() {
    assertEquals(CepstrumMap.none(), Adaptation.estimate(List.of(), densities));
  }

  /** Row by row, each heard with what was learned from those before it. */
  @Test
  void aVoiceIsLearnedWhileItIsHeard() {
    Voice voice = new Voice(6_000, 1.0);
    LearnedVoice learned = new LearnedVoice(densities);
    double before = voice.distance(CepstrumMap.none());
    for (int row = 0; row < 40; row++) {
      learned.learn(heard(voice, row, learned.map()));
    }
    double after = voice.distance(learned.map());
    assertTrue(after < before / 3, "left: " + after + " of " + before);
  }

  /** The microphone is handed on: what was learned of one voice does not stay with the other. */
  @Test
  void anotherVoiceIsLearnedAfterTheFirst() {
    Voice first = new Voice(6_000, 1.0);
    Voice second = new Voice(6_000, 0.0);
    LearnedVoice learned = new LearnedVoice(densities);
    for (int row = 0; row < 40; row++) {
      learned.learn(heard(first, row, learned.map()));
    }
    double wrong = second.distance(learned.map());
    for (int row = 0; row < 40; row++) {
      learned.learn(heard(second, row, learned.map()));
    }
    double left = second.distance(learned.map());
    assertTrue(left < wrong / 3, "left: " + left + " of " + wrong);
  }

  /** A row of 150 frames as the ear has it: mapped by what was learned before. */
  private static Aligned heard(Voice voice, int row, CepstrumMap map) {
    return new Aligned(
        List.of(),
        voice.frames.subList(row * 150, (row + 1) * 150).stream()
            .map(frame -> mapped(frame, map))
            .toList());
  }

  private static Aligned.Frame mapped(Aligned.Frame frame, CepstrumMap map) {
    float[] mapped = new float[Densities.STREAMS * SIZE];
    for (int stream = 0; stream < Densities.STREAMS; stream++) {
      for (int i = 0; i < SIZE; i++) {
        double sum = stream == 0 ? map.rows().get(i).get(SIZE) : 0;
        for (int k = 0; k < SIZE; k++) {
          sum += map.rows().get(i).get(k) * frame.feature(stream, k);
        }
        mapped[stream * SIZE + i] = (float) sum;
      }
    }
    return new Aligned.Frame(mapped, frame.state());
  }

  /** One map after the other does what both do, and the way back leads back. */
  @Test
  void mapsAreJoinedAndUndone() {
    CepstrumMap first = some(1);
    CepstrumMap second = some(2);
    Aligned.Frame frame = new Voice(100, 0.0).frames.get(0);
    Aligned.Frame inTwo = mapped(mapped(frame, first), second);
    Aligned.Frame inOne = mapped(frame, second.after(first));
    Aligned.Frame back = inOne.before(second.after(first).inverse());
    for (int stream = 0; stream < Densities.STREAMS; stream++) {
      for (int i = 0; i < SIZE; i++) {
        assertEquals(inTwo.feature(stream, i), inOne.feature(stream, i), 1e-3);
        assertEquals(frame.feature(stream, i), back.feature(stream, i), 1e-3);
      }
    }
  }

  private static CepstrumMap some(int seed) {
    Random dice = new Random(seed);
    double[][] rows = CepstrumMap.none().toArray();
    for (double[] row : rows) {
      for (int k = 0; k < row.length; k++) {
        row[k] += 0.1 * dice.nextGaussian();
      }
    }
    return CepstrumMap.of(rows);
  }

  /** Frames as the model would have them, and the same frames bent. */
  private static final class Voice {
    private final Random dice = new Random(7);
    private final List<double[]> straight = new ArrayList<>();
    private final List<Aligned.Frame> frames = new ArrayList<>();
    private final double[] spread = new double[SIZE];

    Voice(int count, double strength) {
      double[][] bend = new double[SIZE][SIZE];
      double[] shift = new double[SIZE];
      List<double[]> wholes = new ArrayList<>();
      List<Integer> states = new ArrayList<>();
      int all = model.getSenone2Ci().length;
      while (wholes.size() < count) {
        int state = dice.nextInt(all);
        wholes.add(drawn(state));
        states.add(state);
      }
      for (int i = 0; i < SIZE; i++) {
        int number = i;
        double mean = wholes.stream().mapToDouble(w -> w[number]).average().orElseThrow();
        double square =
            wholes.stream().mapToDouble(w -> Math.pow(w[number] - mean, 2)).average().orElseThrow();
        spread[i] = Math.sqrt(square);
      }
      for (int i = 0; i < SIZE; i++) {
        // Unlike widths, unlike places, and neighbours that leak into each other.
        bend[i][i] = 1 + strength * (i % 2 == 0 ? 0.3 : -0.2);
        if (i > 0) {
          bend[i][i - 1] = strength * 0.2 * spread[i] / spread[i - 1];
        }
        shift[i] = strength * 0.3 * spread[i] * (i % 3 - 1);
      }
      for (int n = 0; n < count; n++) {
        double[] whole = wholes.get(n);
        float[] feature = new float[Densities.STREAMS * SIZE];
        for (int stream = 0; stream < Densities.STREAMS; stream++) {
          for (int i = 0; i < SIZE; i++) {
            double sum = stream == 0 ? shift[i] : 0;
            for (int k = 0; k < SIZE; k++) {
              sum += bend[i][k] * whole[stream * SIZE + k];
            }
            feature[stream * SIZE + i] = (float) sum;
          }
        }
        straight.add(whole);
        frames.add(new Aligned.Frame(feature, states.get(n)));
      }
      assertTrue(
          new LUDecomposition(new Array2DRowRealMatrix(bend)).getSolver().isNonSingular(),
          "it can be undone");
    }

    /** One frame of a state: in each stream a density by its weight, in it a point by its width. */
    private double[] drawn(int state) {
      double[] whole = new double[Densities.STREAMS * SIZE];
      int perBook = model.weights().perBook();
      for (int stream = 0; stream < Densities.STREAMS; stream++) {
        double left = dice.nextDouble();
        int density = -1;
        while (left >= 0 && density < perBook - 1) {
          density++;
          left -= model.weights().of(state, stream, density);
        }
        int index = (model.getSenone2Ci()[state] * Densities.STREAMS + stream) * perBook + density;
        for (int i = 0; i < SIZE; i++) {
          whole[stream * SIZE + i] =
              model.getMeansPool().get(index)[i]
                  + dice.nextGaussian() * Math.sqrt(model.getVariancePool().get(index)[i]);
        }
      }
      return whole;
    }

    /** How far the mapped cepstra lie from the straight ones. */
    double distance(CepstrumMap map) {
      double sum = 0;
      for (int n = 0; n < frames.size(); n++) {
        sum += square(mapped(map, frames.get(n)), straight.get(n));
      }
      return Math.sqrt(sum / frames.size() / SIZE);
    }

    private double square(double[] one, double[] other) {
      double sum = 0;
      for (int i = 0; i < SIZE; i++) {
        sum += Math.pow((one[i] - other[i]) / spread[i], 2);
      }
      return sum;
    }

    private static double[] mapped(CepstrumMap map, Aligned.Frame frame) {
      double[] mapped = new double[SIZE];
      for (int i = 0; i < SIZE; i++) {
        mapped[i] = map.rows().get(i).get(SIZE);
        for (int k = 0; k < SIZE; k++) {
          mapped[i] += map.rows().get(i).get(k) * frame.feature(0, k);
        }
      }
      return mapped;
    }
  }
}
