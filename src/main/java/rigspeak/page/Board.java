package rigspeak.page;

import java.util.List;

/**
 * Everything that the page shows, as it is sent: docs/formats.md says what each field means. All of
 * it is text; only the pictures are SVG, made by the drawing room, which escapes every text in
 * them.
 */
public record Board(
    String plan,
    String place,
    String title,
    Told verdict,
    Held lanyard,
    String load,
    String picture,
    String plannedLoad,
    String plannedPicture,
    String tally,
    List<Row> rows,
    List<Entry> journal,
    String units,
    boolean mayType,
    long version,
    long heardAtMs) {

  public Board {
    rows = List.copyOf(rows);
    journal = List.copyOf(journal);
  }

  /** The verdict in words. */
  public record Told(String outcome, String word, String head, String reason) {}

  /** The state of the lanyard gate in words. */
  public record Held(String state, String word, String more) {}

  /** One item of plan and rig. */
  public record Row(String slot, String name, String plan, String said, String state, String so) {}

  /** One thing said and what was answered. */
  public record Entry(String at, String said, List<Answer> answers) {
    public Entry {
      answers = List.copyOf(answers);
    }
  }

  /** One answer. */
  public record Answer(String text, boolean danger) {}
}
