package rigspeak.dialogue;

/** How much an answer says. */
public enum Detail {
  BRIEF,
  FULL
}
