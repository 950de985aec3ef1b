package rigspeak.drawing;

import java.util.Optional;
import rigspeak.rig.Estimate;
import rigspeak.rig.Measure;
import rigspeak.rig.Rig;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.LoadAsSaid;

/**
 * What is drawn to scale of a support.
 *
 * @param limb diameter under the sling, metres
 * @param thick diameter at the union, metres
 * @param stem diameter, metres
 * @param out from the union to the sling along the limb, metres
 * @param rise of the limb, radians, up positive
 * @param beyond what is drawn of the limb from the sling on, metres
 */
record Sizes(Size limb, double thick, Size stem, Size out, Size rise, double beyond) {
  /** What is drawn where nothing was said: a usual limb, and broken lines that tell it is none. */
  private static final double USUAL_LIMB = 0.2;

  private static final double USUAL_STEM = 0.4;
  private static final double USUAL_OUT = 0.4;
  private static final double USUAL_RISE = Math.toRadians(15);

  /** The least that is drawn beyond the sling. */
  private static final double LEAST_BEYOND = 0.35;

  /**
   * A number that is drawn.
   *
   * @param said whether it is known, and not only drawn as a guess
   */
  record Size(double value, boolean said) {}

  static Sizes of(Subject subject) {
    Rig said = subject.said();
    Size limb =
        size(subject, Measure.LIMB_DIAMETER, distance(said, Slot.LIMB_DIAMETER), USUAL_LIMB);
    Size thick = size(subject, Measure.THICK_END, distance(said, Slot.THICK_END), limb.value());
    double usualStem = Math.max(USUAL_STEM, 1.5 * thick.value());
    Size stem = size(subject, Measure.STEM_DIAMETER, distance(said, Slot.STEM_DIAMETER), usualStem);
    Size out = size(subject, Measure.OUT, distance(said, Slot.OUT), USUAL_OUT);
    Optional<Double> turned =
        said.value(Slot.LIMB_RISE, Value.Turned.class).map(rise -> rise.angle().radians());
    Size rise = size(subject, Measure.LIMB_RISE, turned, USUAL_RISE);
    double most = Math.max(LEAST_BEYOND, Math.max(0.35 * out.value(), 1.5 * limb.value()));
    double beyond =
        distance(said, Slot.LIMB_LENGTH)
            .map(length -> Math.max(limb.value(), Math.min(most, length - out.value())))
            .orElse(most);
    return new Sizes(limb, thick.value(), stem, out, rise, beyond);
  }

  private static Size size(Subject subject, Measure measure, Optional<Double> said, double usual) {
    return subject
        .loaded()
        .map(LoadAsSaid::rig)
        .map(rig -> rig.measures().get(measure))
        .map(Estimate::nominal)
        .or(() -> said)
        .map(value -> new Size(value, true))
        .orElse(new Size(usual, false));
  }

  private static Optional<Double> distance(Rig said, Slot slot) {
    return said.value(slot, Value.Distance.class).map(distance -> distance.length().metres());
  }

  /** Whether the limb is drawn as it was said. */
  boolean knowsLimb() {
    return limb.said() && rise.said();
  }
}
