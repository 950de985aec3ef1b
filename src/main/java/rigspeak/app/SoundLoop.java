package rigspeak.app;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A PulseAudio server of our own, in which rigspeak can be run as a climber runs it, with real
 * sound devices and without any hardware. It has two loudspeakers that lead nowhere. What is played
 * on {@link #SAID} comes out of the tool's microphone; what the tool speaks goes to {@link
 * #ANSWERED}, where a {@link Tap} hears it.
 */
final class SoundLoop implements AutoCloseable {
  static final String SAID = "said";
  static final String ANSWERED = "answered";

  /** Ends by itself if this program dies and nobody uses it any more. */
  private static final int IDLE_SECONDS = 120;

  private static final List<String> PROGRAMS = List.of("pulseaudio", "pactl", "paplay", "parec");

  private static final String ALSA =
      """
      pcm.!default {
        type asym
        playback.pcm { type pulse device "%s" }
        capture.pcm { type pulse device "%s.monitor" }
      }
      ctl.!default { type pulse }
      """;

  private final Path folder;
  private final String answeredOn;
  private final Process server;
  private final Map<String, String> modules = new HashMap<>();

  private SoundLoop(Path folder, String answeredOn) throws IOException {
    this.folder = folder;
    this.answeredOn = answeredOn;
    Files.writeString(folder.resolve("alsa.conf"), ALSA.formatted(answeredOn, SAID));
    this.server =
        builder(
                "pulseaudio",
                "-n",
                "--daemonize=no",
                "--use-pid-file=no",
                "--disallow-exit",
                "--exit-idle-time=" + IDLE_SECONDS,
                // Where it is allowed: sound has to be on time also while this machine is busy.
                "--realtime=yes",
                "--high-priority=yes",
                "--log-target=stderr",
                "--log-level=info",
                "-L",
                "module-native-protocol-unix auth-anonymous=1 socket=" + socket())
            .start();
  }

  /** Whether the programs for it are installed. */
  static boolean isPossible() {
    String path = System.getenv().getOrDefault("PATH", "");
    return PROGRAMS.stream()
        .allMatch(
            program ->
                Stream.of(path.split(File.pathSeparator, -1))
                    .anyMatch(folder -> Files.isExecutable(Path.of(folder, program))));
  }

  /** Starts the server and plugs both loudspeakers in. */
  static SoundLoop open() throws IOException {
    return open(ANSWERED);
  }

  /** The same, but the tool speaks on the very loudspeaker that its microphone hears. */
  static SoundLoop openBesideItself() throws IOException {
    return open(SAID);
  }

  private static SoundLoop open(String answeredOn) throws IOException {
    SoundLoop loop = new SoundLoop(Files.createTempDirectory("rigspeak-"), answeredOn);
    try {
      loop.awaitServer();
      loop.plug(SAID);
      loop.plug(ANSWERED);
      return loop;
    } catch (IOException e) {
      loop.close();
      throw e;
    }
  }

  private void awaitServer() throws IOException {
    BufferedReader log =
        new BufferedReader(new InputStreamReader(server.getErrorStream(), StandardCharsets.UTF_8));
    StringBuilder said = new StringBuilder();
    for (String line = log.readLine(); line != null; line = log.readLine()) {
      said.append(line).append('\n');
      if (line.contains("startup complete")) {
        Thread rest = new Thread(() -> readOn(log), "sound server's log");
        rest.setDaemon(true);
        rest.start();
        return;
      }
    }
    throw new IOException("PulseAudio did not start: " + said);
  }

  /** A server whose log nobody reads would stop. */
  private static void readOn(BufferedReader log) {
    try {
      while (log.readLine() != null) {
        // What it says does not matter any more.
      }
    } catch (IOException e) {
      // It has been closed with the server.
    }
  }

  /** The loudspeaker on which the tool speaks. */
  String toolSpeaksOn() {
    return answeredOn;
  }

  /** Plugs a loudspeaker in. */
  void plug(String loudspeaker) throws IOException {
    String module =
        run("pactl", "load-module", "module-null-sink", "sink_name=" + loudspeaker, "rate=48000");
    modules.put(loudspeaker, module.strip());
  }

  /** Pulls its plug. */
  void unplug(String loudspeaker) throws IOException {
    run("pactl", "unload-module", modules.remove(loudspeaker));
  }

  /** Lets nothing through any more, as a device that hangs. */
  void hang(String loudspeaker) throws IOException {
    run("pactl", "suspend-sink", loudspeaker, "1");
  }

  /** Lets sound through again. */
  void resume(String loudspeaker) throws IOException {
    run("pactl", "suspend-sink", loudspeaker, "0");
  }

  /** Listens to what is played on a loudspeaker. */
  Tap tap(String loudspeaker) throws IOException {
    return new Tap(
        builder(
                "parec",
                "--latency-msec=10",
                "--device=" + loudspeaker + ".monitor",
                "--raw",
                "--format=s16le",
                "--rate=16000",
                "--channels=1")
            .start());
  }

  /** Plays a recording into the tool's microphone and waits for its end. */
  void say(Path wav) throws IOException {
    run("paplay", "--latency-msec=200", "--device=" + SAID, wav.toString());
  }

  /**
   * Somebody who is about to speak: what is written is played at once, as samples of a {@link
   * Sound}.
   */
  Process speaker() throws IOException {
    return builder(
            "pacat",
            "--playback",
            "--latency-msec=20",
            "--device=" + SAID,
            "--raw",
            "--format=s16le",
            "--rate=16000",
            "--channels=1")
        .start();
  }

  /** This very program once more, with its microphone and loudspeaker in this loop. */
  ProcessBuilder rigspeak(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Xmx256m");
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(Main.class.getName());
    command.addAll(List.of(arguments));
    return builder(command.toArray(String[]::new));
  }

  /** Runs a program to its end and gives what it printed. */
  String run(String... command) throws IOException {
    Process process = builder(command).redirectErrorStream(true).start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (exitCode(process) != 0) {
      throw new IOException(String.join(" ", command) + ": " + printed.strip());
    }
    return printed;
  }

  private static int exitCode(Process process) throws IOException {
    try {
      return process.waitFor();
    } catch (InterruptedException e) {
      process.destroy();
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
  }

  private ProcessBuilder builder(String... command) {
    ProcessBuilder builder = new ProcessBuilder(command);
    Map<String, String> environment = builder.environment();
    environment.put("HOME", folder.toString());
    environment.put("XDG_DATA_HOME", folder.toString());
    environment.put("XDG_RUNTIME_DIR", folder.toString());
    environment.put("PULSE_RUNTIME_PATH", folder.resolve("run").toString());
    environment.put("PULSE_STATE_PATH", folder.resolve("state").toString());
    environment.put("ALSA_CONFIG_PATH", folder.resolve("alsa.conf").toString());
    if (!command[0].equals("pulseaudio")) {
      environment.put("PULSE_SERVER", "unix:" + socket());
    }
    return builder;
  }

  private Path socket() {
    return folder.resolve("socket");
  }

  @Override
  public void close() throws IOException {
    server.destroy();
    exitCode(server);
    try (Stream<Path> left = Files.walk(folder)) {
      for (Path path : left.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
