package rigspeak.app;

import java.io.IOException;

/** A file that is no plan, in one sentence. */
final class UnreadablePlan extends IOException {
  private static final long serialVersionUID = 1;

  UnreadablePlan(String sentence) {
    super(sentence);
  }
}
