package rigspeak.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigspeak.rig.Source.Provenance;
import rigspeak.rig.Sourced;
import rigspeak.rig.Strength;
import rigspeak.rig.Value;

/** A crew's own tables: what is refused, and what becomes of what is taken. */
class SuppliedTablesTest {
  private static final SuppliedTable SOURCES =
      table("sources", "key,title\ncrew_test,tested by this test alone\n");
  private static final String WOOD =
      "species,specific_gravity,bending_mpa,stiffness_mpa,compression_mpa,shear_mpa,source\n";

  record Refused(String file, String text, String because) {
    @Override
    public String toString() {
      return file + ": " + because;
    }
  }

  static Stream<Refused> refused() throws IOException {
    List<Refused> blocks = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    try (InputStream in =
        SuppliedTablesTest.class.getResourceAsStream("/rigspeak/catalogue/refused-tables.txt")) {
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        if (line.startsWith("=> ")) {
          String text = String.join("\n", lines.subList(1, lines.size())) + "\n";
          blocks.add(new Refused(lines.get(0), text, line.substring(3)));
          lines.clear();
        } else if (!line.startsWith("#") && !line.isBlank()) {
          lines.add(line);
        }
      }
    }
    return blocks.stream();
  }

  @ParameterizedTest
  @MethodSource("refused")
  void aTableThatIsNotAsItShouldBeIsRefusedWithFileLineAndReason(Refused refused) {
    SuppliedTable table =
        new SuppliedTable(
            refused.file().replace(".csv", ""), "crew/" + refused.file(), refused.text());
    List<SuppliedTable> tables =
        table.name().equals("sources") ? List.of(table) : List.of(table, SOURCES);
    CatalogueFault fault = assertThrows(CatalogueFault.class, () -> Catalogue.with(tables));
    assertEquals("The table crew/" + refused.file() + ", " + refused.because(), fault.getMessage());
  }

  @Test
  void everyNumberThatMayBeSuppliedIsOneOfTheCatalogue() {
    for (CSVRecord row : Table.rows("supplied")) {
      String key = row.get("key");
      assertTrue(
          key.equals("*")
              || Table.rows(row.get("table")).stream().anyMatch(own -> own.get(0).equals(key)),
          row.toString());
    }
  }

  /** The tool's own numbers lie within what a crew's are held to. */
  @Test
  void whatIsPlausibleHoldsTheToolsOwnNumbers() {
    for (CSVRecord limit : Table.rows("supplied")) {
      for (CSVRecord own : Table.rows(limit.get("table"))) {
        if (limit.get("key").equals("*") || limit.get("key").equals(own.get(0))) {
          double value = Table.number(own, limit.get("column"));
          assertTrue(
              value >= Table.number(limit, "low") && value <= Table.number(limit, "high"),
              own + " by " + limit);
        }
      }
    }
  }

  @Test
  void aSpeciesOfTheCrewsTakesThePlaceOfTheToolsOwnAndSaysSo() {
    Strength bending = bending("\"Oak, white\",0.6,100,8600,24.5,8.6,crew_test", "white", "oak");
    assertEquals(100e6, bending.base().value());
    assertEquals(Provenance.SUPPLIED, bending.base().source().provenance());
  }

  /** "Oak" is the weakest of all oaks; a stronger row of one of them must not lift it. */
  @Test
  void aGeneralNameNeverGrowsStrongerByACrewsTable() {
    double usual =
        new Woods(sources(), factors(), Supplement.none()).strength(oak("oak")).bending().allowed();
    Table.rows("wood").stream()
        .filter(row -> row.get("species").startsWith("Oak"))
        .forEach(
            row ->
                assertEquals(
                    usual,
                    bending("\"" + row.get("species") + "\",0.6,150,8600,24.5,8.6,crew_test", "oak")
                        .allowed(),
                    row.get("species")));
    assertEquals(
        20e6, bending("\"Oak, turkey\",0.6,20,8600,24.5,8.6,crew_test", "oak").base().value());
  }

  @Test
  void aSpeciesThatIsNewIsNamed() {
    Catalogue catalogue =
        Catalogue.with(
            List.of(SOURCES, table("wood", WOOD + "\"Oak, turkey\",0.6,57,8600,24,8,crew_test\n")));
    assertEquals(Set.of("Oak, turkey"), catalogue.newSpecies().keySet());
    assertTrue(catalogue.knows(oak("turkey", "oak")));
  }

  @Test
  void aChokeTableIsTakenWhole() {
    Supplement whole =
        supplement("choke", "from_deg,start_counts,factor,source\n0,yes,0.4,crew_test\n");
    SlingRules rules = new SlingRules(new Sources(whole), whole);
    assertEquals(0.4, rules.choke().factor(180));
    assertEquals(Provenance.SUPPLIED, rules.choke().source().provenance());
  }

  private static Strength bending(String row, String... species) {
    Supplement supplement = supplement("wood", WOOD + row + "\n");
    Sources sources = new Sources(supplement);
    return new Woods(sources, new Factors(sources, supplement), supplement)
        .strength(oak(species))
        .bending();
  }

  private static Value.Species oak(String... words) {
    return new Value.Species(Set.of(words));
  }

  private static Sources sources() {
    return new Sources(Supplement.none());
  }

  private static Factors factors() {
    return new Factors(sources(), Supplement.none());
  }

  private static Supplement supplement(String name, String text) {
    return Supplement.of(List.of(SOURCES, table(name, text)));
  }

  private static SuppliedTable table(String name, String text) {
    return new SuppliedTable(name, "crew/" + name + ".csv", text);
  }

  @Test
  void aNumberOfTheCrewsCarriesItsSource() {
    Supplement supplement = supplement("factors", "name,value,source\nrope_n,30000,crew_test\n");
    Sourced rope = new Factors(new Sources(supplement), supplement).get("rope_n");
    assertEquals(30_000, rope.value());
    assertEquals("tested by this test alone", rope.source().title());
  }
}
