package rigspeak.app;

import java.util.function.Consumer;

/** A plan for tests of the page: one redirect below a main point, both said whole. */
final class PagePlan {
  static final String LINES =
      """
      all up two hundred ten pounds species northern red oak stationary rope canopy anchor
      go to the main point
      live wood limb twelve inches by tape limb upright at the union seated at the union
      stem twenty inches by tape union sound sling choked three wraps bark rough over ring
      go to redirect one
      live wood limb ten inches by tape limb rises two zero by tape
      out one foot by tape
      stem one four inches by tape union sound
      sling choked three wraps seated on a stub bark rough over ring
      anchor leg up one zero toward the stem fifteen feet by tape
      working leg straight down twenty feet by tape
      stem clear of swing by twelve feet
      """;

  private PagePlan() {}

  /** The same with two items otherwise and one left out, then checked, the lanyard clipped in. */
  static void sayWrongly(Consumer<String> say) {
    LINES
        .replace("limb ten inches", "limb five inches")
        .replace("out one foot", "out eight feet")
        .replace("stem clear of swing by twelve feet\n", "")
        .lines()
        .forEach(say);
    say.accept("ready to set");
    say.accept("clipped in");
    say.accept("affirm");
    say.accept("check redirect");
  }
}
