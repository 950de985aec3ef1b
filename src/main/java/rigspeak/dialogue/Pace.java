package rigspeak.dialogue;

/** How fast answers are spoken. */
public enum Pace {
  SLOW,
  NORMAL,
  FAST;

  Pace slower() {
    return this == FAST ? NORMAL : SLOW;
  }

  Pace faster() {
    return this == SLOW ? NORMAL : FAST;
  }
}
