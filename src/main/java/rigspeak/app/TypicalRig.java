package rigspeak.app;

/** One redirect below a main point, both said whole. */
final class TypicalRig {
  private static final String LINES =
      """
      all up two hundred ten pounds species red oak stationary rope canopy anchor
      go to the main point
      live wood limb ten inches by tape limb upright at the union seated at the union
      stem fourteen inches union sound sling choked three wraps bark rough over ring
      go to redirect one
      live wood
      limb eight inches by tape limb rises thirty out one foot by tape
      stem fourteen inches union sound
      sling choked three wraps seated on a stub bark rough
      over carabiner
      anchor leg up sixty toward the stem fifteen feet
      working leg straight down twenty feet
      """;

  private TypicalRig() {}

  static void sayTo(Session session) {
    LINES.lines().forEach(session::said);
  }
}
