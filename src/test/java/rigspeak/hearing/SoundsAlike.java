package rigspeak.hearing;

import java.util.List;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Pronunciations;

/** What the ear may take an utterance for, by the phones of its own dictionary. */
public final class SoundsAlike {
  private final Rivals rivals;

  private SoundsAlike(Rivals rivals) {
    this.rivals = rivals;
  }

  /** In all that can be said at any time. */
  public static SoundsAlike ofAnything() {
    Pronunciations phones = Pronunciations.all();
    WordGraph graph = WordGraph.of(Grammar.bundled(), Expected.anything());
    return new SoundsAlike(new Rivals(graph, word -> phones.byWord().get(word)));
  }

  /**
   * Other rows of words that can be said, the nearest in sound first.
   *
   * @param words as they are heard, without figures
   */
  public List<List<String>> to(List<String> words, int most) {
    return rivals.of(words, most).stream().map(Rivals.Rival::words).toList();
  }
}
