package rigspeak.hearing;

import edu.cmu.sphinx.linguist.SearchGraph;
import edu.cmu.sphinx.linguist.SearchState;
import edu.cmu.sphinx.linguist.SearchStateArc;
import edu.cmu.sphinx.linguist.WordSearchState;
import edu.cmu.sphinx.linguist.acoustic.HMM;
import edu.cmu.sphinx.linguist.acoustic.Unit;
import edu.cmu.sphinx.linguist.acoustic.UnitManager;
import edu.cmu.sphinx.linguist.dictionary.Pronunciation;
import edu.cmu.sphinx.linguist.dictionary.Word;
import edu.cmu.sphinx.util.LogMath;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigspeak.hearing.NetworkState.Way;

/**
 * The words that can be heard now, as Sphinx4 searches them: every word as its phones, each phone
 * among its neighbours, a pause at every place.
 *
 * <p>The same states, ways and costs as Sphinx4's flat network has. That one builds all of them
 * beforehand, and names and keeps each by a text; it took 1.5 s and 100 MB where this one takes
 * what the search comes to.
 */
final class WordNetwork implements SearchGraph {
  private static final float SURE = LogMath.LOG_ONE;

  private final Triphones triphones;
  private final Costs costs;
  private final List<Place> places = new ArrayList<>();
  private final NetworkState start;

  /**
   * What it costs, in Sphinx4's logarithm, to begin a word or a pause.
   *
   * @param languageWeight how much more a word costs where many others could stand in its place
   */
  record Costs(float word, float pause, float languageWeight) {}

  /**
   * The rows of a graph.
   *
   * @param otherSpeech the way to what else can be said, if that is heard too
   */
  WordNetwork(
      WordGraph graph,
      KeptDictionary dictionary,
      Triphones triphones,
      Costs costs,
      Optional<SearchStateArc> otherSpeech) {
    this.triphones = triphones;
    this.costs = costs;
    for (int i = 0; i < graph.next().size(); i++) {
      places.add(new Place(graph.mayEnd().get(i)));
    }
    Map<String, Spelled> known = new HashMap<>();
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      // All words that may follow share what is likely: where many may, each is less so.
      float share = LogMath.getLogMath().linearToLog(1.0 / graph.next().get(i).size());
      graph
          .next()
          .get(i)
          .forEach(
              (word, there) ->
                  place.add(
                      known.computeIfAbsent(
                          word + ' ' + there,
                          w -> new Spelled(dictionary.getWord(word), places.get(there))),
                      share * costs.languageWeight()));
    }
    Word silence = dictionary.getSilenceWord();
    places.forEach(place -> place.pause = new Spelled(silence, place));
    start = new Start(new Spelled(silence, places.get(0)), otherSpeech);
  }

  @Override
  public SearchState getInitialState() {
    return start;
  }

  @Override
  public int getNumStateOrder() {
    return 1;
  }

  @Override
  public boolean getWordTokenFirst() {
    return true;
  }

  /** The beginning: silence, or other speech than words. */
  private static final class Start extends Spoken {
    private final Optional<SearchStateArc> otherSpeech;

    Start(Spelled silence, Optional<SearchStateArc> otherSpeech) {
      super(silence.ways.get(0), UnitManager.SILENCE);
      this.otherSpeech = otherSpeech;
    }

    @Override
    SearchStateArc[] leads() {
      List<SearchStateArc> ways = new ArrayList<>(List.of(super.leads()));
      otherSpeech.ifPresent(ways::add);
      return ways.toArray(SearchStateArc[]::new);
    }
  }

  /** Between two words. */
  private static final class Place {
    private final List<Spelled> words = new ArrayList<>();
    private final List<Float> shares = new ArrayList<>();
    private final Optional<End> end;
    private final Map<List<Unit>, Junction> junctions = new HashMap<>();

    /** The phones that may come next: of a pause or the end, of a word. */
    private final Set<Unit> next = new LinkedHashSet<>(List.of(UnitManager.SILENCE));

    private Spelled pause;

    Place(boolean mayEnd) {
      end = mayEnd ? Optional.of(new End()) : Optional.empty();
    }

    void add(Spelled word, float share) {
      words.add(word);
      shares.add(share);
      word.ways.forEach(way -> next.add(way.phones[0]));
    }

    /** After one phone and before another. */
    Junction between(Unit before, Unit after) {
      return junctions.computeIfAbsent(
          List.of(before, after), pair -> new Junction(this, before, after));
    }

    /** After a pause, before anything. */
    List<Junction> afterPause() {
      return next.stream().map(phone -> between(UnitManager.SILENCE, phone)).toList();
    }
  }

  /** A place, come to by a phone and left for another one. */
  private static final class Junction extends NetworkState {
    private final Place place;
    private final Unit before;
    private final Unit after;

    Junction(Place place, Unit before, Unit after) {
      this.place = place;
      this.before = before;
      this.after = after;
    }

    @Override
    SearchStateArc[] leads() {
      List<SearchStateArc> ways = new ArrayList<>();
      if (after.equals(UnitManager.SILENCE)) {
        ways.add(new Way(place.pause.ways.get(0).after(before), SURE, SURE));
        place.end.ifPresent(end -> ways.add(new Way(end, SURE, SURE)));
      }
      for (int i = 0; i < place.words.size(); i++) {
        for (Pronounced way : place.words.get(i).ways) {
          if (way.phones[0].equals(after)) {
            ways.add(new Way(way.after(before), place.shares.get(i), SURE));
          }
        }
      }
      return ways.toArray(SearchStateArc[]::new);
    }
  }

  /** The end of a row. */
  private static final class End extends NetworkState {
    @Override
    SearchStateArc[] leads() {
      return new SearchStateArc[0];
    }

    @Override
    public boolean isFinal() {
      return true;
    }
  }

  /** A word that leads to a place. */
  private final class Spelled {
    private final List<Pronounced> ways = new ArrayList<>();

    Spelled(Word word, Place there) {
      for (Pronunciation way : word.getPronunciations()) {
        ways.add(new Pronounced(way, there));
      }
    }
  }

  /** One way to say it: its phones in their order, those within it shared by whatever is before. */
  private final class Pronounced {
    private final Pronunciation pronunciation;
    private final Unit[] phones;
    private final Place there;
    private final Map<Unit, Spoken> spoken = new HashMap<>();
    private final Map<List<Object>, Phone> known = new HashMap<>();

    Pronounced(Pronunciation pronunciation, Place there) {
      this.pronunciation = pronunciation;
      this.phones = pronunciation.getUnits();
      this.there = there;
    }

    /** The word after a phone of the one before it. */
    Spoken after(Unit before) {
      return spoken.computeIfAbsent(before, b -> new Spoken(this, b));
    }

    /** What comes after so many of its phones. */
    SearchStateArc[] phonesFrom(int which, Unit before) {
      if (phones[which].isFiller()) {
        Phone pause = phone(which, Optional.empty(), Optional.empty());
        return new SearchStateArc[] {new Way(pause, SURE, begin(which))};
      }
      if (which < phones.length - 1) {
        Phone next = phone(which, Optional.of(before), Optional.of(phones[which + 1]));
        return new SearchStateArc[] {new Way(next, SURE, begin(which))};
      }
      return there.next.stream()
          .map(after -> phone(which, Optional.of(before), Optional.of(after)))
          .map(last -> new Way(last, SURE, begin(which)))
          .toArray(SearchStateArc[]::new);
    }

    private Phone phone(int which, Optional<Unit> before, Optional<Unit> after) {
      return known.computeIfAbsent(
          List.of(which, before, after), key -> new Phone(this, which, before, after));
    }

    private float begin(int which) {
      if (phones[which].isFiller()) {
        return costs.pause();
      }
      return which == 0 ? costs.word() : SURE;
    }
  }

  /** The beginning of a word in one of the ways to say it. */
  private static class Spoken extends NetworkState implements WordSearchState {
    private final Pronounced way;
    private final Unit before;

    Spoken(Pronounced way, Unit before) {
      this.way = way;
      this.before = before;
    }

    @Override
    SearchStateArc[] leads() {
      return way.phonesFrom(0, before);
    }

    @Override
    public Pronunciation getPronunciation() {
      return way.pronunciation;
    }

    @Override
    public boolean isWordStart() {
      return true;
    }
  }

  /** A phone of a word among its neighbours. */
  private final class Phone extends NetworkState {
    private final Pronounced way;
    private final int which;
    private final Optional<Unit> before;
    private final Optional<Unit> after;

    Phone(Pronounced way, int which, Optional<Unit> before, Optional<Unit> after) {
      this.way = way;
      this.which = which;
      this.before = before;
      this.after = after;
    }

    @Override
    SearchStateArc[] leads() {
      HMM sound =
          way.phones[which].isFiller()
              ? triphones.alone(way.phones[which])
              : triphones.among(way.phones, which, before.orElseThrow(), after.orElseThrow());
      Moment first = new Moment.Row(sound, this::leadsAfter).moment(0);
      return new SearchStateArc[] {new Way(first, SURE, SURE)};
    }

    private SearchStateArc[] leadsAfter() {
      if (way.phones[which].isFiller()) {
        List<SearchStateArc> ways = new ArrayList<>(List.of(new Way(this, SURE, costs.pause())));
        way.there.afterPause().forEach(junction -> ways.add(new Way(junction, SURE, SURE)));
        return ways.toArray(SearchStateArc[]::new);
      }
      if (which == way.phones.length - 1) {
        Junction junction = way.there.between(way.phones[which], after.orElseThrow());
        return new SearchStateArc[] {new Way(junction, SURE, SURE)};
      }
      return way.phonesFrom(which + 1, way.phones[which]);
    }
  }
}
