package rigspeak.hearing;

/**
 * What the ear learns of a voice and its place while it listens: the map that suits the rows that
 * it was sure of, the latest of them most.
 *
 * <p>Model: as {@link Adaptation} says, with the words that were taken in place of words that were
 * read. A row that was taken wrong teaches something wrong; so few rows are, each fades with the
 * rows that follow it, and the frames that ask for no change hold against it.
 */
final class LearnedVoice {
  /** What a row still counts for at the next one. A judgement: 0.9 and 0.97 did about as well. */
  private static final double FADING = 0.95;

  private final Adaptation heard;
  private CepstrumMap map = CepstrumMap.none();

  LearnedVoice(Densities densities) {
    heard = new Adaptation(densities);
  }

  /** Maps what the person's profile has mapped. */
  CepstrumMap map() {
    return map;
  }

  /**
   * Learns from a row.
   *
   * @param row as it was heard: mapped by this map
   */
  void learn(Aligned row) {
    CepstrumMap.Inverse back = map.inverse();
    heard.fade(FADING);
    heard.add(row.frames().stream().map(frame -> frame.before(back)).toList(), map);
    map = heard.likeliest();
  }
}
