package rigspeak.app;

import java.util.function.Consumer;
import rigspeak.page.Talk;

/** A plan for tests of the page: one redirect below a main point, both said whole. */
final class PagePlan {
  static final String LINES = Talk.PLAN;

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
