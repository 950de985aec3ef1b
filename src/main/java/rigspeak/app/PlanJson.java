package rigspeak.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import rigspeak.plan.PlanVerdict;
import rigspeak.plan.PlanVerdict.Hanging;
import rigspeak.plan.Step;
import rigspeak.plan.Told;

/** What comes of a plan as JSON; docs/formats.md says what every field means. */
final class PlanJson {
  private PlanJson() {}

  static ObjectNode of(PlanVerdict verdict) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("plan", verdict.plan().name());
    json.put("verdict", VerdictJson.lower(verdict.outcome()));
    json.put("in_order", verdict.isInOrder());
    ArrayNode ropes = json.putArray("ropes");
    for (Hanging hanging : verdict.ropes()) {
      ObjectNode rope = VerdictJson.of(hanging.verdict());
      rope.put("until_line", hanging.until().number());
      rope.put("set", hanging.set());
      ropes.add(rope);
    }
    ArrayNode steps = json.putArray("steps");
    for (Step step : verdict.steps()) {
      ObjectNode node = steps.addObject();
      node.put("line", step.line().number());
      node.put("step", step.kind().key());
      node.put("support", step.place().key());
      node.put("in_order", step.isInOrder());
      ArrayNode troubles = node.putArray("troubles");
      step.troubles().forEach(trouble -> troubles.add(trouble.key()));
    }
    ArrayNode refused = json.putArray("not_taken");
    for (Told told : verdict.refused()) {
      ObjectNode node = refused.addObject();
      node.put("line", told.line().number());
      node.put("said", told.line().said());
      node.set("answers", Report.answers(Exchange.of(told)));
    }
    return json;
  }
}
