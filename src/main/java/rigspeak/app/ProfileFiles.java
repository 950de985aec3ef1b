package rigspeak.app;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import rigspeak.hearing.Profile;

/** Where profiles are kept. */
final class ProfileFiles {
  private static final int LONGEST = 100_000;

  private ProfileFiles() {}

  /**
   * The usual file of a person: where the XDG base directory specification wants data of the user.
   *
   * @param environment {@code XDG_DATA_HOME} counts if it is an absolute path
   */
  static Path usual(String name, Map<String, String> environment, Path home) {
    Path data = Path.of(environment.getOrDefault("XDG_DATA_HOME", ""));
    Path base = data.isAbsolute() ? data : home.resolve(".local").resolve("share");
    return base.resolve("rigspeak").resolve("profiles").resolve(name + ".profile");
  }

  /** The usual file of a person on this machine. */
  static Path usual(String name) {
    return usual(name, System.getenv(), Path.of(System.getProperty("user.home")));
  }

  /** What a file holds; nothing if that is no whole profile. */
  static Optional<Profile> read(Path file) throws IOException {
    try {
      return Profile.read(WholeFile.read(file, LONGEST));
    } catch (CharacterCodingException | WholeFile.TooLong e) {
      return Optional.empty();
    }
  }

  /** Writes the whole file or nothing: a profile that is there stays until the new one is whole. */
  static void write(Path file, Profile profile) throws IOException {
    WholeFile.write(file, profile.text().getBytes(StandardCharsets.UTF_8));
  }
}
