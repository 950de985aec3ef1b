package rigspeak.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import rigspeak.rig.Rig;

/**
 * The redirects of a climb in the order in which they were begun.
 *
 * @param all at least one
 * @param present which one the talk is about, counted from zero
 */
public record Redirects(List<Support> all, int present) {
  public Redirects {
    all = List.copyOf(all);
    if (present < 0 || present >= all.size()) {
      throw new IllegalArgumentException("no redirect " + present + " of " + all.size());
    }
  }

  static Redirects begin() {
    return new Redirects(List.of(Support.of(Rig.empty())), 0);
  }

  Support support() {
    return all.get(present);
  }

  /** The number of the present one, counted from one. */
  int number() {
    return present + 1;
  }

  boolean has(int number) {
    return number >= 1 && number <= all.size();
  }

  Redirects turnedTo(int number) {
    return new Redirects(all, number - 1);
  }

  /** One more, which knows of the climb what the present one knows, and nothing else. */
  Redirects begun() {
    List<Support> more = new ArrayList<>(all);
    more.add(Support.of(support().said().climbOnly()));
    return new Redirects(more, all.size());
  }

  /** The present one changed; what belongs to the climb changes for all of them. */
  Redirects with(Support support) {
    List<Support> changed = new ArrayList<>();
    for (Support other : all) {
      Rig said = other.said().withClimbOf(support.said());
      changed.add(said.equals(other.said()) ? other : other.with(said));
    }
    changed.set(present, support);
    return new Redirects(changed, present);
  }

  List<Integer> loaded() {
    return numbers(Support::loaded);
  }

  List<Integer> judged() {
    return numbers(support -> support.verdict().isPresent());
  }

  private List<Integer> numbers(Predicate<Support> which) {
    return IntStream.rangeClosed(1, all.size())
        .filter(number -> which.test(all.get(number - 1)))
        .boxed()
        .toList();
  }
}
