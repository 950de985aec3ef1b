package rigspeak.dialogue;

import java.util.List;

/** What waits for an affirm. */
public sealed interface Pending {

  /**
   * Corrected values, affirmed one by one.
   *
   * @param items the first is the one that was read back; none of them is in the rig
   */
  record Values(List<Reply.Item> items) implements Pending {
    public Values {
      items = List.copyOf(items);
    }

    Reply.Item first() {
      return items.get(0);
    }

    List<Reply.Item> rest() {
      return items.subList(1, items.size());
    }
  }

  /**
   * Values that the ear may have taken for others, as fifteen for fifty, affirmed together or said
   * again, numbers digit by digit.
   *
   * @param items all of one breath; none of them is in the rig
   * @param answersQuestion whether one of them had been asked for, so that the next question
   *     follows
   */
  record Doubtful(List<Reply.Item> items, boolean answersQuestion) implements Pending {
    public Doubtful {
      items = List.copyOf(items);
    }
  }

  /** The lanyard was called clipped in. */
  record ClippedIn() implements Pending {}
}
