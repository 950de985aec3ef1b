package rigspeak.grammar;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The phones of words, from the recogniser's own dictionary and the words that it lacks. */
public final class Pronunciations {
  private static final String GENERAL = "/edu/cmu/sphinx/models/en-us/cmudict-en-us.dict";
  private static final String OWN = "/rigspeak/grammars/rigspeak.dict";

  private final Map<String, List<List<String>>> byWord = new HashMap<>();

  private Pronunciations() {}

  public static Pronunciations all() {
    Pronunciations pronunciations = general();
    pronunciations.take(OWN);
    return pronunciations;
  }

  static Pronunciations general() {
    Pronunciations pronunciations = new Pronunciations();
    pronunciations.take(GENERAL);
    return pronunciations;
  }

  static Pronunciations own() {
    Pronunciations pronunciations = new Pronunciations();
    pronunciations.take(OWN);
    return pronunciations;
  }

  private void take(String resource) {
    try (InputStream in = Pronunciations.class.getResourceAsStream(resource);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      lines.lines().filter(line -> !line.isBlank()).forEach(this::takeLine);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** "word P H O" or, for a second way of saying it, "word(2) P H O". */
  private void takeLine(String line) {
    String[] parts = line.strip().split("\\s+", -1);
    String word = parts[0].replaceAll("\\(\\d+\\)$", "");
    byWord
        .computeIfAbsent(word, w -> new ArrayList<>())
        .add(List.of(parts).subList(1, parts.length));
  }

  public Map<String, List<List<String>>> byWord() {
    return byWord;
  }

  boolean has(String word) {
    return byWord.containsKey(word);
  }

  /** Every way of saying these words one after the other. */
  List<List<String>> of(List<String> words) {
    List<List<String>> ways = List.of(List.of());
    for (String word : words) {
      List<List<String>> longer = new ArrayList<>();
      for (List<String> start : ways) {
        for (List<String> end : byWord.get(word)) {
          List<String> both = new ArrayList<>(start);
          both.addAll(end);
          longer.add(both);
        }
      }
      ways = longer;
    }
    return ways;
  }
}
