package rigspeak.app;

import java.util.List;
import rigspeak.dialogue.Pace;
import rigspeak.grammar.Grammar;

/**
 * A conversation that nobody hears, held as soon as the recogniser is there, while somebody begins
 * to speak: the first verdict of a program takes ten times as long as the later ones, and whoever
 * hangs in a tree should not be the one who waits for it.
 */
final class Rehearsal {
  private static final List<String> QUESTIONS =
      List.of(
          "check redirect",
          "tell me why",
          "what would help",
          "what if it lets go",
          "how do i swing",
          "read back");

  private static final int TIMES = 3;

  private Rehearsal() {}

  /** Holds it in a thread of its own, which ends by itself. */
  static void begin(Grammar grammar, Mouth mouth) {
    Thread thread = new Thread(() -> hold(grammar, mouth), "rehearsal");
    thread.setDaemon(true);
    thread.start();
  }

  private static void hold(Grammar grammar, Mouth mouth) {
    mouth.prepare();
    Session session = new Session(grammar);
    TypicalRig.sayTo(session);
    for (int i = 0; i < TIMES; i++) {
      for (String question : QUESTIONS) {
        mouth.whole(session.said(question), Pace.NORMAL);
      }
    }
  }
}
