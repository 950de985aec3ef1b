package rigspeak.app;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Plans: what will be said of a climb, judged before anyone climbs. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = {
      "A plan is a file of utterances, one a line: a climb as it will be said.",
      "Judge it before anyone climbs, and draw the card that people take to the tree.",
      "One is written by hand, or kept from a conversation: type, hear, listen --save FILE."
    },
    subcommands = {PlanCheckCommand.class, PlanCardCommand.class})
final class PlanCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say plan check FILE or plan card FILE.");
  }
}
