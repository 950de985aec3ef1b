package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.audio.Devices;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.WavFile;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Enrolment;
import rigspeak.hearing.Profile;
import rigspeak.speaking.FreeTtsVoice;
import rigspeak.speaking.Pace;
import rigspeak.speaking.Voice;

/** The ear gets to know a person. */
@Command(
    name = "enroll",
    mixinStandardHelpOptions = true,
    description = {
      "The ear gets to know a person, who reads thirty sentences.",
      "On the ground, in a quiet place, with the headset that is worn aloft. Each sentence is",
      "printed and spoken; read it after that. The profile that comes of it is used with",
      "--profile in listen, hear and transcribe."
    })
final class EnrollCommand implements Callable<Integer> {
  /** So often a sentence is asked for. */
  private static final int TRIES = 3;

  @Parameters(paramLabel = "NAME", description = "whose voice it is: one word")
  private String name;

  @Option(
      names = "--from",
      paramLabel = "DIR",
      description = "take recordings from this folder instead: by name, one for each sentence")
  private Path from;

  @Option(names = "--sentences", description = "print the sentences and do nothing else")
  private boolean onlySentences;

  @Option(
      names = "--profile",
      paramLabel = "FILE",
      description = "write the profile there, not to the usual folder")
  private Path file;

  @Option(names = "--mic", paramLabel = "NAME", description = "part of the microphone's name")
  private List<String> microphones = List.of();

  @Option(names = "--speaker", paramLabel = "NAME", description = "part of the loudspeaker's name")
  private List<String> loudspeakers = List.of();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws IOException, NoSuchDevice {
    PrintWriter out = spec.commandLine().getOut();
    if (onlySentences) {
      Enrolment.sentences().forEach(out::println);
      return 0;
    }
    if (!Profile.isName(name)) {
      throw new ParameterException(
          spec.commandLine(), "A name is one word of letters and figures: " + name);
    }
    if (from != null) {
      Enrolment enrolment = new Enrolment(Ear.open(Grammar.bundled()));
      readRecordings(enrolment, out);
      return keep(enrolment, out);
    }
    try (Loudspeaker loudspeaker = Devices.loudspeaker(loudspeakers);
        Microphone microphone = Devices.microphone(microphones)) {
      Enrolment enrolment = new Enrolment(Ear.open(Grammar.bundled()));
      readAloud(enrolment, microphone, loudspeaker, FreeTtsVoice.load(), out);
      return keep(enrolment, out);
    }
  }

  private void readRecordings(Enrolment enrolment, PrintWriter out) throws IOException {
    List<String> sentences = Enrolment.sentences();
    List<Path> wavs = Recordings.named(List.of(from));
    if (wavs.size() != sentences.size()) {
      throw new IOException(
          from
              + " has "
              + wavs.size()
              + " recordings; one for each of the "
              + sentences.size()
              + " sentences is wanted, in the order of the names");
    }
    for (int i = 0; i < sentences.size(); i++) {
      try (WavFile wav = WavFile.open(wavs.get(i))) {
        told(out, wavs.get(i).getFileName() + "  ", sentences.get(i), enrolment.read(i, wav));
      }
    }
  }

  /**
   * Asks for each sentence until it is read well, at most three times.
   *
   * @throws IOException if the microphone is lost
   */
  static void readAloud(
      Enrolment enrolment,
      Microphone microphone,
      Loudspeaker loudspeaker,
      Voice voice,
      PrintWriter out)
      throws IOException {
    List<String> sentences = Enrolment.sentences();
    for (int i = 0; i < sentences.size(); i++) {
      Enrolment.Reading reading = Enrolment.Reading.NOTHING;
      for (int t = 0; t < TRIES && reading != Enrolment.Reading.TAKEN; t++) {
        out.printf("Read  %d of %d: %s%n", i + 1, sentences.size(), sentences.get(i));
        out.flush();
        microphone.shut();
        microphone.reopen(loudspeaker.play(voice.speak(sentences.get(i), Pace.ORDINARY)));
        reading = enrolment.read(i, microphone);
        told(out, "", sentences.get(i), reading);
      }
    }
  }

  private static void told(
      PrintWriter out, String where, String sentence, Enrolment.Reading reading) {
    String what =
        switch (reading) {
          case TAKEN -> "taken     " + sentence;
          case NOTHING -> "again     nothing was heard";
          case TOO_QUIET -> "again     too quiet: the microphone nearer to the mouth";
          case TOO_NOISY -> "again     too noisy: a quieter place";
          case CLIPPED -> "again     too loud: the microphone is overdriven";
          case OTHER_WORDS -> "again     it sounded like other words than: " + sentence;
          case NOT_SPEECH -> "again     it was no sentence";
        };
    out.println(where + what);
    out.flush();
  }

  private int keep(Enrolment enrolment, PrintWriter out) throws IOException {
    int all = Enrolment.sentences().size();
    Optional<Enrolment.Enrolled> done = enrolment.finish(name);
    if (done.isEmpty()) {
      spec.commandLine()
          .getErr()
          .printf(
              "Only %d of %d sentences could be taken, and %d are wanted: no profile is written.%n",
              enrolment.taken(), all, Enrolment.LEAST_SENTENCES);
      return Fault.BAD_INPUT;
    }
    Profile profile = done.get().profile();
    Path to = file == null ? ProfileFiles.usual(name) : file;
    ProfileFiles.write(to, profile);
    out.printf(
        Locale.ROOT,
        "Of %d sentences the ear understands %d without the profile and %d with it.%n",
        profile.sentences(),
        done.get().understoodBefore(),
        done.get().understoodWith());
    out.println("Written to " + to + ".");
    out.flush();
    return 0;
  }
}
