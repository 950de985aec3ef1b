package rigspeak.drill;

import java.util.List;
import java.util.Optional;

/** Where the questions of a drill come from. */
public sealed interface Course {

  /**
   * The next question.
   *
   * @param asked how many have been asked in this drill
   * @param last what was trained by the last of them
   */
  Optional<Question> next(Progress progress, int asked, Optional<Skill> last, long nowSeconds);

  int questions();

  /**
   * Questions without end, of which so many are asked, as the schedule wants them.
   *
   * @param among at least one
   * @param seed another one gives other questions
   */
  record Spaced(Generator generator, List<Skill> among, int questions, long seed)
      implements Course {
    /** So far apart are the first questions of two seeds. */
    private static final long APART = 1_000_003;

    public Spaced {
      among = List.copyOf(among);
    }

    @Override
    public Optional<Question> next(
        Progress progress, int asked, Optional<Skill> last, long nowSeconds) {
      if (asked == questions) {
        return Optional.empty();
      }
      Skill skill = progress.next(among, last, nowSeconds);
      return Optional.of(generator.question(skill, progress.level(skill), seed * APART + asked));
    }
  }

  /** Questions that somebody has written down, in their order. */
  record Written(List<Question> all) implements Course {
    public Written {
      all = List.copyOf(all);
    }

    @Override
    public int questions() {
      return all.size();
    }

    @Override
    public Optional<Question> next(
        Progress progress, int asked, Optional<Skill> last, long nowSeconds) {
      return asked < all.size() ? Optional.of(all.get(asked)) : Optional.empty();
    }
  }
}
