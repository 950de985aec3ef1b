package rigspeak.hearing;

import edu.cmu.sphinx.decoder.Decoder;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.result.Result;
import java.util.Comparator;
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
            .map(Aligned::along);
  }
}
