package rigspeak.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rigspeak.journal.CrewFolder;

/** Whose journal it is, and where. */
final class JournalOptions {
  private static final String USUAL_CREW = "crew";

  @Option(names = "--crew", paramLabel = "NAME", description = "whose journal it is (crew)")
  private String crew;

  @Option(names = "--journal", paramLabel = "DIR", description = "where it is kept instead")
  private Path folder;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /** Whether one was named at all. */
  boolean isNamed() {
    return crew != null || folder != null;
  }

  CrewFolder crewFolder() {
    String name = crew == null ? USUAL_CREW : crew;
    if (!CrewFolder.isCrew(name)) {
      throw new ParameterException(
          spec.commandLine(),
          "A crew's name is one to forty letters, figures, - and _, not " + name + ".");
    }
    return new CrewFolder(folder == null ? usual() : folder, name);
  }

  private static Path usual() {
    return ProfileFiles.usual("any").getParent().resolveSibling("journals");
  }

  JournalScribe scribe() {
    return new JournalScribe(
        crewFolder(), Clock.system(ZoneId.systemDefault()), spec.commandLine().getErr());
  }

  /** Nobody writes where no journal was named. */
  Scribe scribeIfNamed() {
    return isNamed() ? scribe() : Scribe.none();
  }
}
