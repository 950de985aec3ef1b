package rigspeak.app;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import rigspeak.verdict.Loss;
import rigspeak.verdict.Obstacle;
import rigspeak.verdict.Swing;

/** Falls and swings as JSON; docs/formats.md says what every field means. */
final class FallJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private FallJson() {}

  static ObjectNode of(Loss loss) {
    ObjectNode json = NODES.objectNode();
    json.put("loss", VerdictJson.snake(loss));
    if (loss instanceof Loss.NotKnown unknown) {
      json.put("support", unknown.place().key());
      json.set("legs", VerdictJson.slots(unknown.legs()));
    } else if (loss instanceof Loss.Falls falls) {
      json.put("caught_by", falls.catching().key());
      json.set("free_fall_m", VerdictJson.spread(falls.freeFallM()));
      json.set("drop_m", VerdictJson.spread(falls.dropM()));
      json.set("swing_bearing_deg", VerdictJson.spread(falls.bearingDeg()));
      json.set("lowest_speed_m_s", VerdictJson.spread(falls.lowestSpeedMS()));
      falls.lowestAfterS().ifPresent(seconds -> json.put("lowest_after_s", seconds));
      json.set("obstacle", of(falls.obstacle()));
      json.set("peak_n", VerdictJson.spread(falls.peakN()));
      falls
          .left()
          .ifPresent(
              left -> {
                ObjectNode support = json.putObject("support_left");
                support.put("check", left.kind().key());
                support.set("utilisation", VerdictJson.spread(left.utilisation()));
              });
    }
    return json;
  }

  static ObjectNode of(Swing swing) {
    ObjectNode json = NODES.objectNode();
    json.put("from", swing.from().key());
    json.set("off_plumb_deg", VerdictJson.spread(swing.offPlumbDeg()));
    json.set("offset_m", VerdictJson.spread(swing.offsetM()));
    json.set("lowest_speed_m_s", VerdictJson.spread(swing.lowestSpeedMS()));
    json.set("equivalent_fall_m", VerdictJson.spread(swing.equivalentFallM()));
    json.set("obstacle", of(swing.obstacle()));
    json.put("second_attachment", swing.callsForSecondAttachment());
    return json;
  }

  private static ObjectNode of(Obstacle obstacle) {
    ObjectNode json = NODES.objectNode();
    json.put("obstacle", VerdictJson.snake(obstacle));
    if (obstacle instanceof Obstacle.Clear clear) {
      json.put("spare_m", clear.spareM());
    } else if (obstacle instanceof Obstacle.Reached reached) {
      json.put("as_said", reached.asSaid());
      json.put("speed_m_s", reached.speedMS());
      json.put("equivalent_fall_m", reached.equivalentFallM());
    }
    return json;
  }
}
