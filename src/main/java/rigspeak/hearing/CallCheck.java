package rigspeak.hearing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Tells the call from what only sounds like it.
 *
 * <p>Model: what was heard must fit the row that begins with the call better, by a lead, than the
 * same row with a word of the call exchanged for one like it, or with a phrase in the call's place
 * that only contains it. A phrase that differs in both words need not be tried: either word
 * exchanged alone brings the row nearer to it.
 */
final class CallCheck {
  /**
   * How much better, as a natural logarithm of likelihoods; a voice that the model hears badly may
   * even fit a little worse. Measured (docs/hearing.md): the true calls of the voices that are
   * heard well are ahead by -12 and more, near misses mostly by -70 and less.
   */
  private static final double LEAD = -16;

  /** The same for the bare call: nothing that comes after it supports it. */
  private static final double BARE_LEAD = -10;

  /** Begins a line with a phrase in the call's place. */
  private static final String PHRASE = "instead ";

  private final List<List<String>> like;
  private final List<List<String>> phrases;

  private CallCheck(List<List<String>> like, List<List<String>> phrases) {
    this.like = like;
    this.phrases = phrases;
  }

  /**
   * Reads what is like the call.
   *
   * @param file a line for each word of the call, which comes first; and one for each phrase, after
   *     "instead"
   */
  static CallCheck read(URL file) {
    try (InputStream in = file.openStream()) {
      List<String> lines =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .toList();
      return new CallCheck(
          lines.stream().filter(line -> !line.startsWith(PHRASE)).map(CallCheck::words).toList(),
          lines.stream()
              .filter(line -> line.startsWith(PHRASE))
              .map(line -> words(line.substring(PHRASE.length())))
              .toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> words(String line) {
    return List.of(line.split(" ", -1));
  }

  /** The call itself. */
  List<String> call() {
    return like.stream().map(words -> words.get(0)).toList();
  }

  /** All words that have to have a pronunciation. */
  Set<String> words() {
    Set<String> words = new LinkedHashSet<>();
    like.forEach(words::addAll);
    phrases.forEach(words::addAll);
    return words;
  }

  /**
   * Whether a row begins with the call and fits as such.
   *
   * @param likelihoods how well rows of words fit what was heard
   */
  boolean isCall(List<String> row, Function<List<List<String>>, double[]> likelihoods) {
    return beginsWithCall(row)
        && lead(row, likelihoods) >= (row.size() == like.size() ? BARE_LEAD : LEAD);
  }

  boolean beginsWithCall(List<String> row) {
    int length = like.size();
    return row.size() >= length && row.subList(0, length).equals(call());
  }

  /** How much better the row fits than the one most like it. */
  double lead(List<String> row, Function<List<List<String>>, double[]> likelihoods) {
    double[] fit = likelihoods.apply(withLike(row));
    return fit[0] - Arrays.stream(fit, 1, fit.length).max().orElseThrow();
  }

  /** The row most like it, for measurements. */
  List<String> nearest(List<String> row, Function<List<List<String>>, double[]> likelihoods) {
    List<List<String>> rows = withLike(row);
    double[] fit = likelihoods.apply(rows);
    int nearest = 1;
    for (int i = 2; i < fit.length; i++) {
      nearest = fit[i] > fit[nearest] ? i : nearest;
    }
    return rows.get(nearest);
  }

  /**
   * The row, then the same with each word that is like one of the call's, then with each phrase.
   */
  private List<List<String>> withLike(List<String> row) {
    List<List<String>> rows = new ArrayList<>(List.of(row));
    for (int i = 0; i < like.size(); i++) {
      for (String other : like.get(i).subList(1, like.get(i).size())) {
        List<String> exchanged = new ArrayList<>(row);
        exchanged.set(i, other);
        rows.add(exchanged);
      }
    }
    List<String> after = row.subList(like.size(), row.size());
    for (List<String> phrase : phrases) {
      rows.add(Stream.concat(phrase.stream(), after.stream()).toList());
    }
    return rows;
  }
}
