package rigspeak.drawing;

/** From where a rig is looked at, square to the sheet; the tip of the limb is to the right. */
enum Aspect {
  /** From the limb's right, square to the vertical plane that it lies in. */
  SIDE,
  /** From above. */
  PLAN;

  /** A way in space as it is seen, where one long in space is one long on the sheet. */
  Spot across(Heading heading) {
    return Spot.of(heading.tip(), this == SIDE ? -heading.up() : -heading.left());
  }

  /** How far it comes out of the sheet toward who looks. */
  double towardViewer(Heading heading) {
    return this == SIDE ? -heading.left() : heading.up();
  }
}
