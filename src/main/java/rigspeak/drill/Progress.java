package rigspeak.drill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that a trainee has answered, and what follows from it: what is remembered, and how hard the
 * questions are by now.
 */
public final class Progress {
  /** So many right answers in a row make it harder; one wrong makes it easier. */
  private static final int IN_A_ROW = 3;

  private final List<Answered> answers;
  private final Map<Skill, Memory> memories;
  private final Map<Skill, Level> levels;
  private final Map<Skill, Integer> row;

  private Progress(
      List<Answered> answers,
      Map<Skill, Memory> memories,
      Map<Skill, Level> levels,
      Map<Skill, Integer> row) {
    this.answers = Collections.unmodifiableList(answers);
    this.memories = memories;
    this.levels = levels;
    this.row = row;
  }

  /** Of somebody who has answered nothing yet. */
  public static Progress none() {
    return new Progress(
        List.of(),
        new EnumMap<>(Skill.class),
        new EnumMap<>(Skill.class),
        new EnumMap<>(Skill.class));
  }

  /** Of all these answers, in the order in which they were given. */
  public static Progress of(List<Answered> answers) {
    Progress progress = none();
    for (Answered answer : answers) {
      progress.count(answer);
    }
    return new Progress(List.copyOf(answers), progress.memories, progress.levels, progress.row);
  }

  /** With one more answer. */
  public Progress with(Answered answer) {
    List<Answered> more = new ArrayList<>(answers);
    more.add(answer);
    Progress next =
        new Progress(more, new EnumMap<>(memories), new EnumMap<>(levels), new EnumMap<>(row));
    next.count(answer);
    return next;
  }

  private void count(Answered answer) {
    Skill skill = answer.skill();
    memories.put(skill, Schedule.answered(memory(skill), answer.grade(), answer.atSeconds()));
    if (!answer.isRight()) {
      row.put(skill, 0);
      levels.put(skill, level(skill).easier());
      return;
    }
    int right = row.merge(skill, 1, Integer::sum);
    if (right >= IN_A_ROW) {
      row.put(skill, 0);
      levels.put(skill, level(skill).harder());
    }
  }

  public List<Answered> answers() {
    return answers;
  }

  /** Nothing if it was never asked. */
  public Optional<Memory> memory(Skill skill) {
    return Optional.ofNullable(memories.get(skill));
  }

  /** How hard its next question is. */
  public Level level(Skill skill) {
    return levels.getOrDefault(skill, Level.FIRST);
  }

  /** What is due, what is most likely forgotten first. */
  public List<Skill> due(long nowSeconds) {
    return memories.entrySet().stream()
        .filter(entry -> entry.getValue().isDue(nowSeconds))
        .sorted(Comparator.comparingDouble(e -> Schedule.remembered(e.getValue(), nowSeconds)))
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * What is asked next: what is due, then what was never asked, then what is due soonest; never the
   * same skill twice in a row if there is another.
   *
   * @param among at least one
   */
  Skill next(List<Skill> among, Optional<Skill> last, long nowSeconds) {
    List<Skill> order = new ArrayList<>(due(nowSeconds));
    Arrays.stream(Skill.values()).filter(skill -> !memories.containsKey(skill)).forEach(order::add);
    memories.entrySet().stream()
        .sorted(Comparator.comparingLong(entry -> entry.getValue().dueSeconds()))
        .map(Map.Entry::getKey)
        .forEach(order::add);
    order.retainAll(among);
    return order.stream()
        .filter(skill -> last.filter(before -> before == skill).isEmpty())
        .findFirst()
        .orElse(order.get(0));
  }
}
