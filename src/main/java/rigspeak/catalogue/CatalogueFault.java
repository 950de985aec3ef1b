package rigspeak.catalogue;

import java.io.Serial;

/** A table that cannot be used; the message is one sentence for a person. */
public final class CatalogueFault extends RuntimeException {
  @Serial private static final long serialVersionUID = 1L;

  /**
   * @param where file and line
   * @param reason as it goes on after that
   */
  CatalogueFault(String where, String reason) {
    super("The table " + where + ", " + reason + ".");
  }
}
