package rigspeak.rig;

/** How a value was got, which says how far it can be trusted. */
public enum HowGot {
  BY_TAPE,
  BY_HAND_SPAN,
  BY_EYE,
  BY_PACING,
  GUESSED,
  /** Nobody said it; the least favourable usual value stands for it. */
  ASSUMED
}
