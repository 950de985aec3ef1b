package rigspeak.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import rigspeak.grammar.Grammar;
import rigspeak.readback.Differences;
import rigspeak.rig.RopePath;

/** A plan: the utterances of a rig, read from a file. */
record PlanFile(String name, RopePath rope) {

  static PlanFile read(Path file, Grammar grammar) throws IOException {
    Session session = new Session(grammar);
    try (Lines lines = Lines.of(file.toString())) {
      for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
        if (session.said(line.get()).refusedSomething()) {
          throw new IOException("this line of the plan is not taken: " + line.get());
        }
      }
    }
    return new PlanFile(
        file.getFileName().toString(), Differences.asSaid(session.conversation().rope()));
  }
}
