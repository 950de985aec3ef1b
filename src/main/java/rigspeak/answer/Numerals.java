package rigspeak.answer;

import rigspeak.answer.Amounts.Round;
import rigspeak.quantity.UnitSystem;

/** How computed numbers are put, with the same rounding either way. */
enum Numerals {
  /** In words, for the ear. */
  SPOKEN {
    @Override
    String fall(double metres, UnitSystem units) {
      return Amounts.fall(metres, units);
    }

    @Override
    String force(double newtons, UnitSystem units) {
      return Amounts.force(newtons, units, Round.UP);
    }

    @Override
    String degrees(double degrees) {
      return Amounts.degrees(degrees);
    }

    @Override
    String shareOf(double ratio, String something) {
      return Amounts.shareOf(ratio, something);
    }
  },
  /** In figures, for the eye. */
  WRITTEN {
    @Override
    String fall(double metres, UnitSystem units) {
      return Figures.fall(metres, units);
    }

    @Override
    String force(double newtons, UnitSystem units) {
      return Figures.force(newtons, units);
    }

    @Override
    String degrees(double degrees) {
      return Figures.degrees(degrees);
    }

    @Override
    String shareOf(double ratio, String something) {
      return Figures.percent(ratio) + " of " + something;
    }
  };

  /** How far somebody falls or swings. */
  abstract String fall(double metres, UnitSystem units);

  /** A demand, rounded up. */
  abstract String force(double newtons, UnitSystem units);

  /** An angle, at least 0. */
  abstract String degrees(double degrees);

  /** So much of something, rounded up. */
  abstract String shareOf(double ratio, String something);
}
