package rigspeak.audio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Devices by name and form, in Java's own sound system. */
final class DevicesTest {
  private static final List<String> ALL_FORMS =
      List.of("16000 1", "48000 1", "44100 1", "16000 2", "48000 2", "44100 2");

  @AfterEach
  void unplug() {
    PluggedMixers.plug();
  }

  @Test
  void theBestNameThatCanBeOpenedIsTaken() throws Exception {
    FakeDevice inLaptop = FakeDevice.microphone("test laptop", form -> true);
    FakeDevice boom = FakeDevice.microphone("test boom", form -> true);
    FakeDevice taken = FakeDevice.microphone("test taken", form -> false);
    PluggedMixers.plug(inLaptop, boom, taken);

    assertEquals("test boom", nameOf("test boom", "test laptop"));
    assertEquals("test boom", nameOf("TEST BOOM"));
    assertEquals("test laptop", nameOf("test laptop", "test boom"));
    // Every form of the one that is taken is tried before the second choice.
    assertEquals("test boom", nameOf("test taken", "test boom"));
    assertEquals(ALL_FORMS, taken.tried());
    assertEquals(
        "The microphone cannot be opened; another program may be using it: test taken.",
        assertThrows(NoSuchDevice.class, () -> nameOf("test taken")).getMessage());
  }

  private static String nameOf(String... wishes) throws NoSuchDevice {
    try (Microphone microphone = Devices.microphone(List.of(wishes))) {
      return microphone.name();
    }
  }

  @Test
  void aDeviceThatIsPluggedInLaterIsFound() throws Exception {
    assertThrows(NoSuchDevice.class, () -> nameOf("test late"));
    PluggedMixers.plug(FakeDevice.microphone("test late", form -> true));
    assertEquals("test late", nameOf("test late"));
  }

  /** A tone of 1000 Hz crosses zero upward a thousand times a second at every rate. */
  @ParameterizedTest
  @CsvSource({"16000, 1", "48000, 1", "44100, 1", "16000, 2", "48000, 2", "44100, 2"})
  void aMicrophoneOfAnyFormGivesTheSameSound(float rate, int channels) throws Exception {
    PluggedMixers.plug(
        FakeDevice.microphone(
            "test", form -> form.getSampleRate() == rate && form.getChannels() == channels));
    short[] second = new short[Sound.RATE];
    try (Microphone microphone = Devices.microphone(List.of("test"))) {
      microphone.reopen(System.nanoTime());
      fill(microphone, new short[Sound.RATE / 10]);
      fill(microphone, second);
    }
    assertEquals(FakeDevice.TONE_HERTZ, risesOf(second), 1);
    assertEquals(FakeDevice.TONE_LOUDNESS, loudest(second), 0.01 * FakeDevice.TONE_LOUDNESS);
  }

  @ParameterizedTest
  @CsvSource({"16000, 1", "48000, 1", "44100, 1", "16000, 2", "48000, 2", "44100, 2"})
  void aLoudspeakerOfAnyFormIsGivenTheSameSound(float rate, int channels) throws Exception {
    FakeDevice device =
        FakeDevice.loudspeaker(
            "test", form -> form.getSampleRate() == rate && form.getChannels() == channels);
    PluggedMixers.plug(device);
    short[] tone = new short[Sound.RATE / 2];
    for (int i = 0; i < tone.length; i++) {
      tone[i] = (short) Math.round(8_000 * Math.sin(2 * Math.PI * 500 * i / Sound.RATE));
    }
    try (Loudspeaker loudspeaker = Devices.loudspeaker(List.of("test"))) {
      loudspeaker.play(Sound.of(tone));
    }
    byte[] bytes = device.played();
    short[] left = channel(bytes, 0, channels);
    short[] right = channel(bytes, channels - 1, channels);
    assertEquals(Sound.of(left), Sound.of(right));
    // The device was begun with its buffer full of silence.
    assertEquals(FakeDevice.BUFFER + rate / 2, left.length, 1);
    assertEquals(Sound.of(new short[FakeDevice.BUFFER]), Sound.of(left).part(0, FakeDevice.BUFFER));
    assertEquals(250, risesOf(left), 1);
    assertEquals(8_000, loudest(left), 800);
  }

  @Test
  void aPulledMicrophoneIsLostAndNotReadForEver() throws Exception {
    FakeDevice device = FakeDevice.microphone("test", form -> true);
    PluggedMixers.plug(device);
    try (Microphone microphone = Devices.microphone(List.of("test"))) {
      device.pull();
      LostDevice lost =
          assertThrows(
              LostDevice.class,
              () -> {
                while (microphone.read(new short[Sound.RATE], 0, Sound.RATE) > 0) {
                  // What it gave before.
                }
              });
      assertEquals("The microphone test is gone.", lost.getMessage());
    }
  }

  @Test
  void aPulledLoudspeakerIsLost() throws Exception {
    FakeDevice device = FakeDevice.loudspeaker("test", form -> true);
    PluggedMixers.plug(device);
    try (Loudspeaker loudspeaker = Devices.loudspeaker(List.of("test"))) {
      device.pull();
      LostDevice lost = assertThrows(LostDevice.class, () -> loudspeaker.play(Sound.silence(0.1)));
      assertEquals("The loudspeaker test is gone.", lost.getMessage());
    }
  }

  @Test
  void nothingFromBeforeTheMicrophoneWasOpenedIsHeard() throws Exception {
    FakeDevice device = FakeDevice.microphone("test", form -> true);
    PluggedMixers.plug(device);
    short[] samples = new short[Sound.RATE / 10];
    try (Microphone microphone = Devices.microphone(List.of("test"))) {
      fill(microphone, samples);
      assertTrue(loudest(samples) > 0, "it heard the tone");
      microphone.shut();
      device.mute();
      microphone.reopen(System.nanoTime());
      fill(microphone, samples);
    }
    assertEquals(0, loudest(samples));
  }

  /** Who opens it late has lost nothing of what came since the loudspeaker ended. */
  @Test
  void whatCameBeforeItWasOpenedLateIsHeard() throws Exception {
    FakeDevice device = FakeDevice.microphone("test", form -> true);
    PluggedMixers.plug(device);
    short[] samples = new short[Sound.RATE / 10];
    try (Microphone microphone = Devices.microphone(List.of("test"))) {
      microphone.shut();
      long ended = System.nanoTime();
      device.awaitGiven(Sound.RATE / 5);
      device.mute();
      microphone.reopen(ended);
      fill(microphone, samples);
    }
    assertTrue(loudest(samples) > 0, "the tone came before it was opened");
  }

  private static void fill(Microphone microphone, short[] samples) throws IOException {
    int length = 0;
    while (length < samples.length) {
      length += microphone.read(samples, length, samples.length - length);
    }
  }

  private static int risesOf(short[] samples) {
    int rises = 0;
    for (int i = 1; i < samples.length; i++) {
      if (samples[i - 1] < 0 && samples[i] >= 0) {
        rises++;
      }
    }
    return rises;
  }

  private static int loudest(short[] samples) {
    int loudest = 0;
    for (short sample : samples) {
      loudest = Math.max(loudest, Math.abs(sample));
    }
    return loudest;
  }

  private static short[] channel(byte[] bytes, int channel, int channels) {
    short[] samples = new short[bytes.length / (2 * channels)];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (short) WavForm.little(bytes, 2 * (i * channels + channel), 2);
    }
    return samples;
  }
}
