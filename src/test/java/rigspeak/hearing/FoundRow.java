package rigspeak.hearing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rigspeak.hearing.Acceptance.Evidence;

/** A row of words that the ear found, taken or not, and what spoke for it, as a table keeps it. */
record FoundRow(List<String> words, Evidence evidence) {
  private static final Pattern WRITTEN = Pattern.compile("\\{([^|}]*)\\|([^}]*)}");

  static String written(List<String> words, Evidence evidence) {
    return String.format(
        Locale.ROOT,
        " {%s|%.1f|%.1f|%.1f|%.2f|%.2f|%d|%.1f|%b}",
        String.join(" ", words),
        evidence.overRival(),
        evidence.overOtherSpeech(),
        evidence.overUnfinished(),
        evidence.worstWord(),
        evidence.worstPause(),
        evidence.words(),
        evidence.aboveNoise(),
        evidence.bare());
  }

  /** Every row in a text. */
  static List<FoundRow> in(String text) {
    List<FoundRow> rows = new ArrayList<>();
    Matcher matcher = WRITTEN.matcher(text);
    while (matcher.find()) {
      String[] cells = matcher.group(2).split("\\|", -1);
      boolean bare = Boolean.parseBoolean(cells[7]);
      double[] n = Arrays.stream(cells, 0, 7).mapToDouble(FoundRow::number).toArray();
      rows.add(
          new FoundRow(
              CorpusMeasurement.normalised(matcher.group(1)),
              new Evidence(n[0], n[1], n[2], n[3], n[4], (int) n[5], bare, n[6])));
    }
    return rows;
  }

  private static double number(String text) {
    return Double.parseDouble(text);
  }
}
