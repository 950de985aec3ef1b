package rigspeak.app;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rigspeak.catalogue.Conflict;
import rigspeak.rig.Direction;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Slot;
import rigspeak.rig.Source;
import rigspeak.verdict.Check;
import rigspeak.verdict.Load;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Remedy;
import rigspeak.verdict.Spread;
import rigspeak.verdict.Verdict;

/** A verdict as JSON; docs/formats.md says what every field means. */
final class VerdictJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private VerdictJson() {}

  /** Nothing was judged, for not everything that was said could be taken. */
  static ObjectNode notTaken() {
    ObjectNode json = NODES.objectNode();
    json.put("verdict", "cannot_say");
    json.putNull("governing_check");
    json.set("reasons", keys(List.of("not_taken")));
    json.set("missing_slots", NODES.arrayNode());
    return json;
  }

  /** The whole rope: what decides, the numbers of the support asked about, then every support. */
  static ObjectNode of(PathVerdict path) {
    ObjectNode json = of(path.ofAsked());
    ObjectNode governing = of(path.ofGoverning());
    for (String field : List.of("governing_check", "reasons", "missing_slots")) {
      json.set(field, governing.get(field));
    }
    json.put("verdict", lower(path.outcome()));
    json.put("asked", path.asked().key());
    json.put("governing_support", path.governing().key());
    ObjectNode supports = json.putObject("supports");
    path.supports().forEach((place, verdict) -> supports.set(place.key(), of(verdict)));
    ObjectNode losses = json.putObject("if_lost");
    path.losses().forEach((place, loss) -> losses.set(place.key(), FallJson.of(loss)));
    path.swing().ifPresent(swing -> json.set("working_swing", FallJson.of(swing)));
    return json;
  }

  private static ObjectNode of(Verdict verdict) {
    ObjectNode json = NODES.objectNode();
    if (verdict instanceof Verdict.Judged judged) {
      judged(json, judged);
    } else if (verdict instanceof Verdict.RefusedOutright refused) {
      json.put("verdict", "refuse");
      json.putNull("governing_check");
      json.set("reasons", keys(refused.refusals().stream().map(r -> r.key()).toList()));
      json.set("missing_slots", NODES.arrayNode());
    } else if (verdict instanceof Verdict.CannotSay cannot) {
      json.put("verdict", "cannot_say");
      json.putNull("governing_check");
      json.set("reasons", reasons(cannot));
      json.set("missing_slots", slots(cannot.missing()));
    } else if (verdict instanceof Verdict.WaitsFor waits) {
      json.put("verdict", "cannot_say");
      json.putNull("governing_check");
      json.set("reasons", keys(List.of("waits_for_" + waits.place().key())));
      json.set("missing_slots", NODES.arrayNode());
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
    load.insideDeg().ifPresent(inside -> json.set("inside_angle_deg", spread(inside)));
    load.angleFactor().ifPresent(factor -> json.set("angle_factor", spread(factor)));
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
    json.put("remedy", snake(remedy));
    if (remedy instanceof Remedy.Wraps wraps) {
      json.put("turns", wraps.turns());
    } else if (remedy instanceof Remedy.Choke choke) {
      json.put("turns", choke.turns());
    } else if (remedy instanceof Remedy.StrongerSling stronger) {
      json.put("at_least_n", stronger.rating().newtons());
    } else if (remedy instanceof Remedy.NearerTheUnion nearer) {
      json.put("at_most_m", nearer.atMost().metres());
    } else if (remedy instanceof Remedy.ThickerLimb thicker) {
      json.put("at_least_m", thicker.atLeast().metres());
    } else if (remedy instanceof Remedy.WiderAngle wider) {
      json.put("at_least_deg", wider.atLeast().degrees());
    } else if (remedy instanceof Remedy.WorkingLeg leg) {
      direction(json, leg.direction());
    } else if (remedy instanceof Remedy.SecondRedirect second) {
      direction(json, second.direction());
    }
    return json;
  }

  private static void direction(ObjectNode json, Direction direction) {
    json.put("elevation_deg", direction.elevation().degrees());
    json.put("bearing_deg", direction.bearing().degrees());
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

  static ObjectNode spread(Spread spread) {
    return NODES
        .objectNode()
        .put("nominal", spread.nominal())
        .put("low", spread.low())
        .put("high", spread.high());
  }

  private static ArrayNode reasons(Verdict.CannotSay cannot) {
    ArrayNode reasons = NODES.arrayNode();
    for (Conflict conflict : cannot.conflicts()) {
      reasons.add(snake(conflict));
    }
    if (!cannot.missing().isEmpty()) {
      reasons.add("missing");
    }
    return reasons;
  }

  /** A case by its name, in the spelling of the files: LegsInLine is legs_in_line. */
  static String snake(Object one) {
    return one.getClass()
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
