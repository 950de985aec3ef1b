package rigspeak.app;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.zip.CRC32;
import rigspeak.drill.Answered;
import rigspeak.drill.Asking;
import rigspeak.drill.Choice;
import rigspeak.drill.Level;
import rigspeak.drill.Response;
import rigspeak.drill.Skill;
import rigspeak.drill.Truth;

/**
 * What trainees have answered, a file each, a line for each answer; docs/formats.md has the form.
 * What is due, and how hard the next question is, follows from the answers and is kept nowhere.
 */
final class TraineeFiles {
  private static final String FIRST_LINE = "rigspeak trainee 1";
  private static final String NUMBER = "number";
  private static final String NO_IDEA = "no_idea";
  private static final String NONE = "-";
  private static final int FIELDS = 10;

  /** Forty thousand answers. */
  private static final int LONGEST = 4_000_000;

  private TraineeFiles() {}

  /** The usual file of a trainee on this machine. */
  static Path usual(String name) {
    Path profile = ProfileFiles.usual(name);
    return profile.getParent().resolveSibling("trainees").resolve(name + ".trainee");
  }

  /** A file that is not whole, or not of this form. */
  static final class Damaged extends IOException {
    private static final long serialVersionUID = 1L;

    Damaged(Path file) {
      super(
          "The file "
              + file
              + " is damaged or of another version; nothing is written to it. Move it away to begin"
              + " anew.");
    }
  }

  /**
   * All answers, the first of them first; none if there is no such file.
   *
   * @throws Damaged if it is not whole
   */
  static List<Answered> read(Path file) throws IOException {
    if (!Files.exists(file)) {
      return List.of();
    }
    try {
      List<String> lines = WholeFile.read(file, LONGEST).lines().toList();
      if (lines.size() < 3
          || !lines.get(0).equals(FIRST_LINE)
          || !lines.get(lines.size() - 1).equals(check(lines.subList(0, lines.size() - 1)))) {
        throw new Damaged(file);
      }
      List<Answered> answers = new ArrayList<>();
      for (String line : lines.subList(2, lines.size() - 1)) {
        answers.add(answered(line));
      }
      return answers;
    } catch (CharacterCodingException
        | WholeFile.TooLong
        | IllegalArgumentException
        | DateTimeException e) {
      Damaged damaged = new Damaged(file);
      damaged.initCause(e);
      throw damaged;
    }
  }

  /** Writes the whole file or nothing: what was there stays until the new one is whole. */
  static void write(Path file, String name, List<Answered> answers) throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(FIRST_LINE);
    lines.add("name " + name);
    answers.forEach(answer -> lines.add(line(answer)));
    lines.add(check(lines));
    WholeFile.write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
  }

  private static String check(List<String> lines) {
    CRC32 sum = new CRC32();
    lines.forEach(line -> sum.update((line + "\n").getBytes(StandardCharsets.UTF_8)));
    return String.format(Locale.ROOT, "check %08x", sum.getValue());
  }

  // ---- one answer ----

  private static String line(Answered answer) {
    boolean number = answer.truth() instanceof Truth.Figure;
    String truth =
        number
            ? NUMBER + " " + ((Truth.Figure) answer.truth()).value()
            : "word " + ((Truth.Named) answer.truth()).choice().key();
    return String.join(
        " ",
        "answer",
        Instant.ofEpochSecond(answer.atSeconds()).toString(),
        answer.skill().key(),
        Integer.toString(answer.level().number()),
        answer.asking().key(),
        truth,
        given(answer.response()),
        answer.sure().isPresent() ? Double.toString(answer.sure().getAsDouble()) : NONE,
        answer.isRight() ? "right" : "wrong",
        String.format(Locale.ROOT, "%.1f", answer.tookSeconds()));
  }

  private static String given(Response response) {
    if (response instanceof Response.Amount number) {
      return Double.toString(number.value());
    }
    return response instanceof Response.Named named ? named.choice().key() : NO_IDEA;
  }

  private static Answered answered(String line) {
    String[] fields = line.split(" ", -1);
    if (fields.length != FIELDS + 1 || !fields[0].equals("answer")) {
      throw new IllegalArgumentException("no answer: " + line);
    }
    boolean number = fields[5].equals(NUMBER);
    // How near was near enough is told by right or wrong alone.
    Truth truth =
        number
            ? new Truth.Figure(Double.parseDouble(fields[6]), 0)
            : new Truth.Named(choice(fields[6]));
    return new Answered(
        Instant.parse(fields[1]).getEpochSecond(),
        Skill.of(fields[2]).orElseThrow(IllegalArgumentException::new),
        Level.of(Integer.parseInt(fields[3])),
        Asking.of(fields[4]).orElseThrow(IllegalArgumentException::new),
        truth,
        response(fields[7]),
        fields[8].equals(NONE)
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(fields[8])),
        switch (fields[9]) {
          case "right" -> Answered.Result.RIGHT;
          case "wrong" -> Answered.Result.WRONG;
          default -> throw new IllegalArgumentException(fields[9]);
        },
        Double.parseDouble(fields[10]));
  }

  private static Choice choice(String key) {
    return Choice.of(key).orElseThrow(() -> new IllegalArgumentException("no answer: " + key));
  }

  private static Response response(String word) {
    if (word.equals(NO_IDEA)) {
      return new Response.NoIdea();
    }
    return Choice.of(word)
        .<Response>map(Response.Named::new)
        .orElseGet(() -> new Response.Amount(Double.parseDouble(word)));
  }
}
