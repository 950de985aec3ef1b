package rigspeak.hearing;

import edu.cmu.sphinx.decoder.Decoder;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.result.Result;
import edu.cmu.sphinx.util.props.ConfigurationManager;
import edu.cmu.sphinx.util.props.PropertyException;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rigspeak.audio.SoundStream;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Phrase;

/**
 * The recogniser: Sphinx4 with a grammar of ours. One ear hears one stream at a time, in one
 * thread.
 */
public final class Ear {
  /** What Sphinx4 calls speech that is in no grammar. */
  private static final String OTHER_SPEECH = "<unk>";

  private final Grammar grammar;
  private final UtteranceSource source;
  private final WordNetwork network;
  private final NotingScorer scorer;
  private final CepstralMean mean;
  private final Decoder decoder;
  private final Map<Expected, WordGraph> graphs = new HashMap<>();

  private Ear(Grammar grammar, URL configuration) {
    this.grammar = grammar;
    try {
      ConfigurationManager manager = new ConfigurationManager(configuration);
      source = manager.lookup("source");
      network = manager.lookup("network");
      scorer = manager.lookup("scorer");
      mean = manager.lookup("mean");
      KeptDictionary dictionary = manager.lookup("dictionary");
      dictionary.keep(allWords(grammar));
      network.hear(graph(Expected.anything()));
      decoder = manager.lookup("decoder");
      decoder.allocate();
    } catch (PropertyException e) {
      throw new HearingFault("The recogniser's configuration cannot be used: " + e.getMessage(), e);
    }
  }

  /**
   * Loads the recogniser and warms it up on a short recording, so that the first real utterance is
   * as quick as the later ones.
   *
   * @throws HearingFault if it cannot be set up, for example because a word of the grammar is in no
   *     dictionary
   */
  public static Ear open(Grammar grammar) {
    return open(grammar, resource("ear.xml"));
  }

  static Ear open(Grammar grammar, URL configuration) {
    Ear ear = new Ear(grammar, configuration);
    ear.warmUp();
    return ear;
  }

  /** Begins to hear a stream, which is closed with the listening. */
  public Listening listen(SoundStream stream) {
    return new Utterances(this, stream);
  }

  /** Recognises one utterance while its frames come in. */
  Recognised recognise(Expected expected, UtteranceSource.Frames frames) {
    network.hear(graph(expected));
    source.begin(frames);
    Result result = decoder.decode(null);
    Token inGrammar = null;
    Token other = null;
    for (Token token : result == null ? List.<Token>of() : result.getResultTokens()) {
      if (token.getWordPathNoFiller().contains(OTHER_SPEECH)) {
        other = better(other, token);
      } else {
        inGrammar = better(inGrammar, token);
      }
    }
    lastMargin = "none";
    if (inGrammar == null) {
      return new Recognised.Not(
          other == null ? Heard.Reason.UNFINISHED : Heard.Reason.OTHER_SPEECH);
    }
    int n = 1;

    lastMargin =
        (other == null
                ? "inf"
                : String.format(
                    "%.2f",
                    edu.cmu.sphinx.util.LogMath.getLogMath()
                        .logToLn(inGrammar.getScore() - other.getScore())))
            + ";"
            + n;
    List<String> words = List.of(inGrammar.getWordPathNoFiller().strip().split("\\s+", -1));
    if (words.get(0).isEmpty()) {
      return new Recognised.Not(Heard.Reason.OTHER_SPEECH);
    }
    return new Recognised.Row(words, scorer.fit(inGrammar));
  }

  static String lastMargin = "";

  private static Token better(Token one, Token another) {
    return one == null || another.getScore() > one.getScore() ? another : one;
  }

  /** What the search says of an utterance. */
  sealed interface Recognised {
    /** A row of words that the grammar allows, and how well each fits. */
    record Row(List<String> words, NotingScorer.Fit fit) implements Recognised {}

    /** Nothing that could be taken. */
    record Not(Heard.Reason reason) implements Recognised {}
  }

  private WordGraph graph(Expected expected) {
    return graphs.computeIfAbsent(expected, e -> WordGraph.of(grammar, e));
  }

  private void warmUp() {
    try (InputStream clip = resource("warm-up.wav").openStream();
        Listening listening = listen(WavFile.open("warm-up.wav", clip))) {
      while (listening.next(Expected.anything()).isPresent()) {
        // What it says does not matter.
      }
    } catch (IOException e) {
      throw new HearingFault("The recogniser's own recording is missing; build it again.", e);
    }
    mean.forget();
  }

  private static Set<String> allWords(Grammar grammar) {
    Set<String> words = new HashSet<>();
    grammar.ruleNames().forEach(rule -> collectWords(grammar.phrase(rule), words));
    return words;
  }

  private static void collectWords(Phrase phrase, Set<String> words) {
    if (phrase instanceof Phrase.Word word) {
      words.add(word.text());
    } else if (phrase instanceof Phrase.Sequence sequence) {
      sequence.parts().forEach(part -> collectWords(part, words));
    } else if (phrase instanceof Phrase.Choice choice) {
      choice.options().forEach(option -> collectWords(option, words));
    } else if (phrase instanceof Phrase.Maybe maybe) {
      collectWords(maybe.part(), words);
    } else if (phrase instanceof Phrase.OnceOrMore again) {
      collectWords(again.part(), words);
    } else if (phrase instanceof Phrase.Tagged tagged) {
      collectWords(tagged.part(), words);
    }
  }

  private static URL resource(String name) {
    URL url = Ear.class.getResource("/rigspeak/hearing/" + name);
    if (url == null) {
      throw new HearingFault("The program lacks its own file " + name + "; build it again.");
    }
    return url;
  }
}
