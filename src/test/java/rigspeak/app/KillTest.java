package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.Entry;
import rigspeak.journal.Event;

/**
 * The tool is killed, as a dead battery would, again and again in the midst of a conversation, and
 * goes on each time. In the end everything is as if nothing had happened: the same lines in the
 * journal, each once, and the same verdict.
 *
 * <p>Who talks is a climber who knows only what is answered: after a kill they hear what was taken
 * last, and say the next thing.
 */
class KillTest {
  private static final int KILLS = 200;

  /** Half of the kills fall within so long after something was said. */
  private static final int SOON_MILLIS = 25;

  /** The others at any time, also while the tool starts. */
  private static final int ANY_MILLIS = 900;

  /** No two that follow each other are alike. A correction and the lanyard gate wait for affirm. */
  private static final List<String> SCRIPT =
      """
      all up two hundred ten pounds
      species red oak live wood
      stationary rope canopy anchor
      go to the main point
      live wood
      limb twelve inches by tape limb upright at the union
      stem twenty inches union sound
      sling choked three wraps seated at the union bark rough over ring
      go to redirect one
      limb eight inches by tape
      correction limb nine inches by tape
      affirm
      limb rises thirty out one foot by tape
      stem fourteen inches union sound live wood
      sling choked three wraps seated on a stub bark rough over carabiner
      anchor leg up sixty toward the stem fifteen feet
      working leg straight down twenty feet
      clipped in
      negative
      check redirect
      ready to set
      clipped in
      affirm
      rope loaded
      lanyard released
      """
          .lines()
          .toList();

  @TempDir Path folder;
  private final Random dice = new Random(ThreadLocalRandom.current().nextLong());
  private final ScheduledExecutorService killer = Executors.newSingleThreadScheduledExecutor();
  private int kills;
  private int kept;

  @AfterEach
  void rest() {
    killer.shutdownNow();
  }

  @Test
  @Timeout(value = 15, unit = TimeUnit.MINUTES)
  void nothingIsLostOrDoubled() throws IOException {
    List<Event> whole = said(uninterrupted());
    String verdict = lastVerdict(whole);
    assertEquals("good", verdict);
    int talks = 0;
    while (kills < KILLS) {
      talks++;
      CrewFolder crew = new CrewFolder(folder, "crew-" + talks);
      converse(crew);
      crew.verify();
      assertEquals(words(whole), words(said(crew)), "talk " + talks);
      assertEquals(whole, said(crew), "talk " + talks);
    }
    System.out.printf(
        "%d talks killed %d times, %d times with a line kept that had not been answered%n",
        talks, kills, kept);
  }

  private CrewFolder uninterrupted() throws IOException {
    CrewFolder crew = new CrewFolder(folder, "uninterrupted");
    try (Tool tool = new Tool(crew)) {
      tool.answer();
      for (String words : SCRIPT) {
        assertTrue(tool.answers(words), "it lives on");
      }
    }
    return crew;
  }

  private static List<Event> said(CrewFolder crew) throws IOException {
    return crew.lastConversation().stream()
        .map(Entry::event)
        .filter(Event.Said.class::isInstance)
        .toList();
  }

  private static List<String> words(List<Event> said) {
    return said.stream().map(event -> ((Event.Said) event).words()).toList();
  }

  private static String lastVerdict(List<Event> said) {
    return said.stream()
        .flatMap(event -> ((Event.Said) event).verdict().stream())
        .reduce((first, second) -> second)
        .map(verdict -> verdict.get("verdict").asText())
        .orElse("none");
  }

  /** One conversation to its end, over as many lives of the tool as it takes. */
  private void converse(CrewFolder crew) throws IOException {
    int next = 0;
    while (next < SCRIPT.size()) {
      try (Tool tool = new Tool(crew)) {
        if (kills < KILLS && dice.nextBoolean()) {
          tool.killWithin(ANY_MILLIS);
        }
        JsonNode goesOn = tool.answer();
        if (goesOn != null) {
          int after = after(goesOn, next);
          kept += after - next;
          next = after;
          next = talk(tool, next);
        }
        kills += tool.wasKilled() ? 1 : 0;
      }
    }
  }

  /** What comes next to what it says that it took last: never more than one thing is unanswered. */
  private static int after(JsonNode goesOn, int next) {
    String told = goesOn.get("answers").toString();
    boolean newest = next < SCRIPT.size() && told.contains("took was, " + SCRIPT.get(next) + ".");
    if (!newest && next > 0) {
      assertTrue(told.contains("took was, " + SCRIPT.get(next - 1) + "."), told);
    }
    return newest ? next + 1 : next;
  }

  private int talk(Tool tool, int from) throws IOException {
    int next = from;
    while (next < SCRIPT.size()) {
      if (kills < KILLS && dice.nextInt(6) == 0) {
        tool.killWithin(SOON_MILLIS);
      }
      if (!tool.answers(SCRIPT.get(next))) {
        return next;
      }
      next++;
    }
    return next;
  }

  /** One life of the tool. */
  private final class Tool implements AutoCloseable {
    private final Process process;
    private final BufferedReader answers;
    private final Writer words;
    private final AtomicInteger killed = new AtomicInteger();
    private final List<Future<?>> aims = new ArrayList<>();

    Tool(CrewFolder crew) throws IOException {
      process =
          new ProcessBuilder(
                  OwnProcess.command(
                      List.of("-Xmx128m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"),
                      List.of(
                          "resume",
                          "--type",
                          "-",
                          "--json",
                          "--crew",
                          crew.crew(),
                          "--journal",
                          crew.folder().toString())))
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      answers =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
      words = process.outputWriter(StandardCharsets.UTF_8);
    }

    /** Kills it (SIGKILL on Linux) at some moment from now. */
    void killWithin(int millis) {
      long nanos = (long) (dice.nextDouble() * millis * 1e6);
      aims.add(
          killer.schedule(
              () -> {
                if (process.isAlive()) {
                  killed.set(1);
                  process.toHandle().destroyForcibly();
                }
              },
              nanos,
              TimeUnit.NANOSECONDS));
    }

    boolean wasKilled() {
      return killed.get() > 0;
    }

    /** The next answer; null if it was killed before it came whole. */
    JsonNode answer() throws IOException {
      String line = answers.readLine();
      try {
        return line == null ? null : new ObjectMapper().readTree(line);
      } catch (com.fasterxml.jackson.core.JsonProcessingException torn) {
        return null;
      }
    }

    /** Says something and waits for the answer; whether it came. */
    boolean answers(String said) {
      try {
        words.write(said + "\n");
        words.flush();
        return answer() != null;
      } catch (IOException killedMeanwhile) {
        return false;
      }
    }

    @Override
    public void close() throws IOException {
      aims.forEach(aim -> aim.cancel(false));
      try {
        words.close();
      } catch (IOException killedMeanwhile) {
        // Nobody reads it any more.
      }
      List<String> more = new ArrayList<>();
      for (String line = answers.readLine(); line != null; line = answers.readLine()) {
        more.add(line);
      }
      assertEquals(List.of(), more, "one answer to each thing said");
      process.onExit().join();
    }
  }
}
