package rigspeak.journal;

import java.io.IOException;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** Something could not be kept, so it must not be taken. */
public final class NotKept extends IOException {
  private static final long serialVersionUID = 1L;

  private final Why why;

  /** What stands in the way. */
  public enum Why {
    /** No more room on the disk, or none that this program may use. */
    DISK_FULL,
    /** It may not be written there. */
    READ_ONLY,
    /** Another program keeps this journal. */
    IN_USE,
    /** A line in it has been changed. */
    CHANGED,
    /** The file is not where it was any more. */
    GONE,
    /** Anything else that the machine says of its disk. */
    FAILED
  }

  NotKept(Why why, Path where, Throwable cause) {
    super(where + ": " + cause.getMessage(), cause);
    this.why = why;
  }

  NotKept(Why why, Path where) {
    super(where.toString());
    this.why = why;
  }

  /** The kind of what the machine said. Where Java has no name for it, the kernel's words tell. */
  static NotKept of(Path where, Exception fault) {
    if (fault instanceof NotKept already) {
      return already;
    }
    return new NotKept(why(fault), where, fault);
  }

  private static Why why(Exception fault) {
    if (fault instanceof OverlappingFileLockException) {
      return Why.IN_USE;
    }
    if (fault instanceof BrokenJournal) {
      return Why.CHANGED;
    }
    if (fault instanceof AccessDeniedException || fault instanceof ReadOnlyFileSystemException) {
      return Why.READ_ONLY;
    }
    String message = String.valueOf(fault.getMessage()).toLowerCase(Locale.ROOT);
    if (message.contains("no space left")
        || message.contains("quota exceeded")
        || message.contains("file too large")) {
      return Why.DISK_FULL;
    }
    return message.contains("read-only") || message.contains("not permitted")
        ? Why.READ_ONLY
        : Why.FAILED;
  }

  public Why why() {
    return why;
  }
}
