package rigspeak.journal;

import java.io.IOException;
import java.nio.file.Path;

/** A journal in which a line is not as it was written. Nothing is written after it. */
public final class BrokenJournal extends IOException {
  private static final long serialVersionUID = 1L;

  BrokenJournal(Path file, long line, String why) {
    super(file + ":" + line + ": " + why);
  }
}
