package rigspeak.app;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.verdict.Judge;

/**
 * How long a verdict on a rope of several supports takes, with every loss, the swing and the
 * remedies, by the number of supports and of samples.
 */
final class RopeBench {
  private static final String CLIMB =
      "all up two hundred pounds by tape species northern red oak stationary rope base anchor";
  private static final String MAIN_POINT =
      "live wood limb twelve inches by tape limb upright out three feet by tape"
          + " stem eighteen inches by tape union sound sling choked four wraps bark rough over ring"
          + " seated on a stub anchor leg straight down forty feet by tape";

  /** Far enough out, and only looked at, that its limb is marginal: remedies are looked for. */
  private static final String REDIRECT =
      "live wood limb seven inches by eye limb level by eye out four feet by tape"
          + " stem sixteen inches by tape union sound sling choked three wraps bark rough over ring"
          + " seated on a stub";

  private static final int VERDICTS = 15;
  private static final int VERDICTS_TO_WARM = 10;

  private final Understanding understanding;
  private final Catalogue catalogue = Catalogue.bundled();

  RopeBench(Grammar grammar) {
    this.understanding = new Understanding(grammar);
  }

  /**
   * The median of some verdicts, in milliseconds.
   *
   * @param supports 1 for the main point alone, and up
   */
  double milliseconds(int supports, int samples) {
    Dialogue dialogue = new Dialogue(catalogue, new Judge(catalogue, samples));
    Conversation rope = Conversation.begin();
    for (String said : said(supports)) {
      Meaning meaning = understanding.understand(said, rope.asked());
      rope = dialogue.step(rope, meaning).next();
    }
    double[] milliseconds = new double[VERDICTS];
    for (int i = -VERDICTS_TO_WARM; i < VERDICTS; i++) {
      long before = System.nanoTime();
      dialogue.step(rope, Meaning.Command.CHECK);
      if (i >= 0) {
        milliseconds[i] = (System.nanoTime() - before) / 1e6;
      }
    }
    Arrays.sort(milliseconds);
    return milliseconds[VERDICTS / 2];
  }

  private static List<String> said(int supports) {
    List<String> said = new ArrayList<>(List.of(CLIMB, "go to the main point", MAIN_POINT));
    if (supports == 1) {
      said.add("working leg down seventy toward the tip fifteen feet by tape");
    }
    said.addAll(List.of("clipped in", "affirm"));
    for (int redirect = 1; redirect < supports; redirect++) {
      said.add(redirect == 1 ? "go to redirect one" : "next redirect");
      said.add(REDIRECT);
      String up = redirect == 1 ? "sixty" : "twenty";
      said.add("anchor leg up " + up + " toward the stem fifteen feet by tape");
      said.add(
          redirect == supports - 1
              ? "working leg down seventy toward the tip fifteen feet by tape"
              : "working leg down twenty at ten o'clock fifteen feet by tape");
      said.add("stem clear of swing by ten feet");
      said.add("ready to set");
    }
    return said;
  }
}
