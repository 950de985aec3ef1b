package rigspeak.hearing;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Moves one person's sounds to where the recogniser expects such sounds: an affine map of the
 * cepstrum, y = A x + b.
 *
 * <p>Model: a voice differs from those that the acoustic model was trained on by one map for all
 * its sounds. The differences over time, which the model hears too, are mapped by A alone, since b
 * is the same in every frame. What differs from sound to sound, as an accent does, is left out.
 *
 * @param rows row by row A and, last in each row, b; {@value #SIZE} rows of finite numbers
 */
public record CepstrumMap(List<List<Double>> rows) {
  /** Numbers in a cepstrum, the zeroth included. */
  static final int SIZE = 13;

  public CepstrumMap {
    rows = rows.stream().map(List::copyOf).toList();
    boolean whole =
        rows.size() == SIZE
            && rows.stream()
                .allMatch(row -> row.size() == SIZE + 1 && row.stream().allMatch(Double::isFinite));
    if (!whole) {
      throw new IllegalArgumentException("no map of " + SIZE + " by " + (SIZE + 1) + " numbers");
    }
  }

  static CepstrumMap of(double[][] rows) {
    return new CepstrumMap(
        Arrays.stream(rows).map(row -> Arrays.stream(row).boxed().toList()).toList());
  }

  /** The map that changes nothing. */
  public static CepstrumMap none() {
    double[][] rows = new double[SIZE][SIZE + 1];
    for (int i = 0; i < SIZE; i++) {
      rows[i][i] = 1;
    }
    return of(rows);
  }

  /** First the other, then this. */
  CepstrumMap after(CepstrumMap first) {
    double[][] own = toArray();
    double[][] others = first.toArray();
    double[][] both = new double[SIZE][SIZE + 1];
    for (int i = 0; i < SIZE; i++) {
      both[i][SIZE] = own[i][SIZE];
      for (int k = 0; k < SIZE; k++) {
        for (int l = 0; l <= SIZE; l++) {
          both[i][l] += own[i][k] * others[k][l];
        }
      }
    }
    return of(both);
  }

  /** The way back. */
  Inverse inverse() {
    double[][] rows = toArray();
    double[][] a = new double[SIZE][];
    for (int i = 0; i < SIZE; i++) {
      a[i] = Arrays.copyOf(rows[i], SIZE);
    }
    return new Inverse(
        new LUDecomposition(new Array2DRowRealMatrix(a, false)).getSolver().getInverse(),
        Arrays.stream(rows).mapToDouble(row -> row[SIZE]).toArray());
  }

  /** Undoes a map. */
  static final class Inverse {
    private final RealMatrix inverse;
    private final double[] shift;

    private Inverse(RealMatrix inverse, double[] shift) {
      this.inverse = inverse;
      this.shift = shift;
    }

    /** What a frame was: its cepstrum and, without the shift, its differences over time. */
    float[] undo(float[] feature) {
      float[] before = new float[feature.length];
      for (int first = 0; first < feature.length; first += SIZE) {
        double[] mapped = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
          mapped[i] = feature[first + i] - (first == 0 ? shift[i] : 0);
        }
        double[] undone = inverse.operate(mapped);
        for (int i = 0; i < SIZE; i++) {
          before[first + i] = (float) undone[i];
        }
      }
      return before;
    }
  }

  double[][] toArray() {
    return rows.stream()
        .map(row -> row.stream().mapToDouble(Double::doubleValue).toArray())
        .toArray(double[][]::new);
  }
}
