package rigspeak.hearing;

/**
 * How ready the ear is to refuse: a refusal costs a repetition, a mishearing a correction or worse.
 */
public enum Caution {
  /** For noise, an unknown voice, or when much depends on each word. */
  CAUTIOUS,
  NORMAL,
  /** For drills and a quiet place. */
  EAGER
}
