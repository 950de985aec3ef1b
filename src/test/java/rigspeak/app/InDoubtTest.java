package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.dialogue.Attention;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Heard;
import rigspeak.journal.CrewFolder;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;

/** What the ear is not sure of: asked back, kept in the record, and nothing in its sleep. */
class InDoubtTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-05-04T12:00:00Z"), ZoneOffset.UTC);
  private static final Heard.Stretch WHEN = new Heard.Stretch(0, 1, 0, 0);

  private final Grammar grammar = Grammar.bundled();
  private final PrintWriter remarks = new PrintWriter(Writer.nullWriter());

  private static Heard perhaps(String words) {
    Heard otherwise = new Heard.NotUnderstood(Heard.Reason.OTHER_SPEECH, WHEN);
    return new Heard.Doubtful(List.of(words.split(" ", -1)), otherwise, WHEN);
  }

  private static Heard surely(String words) {
    return new Heard.Words(List.of(words.split(" ", -1)), WHEN);
  }

  private static String answers(Exchange exchange) {
    return String.join(" ", exchange.answers().stream().map(answer -> answer.text()).toList());
  }

  private static Rig rig(Session session) {
    return session.conversation().rig();
  }

  @Test
  void itIsAskedBackAndStandsWhenAffirmed() {
    Session session = new Session(grammar);

    Exchange asked = session.heard(perhaps("limb nine inches")).orElseThrow();
    assertEquals("Limb, nine inches, by eye. Say affirm, or each digit.", answers(asked));
    assertFalse(rig(session).has(Slot.LIMB_DIAMETER));
    session.heard(surely("affirm"));
    assertTrue(rig(session).has(Slot.LIMB_DIAMETER));
    Exchange noNumber = session.heard(perhaps("union sound")).orElseThrow();
    assertEquals("Union sound. Say affirm or negative.", answers(noNumber));
  }

  @Test
  void aCommandHasToBeSure() {
    Session session = new Session(grammar);

    assertEquals("Say again.", answers(session.heard(perhaps("check redirect")).orElseThrow()));
  }

  /** To say it again would not help. */
  @Test
  void aCommandThatTheNoiseNearlyDrownsIsToldToBeTooLoud() {
    Session session = new Session(grammar);
    Heard noise = new Heard.TooNoisy(WHEN);

    Exchange command =
        session.heard(new Heard.Doubtful(List.of("check", "redirect"), noise, WHEN)).orElseThrow();
    assertEquals(answers(new Session(grammar).heard(noise).orElseThrow()), answers(command));
    Exchange value =
        session.heard(new Heard.Doubtful(List.of("union", "sound"), noise, WHEN)).orElseThrow();
    assertEquals("Union sound. Say affirm or negative.", answers(value));
  }

  @Test
  void asleepNothingIsAskedBack() {
    Session session = new Session(grammar, Attention.asleep(8), Scribe.none());

    assertEquals(Optional.empty(), session.heard(perhaps("copper lantern limb nine inches")));
    assertTrue(session.isAsleep());
  }

  /** A gust is no reason to speak, with the microphone shut meanwhile. */
  @Test
  void whereNobodySpokeNothingIsAnswered() {
    Session session = new Session(grammar);

    assertEquals(
        Optional.empty(), session.heard(new Heard.NotUnderstood(Heard.Reason.NO_VOICE, WHEN)));
    assertTrue(session.heard(new Heard.NotUnderstood(Heard.Reason.OTHER_SPEECH, WHEN)).isPresent());
  }

  @Test
  void overTheRadioItIsAskedBackToo(@TempDir Path folder) throws Exception {
    Path plan = Files.writeString(folder.resolve("plan.txt"), "limb eight inches\n");
    RadioTalk talk =
        new RadioTalk(grammar, PlannedRig.read(plan.toString()).rope(), "climber", NOON);

    talk.said("say it");
    RadioTalk.Passage passage = talk.heard(perhaps("limb eight inches")).orElseThrow();
    assertTrue(
        passage.transmissions().toString().contains("Affirm, or each digit."),
        () -> passage.transmissions().toString());
  }

  /** As it was heard: played again, it waits again. */
  @Test
  void theRecordKnowsThatItWasInDoubt(@TempDir Path folder) throws IOException {
    CrewFolder crew = new CrewFolder(folder, "oak");
    try (JournalScribe scribe = new JournalScribe(crew, NOON, remarks)) {
      Session session = new Session(grammar, Attention.alwaysOpen(), scribe);
      session.begin();
      session.heard(perhaps("limb nine inches"));
    }
    try (JournalScribe scribe = new JournalScribe(crew, NOON, remarks)) {
      Session again = new Session(grammar, Attention.alwaysOpen(), scribe);
      List<Exchange> said = Resumption.begin(again, scribe, NOON);

      assertTrue(
          answers(said.get(0)).endsWith("Limb, nine inches, by eye. Say affirm, or each digit."));
      assertFalse(rig(again).has(Slot.LIMB_DIAMETER));
    }
  }
}
