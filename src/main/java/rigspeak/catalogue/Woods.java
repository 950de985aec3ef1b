package rigspeak.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

  private final List<Row> supplied = new ArrayList<>();

  Woods(Sources sources, Factors factors, Supplement supplement) {
    this.factors = factors;
    Table.rows("wood").forEach(row -> rows.add(row(row, sources)));
    supplement.rows("wood").forEach(row -> supplied.add(row(row, sources)));
    rows.addAll(supplied);
  }

  private static Row row(CSVRecord row, Sources sources) {
    String species = row.get("species");
    return new Row(
        species,
        words(species),
        Table.number(row, "bending_mpa") * MEGAPASCAL,
        Table.number(row, "compression_mpa") * MEGAPASCAL,
        Table.number(row, "shear_mpa") * MEGAPASCAL,
        Table.number(row, "stiffness_mpa") * MEGAPASCAL,
        sources.get(row.get("source")));
  }

  /**
   * The row of this very name, the crew's before the tool's own; or all rows whose name has every
   * word said, so that a crew's row never makes a general name stronger; all there are if the
   * species is unknown.
   */
  List<Row> matching(Value.Species species) {
    List<Row> own = named(supplied, species);
    List<Row> exact = own.isEmpty() ? named(rows, species) : own;
    return exact.isEmpty()
        ? rows.stream().filter(row -> row.words().containsAll(species.words())).toList()
        : exact;
  }

  private static List<Row> named(List<Row> rows, Value.Species species) {
    return rows.stream().filter(row -> row.words().equals(species.words())).toList();
  }

  /** The species that a crew supplies and the tool's own table has not, as words. */
  Map<String, Set<String>> newSpecies() {
    Map<String, Set<String>> species = new LinkedHashMap<>();
    for (Row row : supplied) {
      if (rows.stream().filter(other -> other.words().equals(row.words())).count() == 1) {
        species.put(row.species(), row.words());
      }
    }
    return species;
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
