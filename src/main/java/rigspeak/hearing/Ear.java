package rigspeak.hearing;

import edu.cmu.sphinx.decoder.Decoder;
import edu.cmu.sphinx.decoder.search.Token;
import edu.cmu.sphinx.linguist.Linguist;
import edu.cmu.sphinx.linguist.acoustic.AcousticModel;
import edu.cmu.sphinx.result.Result;
import edu.cmu.sphinx.util.LogMath;
import edu.cmu.sphinx.util.props.ConfigurationManager;
import edu.cmu.sphinx.util.props.PropertyException;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.logging.Level;
import java.util.logging.Logger;
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

  /** So many of the rows that sound most alike are held beside the best. */
  private static final int MOST_RIVALS = 16;

  /**
   * Those of the recogniser's classes, and of what is configured by the file {@code ear.xml}, which
   * are named after it. Held for good: the level of a logger that nobody holds is forgotten with
   * it, and then the recogniser tells the user its life story.
   */
  private static final List<Logger> LOGGERS =
      List.of(Logger.getLogger("edu.cmu.sphinx"), Logger.getLogger("ear"));

  private final Grammar grammar;
  private final UtteranceSource source;
  private final NotingScorer scorer;
  private final NotingScorer besideScorer;
  private final Search search;
  private final Search beside;
  private final KeptLinguist linguist;
  private final CepstralNorm norm;
  private final SpeakerTransform speaker;
  private final Decoder decoder;
  private final KeptDictionary dictionary;
  private final LineUp lineUp;
  private final Acceptance acceptance;
  private final Caution caution;
  private final CallCheck callCheck = CallCheck.read(resource("like-the-call.txt"));
  private final Map<Expected, Rivals> rivals = new HashMap<>();
  private BiConsumer<List<String>, Acceptance.Evidence> watched = (words, evidence) -> {};
  private final ConfigurationManager manager;
  private Levels levels = Levels.unknown();
  private CepstrumMap profile = CepstrumMap.none();

  /** Nothing is learned from the warm-up. */
  private Optional<LearnedVoice> learned = Optional.empty();

  private final Map<Expected, WordGraph> graphs = new HashMap<>();
  private List<Expected> open;
  private boolean onlyCall;

  /** What is being got ready in a thread of its own; nobody touches the network before it ends. */
  private CompletableFuture<Void> beingReadied = CompletableFuture.completedFuture(null);

  private Ear(Grammar grammar, Caution caution, Expected first, URL configuration) {
    this.grammar = grammar;
    this.caution = caution;
    this.open = first.parts();
    try {
      manager = new ConfigurationManager(configuration);
      // The manager sets levels of its own.
      LOGGERS.forEach(logger -> logger.setLevel(Level.SEVERE));
      dictionary = manager.lookup("dictionary");
      Set<String> words = allWords(grammar);
      words.addAll(callCheck.words());
      dictionary.keep(words);
      // While the acoustic model is read, which takes as long.
      beingReadied = CompletableFuture.runAsync(this::readWords, Ear::aside);
      source = manager.lookup("source");
      scorer = manager.lookup("scorer");
      besideScorer = manager.lookup("besideScorer");
      search = manager.lookup("search");
      beside = manager.lookup("besideSearch");
      linguist = manager.lookup("linguist");
      norm = manager.lookup("norm");
      speaker = manager.lookup("speaker");
      acceptance = manager.lookup("acceptance");
      AcousticModel model = manager.lookup("acousticModel");
      double word =
          manager.getPropertySheet("linguist").getDouble(Linguist.PROP_WORD_INSERTION_PROBABILITY);
      lineUp = new LineUp(new Triphones(model, manager.lookup("unitManager")), dictionary, word);
      decoder = manager.lookup("decoder");
      awaitReady();
      decoder.allocate();
      beside.allocate();
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
    return open(grammar, Caution.NORMAL);
  }

  /** The same, more or less ready to refuse. */
  public static Ear open(Grammar grammar, Caution caution) {
    return open(grammar, caution, Expected.anything());
  }

  /**
   * The same for another talk than a conversation, so that only its network takes up room.
   *
   * @param first what may be said first
   */
  public static Ear open(Grammar grammar, Caution caution, Expected first) {
    return open(grammar, caution, first, resource("ear.xml"));
  }

  static Ear open(Grammar grammar, URL configuration) {
    return open(grammar, Caution.NORMAL, Expected.anything(), configuration);
  }

  private static Ear open(Grammar grammar, Caution caution, Expected first, URL configuration) {
    Ear ear = new Ear(grammar, caution, first, configuration);
    ear.warmUp(first);
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
    this.profile = profile.map();
    levels = profile.levels();
    forgetVoices();
    return true;
  }

  /** Hears without any profile from the next stream on. */
  void useNone() {
    profile = CepstrumMap.none();
    levels = Levels.unknown();
    forgetVoices();
  }

  /** Forgets what was learned of the voices heard so far. */
  void forgetVoices() {
    norm.forget();
    awaitReady();
    learned = Optional.of(new LearnedVoice(densities()));
    speaker.use(profile);
  }

  /** Learns from a row that was taken, beside whatever else goes on. */
  private void learnFrom(Recognised.Row row) {
    // What woke it was perhaps not meant for it.
    if (!onlyCall) {
      learned.ifPresent(
          voice ->
              beside(
                  () -> {
                    voice.learn(Aligned.along(row.end()));
                    speaker.use(voice.map().after(profile));
                  }));
    }
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
    return new Aligner(source, manager.lookup("sentences"), manager.lookup("aligner"), sentences);
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
    return listen(stream, ClosingPause.ORDINARY);
  }

  /** The same with another pause that ends an utterance. */
  public Listening listen(SoundStream stream, ClosingPause pause) {
    return new Utterances(this, stream, pause, this::learnFrom);
  }

  /** The same, and nothing is learned of the voice. */
  Listening listenOnly(SoundStream stream) {
    return new Utterances(this, stream, ClosingPause.ORDINARY, row -> {});
  }

  /** Shows every row that was found and what spoke for it, taken or not, for measurements. */
  void watch(BiConsumer<List<String>, Acceptance.Evidence> watcher) {
    watched = watcher;
  }

  /** Why a row is not taken; nothing if enough speaks for it. */
  Optional<Heard.Reason> against(List<String> words, Acceptance.Evidence evidence) {
    watched.accept(words, evidence);
    boolean sure =
        onlyCall ? acceptance.isSureOfCall(evidence) : acceptance.isSure(evidence, caution);
    if (sure) {
      return Optional.empty();
    }
    return Optional.of(
        acceptance.isUnfinished(evidence) ? Heard.Reason.UNFINISHED : Heard.Reason.OTHER_SPEECH);
  }

  /**
   * Whether a row that is not sure enough to be taken is worth asking back. Asleep nothing is: a
   * false call would then put a question.
   */
  boolean mayBe(Acceptance.Evidence evidence) {
    return !onlyCall && acceptance.isWorthAsking(evidence, caution);
  }

  /**
   * Asleep, of a row that is not sure enough to be taken with whatever comes after the call, the
   * call may still be: it has been held beside all that sounds like it.
   */
  Optional<List<String>> callAlone(Acceptance.Evidence evidence) {
    return onlyCall && acceptance.isSure(evidence, Caution.NORMAL)
        ? Optional.of(callCheck.call())
        : Optional.empty();
  }

  /** How sure it is of a row, 0 to 1. */
  double surety(Acceptance.Evidence evidence) {
    return acceptance.surety(evidence);
  }

  /**
   * Begins to get ready for what may be said soon, beside whatever else goes on. Whoever expects
   * something next waits for it to end, and is told if it failed.
   */
  void expectSoon(Expected expected) {
    beside(() -> expectNow(expected));
  }

  private void beside(Runnable work) {
    beingReadied = beingReadied.exceptionally(failure -> null).thenRunAsync(work, Ear::aside);
  }

  private static void aside(Runnable work) {
    Thread thread = new Thread(work, "ear");
    thread.setDaemon(true);
    thread.start();
  }

  private void readWords() {
    open.forEach(this::graph);
    try {
      dictionary.allocate();
    } catch (IOException e) {
      throw new HearingFault("The recogniser's dictionary is missing; build it again.", e);
    }
  }

  /** Gets ready for what may be said now, so that no time is lost when somebody begins to speak. */
  void expect(Expected expected) {
    awaitReady();
    expectNow(expected);
  }

  private void awaitReady() {
    CompletableFuture<Void> work = beingReadied;
    beingReadied = CompletableFuture.completedFuture(null);
    try {
      work.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
  }

  private void expectNow(Expected expected) {
    onlyCall = expected.equals(Expected.call());
    // Whatever else could be said stands beside the call, and is refused: it is not the call.
    open = onlyCall ? Expected.anything().parts() : expected.parts();
    open.forEach(part -> linguist.hear(graph(part)));
    linguist.hear(graph(open.get(0)));
  }

  /**
   * Recognises one utterance while its frames come in; where a bare value is expected too, beside
   * it in a second search, and the better of both counts. One network for both heard worse.
   */
  Recognised recognise(UtteranceSource.Frames frames) {
    source.begin(frames);
    scorer.hearOn();
    search.alone();
    List<Expected> more = open.subList(1, open.size());
    for (Expected bare : more) {
      besideScorer.follow(scorer);
      linguist.hear(graph(bare));
      search.begin(beside);
    }
    linguist.hear(graph(open.get(0)));
    Recognised best = recognised(open.get(0), scorer, Optional.ofNullable(decoder.decode(null)));
    for (Expected bare : more) {
      best = better(best, recognised(bare, besideScorer, beside.found()));
    }
    if (!(best instanceof Recognised.Row row)) {
      return best;
    }
    return onlyCall && !callCheck.isCall(row.words(), this::likelihoods)
        ? new Recognised.Not(Heard.Reason.OTHER_SPEECH)
        : linedUp(row);
  }

  /** What was heard last is not asked for again; nobody should hold 20 s of it until the next. */
  void letGo() {
    scorer.letGo();
    besideScorer.letGo();
  }

  private static Recognised better(Recognised one, Recognised other) {
    if (one instanceof Recognised.Row first && other instanceof Recognised.Row second) {
      return second.end().getScore() > first.end().getScore() ? second : first;
    }
    return other instanceof Recognised.Row ? other : one;
  }

  private static Recognised recognised(Expected part, NotingScorer scorer, Optional<Result> found) {
    if (scorer.hearOut()) {
      // What comes after the last words that fit was said as well.
      return new Recognised.Not(Heard.Reason.OTHER_SPEECH);
    }
    if (found.isEmpty()) {
      return new Recognised.Not(Heard.Reason.UNFINISHED);
    }
    Result result = found.get();
    Optional<Token> ended = best(result.getResultTokens(), token -> !isOtherSpeech(token));
    Optional<Token> other = best(result.getResultTokens(), Ear::isOtherSpeech);
    if (ended.isEmpty()) {
      return new Recognised.Not(
          other.isEmpty() ? Heard.Reason.UNFINISHED : Heard.Reason.OTHER_SPEECH);
    }
    List<String> words = List.of(ended.get().getWordPathNoFiller().strip().split("\\s+", -1));
    if (words.get(0).isEmpty()) {
      return new Recognised.Not(Heard.Reason.OTHER_SPEECH);
    }
    Optional<Token> unfinished = best(result.getActiveTokens(), token -> !isOtherSpeech(token));
    NotingScorer.Fit fit = scorer.fit(ended.get());
    return new Recognised.Row(
        part,
        words,
        ended.get(),
        new Acceptance.Evidence(
            Double.POSITIVE_INFINITY,
            lead(ended.get(), other),
            lead(ended.get(), unfinished),
            fit.worstWord(),
            fit.worstPause(),
            words.size(),
            part.isBareValue(),
            Double.NaN));
  }

  /** The row beside those it may have been taken for. */
  private Recognised linedUp(Recognised.Row row) {
    Set<List<String>> meant = grammar.match(row.words(), row.part());
    List<List<String>> rows = new ArrayList<>(List.of(row.words()));
    rivals
        .computeIfAbsent(row.part(), part -> new Rivals(graph(part), dictionary::phones))
        .of(row.words(), MOST_RIVALS)
        .stream()
        .map(Rivals.Rival::words)
        .filter(words -> !grammar.match(words, row.part()).equals(meant))
        .forEach(rows::add);
    double[] likelihoods = likelihoods(rows);
    double nearest =
        Arrays.stream(likelihoods, 1, likelihoods.length).max().orElse(Double.NEGATIVE_INFINITY);
    return row.with(row.evidence().overRival(likelihoods[0] - nearest));
  }

  /** How well rows of words fit what was heard last, in natural logarithms. */
  double[] likelihoods(List<List<String>> rows) {
    return lineUp.likelihoods(scorer.frames(), rows);
  }

  /** The likeliest that is wanted; asked of few, since a path has to be followed for it. */
  private static Optional<Token> best(Iterable<Token> tokens, Predicate<Token> wanted) {
    Optional<Token> best = Optional.empty();
    for (Token token : tokens) {
      if ((best.isEmpty() || token.getScore() > best.get().getScore()) && wanted.test(token)) {
        best = Optional.of(token);
      }
    }
    return best;
  }

  private static boolean isOtherSpeech(Token end) {
    for (Token token = end; token != null; token = token.getPredecessor()) {
      if (token.isWord() && token.getWord().getSpelling().equals(OTHER_SPEECH)) {
        return true;
      }
    }
    return false;
  }

  private static double lead(Token token, Optional<Token> over) {
    return over.map(o -> (double) LogMath.getLogMath().logToLn(token.getScore() - o.getScore()))
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** What the search says of an utterance. */
  sealed interface Recognised {
    /**
     * The likeliest row of words that the grammar allows.
     *
     * @param part what was expected in which it was found
     * @param end the last step of its path
     * @param evidence whether it is what was said
     */
    record Row(Expected part, List<String> words, Token end, Acceptance.Evidence evidence)
        implements Recognised {
      Row with(Acceptance.Evidence more) {
        return new Row(part, words, end, more);
      }
    }

    /** Nothing that could be taken. */
    record Not(Heard.Reason reason) implements Recognised {}
  }

  private WordGraph graph(Expected expected) {
    return graphs.computeIfAbsent(expected, e -> WordGraph.of(grammar, e));
  }

  private void warmUp(Expected first) {
    try (InputStream clip = resource("warm-up.wav").openStream();
        Listening listening = listen(WavFile.open("warm-up.wav", clip))) {
      while (listening.next(first).isPresent()) {
        // What it says does not matter.
      }
    } catch (IOException e) {
      throw new HearingFault("The recogniser's own recording is missing; build it again.", e);
    }
    forgetVoices();
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
