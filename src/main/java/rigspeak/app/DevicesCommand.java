package rigspeak.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rigspeak.audio.Devices;

/** The sound devices of this machine. */
@Command(
    name = "devices",
    mixinStandardHelpOptions = true,
    description = "Lists microphones and loudspeakers by name.")
final class DevicesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    list("microphones", Devices.microphones());
    list("loudspeakers", Devices.loudspeakers());
    return 0;
  }

  private void list(String what, List<String> names) {
    PrintWriter out = spec.commandLine().getOut();
    out.println(what + ":");
    names.forEach(name -> out.println("  " + name));
    if (names.isEmpty()) {
      out.println("  none");
    }
  }
}
