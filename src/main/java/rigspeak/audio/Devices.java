package rigspeak.audio;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.Line;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;
import javax.sound.sampled.TargetDataLine;

/** The microphones and loudspeakers of this machine, by name. */
public final class Devices {
  /** The forms a line is asked for, best first: the tool's own, then what sound cards offer. */
  private static final List<AudioFormat> FORMS =
      List.of(
          form(Sound.RATE, 1),
          form(48_000, 1),
          form(44_100, 1),
          form(Sound.RATE, 2),
          form(48_000, 2),
          form(44_100, 2));

  private Devices() {}

  /** Names of the lines that sound can come from. */
  public static List<String> microphones() {
    return offering(TargetDataLine.class).stream().map(Devices::name).toList();
  }

  /** Names of the lines that sound can go to. */
  public static List<String> loudspeakers() {
    return offering(SourceDataLine.class).stream().map(Devices::name).toList();
  }

  /**
   * Opens the first microphone that can be opened.
   *
   * @param wishes parts of names, best first, letter case ignored; if there are none, any
   *     microphone will do
   */
  public static Microphone microphone(List<String> wishes) throws NoSuchDevice {
    List<Mixer.Info> ranked = ranked(offering(TargetDataLine.class), wishes);
    refuseIfNone(ranked, wishes, "microphone", microphones());
    LineUnavailableException last = null;
    for (Mixer.Info device : ranked) {
      for (AudioFormat form : FORMS) {
        DataLine.Info wanted = new DataLine.Info(TargetDataLine.class, form);
        if (AudioSystem.getMixer(device).isLineSupported(wanted)) {
          try {
            TargetDataLine line = (TargetDataLine) AudioSystem.getMixer(device).getLine(wanted);
            line.open(form);
            return new LineMicrophone(name(device), line);
          } catch (LineUnavailableException e) {
            last = e;
          }
        }
      }
    }
    throw busy("microphone", ranked, last);
  }

  /**
   * Opens the first loudspeaker that can be opened.
   *
   * @param wishes parts of names, best first, letter case ignored; if there are none, any
   *     loudspeaker will do
   */
  public static Loudspeaker loudspeaker(List<String> wishes) throws NoSuchDevice {
    List<Mixer.Info> ranked = ranked(offering(SourceDataLine.class), wishes);
    refuseIfNone(ranked, wishes, "loudspeaker", loudspeakers());
    LineUnavailableException last = null;
    for (Mixer.Info device : ranked) {
      for (AudioFormat form : FORMS) {
        DataLine.Info wanted = new DataLine.Info(SourceDataLine.class, form);
        if (AudioSystem.getMixer(device).isLineSupported(wanted)) {
          try {
            SourceDataLine line = (SourceDataLine) AudioSystem.getMixer(device).getLine(wanted);
            line.open(form);
            return new LineLoudspeaker(name(device), line);
          } catch (LineUnavailableException e) {
            last = e;
          }
        }
      }
    }
    throw busy("loudspeaker", ranked, last);
  }

  /**
   * The devices whose names contain a wish, in the order of the wishes; all if there is no wish.
   */
  private static List<Mixer.Info> ranked(List<Mixer.Info> devices, List<String> wishes) {
    if (wishes.isEmpty()) {
      return devices;
    }
    List<Mixer.Info> ranked = new ArrayList<>();
    for (String wish : wishes) {
      String part = wish.toLowerCase(Locale.ROOT);
      for (Mixer.Info device : devices) {
        if (name(device).toLowerCase(Locale.ROOT).contains(part) && !ranked.contains(device)) {
          ranked.add(device);
        }
      }
    }
    return ranked;
  }

  private static void refuseIfNone(
      List<Mixer.Info> ranked, List<String> wishes, String kind, List<String> there)
      throws NoSuchDevice {
    if (!ranked.isEmpty()) {
      return;
    }
    if (there.isEmpty()) {
      throw new NoSuchDevice("This machine has no " + kind + ".");
    }
    throw new NoSuchDevice(
        "No "
            + kind
            + " is called "
            + String.join(" or ", wishes)
            + "; there is "
            + String.join(", ", there)
            + ".");
  }

  private static NoSuchDevice busy(
      String kind, List<Mixer.Info> ranked, LineUnavailableException cause) {
    String names = String.join(", ", ranked.stream().map(Devices::name).toList());
    return new NoSuchDevice(
        "The " + kind + " cannot be opened; another program may be using it: " + names + ".",
        cause);
  }

  private static List<Mixer.Info> offering(Class<? extends Line> kind) {
    return Arrays.stream(AudioSystem.getMixerInfo())
        .filter(
            device -> {
              Mixer mixer = AudioSystem.getMixer(device);
              return FORMS.stream()
                  .anyMatch(form -> mixer.isLineSupported(new DataLine.Info(kind, form)));
            })
        .toList();
  }

  private static String name(Mixer.Info device) {
    return device.getName();
  }

  private static AudioFormat form(int rate, int channels) {
    return new AudioFormat(rate, 16, channels, true, false);
  }
}
