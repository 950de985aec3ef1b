package rigspeak.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Rope;
import rigspeak.dialogue.Support;
import rigspeak.plan.PlanVerdict.Hanging;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;
import rigspeak.verdict.Judge;
import rigspeak.verdict.PathVerdict;

/**
 * The ropes that hang in the course of a walk, each with all that was said of it until it changed,
 * and the redirects that are only spoken of.
 */
final class Course {
  private record Asked(RopePath path, Place place) {}

  private final Judge judge;
  private final List<Hanging> hanging = new ArrayList<>();
  private final Map<Place, Hanging> spokenOf = new LinkedHashMap<>();
  private final Map<Asked, PathVerdict> judged = new LinkedHashMap<>();
  private final Set<Place> everSet = new TreeSet<>();

  private Course(Judge judge) {
    this.judge = judge;
  }

  static List<Hanging> of(Walk walk, Judge judge) {
    Course course = new Course(judge);
    Rope before = Conversation.begin().rope();
    Plan.Line line = new Plan.Line(0, "");
    for (Told told : walk.told()) {
      course.changed(line, before, told.turn().next().rope());
      line = told.line();
      before = told.turn().next().rope();
    }
    course.ends(line, before);
    course.left(line, before);
    return course.inOrder();
  }

  private void changed(Plan.Line line, Rope before, Rope after) {
    if (!set(before).equals(set(after))) {
      ends(line, before);
    }
    if (!before.present().equals(after.present())) {
      left(line, before);
    }
  }

  /** Another rope hangs from now on. */
  private void ends(Plan.Line line, Rope rope) {
    SortedSet<Place> set = set(rope);
    everSet.addAll(set);
    if (!set.isEmpty()) {
      hanging.add(new Hanging(line, true, verdict(rope, set.last())));
    }
  }

  /** The talk turns to another support. */
  private void left(Plan.Line line, Rope rope) {
    Place place = rope.present();
    boolean saidNothing = rope.at(place).said().equals(rope.at(place).said().climbOnly());
    if (!place.isMainPoint() && !saidNothing && !everSet.contains(place) && !isSet(rope, place)) {
      spokenOf.put(place, new Hanging(line, false, verdict(rope, place)));
    }
  }

  private PathVerdict verdict(Rope rope, Place place) {
    Asked asked = new Asked(rope.path(place), place);
    return judged.computeIfAbsent(asked, one -> judge.judge(one.path(), one.place()));
  }

  private List<Hanging> inOrder() {
    List<Hanging> all = new ArrayList<>(hanging);
    spokenOf.forEach(
        (place, one) -> {
          if (!everSet.contains(place)) {
            all.add(one);
          }
        });
    all.sort((one, other) -> Integer.compare(one.until().number(), other.until().number()));
    return all;
  }

  private static SortedSet<Place> set(Rope rope) {
    SortedSet<Place> set = new TreeSet<>();
    for (Place place = Place.redirectNumber(1); rope.has(place); place = next(place)) {
      if (isSet(rope, place)) {
        set.add(place);
      }
    }
    return set;
  }

  private static Place next(Place place) {
    return Place.redirectNumber(place.redirect() + 1);
  }

  private static boolean isSet(Rope rope, Place place) {
    return rope.at(place).state() != Support.State.OFF;
  }
}
