package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigspeak.audio.Sound;
import rigspeak.audio.WavFile;
import rigspeak.hearing.CepstrumMap;
import rigspeak.hearing.Enrolment;
import rigspeak.hearing.Levels;
import rigspeak.hearing.Profile;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Pace;

/** Enrolment and its profile on the command line. */
class EnrollTest {
  private static final Path STEM = Path.of("demo-data/one-day/03-ground-stem.wav");

  @TempDir Path folder;

  @Test
  void recordingsBecomeAProfileThatIsUsed() throws IOException {
    Path readings = Files.createDirectory(folder.resolve("readings"));
    FreeTtsVoice voice = FreeTtsVoice.load();
    List<String> sentences = Enrolment.sentences();
    for (int i = 0; i < sentences.size(); i++) {
      Sound pause = Sound.silence(0.6);
      WavFile.write(
          readings.resolve(String.format("%02d.wav", i + 1)),
          Sound.joined(List.of(pause, voice.speak(sentences.get(i), Pace.ORDINARY), pause)));
    }
    Path profile = folder.resolve("deep").resolve("down").resolve("wren.profile");

    Cli enrolled = Cli.run("enroll", "wren", "--from", readings, "--profile", profile);

    assertEquals(0, enrolled.exitCode(), enrolled.out() + enrolled.err());
    assertEquals(30, enrolled.out().lines().filter(l -> l.contains("taken     ")).count());
    assertTrue(enrolled.out().contains("Written to " + profile + "."), enrolled.out());
    assertEquals("wren", Profile.read(Files.readString(profile)).orElseThrow().name());
    Path said = readings.resolve("03.wav");
    Cli heard = Cli.run("transcribe", "--profile", profile, said);
    assertEquals(said + ": limb eight inches by tape\n", heard.out());
    assertEquals("", heard.err());
  }

  @Test
  void tooFewRecordingsAreTold() throws IOException {
    Path readings = Files.createDirectory(folder.resolve("readings"));
    Files.copy(STEM, readings.resolve("01.wav"));

    Cli cli = Cli.run("enroll", "wren", "--from", readings, "--profile", folder.resolve("p"));

    assertEquals(3, cli.exitCode());
    assertTrue(cli.err().contains("one for each of the 30 sentences"), cli.err());
    assertFalse(Files.exists(folder.resolve("p")));
  }

  @Test
  void aDamagedProfileIsToldAndThePlainEarHears() throws IOException {
    Path profile = Files.writeString(folder.resolve("p"), "rigspeak profile 1\nname wren\n");

    assertPlain(profile, "is damaged and is not used; read the sentences again.");
    Files.write(profile, new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertPlain(profile, "is damaged and is not used; read the sentences again.");
  }

  @Test
  void aProfileOfAnotherModelIsToldAndThePlainEarHears() throws IOException {
    Path profile = folder.resolve("p");
    ProfileFiles.write(
        profile, new Profile("wren", "00000000", 30, new Levels(-20, -60), CepstrumMap.none()));

    assertPlain(profile, "was made for another model and is not used; read the sentences again.");
  }

  private static void assertPlain(Path profile, String told) {
    Cli cli = Cli.run("transcribe", "--profile", profile, STEM);
    assertEquals(0, cli.exitCode());
    assertEquals(STEM + ": stem one eight inches by tape\n", cli.out());
    assertEquals("The profile " + profile + " " + told + "\n", cli.err());
  }

  @Test
  void aMissingProfileIsBadInput() {
    Cli cli = Cli.run("transcribe", "--profile", folder.resolve("none"), STEM);

    assertEquals(3, cli.exitCode());
    assertEquals("There is no file " + folder.resolve("none") + ".\n", cli.err());
  }

  @Test
  void aNameThatIsNoFileNameIsUsage() {
    assertEquals(2, Cli.run("enroll", "../wren", "--from", folder).exitCode());
  }

  @Test
  void theSentencesCanBePrinted() {
    assertEquals(
        Enrolment.sentences(), Cli.run("enroll", "wren", "--sentences").out().lines().toList());
  }

  @Test
  void aWriteThatFailsLeavesNothingBehindAndTheOldOneAsItWas() throws IOException {
    Profile profile = new Profile("wren", "00000000", 30, new Levels(-20, -60), CepstrumMap.none());
    Path file = folder.resolve("wren.profile");
    ProfileFiles.write(file, profile);
    ProfileFiles.write(file, profile);
    assertEquals(List.of(file), files());

    Path occupied = Files.createDirectories(folder.resolve("occupied.profile/by this")).getParent();
    assertThrows(IOException.class, () -> ProfileFiles.write(occupied, profile));

    assertEquals(List.of(occupied, file), files());
    assertEquals(profile, ProfileFiles.read(file).orElseThrow());
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }

  /** XDG base directory specification: data of the user, relative paths do not count. */
  @Test
  void profilesLieWhereTheUsersDataLies() {
    Path home = Path.of("/home/wren");
    assertEquals(
        Path.of("/data/rigspeak/profiles/wren.profile"),
        ProfileFiles.usual("wren", Map.of("XDG_DATA_HOME", "/data"), home));
    Path usual = Path.of("/home/wren/.local/share/rigspeak/profiles/wren.profile");
    assertEquals(usual, ProfileFiles.usual("wren", Map.of(), home));
    assertEquals(usual, ProfileFiles.usual("wren", Map.of("XDG_DATA_HOME", "data"), home));
  }
}
