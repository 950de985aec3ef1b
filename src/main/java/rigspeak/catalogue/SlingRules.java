package rigspeak.catalogue;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import rigspeak.rig.ResolvedRig.BendRule;
import rigspeak.rig.ResolvedRig.ChokeRule;

/** What a choke and a bend leave of a sling. */
final class SlingRules {
  private final ChokeRule choke;
  private final BendRule bend;

  SlingRules(Sources sources, Supplement supplement) {
    List<CSVRecord> bands = supplement.whole("choke");
    List<CSVRecord> points = supplement.whole("bend");
    this.choke =
        new ChokeRule(
            bands.stream()
                .map(
                    row ->
                        new ChokeRule.Band(
                            Table.number(row, "from_deg"),
                            row.get("start_counts").equals("yes"),
                            Table.number(row, "factor")))
                .toList(),
            sources.get(source(bands, "choke_angles")));
    this.bend =
        new BendRule(
            points.stream()
                .map(
                    row ->
                        new BendRule.Printed(
                            Table.number(row, "bend_over_rope"), Table.number(row, "factor")))
                .toList(),
            sources.get(source(points, "sling_bend")));
  }

  /** Of all rows of a table one source, which the tool's own tables do not write down. */
  private static String source(List<CSVRecord> rows, String own) {
    return rows.get(0).isMapped("source") ? rows.get(0).get("source") : own;
  }

  ChokeRule choke() {
    return choke;
  }

  BendRule bend() {
    return bend;
  }
}
