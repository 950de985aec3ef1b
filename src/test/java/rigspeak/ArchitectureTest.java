package rigspeak;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.not;
import static com.tngtech.archunit.lang.conditions.ArchConditions.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Who may use whom, and which library is used where. The table is the whole of it. */
class ArchitectureTest {
  /** Package, the packages of ours that it may use, the libraries that it may use. */
  private static final String TABLE =
      """
      quantity  |                                                           |
      rig       | quantity                                                  |
      catalogue | rig quantity                                              | commons-csv
      mechanics | rig quantity                                              | commons-math
      verdict   | mechanics catalogue rig quantity                          | commons-math
      audio     |                                                           | sound
      grammar   |                                                           | jsgf
      hearing   | audio grammar                                             | sphinx4 commons-math
      meaning   | grammar rig quantity                                      |
      dialogue  | meaning verdict catalogue rig quantity                    |
      plan      | dialogue meaning verdict rig                              |
      readback  | dialogue meaning rig quantity                             |
      drill     | verdict catalogue mechanics rig quantity                  | commons-math
      answer    | plan readback drill dialogue verdict catalogue mechanics meaning rig quantity |
      speaking  | audio                                                     | freetts
      drawing   | answer plan verdict rig quantity                          |
      printing  | drawing                                                   | pdfbox awt
      page      | drawing answer readback dialogue verdict catalogue rig quantity | jackson httpserver
      journal   |                                                           | jackson
      app       | *                                                         | picocli jackson commons-csv
      """;

  /** Libraries by the beginning of their packages; the longest beginning counts. */
  private static final Map<String, String> LIBRARIES =
      Map.ofEntries(
          Map.entry("edu.cmu.sphinx", "sphinx4"),
          Map.entry("edu.cmu.sphinx.jsgf", "jsgf"),
          Map.entry("com.sun.speech", "freetts"),
          Map.entry("javax.sound", "sound"),
          Map.entry("org.apache.commons.math3", "commons-math"),
          Map.entry("org.apache.commons.csv", "commons-csv"),
          Map.entry("com.fasterxml.jackson", "jackson"),
          Map.entry("picocli", "picocli"),
          Map.entry("org.apache.pdfbox", "pdfbox"),
          Map.entry("com.sun.net.httpserver", "httpserver"),
          Map.entry("java.awt", "awt"),
          Map.entry("javax.imageio", "awt"));

  /** What may be used everywhere. */
  private static final Set<String> LANGUAGE =
      Set.of(
          "java.lang",
          "java.util",
          "java.io",
          "java.nio",
          "java.net",
          "java.math",
          "java.time",
          "java.security");

  /** Only these classes of a package that is otherwise out of reach. */
  private static final Map<String, Set<String>> ONLY =
      Map.of(
          "answer > mechanics", Set.of("LoadClass"),
          "drill > mechanics", Set.of("LoadClass"),
          "answer > meaning", Set.of("Meaning", "Meaning$Reason", "Meaning$Trouble"));

  private static final Set<String> NAMES_THAT_SAY_NOTHING =
      Set.of("util", "utils", "common", "core", "impl", "model", "service", "helper", "misc");

  /** Same input, same result: no clock and no chance in them. */
  private static final String[] PURE = {
    "rigspeak.quantity..",
    "rigspeak.rig..",
    "rigspeak.catalogue..",
    "rigspeak.mechanics..",
    "rigspeak.verdict..",
    "rigspeak.grammar..",
    "rigspeak.meaning..",
    "rigspeak.dialogue..",
    "rigspeak.plan..",
    "rigspeak.readback..",
    "rigspeak.answer..",
    "rigspeak.drill..",
    "rigspeak.drawing.."
  };

  private static final Map<String, Row> ROWS = new LinkedHashMap<>();
  private static JavaClasses ours;

  private record Row(Set<String> packages, Set<String> libraries) {
    boolean mayUse(String name) {
      return packages.contains("*") || packages.contains(name);
    }
  }

  @BeforeAll
  static void read() {
    for (String line : TABLE.lines().toList()) {
      List<String> cells = Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
      ROWS.put(cells.get(0), new Row(words(cells.get(1)), words(cells.get(2))));
    }
    ours =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPath(Path.of("target", "classes"));
    assertFalse(ours.isEmpty(), "no classes to look at");
  }

  private static Set<String> words(String text) {
    return text.isEmpty() ? Set.of() : Set.of(text.split("\\s+", -1));
  }

  @Test
  void everyPackageIsInTheTableAndTheTableHasNoOther() {
    Set<String> there =
        ours.stream().map(ArchitectureTest::home).collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(ROWS.keySet()), there);
  }

  @Test
  void packagesUseOnlyWhatTheTableAllows() {
    assertEquals(Map.of(), violations(ArchitectureTest::strangerAmongOurs));
  }

  @Test
  void librariesAreUsedOnlyWhereTheTableAllows() {
    assertEquals(Map.of(), violations(ArchitectureTest::strangeLibrary));
  }

  /** A library that nothing uses any more leaves the table, too. */
  @Test
  void everyLibraryOfTheTableIsUsedThere() {
    Set<String> unused = new TreeSet<>();
    ROWS.forEach((name, row) -> row.libraries().forEach(lib -> unused.add(name + " > " + lib)));
    dependencies()
        .forEach(
            dependency ->
                library(target(dependency).getPackageName())
                    .ifPresent(
                        lib -> unused.remove(home(dependency.getOriginClass()) + " > " + lib)));
    assertEquals(Set.of(), unused);
  }

  @Test
  void thereAreNoCycles() {
    slices().matching("rigspeak.(*)..").should().beFreeOfCycles().check(ours);
  }

  /** The catalogue knows numbers, not forces; nothing but the verdict puts them together. */
  @Test
  void theTableKeepsApartWhatMustStayApart() {
    assertFalse(ROWS.get("catalogue").mayUse("mechanics"));
    assertFalse(ROWS.get("mechanics").mayUse("catalogue"));
    assertFalse(ROWS.get("dialogue").mayUse("mechanics"));
    assertFalse(ROWS.get("dialogue").mayUse("answer"));
    assertFalse(ROWS.get("meaning").mayUse("hearing"));
    ROWS.forEach(
        (name, row) -> assertTrue(name.equals("app") || !row.packages().contains("*"), name));
  }

  @Test
  void quantitiesAreMadeByTheFactoriesThatNameTheUnit() {
    noClasses()
        .that()
        .resideOutsideOfPackage("rigspeak.quantity..")
        .should()
        .callConstructorWhere(
            describe(
                "a quantity",
                (JavaAccess<?> call) ->
                    home(call.getTargetOwner()).equals("quantity")
                        && call.getTargetOwner().isRecord()))
        .check(ours);
  }

  @Test
  void onlyTheAppWritesToTheConsole() {
    noClasses()
        .that()
        .resideOutsideOfPackage("rigspeak.app..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(Throwable.class, "printStackTrace")
        .check(ours);
  }

  @Test
  void onlyTheAppEndsTheProgram() {
    noClasses()
        .that()
        .resideOutsideOfPackage("rigspeak.app..")
        .should()
        .callMethod(System.class, "exit", int.class)
        .check(ours);
  }

  @Test
  void whatIsPureHasNoClockAndNoChance() {
    noClasses()
        .that()
        .resideInAnyPackage(PURE)
        .should()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callMethod(Thread.class, "sleep", long.class)
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching(
            "java\\.util\\.(Date|Calendar|Timer|Random|SplittableRandom|UUID)"
                + "|java\\.util\\.concurrent\\.ThreadLocalRandom|java\\.util\\.random\\..*"
                + "|java\\.security\\..*|java\\.time\\..*|org\\.apache\\.commons\\.math3\\.random\\.(?!Sobol).*")
        .check(ours);
  }

  @Test
  void namesOfPackagesSaySomething() {
    classes()
        .should()
        .resideInAPackage("rigspeak..")
        .andShould(
            not(
                resideInAnyPackage(
                    NAMES_THAT_SAY_NOTHING.stream()
                        .map(name -> "..%s..".formatted(name))
                        .toArray(String[]::new))))
        .check(ours);
  }

  // ---- reading the classes ----

  private interface Finding {
    Optional<String> in(String home, Row row, JavaClass target);
  }

  /** What each package uses that it may not, with one example each. */
  private static Map<String, String> violations(Finding finding) {
    Map<String, String> found = new TreeMap<>();
    dependencies()
        .forEach(
            dependency -> {
              String home = home(dependency.getOriginClass());
              Row row = ROWS.getOrDefault(home, new Row(Set.of(), Set.of()));
              finding
                  .in(home, row, target(dependency))
                  .ifPresent(
                      stranger ->
                          found.putIfAbsent(home + " > " + stranger, dependency.getDescription()));
            });
    return found;
  }

  private static Stream<Dependency> dependencies() {
    return ours.stream().flatMap(one -> one.getDirectDependenciesFromSelf().stream());
  }

  private static Optional<String> strangerAmongOurs(String home, Row row, JavaClass target) {
    if (!isOurs(target) || home(target).equals(home)) {
      return Optional.empty();
    }
    String name = home(target);
    if (!row.mayUse(name)) {
      return Optional.of(name);
    }
    String simple = target.getName().substring(target.getPackageName().length() + 1);
    Set<String> only = ONLY.getOrDefault(home + " > " + name, Set.of(simple));
    return only.contains(simple) ? Optional.empty() : Optional.of(name + "." + simple);
  }

  private static Optional<String> strangeLibrary(String home, Row row, JavaClass target) {
    if (isOurs(target) || target.isPrimitive()) {
      return Optional.empty();
    }
    String name = target.getPackageName();
    Optional<String> library = library(name);
    if (library.isPresent()) {
      return library.filter(lib -> !row.libraries().contains(lib));
    }
    boolean language =
        LANGUAGE.stream().anyMatch(known -> name.equals(known) || name.startsWith(known + "."));
    return language ? Optional.empty() : Optional.of(name);
  }

  private static Optional<String> library(String name) {
    return LIBRARIES.keySet().stream()
        .filter(start -> name.equals(start) || name.startsWith(start + "."))
        .max(Comparator.comparingInt(String::length))
        .map(LIBRARIES::get);
  }

  /** Of an array what it is an array of. */
  private static JavaClass target(Dependency dependency) {
    return dependency.getTargetClass().getBaseComponentType();
  }

  private static boolean isOurs(JavaClass one) {
    return one.getPackageName().startsWith("rigspeak");
  }

  /** The package of ours that a class is in. */
  private static String home(JavaClass one) {
    String name = one.getPackageName();
    return isOurs(one) && name.contains(".") ? name.split("\\.", -1)[1] : name;
  }
}
