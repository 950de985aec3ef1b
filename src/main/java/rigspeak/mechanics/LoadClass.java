package rigspeak.mechanics;

/** What a load mostly does to the limb, from the easiest on the union to the one people forget. */
public enum LoadClass {
  /** No load at all: the two legs cancel. */
  NONE,
  /** Along the limb, into the union: compression. */
  INTO_UNION,
  /** Along the limb, away from the union: tension. */
  PULL,
  /** Square to the limb, downward: levers it down. */
  LEVER,
  /** Square to the limb, upward: lifts it and opens the union from below. */
  LIFT,
  /** Square to the limb, to its left or right. */
  SIDE
}
