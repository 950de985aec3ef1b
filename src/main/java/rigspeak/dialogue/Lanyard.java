package rigspeak.dialogue;

/** What the tool knows of the second attachment. */
public enum Lanyard {
  /** Nothing was said, or what was said is in doubt. */
  UNKNOWN,
  /** Said and affirmed. */
  CLIPPED_IN,
  /** Said after a good check and a loaded rope. */
  RELEASED
}
