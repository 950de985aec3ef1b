package rigspeak.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.apache.commons.csv.CSVRecord;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.Source;
import rigspeak.rig.Sourced;
import rigspeak.rig.Strength;
import rigspeak.rig.Value;

/** Strength of green clear wood by species. */
final class Woods {

  /**
   * One row of the table: means for green clear wood, stresses in pascals.
   *
   * @param words of the species' name
   */
  record Row(
      String species,
      Set<String> words,
      double bending,
      double compression,
      double shear,
      double stiffness,
      Source source) {}

  private static final double MEGAPASCAL = 1e6;

  private final List<Row> rows = new ArrayList<>();
  private final Factors factors;

  Woods(Sources sources, Factors factors) {
    this.factors = factors;
    for (CSVRecord row : Table.rows("wood")) {
      String species = row.get("species");
      rows.add(
          new Row(
              species,
              words(species),
              Table.number(row, "bending_mpa") * MEGAPASCAL,
              Table.number(row, "compression_mpa") * MEGAPASCAL,
              Table.number(row, "shear_mpa") * MEGAPASCAL,
              Table.number(row, "stiffness_mpa") * MEGAPASCAL,
              sources.get(row.get("source"))));
    }
  }

  /**
   * The row of this very name, or all rows whose name has every word said; all there are if the
   * species is unknown.
   */
  List<Row> matching(Value.Species species) {
    List<Row> exact = rows.stream().filter(row -> row.words().equals(species.words())).toList();
    return exact.isEmpty()
        ? rows.stream().filter(row -> row.words().containsAll(species.words())).toList()
        : exact;
  }

  /**
   * What is counted on: of the matching species the weakest in each property, at the lower fifth
   * percentile, less what size and knots take, over the design factor.
   *
   * @throws IllegalArgumentException if no species has these words
   */
  ResolvedRig.Wood strength(Value.Species species) {
    List<Row> matching = matching(species);
    if (matching.isEmpty()) {
      throw new IllegalArgumentException("no species is called " + species.words());
    }
    return new ResolvedRig.Wood(
        matching.size() == 1 ? matching.get(0).species() : "",
        reduced(weakest(matching, "bending", Row::bending)),
        reduced(weakest(matching, "compression", Row::compression)),
        reduced(weakest(matching, "shear", Row::shear)),
        weakest(matching, "stiffness", Row::stiffness),
        factors.get("design_factor_share"),
        factors.get("green_density_kg_m3"));
  }

  private Strength weakest(List<Row> rows, String property, ToDoubleFunction<Row> of) {
    Row weakest = rows.stream().min(Comparator.comparingDouble(of)).orElseThrow();
    double variation = factors.value(property + "_variation");
    Sourced fifthPercentile =
        new Sourced(
            "fifth_percentile",
            1 - factors.value("fifth_percentile_deviations") * variation,
            factors.get(property + "_variation").source());
    return new Strength(
        new Sourced(
            property + " of " + weakest.species(), of.applyAsDouble(weakest), weakest.source()),
        List.of(fifthPercentile));
  }

  private Strength reduced(Strength strength) {
    return strength.times(factors.get("size_and_knots")).times(factors.get("design_factor_share"));
  }

  private static Set<String> words(String species) {
    return new TreeSet<>(List.of(species.toLowerCase(Locale.ROOT).replace(",", "").split(" ", -1)));
  }
}
