package rigspeak.verdict;

import rigspeak.rig.Measure;

/** What a climber can measure better where they are. */
final class Measurable {
  private Measurable() {}

  static boolean canBeMeasured(Measure measure) {
    return switch (measure) {
      case ROPE_FRICTION, BARK_FRICTION, BEYOND, BASE_LEG_RATIO, BASE_LEG_ELEVATION -> false;
      default -> true;
    };
  }
}
