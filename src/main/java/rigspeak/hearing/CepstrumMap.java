package rigspeak.hearing;

import java.util.List;

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
        java.util.Arrays.stream(rows)
            .map(row -> java.util.Arrays.stream(row).boxed().toList())
            .toList());
  }

  /** The map that changes nothing. */
  public static CepstrumMap none() {
    double[][] rows = new double[SIZE][SIZE + 1];
    for (int i = 0; i < SIZE; i++) {
      rows[i][i] = 1;
    }
    return of(rows);
  }

  double[][] toArray() {
    return rows.stream()
        .map(row -> row.stream().mapToDouble(Double::doubleValue).toArray())
        .toArray(double[][]::new);
  }
}
