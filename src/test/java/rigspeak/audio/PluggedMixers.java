package rigspeak.audio;

import java.util.List;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.spi.MixerProvider;

/**
 * Sound devices of the tests, plugged into Java's own sound system; none unless a test plugs one.
 */
public final class PluggedMixers extends MixerProvider {
  private static List<FakeDevice> plugged = List.of();

  static void plug(FakeDevice... devices) {
    plugged = List.of(devices);
  }

  @Override
  public Mixer.Info[] getMixerInfo() {
    return plugged.stream().map(FakeDevice::info).toArray(Mixer.Info[]::new);
  }

  @Override
  public Mixer getMixer(Mixer.Info info) {
    return plugged.stream()
        .filter(device -> device.info().equals(info))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such mixer"))
        .mixer();
  }
}
