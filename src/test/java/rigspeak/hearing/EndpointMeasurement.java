package rigspeak.hearing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;

/**
 * Whether the {@link Endpointer} finds utterances whole, in every condition of the comparison and
 * clean. Where a voice begins and ends is known from the clean recording: its first and last frame
 * within {@value #AUDIBLE} dB of the loudest. Argument: the corpus folder.
 */
final class EndpointMeasurement {
  private static final double AUDIBLE = 30;

  /** The end of an utterance is late if it comes more than so many frames after the voice. */
  private static final int LATE = 110;

  /** Frames that the recogniser gets from before an utterance is noticed. */
  private static final int KEPT_BEFORE = 40;

  /** A few frames of the first and last sound may be lost. */
  private static final int LOST = 2;

  /** From a frame to another. */
  private record Span(int from, int to) {}

  private int heard;
  private int whole;
  private int cut;
  private int late;
  private int besides;

  private EndpointMeasurement() {}

  public static void main(String[] args) throws IOException {
    List<Recorded> all =
        Recorded.all(Path.of(args.length > 0 ? args[0] : "target/corpus")).stream()
            .sorted(Comparator.comparing(Recorded::voice).thenComparing(Recorded::file))
            .toList();
    Predicate<Recorded> some = Recorded.some(all, 60, 1);
    System.out.println(
        "| condition | voices | whole and in time % | cut or in pieces | late | besides |");
    System.out.println("|---|---|---|---|---|---|");
    for (Condition condition : Condition.all()) {
      EndpointMeasurement measurement = new EndpointMeasurement();
      boolean clean = condition instanceof Condition.Clean;
      for (Recorded recorded : all.stream().filter(r -> clean || some.test(r)).toList()) {
        measurement.take(WavFile.read(recorded.file()), condition, recorded.seed());
      }
      measurement.print(condition.name());
    }
    EndpointMeasurement abrupt = new EndpointMeasurement();
    for (Recorded recorded : all) {
      Sound sound = WavFile.read(recorded.file());
      int from = voice(sound).from() * Endpointer.FRAME;
      abrupt.take(sound.part(from, sound.length()), new Condition.Clean(), 0);
    }
    abrupt.print("clean, from the first sound on");
  }

  private void print(String name) {
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %.0f | %d | %d | %d |%n",
        name,
        heard,
        100.0 * whole / heard,
        cut,
        late,
        besides);
  }

  private void take(Sound clean, Condition condition, long seed) {
    int later = before(condition);
    Span said = voice(clean);
    Span voice = new Span(said.from() + later, said.to() + later);
    Sound sound = Sound.joined(List.of(condition.heard(clean, seed), Sound.silence(1)));
    List<Span> all = utterances(sound);
    List<Span> mine =
        all.stream().filter(u -> u.to() > voice.from() && u.from() < voice.to()).toList();
    heard++;
    besides += all.size() - mine.size();
    boolean found = mine.size() == 1;
    boolean isCut =
        !found
            || mine.get(0).from() > voice.from() + KEPT_BEFORE - LOST
            || mine.get(0).to() < voice.to() + LOST;
    boolean isLate = found && mine.get(0).to() > voice.to() + LATE;
    cut += isCut ? 1 : 0;
    late += isLate && !isCut ? 1 : 0;
    whole += isCut || isLate ? 0 : 1;
  }

  /** Frames that a condition puts before the voice. */
  private static int before(Condition condition) {
    if (condition instanceof Condition.Noisy) {
      return 150;
    }
    if (condition instanceof Condition.Far) {
      return 30;
    }
    return condition instanceof Condition.Radio ? 4 : 0;
  }

  private static Span voice(Sound clean) {
    UtteranceSource.Frames frames = UtteranceSource.framesOf(clean);
    Bands bands = new Bands();
    List<Double> levels = new ArrayList<>();
    for (short[] frame = frames.next(); frame != null; frame = frames.next()) {
      levels.add(Bands.together(bands.take(frame)));
    }
    double least = levels.stream().mapToDouble(l -> l).max().orElse(0) - AUDIBLE;
    int from = 0;
    while (levels.get(from) < least) {
      from++;
    }
    int to = levels.size() - 1;
    while (levels.get(to) < least) {
      to--;
    }
    return new Span(from, to);
  }

  /** From where they are noticed to where they are over. */
  private static List<Span> utterances(Sound sound) {
    Endpointer endpointer = new Endpointer(Utterances.ends(ClosingPause.ORDINARY));
    UtteranceSource.Frames frames = UtteranceSource.framesOf(sound);
    List<Span> utterances = new ArrayList<>();
    int begun = 0;
    int frame = 0;
    for (short[] samples = frames.next(); samples != null; samples = frames.next()) {
      Endpointer.Turn turn = endpointer.take(samples);
      if (turn == Endpointer.Turn.BEGINS) {
        begun = frame;
      } else if (turn == Endpointer.Turn.ENDS || turn == Endpointer.Turn.TOO_LONG) {
        utterances.add(new Span(begun, frame));
      }
      frame++;
    }
    return utterances;
  }
}
