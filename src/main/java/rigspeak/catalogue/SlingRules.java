package rigspeak.catalogue;

import rigspeak.rig.ResolvedRig.BendRule;
import rigspeak.rig.ResolvedRig.ChokeRule;

/** What a choke and a bend leave of a sling. */
final class SlingRules {
  private final ChokeRule choke;
  private final BendRule bend;

  SlingRules(Sources sources) {
    this.choke =
        new ChokeRule(
            Table.rows("choke").stream()
                .map(
                    row ->
                        new ChokeRule.Band(
                            Table.number(row, "from_deg"),
                            row.get("start_counts").equals("yes"),
                            Table.number(row, "factor")))
                .toList(),
            sources.get("choke_angles"));
    this.bend =
        new BendRule(
            Table.rows("bend").stream()
                .map(
                    row ->
                        new BendRule.Printed(
                            Table.number(row, "bend_over_rope"), Table.number(row, "factor")))
                .toList(),
            sources.get("sling_bend"));
  }

  ChokeRule choke() {
    return choke;
  }

  BendRule bend() {
    return bend;
  }
}
