package rigspeak.contract;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rigspeak.contract.SaidRope.Line;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Reply;
import rigspeak.hearing.SoundsAlike;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Spelling;
import rigspeak.rig.Place;
import rigspeak.rig.ResolvedRig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.verdict.Sieve;

/**
 * One or two utterances are taken for what sounds most like them, and nobody corrects it. A rope
 * that is not good may then be called good, but only on values that were every one of them heard
 * back (the contract of {@link Talk}), and of numbers with a twin only after they were affirmed.
 * What is left is up to the climber's ear; it is counted by slot.
 */
class MisheardTest {
  /** Farther over its limits no single value, misheard, makes a rope good. */
  private static final double NEAR = 4;

  private static final SoundsAlike SOUNDS_ALIKE = SoundsAlike.ofAnything();
  private static final List<String[]> CONFUSIONS = Ropes.rows("confusions.csv");

  /** What came of the mishearings of one slot. */
  private static final class Row {
    int tried;
    int notTaken;
    int held;
    int good;
    int goodHeld;
    int goodOfRefused;
    double most;

    void add(Row other) {
      tried += other.tried;
      notTaken += other.notTaken;
      held += other.held;
      good += other.good;
      goodHeld += other.goodHeld;
      goodOfRefused += other.goodOfRefused;
      most = Math.max(most, other.most);
    }

    String text(String name) {
      return String.format(
          Locale.ROOT,
          "| %s | %d | %d | %d | %d | %d | %d | %s |",
          name,
          tried,
          notTaken,
          held,
          good,
          goodHeld,
          goodOfRefused,
          good == 0 ? "" : String.format(Locale.ROOT, "%.1f", most));
    }
  }

  @Test
  void whatIsMisheardIsGoodOnlyAsItWasHeardBack() {
    Map<Slot, Row> rows = new TreeMap<>();
    int ropes = misheardOnce(4, 8, Talk.BRIEF, rows);
    print("misheard, one value at a time, of " + ropes + " ropes that are not good", rows);
    Row twice = misheardTwice(4, 60, Talk.BRIEF);
    System.out.println(twice.text("two at a time"));
    assertTrue(twice.tried >= 150);
    assertTrue(rows.values().stream().mapToInt(row -> row.tried).sum() >= 300);
  }

  @Test
  @Tag("long")
  void howOftenAMisheardValueMakesARopeGood() {
    Map<Slot, Row> rows = new TreeMap<>();
    int ropes = misheardOnce(40, 12, Talk.WHOLE, rows);
    print("misheard, one value at a time, of " + ropes + " ropes that are not good", rows);
    Row twice = misheardTwice(40, 60, Talk.WHOLE);
    System.out.println(twice.text("two at a time"));
    assertTrue(
        rows.values().stream().mapToInt(row -> row.good).sum() > 0, "nothing put to the test");
  }

  private static void print(String what, Map<Slot, Row> rows) {
    System.out.println(what);
    System.out.println(
        "| slot | tried | nothing taken | affirm asked | good | of these affirmed | truly refused | truly used |");
    Row all = new Row();
    rows.forEach(
        (slot, row) -> {
          all.add(row);
          System.out.println(row.text(slot.key()));
        });
    System.out.println(all.text("all"));
  }

  /** Ropes of which everything is known and that are not good, but not hopeless. */
  private static List<SaidRope> notGood(int count) {
    List<SaidRope> ropes = new ArrayList<>();
    Iterator<SaidRope> drawn = Ropes.drawn().iterator();
    while (ropes.size() < count) {
      SaidRope rope = drawn.next();
      RopePath path = Talk.with(Talk.BRIEF).sayAll(rope).rope();
      Optional<Map<Place, ResolvedRig>> known = Sieve.known(path);
      if (known.isPresent()
          && !Sieve.mayBeGood(path)
          && known.get().values().stream()
              .flatMap(rig -> Sieve.quickWorst(rig).values().stream())
              .allMatch(worst -> worst <= NEAR)) {
        ropes.add(rope);
      }
    }
    return ropes;
  }

  private static int misheardOnce(int count, int nearest, Dialogue judge, Map<Slot, Row> rows) {
    List<SaidRope> ropes = notGood(count);
    for (SaidRope rope : ropes) {
      double asSaid = asSaid(rope);
      for (Line line : misheard(rope)) {
        Talk before = Talk.with(Talk.BRIEF).sayAll(rope.without(line.place(), line.slot()));
        before.turnTo(line.place());
        Row row = rows.computeIfAbsent(line.slot(), slot -> new Row());
        for (String words : neighbours(line.said(), nearest)) {
          Talk talk = before.fork();
          take(talk, words, rope.last(), judge, row, asSaid);
        }
      }
    }
    return ropes.size();
  }

  private static Row misheardTwice(int count, int tries, Dialogue judge) {
    SplittableRandom random = new SplittableRandom(count);
    Row row = new Row();
    for (SaidRope rope : notGood(count)) {
      double asSaid = asSaid(rope);
      List<Line> lines = misheard(rope);
      for (int i = 0; i < tries; i++) {
        Line one = lines.get(random.nextInt(lines.size()));
        Line other = lines.get(random.nextInt(lines.size()));
        if (one.equals(other)) {
          continue;
        }
        SaidRope rest = rope.without(one.place(), one.slot()).without(other.place(), other.slot());
        Talk talk = Talk.with(Talk.BRIEF).sayAll(rest);
        List<String> ones = neighbours(one.said(), 6);
        List<String> others = neighbours(other.said(), 6);
        if (ones.isEmpty() || others.isEmpty()) {
          continue;
        }
        talk.turnTo(one.place());
        talk.hearAndAffirm(any(ones, random));
        talk.turnTo(other.place());
        take(talk, any(others, random), rope.last(), judge, row, asSaid);
      }
    }
    return row;
  }

  private static String any(List<String> words, SplittableRandom random) {
    return words.get(random.nextInt(words.size()));
  }

  /** Of the redirect and of the climb; a misheard main point makes no bad redirect good. */
  private static List<Line> misheard(SaidRope rope) {
    return rope.lines().stream()
        .filter(line -> !line.place().isMainPoint() || line.slot().scope() == Slot.Scope.CLIMB)
        .toList();
  }

  private static void take(
      Talk talk, String words, Place last, Dialogue judge, Row row, double asSaid) {
    Talk.Step step = talk.hearAndAffirm(words);
    boolean held = step.has(Reply.AffirmDoubtful.class);
    row.tried++;
    row.notTaken += held || step.has(Reply.Taken.class) ? 0 : 1;
    row.held += held ? 1 : 0;
    talk.turnTo(last);
    if (Sieve.mayBeGood(talk.rope())
        && !talk.before(judge).type("check redirect").good().isEmpty()) {
      row.good++;
      row.goodHeld += held ? 1 : 0;
      row.goodOfRefused += asSaid > 1 ? 1 : 0;
      row.most = Math.max(row.most, asSaid);
    }
  }

  private static double asSaid(SaidRope rope) {
    return Sieve.known(Talk.with(Talk.BRIEF).sayAll(rope).rope()).orElseThrow().values().stream()
        .mapToDouble(Sieve::asSaid)
        .max()
        .orElseThrow();
  }

  /** What sounds most like it, and what is known to be taken for it; each means something else. */
  private static List<String> neighbours(String said, int nearest) {
    List<String> words = Spelling.words(said);
    Set<String> others = new LinkedHashSet<>();
    SOUNDS_ALIKE.to(words, nearest).forEach(other -> others.add(String.join(" ", other)));
    String text = " " + String.join(" ", words) + " ";
    for (String[] pair : CONFUSIONS) {
      for (int way = 0; way < 2; way++) {
        String other = text.replace(" " + pair[way] + " ", " " + pair[1 - way] + " ").strip();
        others.add(other);
      }
    }
    others.remove(text.strip());
    Meaning meant = Talk.meaning(text.strip(), true, Optional.empty());
    others.removeIf(
        other -> {
          Meaning taken = Talk.meaning(other, true, Optional.empty());
          return taken.equals(meant) || taken instanceof Meaning.NotUnderstood;
        });
    return List.copyOf(others);
  }
}
