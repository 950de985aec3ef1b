package rigspeak.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigspeak.catalogue.Catalogue;

/** Every answer comes in the share that is stated for it, and the same number asks the same. */
class GeneratorTest {
  private static final int QUESTIONS = 150;

  /** So many standard deviations of a share; the numbers are fixed, so it is no matter of luck. */
  private static final double DEVIATIONS = 3;

  private static final Generator GENERATOR = new Generator(Catalogue.bundled());

  private static String answer(Question question) {
    String choice = question.truth() instanceof Truth.Named named ? named.choice().key() : "number";
    return question.asking().key() + " " + choice;
  }

  @ParameterizedTest
  @EnumSource(Skill.class)
  void everyAnswerComesInItsStatedShare(Skill skill) {
    Map<String, Double> stated = statedShares(skill);
    Map<String, Integer> found = new HashMap<>();
    for (int i = 0; i < QUESTIONS; i++) {
      Question question = GENERATOR.question(skill, Level.of(1 + i % 3), i);
      assertEquals(skill, question.skill());
      found.merge(answer(question), 1, Integer::sum);
    }
    assertEquals(stated.keySet(), found.keySet());
    stated.forEach(
        (answer, share) -> {
          double deviation = Math.sqrt(share * (1 - share) / QUESTIONS);
          double measured = (double) found.get(answer) / QUESTIONS;
          assertEquals(share, measured, DEVIATIONS * deviation, answer);
        });
  }

  private static Map<String, Double> statedShares(Skill skill) {
    Map<String, Double> shares = new HashMap<>();
    for (Share share : SHARES) {
      if (share.skill().equals(skill.key())) {
        shares.put(share.asking() + " " + share.answer(), share.percent() / 100);
      }
    }
    assertEquals(
        1,
        shares.values().stream().mapToDouble(Double::doubleValue).sum(),
        0.011,
        () -> skill + " " + shares);
    return shares;
  }

  private record Share(String skill, String asking, String answer, double percent) {}

  private static final List<Share> SHARES = Shares.read();

  /** The table of docs/drills.md. */
  private static final class Shares {
    static List<Share> read() {
      try (var in = GeneratorTest.class.getResourceAsStream("shares.csv")) {
        return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
            .lines()
            .filter(line -> !line.startsWith("#"))
            .skip(1)
            .map(line -> line.split(",", -1))
            .map(c -> new Share(c[0], c[1], c[2], Double.parseDouble(c[3])))
            .toList();
      } catch (java.io.IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Skill.class)
  void theSameNumberAsksTheSame(Skill skill) {
    for (int i = 0; i < 5; i++) {
      assertEquals(
          GENERATOR.question(skill, Level.SECOND, i),
          new Generator(Catalogue.bundled()).question(skill, Level.SECOND, i));
    }
  }

  @Test
  void anotherNumberAsksSomethingElse() {
    long different =
        java.util.stream.LongStream.range(0, 50)
            .mapToObj(i -> GENERATOR.question(Skill.WHERE_IT_GOES, Level.THIRD, i).matter())
            .distinct()
            .count();
    assertTrue(different >= 45, () -> different + " of 50 differ");
  }
}
