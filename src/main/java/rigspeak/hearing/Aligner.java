package rigspeak.hearing;

import edu.cmu.sphinx.decoder.Decoder;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.frontend.FloatData;
import edu.cmu.sphinx.linguist.HMMSearchState;
import edu.cmu.sphinx.linguist.acoustic.HMMState;
import edu.cmu.sphinx.result.Result;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import rigspeak.audio.Sound;

/**
 * Finds which of a few known sentences an utterance is, and which sound each of its frames belongs
 * to. The beam is wide and nothing else competes, so that a voice that the ear does not understand
 * is followed too.
 */
final class Aligner {
  private final UtteranceSource source;
  private final Decoder decoder;

  /** Aligns to these sentences with Sphinx4's parts named so in ear.xml. */
  Aligner(
      UtteranceSource source,
      KeptLinguist linguist,
      Decoder decoder,
      List<List<String>> sentences) {
    this.source = source;
    this.decoder = decoder;
    decoder.allocate();
    linguist.hear(WordGraph.ofRows(sentences));
  }

  /** The likeliest of the sentences; nothing if none could be followed to its end. */
  Optional<Aligned> align(Sound utterance) {
    source.begin(UtteranceSource.framesOf(utterance));
    Result result = decoder.decode(null);
    return result == null
        ? Optional.empty()
        : result.getResultTokens().stream()
            .max(Comparator.comparingDouble(Token::getScore))
            .map(Aligner::followed);
  }

  private static Aligned followed(Token end) {
    Deque<Aligned.Frame> frames = new ArrayDeque<>();
    for (Token token = end; token != null; token = token.getPredecessor()) {
      if (token.isEmitting()) {
        HMMState state = ((HMMSearchState) token.getSearchState()).getHMMState();
        if (!state.getHMM().getBaseUnit().isFiller()) {
          frames.push(
              new Aligned.Frame(
                  FloatData.toFloatData(token.getData()).getValues(), (int) state.getMixtureId()));
        }
      }
    }
    return new Aligned(
        List.of(end.getWordPathNoFiller().strip().split("\\s+", -1)), List.copyOf(frames));
  }
}
