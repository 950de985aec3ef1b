package rigspeak.app;

import java.io.IOException;
import java.util.List;
import rigspeak.plan.Plan;
import rigspeak.plan.Told;
import rigspeak.plan.Walk;
import rigspeak.readback.Differences;
import rigspeak.rig.RopePath;

/**
 * A plan to hold a rig against: everything that it says of each support.
 *
 * @param name what it is called
 */
record PlannedRig(String name, RopePath rope) {

  /**
   * The rig of a plan's file.
   *
   * @throws UnreadablePlan if a line of it is not taken
   */
  static PlannedRig read(String file) throws IOException {
    Plan plan = PlanFiles.read(file);
    Walk walk = Thinking.bundled().walk(plan);
    List<Told> refused = walk.refused();
    if (!refused.isEmpty()) {
      Plan.Line line = refused.get(0).line();
      throw new UnreadablePlan(
          PlanRefusals.where(file, line.number()) + "this line is not taken: " + line.said());
    }
    return new PlannedRig(plan.name(), Differences.asSaid(walk.end().rope()));
  }
}
