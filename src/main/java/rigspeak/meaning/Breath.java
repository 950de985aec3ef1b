package rigspeak.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigspeak.rig.HowGot;

/** The tags of one value, cut into numbers and words. */
final class Breath {

  /** A piece of a value. */
  sealed interface Piece {
    /** A number; without a unit it stands for itself. */
    record Amount(double number, Optional<String> unit) implements Piece {}

    /** A word that is a value or part of one. */
    record Word(String word) implements Piece {}
  }

  private final List<Piece> pieces = new ArrayList<>();
  private Optional<HowGot> how = Optional.empty();
  private Numeral numeral;
  private boolean hasTwin;

  void take(String verb, String argument) {
    switch (verb) {
      case "add" -> numeral().add(Integer.parseInt(argument));
      case "times" -> numeral().times(Integer.parseInt(argument));
      case "digit" -> numeral().digit(Integer.parseInt(argument));
      case "point" -> numeral().point();
      case "half" -> numeral().half();
      case "over" -> numeral().over(Integer.parseInt(argument));
      case "unit" -> endNumeral(Optional.of(argument));
      case "is" -> {
        endNumeral(Optional.empty());
        pieces.add(new Piece.Word(argument));
      }
      case "how" -> {
        endNumeral(Optional.empty());
        how = Optional.of(howGot(argument));
      }
      default -> throw new IllegalArgumentException("the grammar has an unknown tag: " + verb);
    }
  }

  /** All pieces; an open number ends here. */
  List<Piece> pieces() {
    endNumeral(Optional.empty());
    return List.copyOf(pieces);
  }

  Optional<HowGot> how() {
    return how;
  }

  /** Whether a number in it may be heard for another, fifteen for fifty. */
  boolean hasTwin() {
    endNumeral(Optional.empty());
    return hasTwin;
  }

  boolean isEmpty() {
    return pieces.isEmpty() && numeral == null;
  }

  private Numeral numeral() {
    if (numeral == null) {
      numeral = new Numeral();
    }
    return numeral;
  }

  private void endNumeral(Optional<String> unit) {
    if (numeral != null) {
      pieces.add(new Piece.Amount(numeral.value(), unit));
      hasTwin |= numeral.hasTwin();
      numeral = null;
    }
  }

  private static HowGot howGot(String argument) {
    return switch (argument) {
      case "tape" -> HowGot.BY_TAPE;
      case "hand_span" -> HowGot.BY_HAND_SPAN;
      case "eye" -> HowGot.BY_EYE;
      case "pacing" -> HowGot.BY_PACING;
      case "guess" -> HowGot.GUESSED;
      default -> throw new IllegalArgumentException("the grammar has an unknown way: " + argument);
    };
  }
}
