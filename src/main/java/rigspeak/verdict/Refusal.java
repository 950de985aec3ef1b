package rigspeak.verdict;

import java.util.Locale;

/** What is refused outright, whatever the numbers. */
public enum Refusal {
  DEAD_WOOD,
  CRACKED_UNION,
  /** A connector that bends over an edge: nobody rates it so. */
  CONNECTOR_OVER_EDGE;

  /** Lower case with underscores, as the files write it. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
