package rigspeak.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.journal.Event.Answer;
import rigspeak.journal.Event.Came;
import rigspeak.journal.Journal.Kept;

/** What is written stays, and what is not as it was written is seen. */
class JournalTest {
  private static final LocalDate TUESDAY = LocalDate.of(2026, 6, 30);

  @TempDir Path folder;
  private final HandSetClock clock = new HandSetClock(Instant.parse("2026-06-30T08:00:00Z"));
  private CrewFolder crew;

  @BeforeEach
  void name() {
    crew = new CrewFolder(folder.resolve("journals"), "oak");
  }

  /** A clock that stands until somebody sets it. */
  private static final class HandSetClock extends Clock {
    private Instant now;

    HandSetClock(Instant now) {
      this.now = now;
    }

    void forward(Duration by) {
      now = now.plus(by);
    }

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      throw new UnsupportedOperationException("one zone is enough here");
    }
  }

  private static Event said(String words) {
    return new Event.Said(
        Came.TYPED,
        words,
        Optional.empty(),
        List.of(new Answer("Taken: " + words + ".", false), new Answer("Clip in.", true)),
        JsonNodeFactory.instance.objectNode().put("kind", "values"),
        Optional.empty());
  }

  private static final List<Event> TALK =
      List.of(
          new Event.Began("1"),
          said("limb ten inches"),
          new Event.Said(
              Came.UNHEARD,
              "",
              Optional.of("too_noisy"),
              List.of(new Answer("Too loud out there.", false)),
              JsonNodeFactory.instance.objectNode().put("kind", "cannot_hear"),
              Optional.empty()),
          new Event.Failed("hearing", "java.lang.IllegalStateException: \"quoted\"\nand more"),
          new Event.Resumed("1", 2),
          said("stem größer als 1 Elle"));

  private void write(List<Event> events) throws IOException {
    try (Journal journal = Journal.open(crew, clock)) {
      for (Event event : events) {
        assertEquals(Kept.IN_ORDER, journal.append(event));
        clock.forward(Duration.ofSeconds(1));
      }
    }
  }

  private static List<Event> events(List<Entry> entries) {
    return entries.stream().map(Entry::event).toList();
  }

  private List<Event> read() throws IOException {
    return events(crew.entries(TUESDAY));
  }

  @Test
  void whatWasWrittenIsRead() throws IOException {
    write(TALK);
    List<Event> read = read();
    assertEquals(new Event.Opened("oak", TUESDAY, "0".repeat(64)), read.get(0));
    assertEquals(TALK, read.subList(1, read.size()));
    assertEquals(Instant.parse("2026-06-30T08:00:02Z"), crew.entries(TUESDAY).get(3).at());
    assertEquals(TALK, events(crew.lastConversation()));
  }

  @Test
  void everyLineIsOfTheSchema() throws IOException {
    write(TALK);
    try (Journal journal = Journal.open(crew, clock)) {
      journal.append(new Event.Recovered(3));
    }
    JsonSchema schema;
    try (InputStream text = JournalTest.class.getResourceAsStream("line.schema.json")) {
      schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    }
    for (String line : Files.readAllLines(crew.file(TUESDAY))) {
      assertEquals(
          Collections.emptySet(), schema.validate(new ObjectMapper().readTree(line)), line);
      String without = line.replace("\"at\"", "\"when\"");
      assertFalse(schema.validate(new ObjectMapper().readTree(without)).isEmpty(), without);
    }
  }

  /** The formula of docs/formats.md, worked out here once more. */
  @Test
  void theSumsAreThoseOfTheDocument() throws Exception {
    write(TALK);
    String before = "0".repeat(64);
    for (String line : Files.readAllLines(crew.file(TUESDAY))) {
      String sum = line.substring(line.length() - 66, line.length() - 2);
      String open = line.substring(0, line.length() - 66 - ",\"sum\":\"".length());
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      byte[] digest = sha.digest((before + open).getBytes(StandardCharsets.UTF_8));
      assertEquals(HexFormat.of().formatHex(digest), sum);
      before = sum;
    }
    assertEquals(before, crew.verify().get(TUESDAY).lastSum());
  }

  // ---- what was changed ----

  /** Any one byte: the file is refused, or shows a torn end, but is never taken as it stands. */
  @Test
  void everyChangedByteIsSeen() throws IOException {
    write(TALK);
    Path file = crew.file(TUESDAY);
    byte[] whole = Files.readAllBytes(file);
    int lines = crew.entries(TUESDAY).size();
    for (int i = 0; i < whole.length; i++) {
      for (int change : new int[] {1, 0x20, 0x80}) {
        byte[] changed = whole.clone();
        changed[i] ^= (byte) change;
        boolean isSeen;
        try {
          JournalFile content = JournalFile.of(file, changed);
          isSeen = content.tornBytes() > 0 && content.entries().size() == lines - 1;
        } catch (BrokenJournal e) {
          isSeen = true;
        }
        assertTrue(isSeen, "byte " + i + " changed by " + change);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "taken away, 4",
    "put in, 4",
    "changed, 4",
    "exchanged, 4",
    "first taken away, 1",
  })
  void aLineThatWasTakenAwayPutInOrExchangedIsNamed(String what, int line) throws IOException {
    write(TALK);
    Path file = crew.file(TUESDAY);
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    switch (what) {
      case "taken away" -> lines.remove(3);
      case "put in" -> lines.add(3, lines.get(2));
      case "changed" -> lines.set(3, lines.get(3).replace("noisy", "quiet"));
      case "exchanged" -> Collections.swap(lines, 3, 4);
      default -> lines.remove(0);
    }
    Files.write(file, lines);
    BrokenJournal fault = assertThrows(BrokenJournal.class, crew::verify);
    assertTrue(fault.getMessage().startsWith(file + ":" + line + ": "), fault.getMessage());
    assertEquals(
        NotKept.Why.CHANGED,
        assertThrows(NotKept.class, () -> Journal.open(crew, clock)).why(),
        "nothing is written after it");
  }

  @Test
  void aDayThatWasTakenAwayIsSeen() throws IOException {
    for (int day = 0; day < 3; day++) {
      write(List.of(new Event.Began("1"), said("limb ten inches")));
      clock.forward(Duration.ofDays(1));
    }
    assertEquals(3, crew.verify().size());
    Files.delete(crew.file(TUESDAY.plusDays(1)));
    BrokenJournal fault = assertThrows(BrokenJournal.class, crew::verify);
    assertTrue(
        fault.getMessage().startsWith(crew.file(TUESDAY.plusDays(2)) + ":1: "), fault.getMessage());
  }

  // ---- a dead battery ----

  /** Wherever the last write broke off: every whole line is there, and it goes on after it. */
  @Test
  void aFileTornAnywhereIsRecovered() throws IOException {
    write(TALK);
    Path file = crew.file(TUESDAY);
    byte[] whole = Files.readAllBytes(file);
    List<Event> all = read();
    // Every byte of the last lines, and of the others now and then: each write waits for the disk.
    for (int length = 0; length < whole.length; length += length < whole.length - 300 ? 17 : 1) {
      byte[] torn = Arrays.copyOf(whole, length);
      Files.write(file, torn);
      int lines = Math.toIntExact(new String(torn, StandardCharsets.UTF_8).lines().count());
      boolean isTorn = length > 0 && torn[length - 1] != '\n';
      write(List.of(said("and on")));
      List<Event> expected = new ArrayList<>(all.subList(0, isTorn ? lines - 1 : lines));
      if (expected.isEmpty()) {
        expected.add(all.get(0));
      }
      if (isTorn) {
        expected.add(new Event.Recovered(length - endOfLastLine(torn)));
      }
      expected.add(said("and on"));
      assertEquals(expected, read(), "torn after " + length + " bytes");
      crew.verify();
    }
  }

  private static int endOfLastLine(byte[] bytes) {
    int end = bytes.length;
    while (end > 0 && bytes[end - 1] != '\n') {
      end--;
    }
    return end;
  }

  // ---- days and clocks ----

  @Test
  void aConversationGoesOnAfterMidnightInTheNextFile() throws IOException {
    try (Journal journal = Journal.open(crew, clock)) {
      journal.append(new Event.Began("1"));
      journal.append(said("limb ten inches"));
      clock.forward(Duration.ofDays(1));
      journal.append(said("stem twenty inches"));
    }
    assertEquals(List.of(TUESDAY, TUESDAY.plusDays(1)), crew.days());
    assertEquals(2, crew.verify().size());
    assertEquals(
        List.of(
            new Event.Began("1"),
            said("limb ten inches"),
            crew.entries(TUESDAY.plusDays(1)).get(0).event(),
            said("stem twenty inches")),
        events(crew.lastConversation()));
  }

  @Test
  void aClockThatWasSetBackIsToldOnceAndTheOrderStays() throws IOException {
    try (Journal journal = Journal.open(crew, clock)) {
      assertEquals(Kept.IN_ORDER, journal.append(new Event.Began("1")));
      clock.forward(Duration.ofDays(-400));
      assertEquals(Kept.CLOCK_SET_BACK, journal.append(said("limb ten inches")));
      clock.forward(Duration.ofSeconds(1));
      assertEquals(Kept.IN_ORDER, journal.append(said("stem twenty inches")));
    }
    assertEquals(List.of(TUESDAY), crew.days());
    assertEquals(4, crew.verify().get(TUESDAY).lines());
  }

  @Test
  void crewsKeepToThemselves() throws IOException {
    write(TALK);
    CrewFolder other = new CrewFolder(crew.folder(), "oak-2026-06-30");
    try (Journal journal = Journal.open(other, clock)) {
      journal.append(new Event.Began("1"));
    }
    assertEquals(List.of(TUESDAY), crew.days());
    assertEquals(List.of(TUESDAY), other.days());
    assertEquals(2, other.entries(TUESDAY).size());
  }

  // ---- what cannot be written ----

  private NotKept.Why whyNot() {
    return assertThrows(NotKept.class, () -> Journal.open(crew, clock).append(said("limb"))).why();
  }

  @Test
  void twoProgramsDoNotWriteOneJournal() throws IOException {
    Journal first = Journal.open(crew, clock);
    assertEquals(NotKept.Why.IN_USE, whyNot());
    first.close();
    write(TALK);
  }

  static boolean hasAFullDisk() {
    return Files.isWritable(Path.of("/dev/full"));
  }

  /** Linux has a device that is always full. */
  @Test
  @EnabledIf("hasAFullDisk")
  void aFullDiskIsTold() throws IOException {
    Files.createDirectories(crew.folder());
    Files.createSymbolicLink(crew.file(TUESDAY), Path.of("/dev/full"));
    assertEquals(NotKept.Why.DISK_FULL, whyNot());
  }

  @Test
  void aFolderThatCannotBeMadeIsTold() throws IOException {
    Files.writeString(folder.resolve("journals"), "a file where a folder should be");
    assertEquals(NotKept.Why.FAILED, whyNot());
  }

  /** What Java and Linux say of folders that may only be read, and of full disks. */
  static List<Arguments> faults() {
    return List.of(
        Arguments.of(new AccessDeniedException("f"), NotKept.Why.READ_ONLY),
        Arguments.of(new ReadOnlyFileSystemException(), NotKept.Why.READ_ONLY),
        Arguments.of(
            new FileSystemException("f", null, "Read-only file system"), NotKept.Why.READ_ONLY),
        Arguments.of(
            new FileSystemException("f", null, "Operation not permitted"), NotKept.Why.READ_ONLY),
        Arguments.of(new IOException("No space left on device"), NotKept.Why.DISK_FULL),
        Arguments.of(new IOException("Disk quota exceeded"), NotKept.Why.DISK_FULL),
        Arguments.of(new IOException("File too large"), NotKept.Why.DISK_FULL),
        Arguments.of(new OverlappingFileLockException(), NotKept.Why.IN_USE),
        Arguments.of(new IOException("Input/output error"), NotKept.Why.FAILED),
        Arguments.of(new IOException((String) null), NotKept.Why.FAILED));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void theKindOfAFaultIsKnown(Exception fault, NotKept.Why why) {
    assertEquals(why, NotKept.of(folder, fault).why());
  }

  @Test
  void aFileThatIsGoneIsTold() throws IOException {
    try (Journal journal = Journal.open(crew, clock)) {
      journal.append(new Event.Began("1"));
      Files.delete(crew.file(TUESDAY));
      NotKept fault = assertThrows(NotKept.class, () -> journal.append(said("limb ten inches")));
      assertEquals(NotKept.Why.GONE, fault.why());
    }
  }
}
