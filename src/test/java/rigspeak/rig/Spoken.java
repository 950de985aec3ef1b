package rigspeak.rig;

import java.util.Optional;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;

/** Rigs in the words of the trade, for tests: the same words that a climber says aloft. */
public final class Spoken {
  /** A rig of which everything is said, good to load, far from every limit. */
  public static final String STOUT =
      """
      all up 80 kilograms by tape
      species northern red oak
      live wood
      stationary rope
      limb 30 centimeters by tape
      limb rises 20 by tape
      limb length 4 meters by tape
      out 30 centimeters by tape
      stem 60 centimeters by tape
      union sound
      no cavity
      sling choked
      four wraps
      seated on a stub
      sling thickness 2 centimeters by tape
      bark rough
      sling rated 30 kilonewtons
      over pulley
      anchor leg down 40 at 7 o'clock by tape
      working leg straight down by tape
      """;

  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());

  private Spoken() {}

  /**
   * The rig of a block of utterances, one a line; a later value takes the place of an earlier one.
   *
   * @throws IllegalArgumentException if a line is not understood as values
   */
  public static Rig rig(String lines) {
    return with(Rig.empty(), lines);
  }

  /** This rig with more said of it, or said otherwise. */
  public static Rig with(Rig rig, String lines) {
    Rig said = rig;
    for (String line : lines.lines().map(String::strip).filter(l -> !l.isEmpty()).toList()) {
      if (!(UNDERSTANDING.understand(line, Optional.empty()) instanceof Meaning.Values values)) {
        throw new IllegalArgumentException("no values of a rig are said by: " + line);
      }
      for (Meaning.Statement statement : values.statements()) {
        if (!(statement instanceof Meaning.Statement.Value value)) {
          throw new IllegalArgumentException("no slot is named by: " + line);
        }
        said = said.with(value.slot(), value.said());
      }
    }
    return said;
  }
}
