package rigspeak.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rigspeak.catalogue.Conflict;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.verdict.Check;
import rigspeak.verdict.Load;
import rigspeak.verdict.Remedy;
import rigspeak.verdict.Spread;
import rigspeak.verdict.Verdict;

/** A verdict as JSON; docs/formats.md says what every field means. */
final class VerdictJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private VerdictJson() {}

  static ObjectNode of(Verdict verdict) {
    ObjectNode json = NODES.objectNode();
    if (verdict instanceof Verdict.CannotSay cannot) {
      json.put("verdict", "cannot_say");
      json.putNull("governing_check");
      json.set("reasons", reasons(cannot));
      json.set("missing_slots", slots(cannot.missing()));
    } else if (verdict instanceof Verdict.RefusedOutright refused) {
      json.put("verdict", "refuse");
      json.putNull("governing_check");
      json.set("reasons", keys(refused.refusals().stream().map(r -> r.key()).toList()));
      json.set("missing_slots", NODES.arrayNode());
    } else {
      judged(json, (Verdict.Judged) verdict);
    }
    return json;
  }

  private static void judged(ObjectNode json, Verdict.Judged judged) {
    json.put("verdict", lower(judged.rating()));
    json.put("governing_check", judged.governing().kind().key());
    json.set(
        "reasons",
        keys(
            judged.checks().stream()
                .filter(check -> !check.staysWithin())
                .map(check -> check.kind().key())
                .toList()));
    json.set("missing_slots", NODES.arrayNode());
    load(json, judged.load());
    ArrayNode checks = json.putArray("checks");
    Set<Source> sources = new LinkedHashSet<>();
    for (Check check : judged.checks()) {
      checks.add(check(check));
      sources.addAll(check.sources());
    }
    judged.measureAgain().ifPresent(measure -> json.put("measure_again", measure.key()));
    ArrayNode remedies = json.putArray("remedies");
    judged.remedies().forEach(remedy -> remedies.add(remedy(remedy)));
    ArrayNode assumptions = json.putArray("assumptions");
    for (ResolvedRig.Assumption assumption : judged.rig().assumptions()) {
      assumptions
          .addObject()
          .put("slot", assumption.slot().key())
          .put("source", assumption.source().key());
      sources.add(assumption.source());
    }
    ObjectNode measures = json.putObject("measures");
    judged
        .rig()
        .measures()
        .forEach(
            (measure, estimate) -> {
              measures.set(measure.key() + "_" + unit(measure), estimate(measure, estimate));
              sources.add(estimate.source());
            });
    ObjectNode named = json.putObject("sources");
    for (Source source : sources) {
      named
          .putObject(source.key())
          .put("provenance", lower(source.provenance()))
          .put("title", source.title());
    }
  }

  private static void load(ObjectNode json, Load load) {
    json.set("resultant_n", spread(load.resultantN()));
    json.set("elevation_deg", spread(load.elevationDeg()));
    json.set("bearing_deg", spread(load.bearingDeg()));
    json.set("along_n", spread(load.alongN()));
    json.set("top_n", spread(load.topN()));
    json.set("side_n", spread(load.sideN()));
    json.put("load_class", lower(load.loadClass()));
    json.set("inside_angle_deg", spread(load.insideDeg()));
    json.set("angle_factor", spread(load.angleFactor()));
    json.set("anchor_leg_n", spread(load.anchorLegN()));
    json.set("working_leg_n", spread(load.workingLegN()));
    json.set("peak_factor", spread(load.peakFactor()));
  }

  private static ObjectNode check(Check check) {
    ObjectNode json = NODES.objectNode();
    String unit = check.kind().unit().symbol();
    json.put("check", check.kind().key());
    json.set("demand_" + unit, spread(check.demand()));
    json.set("capacity_" + unit, spread(check.capacity()));
    json.set("utilisation", spread(check.utilisation()));
    json.put("utilisation_95", check.utilisation95());
    json.set("sources", keys(check.sources().stream().map(Source::key).toList()));
    return json;
  }

  private static ObjectNode remedy(Remedy remedy) {
    ObjectNode json = NODES.objectNode();
    if (remedy instanceof Remedy.Wraps wraps) {
      return json.put("remedy", "wraps").put("turns", wraps.turns());
    }
    if (remedy instanceof Remedy.NearerTheUnion nearer) {
      return json.put("remedy", "nearer_the_union").put("at_most_m", nearer.atMost().metres());
    }
    if (remedy instanceof Remedy.ThickerLimb thicker) {
      return json.put("remedy", "thicker_limb").put("at_least_m", thicker.atLeast().metres());
    }
    return json.put("remedy", "seat_at_the_union");
  }

  private static ObjectNode estimate(Measure measure, Estimate estimate) {
    boolean angle = measure.unit() == Measure.Unit.RADIAN;
    ObjectNode json = NODES.objectNode();
    json.put("nominal", angle ? Math.toDegrees(estimate.nominal()) : estimate.nominal());
    json.put("low", angle ? Math.toDegrees(estimate.low()) : estimate.low());
    json.put("high", angle ? Math.toDegrees(estimate.high()) : estimate.high());
    json.put("how", lower(estimate.how()));
    json.put("source", estimate.source().key());
    return json;
  }

  private static String unit(Measure measure) {
    return measure.unit() == Measure.Unit.RADIAN ? "deg" : measure.unit().symbol();
  }

  private static ObjectNode spread(Spread spread) {
    return NODES
        .objectNode()
        .put("nominal", spread.nominal())
        .put("low", spread.low())
        .put("high", spread.high());
  }

  private static ArrayNode reasons(Verdict.CannotSay cannot) {
    ArrayNode reasons = NODES.arrayNode();
    for (Conflict conflict : cannot.conflicts()) {
      reasons.add(key(conflict));
    }
    if (!cannot.missing().isEmpty()) {
      reasons.add("missing");
    }
    return reasons;
  }

  /** A conflict by its name, in the spelling of the files: LegsInLine is legs_in_line. */
  private static String key(Conflict conflict) {
    return conflict
        .getClass()
        .getSimpleName()
        .replaceAll("(?<=[a-z])(?=[A-Z])", "_")
        .toLowerCase(Locale.ROOT);
  }

  static ArrayNode slots(List<Slot> slots) {
    return keys(slots.stream().map(Slot::key).toList());
  }

  private static ArrayNode keys(List<String> keys) {
    ArrayNode array = NODES.arrayNode();
    keys.forEach(array::add);
    return array;
  }

  static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
