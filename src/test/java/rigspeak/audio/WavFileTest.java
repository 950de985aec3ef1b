package rigspeak.audio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

final class WavFileTest {
  @TempDir Path folder;

  static Stream<Arguments> everyKind() {
    return Stream.of(8_000, 11_025, 16_000, 22_050, 44_100, 48_000)
        .flatMap(
            rate ->
                Stream.of(1, 2)
                    .flatMap(
                        channels ->
                            Stream.of(
                                Arguments.of(rate, channels, 8, false),
                                Arguments.of(rate, channels, 16, false),
                                Arguments.of(rate, channels, 24, false),
                                Arguments.of(rate, channels, 32, false),
                                Arguments.of(rate, channels, 32, true),
                                Arguments.of(rate, channels, 64, true))));
  }

  @ParameterizedTest(name = "{0} Hz, {1} channels, {2} bits, floating {3}")
  @MethodSource("everyKind")
  void aToneIsTheSameToneInEveryKindOfFile(int rate, int channels, int bits, boolean floating)
      throws IOException {
    WavBytes writer = new WavBytes(rate, channels, bits, floating);
    byte[] plain = writer.file(rate / 2, i -> 0.5 * Math.sin(2 * Math.PI * 440 * i / rate));
    byte[] extensible =
        writer
            .extensible()
            .withExtraChunk()
            .file(rate / 2, i -> 0.5 * Math.sin(2 * Math.PI * 440 * i / rate));

    Sound sound = read(plain);

    assertEquals(8_000, sound.length(), 2, "half a second of 16,000 samples a second");
    double squares = 0;
    for (int i = 400; i < 7_600; i++) {
      double error = sound.sample(i) - 0.5 * 32_768 * Math.sin(2 * Math.PI * 440 * i / 16_000.0);
      squares += error * error;
    }
    // Rounding to steps of q leaves an error of q / sqrt(12); on top comes the 16-bit result's own
    // step and the 0.01 dB that the filter may differ in the band.
    double step = bits == 8 ? 256 : 1;
    double allowed = step / Math.sqrt(12) + 1 + 0.00115 * 16_384;
    assertTrue(Math.sqrt(squares / 7_200) < allowed, "error " + Math.sqrt(squares / 7_200));
    assertEquals(sound, read(extensible), "the longer header changes nothing");
  }

  @Test
  void theChannelsOfAStereoFileAreAveraged() throws IOException {
    byte[] data = {0, 0x10, 0, 0x30, 0, 0x20, 0, 0x20};
    byte[] file = new WavBytes(16_000, 2, 16, false).file(data, data.length);

    Sound sound = read(file);

    assertEquals(Sound.of(new short[] {0x2000, 0x2000}), sound);
  }

  @Test
  void whatIsWrittenIsReadBack() throws IOException {
    Sound sound = Sound.of(new short[] {0, 1, -1, Short.MAX_VALUE, Short.MIN_VALUE, 12_345});
    Path file = folder.resolve("a.wav");

    WavFile.write(file, sound);

    assertEquals(sound, WavFile.read(file));
    byte[] byHand =
        new WavBytes(16_000, 1, 16, false)
            .file(new byte[] {0, 0, 1, 0, -1, -1, -1, 127, 0, -128, 0x39, 0x30}, 12);
    assertTrue(Arrays.equals(byHand, Files.readAllBytes(file)), "byte for byte");
  }

  @Test
  void blockByBlockIsTheSameAsWhole() throws IOException {
    byte[] file = new WavBytes(44_100, 2, 16, false).file(30_000, i -> 0.3 * Math.sin(i * i / 9e5));
    Sound whole = read(file);

    for (int block : List.of(1, 7, 160, 1_000, 100_000)) {
      short[] all = new short[whole.length() + block];
      int length = 0;
      try (WavFile stream = open(file)) {
        int read = stream.read(all, 0, block);
        while (read != SoundStream.END) {
          assertTrue(read >= 1 && read <= block, "at least one, no more than asked for");
          length += read;
          read = stream.read(all, length, block);
        }
      }
      assertEquals(whole, Sound.of(Arrays.copyOf(all, length)), "in blocks of " + block);
    }
  }

  @Test
  void hoursOfSoundAreReadNoFurtherThanTheyAreHeard() throws IOException {
    int frames = 9 * 3600 * 8_000;
    byte[] header = new WavBytes(8_000, 1, 8, false).file(new byte[0], frames);
    Hours hours = new Hours(header);
    try (WavFile file = WavFile.open("long.wav", hours)) {
      short[] block = new short[4_096];
      long samples = 0;
      while (samples < 60 * Sound.RATE) {
        samples += file.read(block, 0, block.length);
        // Two samples are heard for each byte of the file.
        assertTrue(hours.given < samples / 2 + 200_000, "read ahead at " + samples);
      }
      assertEquals(Optional.empty(), file.remark());
    }
  }

  /** A header and then silence without end. */
  private static final class Hours extends InputStream {
    private final byte[] header;
    private long given;

    Hours(byte[] header) {
      this.header = header;
    }

    @Override
    public int read() {
      int value = given < header.length ? header[(int) given] & 0xff : 128;
      given++;
      return value;
    }

    @Override
    public int read(byte[] into, int from, int most) {
      for (int i = 0; i < most; i++) {
        into[from + i] = (byte) read();
      }
      return most;
    }
  }

  @Test
  void aFileThatBreaksOffIsReadAsFarAsItGoes() throws IOException {
    WavBytes writer = new WavBytes(16_000, 1, 16, false);
    byte[] data = writer.data(8_000, i -> 0.25);
    byte[] oddEnd = Arrays.copyOf(data, data.length - 1);

    try (WavFile file = open(writer.file(oddEnd, 4L * data.length))) {
      Sound sound = Sound.readAll(file);

      assertEquals(7_999, sound.length());
      assertEquals(
          Optional.of("x.wav breaks off: its header promises 2.0 seconds, 0.5 are there."),
          file.remark());
    }
  }

  @Test
  void aWriterThatDidNotKnowTheLengthIsForgiven() throws IOException {
    WavBytes writer = new WavBytes(16_000, 1, 16, false);
    byte[] data = writer.data(1_000, i -> 0.25);
    for (long promised : List.of(0x7FFF_F000L, 0xFFFF_FFFFL)) {
      try (WavFile file = open(writer.file(data, promised))) {
        assertEquals(1_000, Sound.readAll(file).length());
        assertEquals(Optional.empty(), file.remark());
      }
    }
  }

  @Test
  void aFloatThatIsNoNumberIsSilenceAndTooLargeOnesAreCut() throws IOException {
    double[] values = {Double.NaN, 0.5, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 3};
    byte[] file = new WavBytes(16_000, 1, 32, true).file(5, i -> values[i]);

    assertEquals(Sound.of(new short[] {0, 16_384, 32_767, -32_768, 32_767}), read(file));
  }

  static Stream<Arguments> unreadable() {
    WavBytes plain = new WavBytes(16_000, 1, 16, false);
    byte[] good = plain.file(100, i -> 0);
    byte[] otherKind = good.clone();
    otherKind[8] = 'A';
    return Stream.of(
        Arguments.of(new byte[0], "x.wav is empty."),
        Arguments.of(
            "hello, this is text".getBytes(StandardCharsets.UTF_8), "x.wav is not a WAV file."),
        Arguments.of(otherKind, "x.wav is not a WAV file."),
        Arguments.of(Arrays.copyOf(good, 3), "x.wav is not a WAV file."),
        Arguments.of(Arrays.copyOf(good, 8), "x.wav breaks off before its sound begins."),
        Arguments.of(Arrays.copyOf(good, 20), "x.wav breaks off before its sound begins."),
        Arguments.of(Arrays.copyOf(good, 40), "x.wav breaks off before its sound begins."),
        Arguments.of(Arrays.copyOf(good, 44), "x.wav has a header but no sound in it."),
        Arguments.of(plain.file(0, i -> 0), "x.wav has a header but no sound in it."),
        Arguments.of(
            WavBytes.coded(7).file(new byte[100], 100),
            "x.wav is written in a way that is not understood here (coding 7, 8 bits);"
                + " save it as a 16-bit WAV file."),
        Arguments.of(
            new WavBytes(16_000, 9, 16, false).file(10, i -> 0),
            "x.wav has 9 channels; one or two are needed."),
        Arguments.of(
            new WavBytes(96_000, 1, 16, false).file(10, i -> 0),
            "x.wav has 96000 samples a second; between 8000 and 48000 are needed."));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("unreadable")
  void whatCannotBeHeardIsRefusedInOneSentence(byte[] bytes, String sentence) {
    UnreadableSound refusal = assertThrows(UnreadableSound.class, () -> read(bytes));

    assertEquals(sentence, refusal.getMessage());
  }

  @Test
  void aMissingFileAndAFolderAreNamed() {
    Path missing = folder.resolve("no.wav");
    assertEquals(
        "There is no file " + missing + ".",
        assertThrows(UnreadableSound.class, () -> WavFile.open(missing)).getMessage());
    assertEquals(
        folder.getFileName() + " is a folder, not a sound file.",
        assertThrows(UnreadableSound.class, () -> WavFile.open(folder)).getMessage());
  }

  private static WavFile open(byte[] bytes) throws UnreadableSound {
    return WavFile.open("x.wav", new ByteArrayInputStream(bytes));
  }

  private static Sound read(byte[] bytes) throws IOException {
    try (WavFile file = open(bytes)) {
      return Sound.readAll(file);
    }
  }
}
