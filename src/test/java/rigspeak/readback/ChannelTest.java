package rigspeak.readback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.readback.Channel.Action;
import rigspeak.readback.Channel.Event;
import rigspeak.readback.Channel.Traffic;

/** When the channel is spoken on, situation by situation from channel.txt. */
class ChannelTest {
  record Situation(String title, List<String> lines) {
    @Override
    public String toString() {
      return title;
    }
  }

  static Stream<Situation> situations() throws IOException {
    List<Situation> all = new ArrayList<>();
    try (var in = ChannelTest.class.getResourceAsStream("channel.txt")) {
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        if (line.startsWith("# ")) {
          all.add(new Situation(line.substring(2), new ArrayList<>()));
        } else if (!line.isBlank() && !all.isEmpty()) {
          all.get(all.size() - 1).lines().add(line);
        }
      }
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("situations")
  void goesAsWritten(Situation situation) {
    Channel now = Channel.clearSince(0);
    List<String> done = new ArrayList<>();
    for (String line : situation.lines()) {
      if (line.startsWith("> ")) {
        assertEquals(List.of(), done, "not foreseen before " + line);
        Channel.Step step = now.after(event(line.substring(2)));
        now = step.next();
        step.action().map(ChannelTest::words).ifPresent(done::add);
      } else if (line.startsWith("< ")) {
        assertEquals(List.of(line.substring(2)), done, situation.title());
        done.clear();
      } else {
        assertEquals(line, "= owes " + owed(now), situation.title());
      }
    }
    assertEquals(List.of(), done, "not foreseen at the end");
  }

  private static String owed(Channel channel) {
    return channel.owes() ? String.join(", ", channel.waiting()) : "nothing";
  }

  private static Event event(String line) {
    String[] words = line.split(" ", 3);
    double at = Double.parseDouble(words[0]);
    return switch (words[1]) {
      case "busy" -> new Event.BecameBusy(at);
      case "clear" -> new Event.BecameClear(at);
      case "spoken" -> new Event.Spoken(at);
      case "passes" -> new Event.Passed(at);
      case "wants" -> new Event.Wanted(at, List.of(words[2].split(", ", -1)));
      default -> throw new IllegalArgumentException(line);
    };
  }

  private static String words(Action action) {
    return action instanceof Action.Speak speak ? "speaks " + speak.text() : "stops";
  }

  /** Whatever happens: never on a busy channel, nothing lost, nothing out of order. */
  @Test
  void whateverHappensNothingIsSpokenOnABusyChannelAndNothingIsLost() {
    for (long seed = 0; seed < 300; seed++) {
      new RandomTraffic(seed).run();
    }
  }

  /** Others come and go as they like; we speak when we are told to, and look when we are told. */
  private static final class RandomTraffic {
    private final SplittableRandom random;
    private final List<String> wanted = new ArrayList<>();
    private final List<String> heard = new ArrayList<>();
    private Channel now = Channel.clearSince(0);
    private double at;
    private boolean othersSpeak;
    private Optional<String> onAir = Optional.empty();

    RandomTraffic(long seed) {
      random = new SplittableRandom(seed);
    }

    void run() {
      for (int i = 0; i < 200; i++) {
        at += random.nextDouble() * 0.6;
        happen();
      }
      tell(othersSpeak ? new Event.BecameClear(at) : new Event.Passed(at));
      othersSpeak = false;
      for (int i = 0; i < 4 * wanted.size() + 10; i++) {
        at = Math.max(at + 0.01, now.lookAgainAt().orElse(at + 1));
        tell(onAir.isPresent() ? new Event.Spoken(at) : new Event.Passed(at));
      }
      assertEquals(wanted, heard);
    }

    private void happen() {
      switch (random.nextInt(4)) {
        case 0 -> {
          othersSpeak = !othersSpeak;
          tell(othersSpeak ? new Event.BecameBusy(at) : new Event.BecameClear(at));
        }
        case 1 -> {
          String text = Integer.toString(wanted.size());
          wanted.add(text);
          tell(new Event.Wanted(at, List.of(text)));
        }
        case 2 -> {
          if (onAir.isPresent()) {
            tell(new Event.Spoken(at));
          }
        }
        default -> tell(new Event.Passed(at));
      }
    }

    private void tell(Event event) {
      List<String> before = now.waiting();
      Channel.Step step = now.after(event);
      if (event instanceof Event.Wanted more) {
        before = Stream.concat(before.stream(), more.texts().stream()).toList();
      }
      now = step.next();
      if (now.waiting().size() < before.size()) {
        assertEquals(before.subList(1, before.size()), now.waiting());
        heard.add(before.get(0));
      }
      if (event instanceof Event.Spoken) {
        onAir = Optional.empty();
      }
      if (step.action().orElse(null) instanceof Action.Speak speak) {
        assertTrue(!othersSpeak && onAir.isEmpty(), () -> "spoke on a busy channel at " + at);
        onAir = Optional.of(speak.text());
      } else if (step.action().isPresent()) {
        onAir = Optional.empty();
      }
      assertEquals(onAir.isPresent(), now.traffic() instanceof Traffic.Speaking);
    }
  }
}
