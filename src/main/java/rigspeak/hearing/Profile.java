package rigspeak.hearing;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What the ear knows of one person: where the sounds of the voice lie, and how loud it is. Made by
 * {@link Enrolment}; docs/formats.md describes its text.
 *
 * @param name whose it is; one word
 * @param model fingerprint of the acoustic model that it was made for
 * @param sentences how many sentences it was made from
 */
public record Profile(String name, String model, int sentences, Levels levels, CepstrumMap map) {
  private static final String TITLE = "rigspeak profile 1";

  public Profile {
    if (!isName(name) || !model.matches("[0-9a-f]{8}") || sentences < 1) {
      throw new IllegalArgumentException("no profile: " + name + ", " + model + ", " + sentences);
    }
  }

  /** Whether a profile can bear this name: a letter first, then letters, digits, dots, hyphens. */
  public static boolean isName(String name) {
    return name.matches("\\p{L}[\\p{L}\\p{N}.-]{0,39}");
  }

  /** The whole as text, the last line a check sum over all lines before. */
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append(TITLE).append('\n');
    text.append("name ").append(name).append('\n');
    text.append("model ").append(model).append('\n');
    text.append("sentences ").append(sentences).append('\n');
    text.append(String.format(Locale.ROOT, "speech_db %.1f\n", levels.speech()));
    text.append(String.format(Locale.ROOT, "background_db %.1f\n", levels.background()));
    for (List<Double> row : map.rows()) {
      text.append("map");
      row.forEach(value -> text.append(' ').append(String.format(Locale.ROOT, "%.6f", value)));
      text.append('\n');
    }
    return text + "check " + checkSum(text.toString()) + '\n';
  }

  /** Reads what {@link #text} wrote; nothing if it is not whole. */
  public static Optional<Profile> read(String text) {
    int end = text.lastIndexOf("check ");
    if (end < 0
        || !text.substring(end).equals("check " + checkSum(text.substring(0, end)) + '\n')) {
      return Optional.empty();
    }
    List<String> lines = text.substring(0, end).lines().toList();
    try {
      Lines from = new Lines(lines);
      from.expect(TITLE);
      String name = from.after("name");
      String model = from.after("model");
      int sentences = Integer.parseInt(from.after("sentences"));
      double speech = Double.parseDouble(from.after("speech_db"));
      double background = Double.parseDouble(from.after("background_db"));
      List<List<Double>> rows = new ArrayList<>();
      for (int i = 0; i < CepstrumMap.SIZE; i++) {
        rows.add(List.of(from.after("map").split(" ", -1)).stream().map(Double::valueOf).toList());
      }
      from.expectEnd();
      return Optional.of(
          new Profile(
              name, model, sentences, new Levels(speech, background), new CepstrumMap(rows)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static String checkSum(String text) {
    CRC32 sum = new CRC32();
    sum.update(text.getBytes(StandardCharsets.UTF_8));
    return String.format(Locale.ROOT, "%08x", sum.getValue());
  }

  /** The lines one by one; {@link IllegalArgumentException} for any other than the next one. */
  private static final class Lines {
    private final List<String> lines;
    private int at;

    Lines(List<String> lines) {
      this.lines = lines;
    }

    String after(String key) {
      String line = at < lines.size() ? lines.get(at) : "";
      at++;
      if (!line.startsWith(key + ' ')) {
        throw new IllegalArgumentException("no " + key + ": " + line);
      }
      return line.substring(key.length() + 1);
    }

    void expect(String whole) {
      if (at >= lines.size() || !lines.get(at).equals(whole)) {
        throw new IllegalArgumentException("not " + whole);
      }
      at++;
    }

    void expectEnd() {
      if (at != lines.size()) {
        throw new IllegalArgumentException("more than a profile");
      }
    }
  }
}
