package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Profile;

/** Whose voice is heard. */
final class ProfileOption {
  @Option(
      names = "--profile",
      paramLabel = "FILE",
      description = "hear with this person's profile, see rigspeak enroll")
  private Path file;

  /**
   * Gives the profile to the ear. One that cannot be used is told, and the ear hears without it.
   *
   * @throws IOException if there is no such file
   */
  void giveTo(Ear ear, PrintWriter err) throws IOException {
    if (file == null) {
      return;
    }
    Optional<Profile> profile = ProfileFiles.read(file);
    if (profile.isEmpty()) {
      err.println("The profile " + file + " is damaged and is not used; read the sentences again.");
    } else if (!ear.use(profile.get())) {
      err.println(
          "The profile "
              + file
              + " was made for another model and is not used; read the sentences again.");
    }
  }
}
