package rigspeak.rig;

/**
 * Where a support is on the rope's path, counted from the anchor: the main tie-in point, then the
 * redirects.
 *
 * @param redirect 0 for the main point, 1 for the redirect next to it, and so on
 */
public record Place(int redirect) implements Comparable<Place> {
  public static final Place MAIN_POINT = new Place(0);

  public Place {
    if (redirect < 0) {
      throw new IllegalArgumentException("there is no redirect " + redirect);
    }
  }

  public static Place redirectNumber(int number) {
    if (number < 1) {
      throw new IllegalArgumentException("there is no redirect " + number);
    }
    return new Place(number);
  }

  public boolean isMainPoint() {
    return redirect == 0;
  }

  /** As the files write it: main_point, redirect_1. */
  public String key() {
    return isMainPoint() ? "main_point" : "redirect_" + redirect;
  }

  @Override
  public int compareTo(Place other) {
    return Integer.compare(redirect, other.redirect);
  }
}
