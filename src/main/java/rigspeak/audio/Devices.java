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

/**
 * The microphones and loudspeakers of this machine, by name. They are looked for anew at every
 * call, so one that was plugged in a moment ago is found.
 */
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
    return names(TargetDataLine.class);
  }

  /** Names of the lines that sound can go to. */
  public static List<String> loudspeakers() {
    return names(SourceDataLine.class);
  }

  /**
   * Opens the first microphone that can be opened, and waits until sound comes from it.
   *
   * @param wishes parts of names, best first, letter case ignored; if there are none, any
   *     microphone will do
   */
  public static Microphone microphone(List<String> wishes) throws NoSuchDevice {
    return first(
        "microphone",
        TargetDataLine.class,
        wishes,
        (name, line, form) -> {
          line.open(form, LineMicrophone.bufferBytes(form));
          return LineMicrophone.reading(name, line);
        });
  }

  /**
   * Opens the first loudspeaker that can be opened.
   *
   * @param wishes parts of names, best first, letter case ignored; if there are none, any
   *     loudspeaker will do
   */
  public static Loudspeaker loudspeaker(List<String> wishes) throws NoSuchDevice {
    return first(
        "loudspeaker",
        SourceDataLine.class,
        wishes,
        (name, line, form) -> {
          line.open(form, LineLoudspeaker.bufferBytes(form));
          return new LineLoudspeaker(name, line);
        });
  }

  /** Opens a line in one form and makes a device of it. */
  private interface Opening<L extends Line, D> {
    D open(String name, L line, AudioFormat form) throws LineUnavailableException, LostDevice;
  }

  /** The first device that can be opened: the best name first, then the best form. */
  private static <L extends Line, D> D first(
      String what, Class<L> kind, List<String> wishes, Opening<L, D> opening) throws NoSuchDevice {
    List<Mixer.Info> ranked = ranked(offering(kind), wishes);
    if (ranked.isEmpty()) {
      throw noSuch(what, wishes, names(kind));
    }
    Exception last = null;
    for (Mixer.Info device : ranked) {
      for (AudioFormat form : FORMS) {
        try {
          return open(device, kind, form, opening);
        } catch (LineUnavailableException | IllegalArgumentException e) {
          // A mixer may offer a form and then refuse it, in either way; the next may do.
          last = e;
        } catch (LostDevice e) {
          // No form helps a device that is open and dead.
          last = e;
          break;
        }
      }
    }
    String names = String.join(", ", ranked.stream().map(Mixer.Info::getName).toList());
    throw new NoSuchDevice(
        "The " + what + " cannot be opened; another program may be using it: " + names + ".", last);
  }

  private static <L extends Line, D> D open(
      Mixer.Info device, Class<L> kind, AudioFormat form, Opening<L, D> opening)
      throws LineUnavailableException, LostDevice {
    L line = kind.cast(AudioSystem.getMixer(device).getLine(new DataLine.Info(kind, form)));
    boolean opened = false;
    try {
      D result = opening.open(device.getName(), line, form);
      opened = true;
      return result;
    } finally {
      if (!opened) {
        line.close();
      }
    }
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
        if (device.getName().toLowerCase(Locale.ROOT).contains(part) && !ranked.contains(device)) {
          ranked.add(device);
        }
      }
    }
    return ranked;
  }

  private static NoSuchDevice noSuch(String what, List<String> wishes, List<String> there) {
    if (there.isEmpty()) {
      return new NoSuchDevice("This machine has no " + what + ".");
    }
    return new NoSuchDevice(
        "No "
            + what
            + " is called "
            + String.join(" or ", wishes)
            + "; there is "
            + String.join(", ", there)
            + ".");
  }

  private static List<String> names(Class<? extends Line> kind) {
    return offering(kind).stream().map(Mixer.Info::getName).toList();
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

  private static AudioFormat form(int rate, int channels) {
    return new AudioFormat(rate, 16, channels, true, false);
  }
}
