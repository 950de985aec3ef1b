package rigspeak.hearing;

import edu.cmu.sphinx.decoder.Decoder;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.result.Result;
import edu.cmu.sphinx.util.LogMath;
import edu.cmu.sphinx.util.props.ConfigurationManager;
import edu.cmu.sphinx.util.props.PropertyException;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.StreamSupport;
import rigspeak.audio.Sound;
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
  private final KeptLinguist linguist;
  private final CepstralMean mean;
  private final SpeakerTransform speaker;
  private final Decoder decoder;
  private final Acceptance acceptance;
  private final ConfigurationManager manager;
  private Levels levels = Levels.unknown();
  private final Map<Expected, WordGraph> graphs = new HashMap<>();
  private List<Expected> open = Expected.anything().parts();

  private Ear(Grammar grammar, URL configuration) {
    this.grammar = grammar;
    try {
      manager = new ConfigurationManager(configuration);
      source = manager.lookup("source");
      network = manager.lookup("network");
      scorer = manager.lookup("scorer");
      linguist = manager.lookup("linguist");
      mean = manager.lookup("mean");
      speaker = manager.lookup("speaker");
      acceptance = manager.lookup("acceptance");
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

  /**
   * Hears with a person's profile from the next stream on.
   *
   * @return false, and nothing changes, if it was made for another acoustic model
   */
  public boolean use(Profile profile) {
    if (!profile.model().equals(densities().fingerprint())) {
      return false;
    }
    speaker.use(profile.map());
    levels = profile.levels();
    mean.forget();
    return true;
  }

  /** Hears without any profile from the next stream on. */
  void useNone() {
    speaker.use(CepstrumMap.none());
    levels = Levels.unknown();
    mean.forget();
  }

  /** Forgets the mean of the voices heard so far. */
  void forgetVoices() {
    mean.forget();
  }

  /** How loud the person and the place are thought to be. */
  Levels levels() {
    return levels;
  }

  Densities densities() {
    return new Densities(manager.lookup("modelLoader"));
  }

  /** Aligns utterances to these sentences, beside the recogniser. */
  Aligner aligner(List<List<String>> sentences) {
    return new Aligner(source, network, manager.lookup("aligner"), sentences);
  }

  /** Whether an utterance is understood as these words, or as others that mean the same. */
  boolean hears(List<String> words, Sound utterance) {
    expect(Expected.anything());
    return recognise(UtteranceSource.framesOf(utterance)) instanceof Recognised.Row row
        && grammar
            .match(row.words(), Expected.anything())
            .equals(grammar.match(words, Expected.anything()));
  }

  /** Begins to hear a stream, which is closed with the listening. */
  public Listening listen(SoundStream stream) {
    return new Utterances(this, stream);
  }

  /** Gets ready for what may be said now, so that no time is lost when somebody begins to speak. */
  void expect(Expected expected) {
    open = expected.parts();
    open.forEach(this::getReady);
    getReady(open.get(0));
  }

  private void getReady(Expected part) {
    network.hear(graph(part));
    linguist.startRecognition();
  }

  /**
   * Recognises one utterance while its frames come in; where a bare value is expected too, once
   * more for that when it is over, and the better of both counts. One network for both would be a
   * large one for each slot, which takes a second to build and a hundred megabytes to keep.
   */
  Recognised recognise(UtteranceSource.Frames frames) {
    List<short[]> heard = new ArrayList<>();
    Recognised best =
        search(
            () -> {
              short[] frame = frames.next();
              if (frame != null) {
                heard.add(frame.clone());
              }
              return frame;
            });
    for (Expected more : open.subList(1, open.size())) {
      getReady(more);
      Iterator<short[]> again = heard.iterator();
      best = better(best, search(() -> again.hasNext() ? again.next().clone() : null));
    }
    return best;
  }

  private static Recognised better(Recognised one, Recognised other) {
    if (one instanceof Recognised.Row first && other instanceof Recognised.Row second) {
      return second.score() > first.score() ? second : first;
    }
    return other instanceof Recognised.Row ? other : one;
  }

  private Recognised search(UtteranceSource.Frames frames) {
    source.begin(frames);
    Result result = decoder.decode(null);
    if (result == null) {
      return new Recognised.Not(Heard.Reason.UNFINISHED);
    }
    Optional<Token> ended = best(result.getResultTokens(), token -> !isOtherSpeech(token));
    Optional<Token> other = best(result.getResultTokens(), Ear::isOtherSpeech);
    if (ended.isEmpty()) {
      return new Recognised.Not(
          other.isEmpty() ? Heard.Reason.UNFINISHED : Heard.Reason.OTHER_SPEECH);
    }
    Optional<Token> unfinished = best(result.getActiveTokens(), token -> !isOtherSpeech(token));
    NotingScorer.Fit fit = scorer.fit(ended.get());
    Acceptance.Evidence evidence =
        new Acceptance.Evidence(
            fit.worstWord(),
            fit.worstPause(),
            lead(ended.get(), other),
            lead(ended.get(), unfinished));
    List<String> words = List.of(ended.get().getWordPathNoFiller().strip().split("\\s+", -1));
    if (words.get(0).isEmpty() || acceptance.isOtherSpeech(evidence)) {
      return new Recognised.Not(Heard.Reason.OTHER_SPEECH);
    }
    return acceptance.isUnfinished(evidence)
        ? new Recognised.Not(Heard.Reason.UNFINISHED)
        : new Recognised.Row(words, ended.get().getScore());
  }

  private static Optional<Token> best(Iterable<Token> tokens, Predicate<Token> wanted) {
    return StreamSupport.stream(tokens.spliterator(), false)
        .filter(wanted)
        .max(Comparator.comparingDouble(Token::getScore));
  }

  private static boolean isOtherSpeech(Token end) {
    return end.getWordPathNoFiller().contains(OTHER_SPEECH);
  }

  private static double lead(Token token, Optional<Token> over) {
    return over.map(o -> (double) LogMath.getLogMath().logToLn(token.getScore() - o.getScore()))
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** What the search says of an utterance. */
  sealed interface Recognised {
    /** A row of words that the grammar allows and that fits, and how likely it is. */
    record Row(List<String> words, float score) implements Recognised {}

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

  static Set<String> allWords(Grammar grammar) {
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

  static URL resource(String name) {
    URL url = Ear.class.getResource("/rigspeak/hearing/" + name);
    if (url == null) {
      throw new HearingFault("The program lacks its own file " + name + "; build it again.");
    }
    return url;
  }
}
