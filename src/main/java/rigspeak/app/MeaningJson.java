package rigspeak.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.rig.Direction;
import rigspeak.rig.Value;

/** A meaning as JSON; docs/formats.md says what every field means. */
final class MeaningJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private MeaningJson() {}

  static ObjectNode of(Meaning meaning) {
    ObjectNode json = NODES.objectNode();
    if (meaning instanceof Meaning.Values values) {
      json.put("kind", "values").set("statements", statements(values.statements()));
    } else if (meaning instanceof Meaning.Correction correction) {
      json.put("kind", "correction").set("statements", statements(correction.statements()));
    } else if (meaning instanceof Meaning.GoTo goTo) {
      json.put("kind", "go_to").put("place", goTo.place().key());
    } else if (meaning instanceof Meaning.Command command) {
      json.put("kind", "command").put("command", VerdictJson.lower(command));
    } else if (meaning instanceof Meaning.Procedure procedure) {
      json.put("kind", "procedure").put("word", VerdictJson.lower(procedure));
    } else if (meaning instanceof Meaning.NotUnderstood missed) {
      json.put("kind", "not_understood").put("reason", VerdictJson.lower(missed.reason()));
    } else if (meaning instanceof Meaning.CannotHear cannot) {
      json.put("kind", "cannot_hear").put("reason", VerdictJson.lower(cannot.trouble()));
    }
    return json;
  }

  private static ArrayNode statements(List<Statement> statements) {
    ArrayNode array = NODES.arrayNode();
    for (Statement statement : statements) {
      ObjectNode json = array.addObject();
      if (statement instanceof Statement.RopeAngle unclear) {
        json.put("unclear", "rope_angle").put("angle_deg", unclear.angle().degrees());
      } else if (statement instanceof Statement.Value value) {
        json.put("slot", value.slot().key());
        put(json, value.said().value());
        json.put("how", VerdictJson.lower(value.said().how()));
      }
    }
    return array;
  }

  private static void put(ObjectNode json, Value value) {
    if (value instanceof Value.Weight weight) {
      json.put("mass_kg", weight.mass().kilograms());
    } else if (value instanceof Value.Distance distance) {
      json.put("length_m", distance.length().metres());
    } else if (value instanceof Value.Turned turned) {
      json.put("angle_deg", turned.angle().degrees());
    } else if (value instanceof Value.Rating rating) {
      json.put("force_n", rating.force().newtons());
    } else if (value instanceof Value.Wraps wraps) {
      json.put("turns", wraps.turns());
    } else if (value instanceof Value.Share share) {
      json.put("share_of_diameter", share.ofDiameter());
    } else if (value instanceof Value.Toward toward) {
      put(json, toward.direction());
    } else if (value instanceof Value.Leg leg) {
      put(json, leg.direction());
      leg.length().ifPresent(length -> json.put("length_m", length.length().metres()));
    } else if (value instanceof Value.Species species) {
      json.put("species", species.isUnknown() ? "unknown" : String.join(" ", species.words()));
    } else if (value instanceof Value.Union union) {
      ArrayNode conditions = json.putArray("conditions");
      union.conditions().forEach(condition -> conditions.add(VerdictJson.lower(condition)));
    } else if (value instanceof Enum<?> word) {
      json.put("word", VerdictJson.lower(word));
    }
  }

  private static void put(ObjectNode json, Direction direction) {
    json.put("elevation_deg", direction.elevation().degrees());
    json.put("bearing_deg", direction.bearing().degrees());
  }
}
