package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.answer.Mishap;
import rigspeak.answer.Utterance;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Attention;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.grammar.Grammar;
import rigspeak.journal.CrewFolder;
import rigspeak.journal.Event;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.verdict.Judge;

/** Whatever fails in the machine: one sentence, nothing taken, written down, and it goes on. */
class FaultTest {
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Dialogue DIALOGUE =
      new Dialogue(Catalogue.bundled(), new Judge(Catalogue.bundled()));

  @TempDir Path folder;
  private final StringWriter remarks = new StringWriter();

  private CrewFolder crew() {
    return new CrewFolder(folder, "oak");
  }

  private JournalScribe scribe(Clock clock) {
    return new JournalScribe(crew(), clock, new PrintWriter(remarks, true));
  }

  /** What can go wrong while a verdict is reckoned. */
  enum Ill {
    A_FAULT_IN_THE_PROGRAM(Mishap.RECKONING_FAILED),
    TOO_DEEP(Mishap.RECKONING_FAILED),
    OUT_OF_MEMORY(Mishap.OUT_OF_MEMORY),
    NEVER_ENDS(Mishap.TOO_LONG);

    private final Mishap told;

    Ill(Mishap told) {
      this.told = told;
    }

    void happen() {
      switch (this) {
        case A_FAULT_IN_THE_PROGRAM -> throw new IllegalStateException("made to fail");
        case TOO_DEEP -> tooDeep(0);
        case OUT_OF_MEMORY -> throw new OutOfMemoryError("made to fail");
        case NEVER_ENDS -> {
          try {
            new CountDownLatch(1).await();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
        }
      }
    }

    private static int tooDeep(int depth) {
      return depth < Integer.MAX_VALUE ? tooDeep(depth + 1) + 1 : depth;
    }
  }

  @ParameterizedTest
  @EnumSource(Ill.class)
  void aVerdictThatFailsLeavesTheConversationWhereItWas(Ill ill) throws IOException {
    Reckoning.Step step =
        (before, meaning) -> {
          if (meaning == Meaning.Command.CHECK) {
            ill.happen();
          }
          return DIALOGUE.step(before, meaning);
        };
    Reckoning reckoning = new Reckoning(UNDERSTANDING, step, Duration.ofSeconds(2));
    try (JournalScribe scribe = scribe(Clock.systemUTC())) {
      Session session = new Session(UNDERSTANDING, reckoning, Attention.alwaysOpen(), scribe);
      assertEquals(Optional.empty(), session.begin());
      session.said("limb eight inches by tape");
      Conversation before = session.conversation();

      Exchange failed = session.said("check redirect");

      assertEquals(Optional.of(ill.told), failed.mishap());
      assertEquals(List.of(ill.told.utterance()), failed.answers());
      assertFalse(failed.understood());
      assertSame(before, session.conversation());
      assertEquals(
          "Stem, one four inches, by eye.",
          session.said("stem fourteen inches").answers().get(0).text());
    }
    List<Event> kept = crew().lastConversation().stream().map(entry -> entry.event()).toList();
    assertEquals(4, kept.size());
    assertEquals("reckoning", ((Event.Failed) kept.get(2)).what());
  }

  /** Only the record looks at the clock, so whatever it shows the same is answered. */
  @Test
  void aClockThatJumpsChangesNoAnswer() throws IOException {
    List<String> talk =
        List.of(
            "limb eight inches by tape", "what is missing", "clipped in", "affirm", "tell me why");
    Deque<Long> hours = new ArrayDeque<>(List.of(0L, 0L, 9_000L, -9_000L, 30L, 1L, -1L, 500L, 0L));
    Clock jumping =
        new Clock() {
          private Instant now = Instant.parse("2026-06-30T08:00:00Z");

          @Override
          public Instant instant() {
            Long by = hours.poll();
            now = now.plus(Duration.ofHours(by == null ? 0 : by));
            return now;
          }

          @Override
          public ZoneId getZone() {
            return ZoneOffset.UTC;
          }

          @Override
          public Clock withZone(ZoneId zone) {
            return this;
          }
        };
    Session calm = new Session(Grammar.bundled());
    int told = 0;
    try (JournalScribe scribe = scribe(jumping)) {
      Session session = new Session(Grammar.bundled(), Attention.alwaysOpen(), scribe);
      session.begin();
      for (String words : talk) {
        List<Utterance> expected = calm.said(words).answers();
        List<Utterance> answers = session.said(words).answers();
        assertEquals(expected, answers.subList(0, expected.size()));
        told += answers.size() - expected.size();
      }
    }
    assertTrue(told > 0, "it was set back");
    crew().verify();
  }

  /** What is spoken has to be read as words by whoever hears it, and must promise nothing. */
  @ParameterizedTest
  @EnumSource(Mishap.class)
  void everySentenceIsPlain(Mishap mishap) {
    assertTrue(mishap.text().matches("([A-Z][a-z, ]*( I [a-z, ]+)?\\. ?){1,4}"), mishap.text());
    assertFalse(mishap.text().contains("ood to load"), mishap.text());
    assertTrue(mishap.text().split(" ").length <= 16, mishap.text());
  }
}
