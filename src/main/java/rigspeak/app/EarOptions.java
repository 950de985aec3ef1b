package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Caution;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Profile;

/** How ready the ear is to refuse, and whom it knows. */
final class EarOptions {
  @Option(
      names = "--caution",
      paramLabel = "LEVEL",
      description = {
        "how ready to refuse what is not clear: cautious, normal or eager",
        "(normal; in a drill eager, where a mishearing is told back and harms nobody)"
      })
  private Optional<Caution> caution = Optional.empty();

  @Option(
      names = "--profile",
      paramLabel = "FILE",
      description = "hear with this person's profile, see rigspeak enroll")
  private Path file;

  private final Caution usual;
  private Optional<Profile> profile = Optional.empty();

  EarOptions() {
    this(Caution.NORMAL);
  }

  /**
   * @param usual where nothing is said of it
   */
  EarOptions(Caution usual) {
    this.usual = usual;
  }

  /**
   * Reads the profile, if one is named; what cannot be used is told once the ear is open.
   *
   * @throws IOException if there is no such file
   */
  void read(PrintWriter err) throws IOException {
    if (file == null) {
      return;
    }
    profile = ProfileFiles.read(file);
    if (profile.isEmpty()) {
      err.println("The profile " + file + " is damaged and is not used; read the sentences again.");
    }
  }

  /** Opens the ear with what has been read. */
  Ear open(Grammar grammar, PrintWriter err) {
    return open(grammar, Expected.anything(), err);
  }

  /**
   * The same for another talk than a conversation.
   *
   * @param first what may be said first
   */
  Ear open(Grammar grammar, Expected first, PrintWriter err) {
    Ear ear = Ear.open(grammar, caution.orElse(usual), first);
    if (profile.isPresent() && !ear.use(profile.get())) {
      err.println(
          "The profile "
              + file
              + " was made for another model and is not used; read the sentences again.");
    }
    return ear;
  }
}
