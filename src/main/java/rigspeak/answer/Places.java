package rigspeak.answer;

import rigspeak.rig.Place;

/** What the supports of a rope are called. */
final class Places {
  private Places() {}

  /** In the middle of a sentence: "the main point", "redirect two". */
  static String name(Place place) {
    return place.isMainPoint() ? "the main point" : title(place);
  }

  /** By itself: "main point", "redirect two". */
  static String title(Place place) {
    return place.isMainPoint() ? "main point" : "redirect " + Numbers.whole(place.redirect());
  }
}
