package rigspeak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The libraries are those that were looked at once: by their bytes, their list of parts and their
 * licences.
 */
class SupplyChainTest {
  private static final Path CHECKSUMS = Path.of(".mvn/checksums/checksums.sha256");
  private static final Path BILL_OF_MATERIALS = Path.of("target/bom.json");
  private static final Path LICENCES = Path.of("docs/licences.md");

  /** Of each file in a Maven repository, by its path there. */
  private static Map<String, String> checksums;

  /** A library of the program as the bill of materials has it. */
  private record Part(String name, String path, String checksum) {}

  @BeforeAll
  static void read() throws IOException {
    checksums =
        Files.readAllLines(CHECKSUMS).stream()
            .map(line -> line.split("  ", 2))
            .collect(Collectors.toMap(words -> words[1], words -> words[0]));
  }

  private static List<Part> parts() throws IOException {
    // Without a network the build makes none.
    assumeTrue(
        System.getenv("CI") != null || Files.exists(BILL_OF_MATERIALS), "no bill of materials");
    List<Part> parts = new ArrayList<>();
    for (JsonNode part :
        new ObjectMapper().readTree(BILL_OF_MATERIALS.toFile()).get("components")) {
      parts.add(part(part));
    }
    assertFalse(parts.isEmpty(), "a program without parts");
    return parts;
  }

  private static Part part(JsonNode part) {
    String group = part.get("group").asText();
    String name = part.get("name").asText();
    String version = part.get("version").asText();
    String checksum = "";
    for (JsonNode hash : part.get("hashes")) {
      if (hash.get("alg").asText().equals("SHA-256")) {
        checksum = hash.get("content").asText();
      }
    }
    String path =
        String.join("/", group.replace('.', '/'), name, version, name + "-" + version + ".jar");
    return new Part(group + ":" + name, path, checksum);
  }

  /** Of the tests and of the program alike. */
  @Test
  void everyLibraryOnTheClassPathIsByteForByteTheOneThatIsWrittenDown() throws IOException {
    Map<String, String> wrong = new TreeMap<>();
    int jars = 0;
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      if (entry.endsWith(".jar")) {
        jars++;
        String found = checksum(Path.of(entry));
        if (!found.equals(writtenDown(entry.replace('\\', '/')))) {
          wrong.put(entry, found);
        }
      }
    }
    assertEquals(Map.of(), wrong, "if this is meant: src/packaging/lock");
    assertNotEquals(0, jars, "no library on the class path");
  }

  @Test
  void theBillOfMaterialsNamesTheSameFiles() throws IOException {
    Map<String, String> billed =
        parts().stream().collect(Collectors.toMap(Part::path, Part::checksum));
    Map<String, String> locked = new TreeMap<>(checksums);
    locked.keySet().retainAll(billed.keySet());
    assertEquals(locked, new TreeMap<>(billed));
  }

  /** In both directions: none without a licence, none that is no longer there. */
  @Test
  void everyPartOfTheProgramHasItsLineAmongTheLicences() throws IOException {
    Pattern artifact = Pattern.compile("`([a-z0-9.-]+:[a-z0-9.-]+)`");
    Set<String> listed = new TreeSet<>();
    for (String line : Files.readAllLines(LICENCES)) {
      List<String> cells = Arrays.stream(line.split("\\|", -1)).map(String::strip).toList();
      if (cells.size() > 3 && cells.get(3).equals("in the jar")) {
        Matcher names = artifact.matcher(cells.get(2));
        while (names.find()) {
          listed.add(names.group(1));
        }
        assertFalse(cells.get(4).isEmpty(), line);
      }
    }
    assertEquals(
        parts().stream().map(Part::name).collect(Collectors.toCollection(TreeSet::new)), listed);
  }

  /** The checksum of the file with this path at the end of its own. */
  private static String writtenDown(String path) {
    return checksums.entrySet().stream()
        .filter(entry -> path.endsWith("/" + entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("none");
  }

  private static String checksum(Path file) throws IOException {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
    } catch (GeneralSecurityException e) {
      throw new AssertionError("every Java has SHA-256", e);
    }
  }
}
