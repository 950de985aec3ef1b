package rigspeak.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The program as the user starts it: in a process of its own. */
final class OwnProcess {
  private OwnProcess() {}

  /**
   * The command that starts it.
   *
   * @param flags Java's
   * @param arguments the program's
   */
  static List<String> command(List<String> flags, List<String> arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(flags);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.addAll(arguments);
    return command;
  }
}
