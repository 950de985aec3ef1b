package rigspeak.hearing;

import edu.cmu.sphinx.frontend.BaseDataProcessor;
import edu.cmu.sphinx.frontend.Data;
import edu.cmu.sphinx.frontend.DoubleData;
import edu.cmu.sphinx.frontend.endpoint.SpeechEndSignal;
import edu.cmu.sphinx.util.props.ConfigurationManager;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;

/**
 * Prints the spread of the cepstrum that {@code ear.xml} asks {@link CepstralNorm} for: of each
 * number the median, over utterances, of its standard deviation in an utterance. Argument: the
 * folder of the large corpus; of it the clean commands that are not kept aside, in the voices that
 * the model hears best.
 */
final class SpreadMeasurement {
  private static final List<String> BEST = List.of("flite-", "festival-");
  private static final int SIZE = CepstrumMap.SIZE;

  /** Frames before the onset that belong to the utterance. */
  private static final int LEADER = 40;

  private final ConfigurationManager manager = new ConfigurationManager(Ear.resource("ear.xml"));
  private final UtteranceSource source = manager.lookup("source");
  private final BaseDataProcessor cepstrum;

  private SpreadMeasurement() {
    // It joins the parts to each other.
    manager.lookup("frontEnd");
    cepstrum = manager.lookup("cepstrum");
  }

  public static void main(String[] args) throws IOException {
    SpreadMeasurement measurement = new SpreadMeasurement();
    List<DescriptiveStatistics> spreads = statistics();
    for (Recorded recorded : Recorded.all(Path.of(args[0]))) {
      boolean best = BEST.stream().anyMatch(recorded.voice()::startsWith);
      if (best && recorded.kind() == Recorded.Kind.COMMAND && !recorded.keptAside()) {
        List<DescriptiveStatistics> numbers =
            measurement.numbers(utterance(WavFile.read(recorded.file())));
        for (int i = 0; i < SIZE; i++) {
          spreads.get(i).addValue(numbers.get(i).getStandardDeviation());
        }
      }
    }
    System.out.println(spreads.get(0).getN() + " utterances");
    System.out.println(
        spreads.stream()
            .map(each -> String.format(Locale.ROOT, "%.2f", each.getPercentile(50)))
            .collect(Collectors.joining(" ")));
  }

  private static List<DescriptiveStatistics> statistics() {
    return IntStream.range(0, SIZE).mapToObj(i -> new DescriptiveStatistics()).toList();
  }

  /** From the leader to the closing pause, as the ear cuts it out. */
  private static UtteranceSource.Frames utterance(Sound sound) {
    Endpointer endpointer = new Endpointer(Utterances.ends(ClosingPause.ORDINARY));
    UtteranceSource.Frames all = UtteranceSource.framesOf(sound);
    Deque<short[]> frames = new ArrayDeque<>();
    boolean begun = false;
    for (short[] frame = all.next(); frame != null; frame = all.next()) {
      frames.add(frame);
      Endpointer.Turn turn = endpointer.take(frame);
      begun |= turn == Endpointer.Turn.BEGINS;
      if (turn == Endpointer.Turn.ENDS) {
        break;
      }
      if (!begun && frames.size() > LEADER) {
        frames.remove();
      }
    }
    return frames::poll;
  }

  /** Each number of the cepstrum, over the frames that have any energy. */
  private List<DescriptiveStatistics> numbers(UtteranceSource.Frames utterance) {
    List<DescriptiveStatistics> numbers = statistics();
    source.begin(utterance);
    List<Data> heard = new ArrayList<>();
    do {
      heard.add(cepstrum.getData());
    } while (!(heard.get(heard.size() - 1) instanceof SpeechEndSignal));
    for (Data data : heard) {
      if (data instanceof DoubleData frame && frame.getValues()[0] >= 0) {
        for (int i = 0; i < SIZE; i++) {
          numbers.get(i).addValue(frame.getValues()[i]);
        }
      }
    }
    return numbers;
  }
}
