package rigspeak.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rigspeak.drawing.Ink.Colour;
import rigspeak.drawing.Ink.Dash;

/**
 * Stem and limb to scale, round the place where the sling lies.
 *
 * @param marks stem, limb and what joins them
 * @param reach spots that must be on the sheet
 * @param union where the limb's axis leaves the stem
 * @param limbSpots spots on the limb's outer end that a label may name
 * @param stemSpots the same of the stem
 * @param across half the limb as it is seen under the sling, square to its axis on the upper side
 * @param along one picture unit along the limb, as it is seen
 */
record Wood(
    List<Mark> marks,
    List<Spot> reach,
    Spot union,
    List<Spot> limbSpots,
    List<Spot> stemSpots,
    Spot across,
    Spot along) {
  private static final double LINE = 1.4;

  /** How far the stem is drawn above and below the union. */
  private static final double STEM = 58;

  private static final int CURVE = 12;

  /**
   * @param scale picture units a metre
   * @param sling where the sling lies
   */
  static Wood of(Sizes sizes, Aspect aspect, double scale, Spot sling) {
    return new Sawyer(sizes, scale, sling).wood(aspect);
  }

  /** Cuts the shapes. */
  private static final class Sawyer {
    private final Spot sling;
    private final double rise;
    private final double out;
    private final double beyond;
    private final double thin;
    private final double thick;
    private final double stem;
    private final Ink limbInk;
    private final Ink stemInk;

    Sawyer(Sizes sizes, double scale, Spot sling) {
      this.sling = sling;
      this.rise = sizes.rise().value();
      this.out = sizes.out().value() * scale;
      this.beyond = sizes.beyond() * scale;
      this.thin = sizes.limb().value() * scale / 2;
      this.thick = sizes.thick() * scale / 2;
      this.stem = sizes.stem().value() * scale;
      this.limbInk = ink(sizes.knowsLimb() && sizes.out().said());
      this.stemInk = ink(sizes.stem().said());
    }

    private static Ink ink(boolean said) {
      return new Ink(Colour.BARK, LINE, said ? Dash.SOLID : Dash.DASHED, Colour.WOOD);
    }

    Wood wood(Aspect aspect) {
      return aspect == Aspect.SIDE ? fromTheSide() : fromAbove();
    }

    private Wood fromTheSide() {
      Spot along = Spot.of(Math.cos(rise), -Math.sin(rise));
      Spot upper = Spot.of(-Math.sin(rise), -Math.cos(rise));
      Spot union = sling.minus(along.times(out));
      Spot tip = sling.plus(along.times(beyond));
      double bark = union.x() - thick * Math.abs(Math.sin(rise));
      Spot inUpper = union.plus(upper.times(thick));
      Spot inLower = union.minus(upper.times(thick));
      Spot outUpper = tip.plus(upper.times(thin));
      Spot outLower = tip.minus(upper.times(thin));
      Spot back = Spot.of(-Math.min(stem / 2, thick), 0);
      List<Spot> limb = new ArrayList<>();
      limb.add(inUpper.plus(back));
      limb.add(inUpper);
      limb.add(sling.plus(upper.times(thin)));
      limb.add(outUpper);
      limb.addAll(broken(outUpper, outLower));
      limb.add(outLower);
      limb.add(sling.minus(upper.times(thin)));
      limb.add(inLower);
      limb.add(inLower.plus(back));
      double top = Math.min(union.y() - STEM, inUpper.y() - STEM / 2);
      double bottom = Math.max(union.y() + STEM, inLower.y() + STEM / 2);
      List<Mark> marks = new ArrayList<>();
      marks.add(new Mark.Track(limb, true, limbInk));
      marks.add(crotch(inUpper, inLower, bark, top, bottom));
      List<Spot> outline = new ArrayList<>();
      Spot topLeft = Spot.of(bark - stem, top);
      Spot topRight = Spot.of(bark, top);
      Spot bottomRight = Spot.of(bark, bottom);
      Spot bottomLeft = Spot.of(bark - stem, bottom);
      outline.add(topLeft);
      outline.addAll(broken(topLeft, topRight));
      outline.add(topRight);
      outline.add(bottomRight);
      outline.addAll(broken(bottomRight, bottomLeft));
      outline.add(bottomLeft);
      marks.add(new Mark.Track(outline, true, stemInk));
      Spot outside = sling.plus(along.times(0.7 * beyond));
      return new Wood(
          List.of(new Mark.Group("wood", marks)),
          List.of(topLeft, bottomRight, outUpper, outLower),
          union,
          List.of(outside.plus(upper.times(thin)), outside.minus(upper.times(thin)), tip),
          List.of(
              Spot.of(bark - stem / 2, bottom - 4),
              Spot.of(bark - stem / 2, top + 4),
              Spot.of(bark - stem, union.y() + STEM / 2)),
          upper.times(thin),
          along);
    }

    /** Where a steep limb leaves the stem, the wood between them. */
    private Mark crotch(Spot inUpper, Spot inLower, double bark, double top, double bottom) {
      boolean up = inLower.x() > inUpper.x();
      Spot free = up ? inLower : inUpper;
      double reach = 1.6 * (free.x() - bark);
      double end = up ? Math.min(bottom, free.y() + reach) : Math.max(top, free.y() - reach);
      List<Spot> spots = new ArrayList<>();
      spots.add(up ? inUpper : inLower);
      for (int i = 0; i <= CURVE; i++) {
        double share = (double) i / CURVE;
        double left = (1 - share) * (1 - share);
        spots.add(Spot.of(bark + left * (free.x() - bark), free.y() + share * (end - free.y())));
      }
      return new Mark.Track(spots, true, limbInk);
    }

    private Wood fromAbove() {
      double flat = Math.cos(rise);
      double lean = Math.abs(Math.sin(rise));
      Spot union = sling.minus(Spot.of(out * flat, 0));
      Spot tip = sling.plus(Spot.of(beyond * flat, 0));
      double bark = union.x() - thick * lean;
      List<Spot> limb = new ArrayList<>();
      limb.addAll(halfRound(tip, thin, thin * lean));
      List<Spot> inner = halfRound(union, thick, -Math.max(thick * lean, 2));
      Collections.reverse(inner);
      limb.addAll(inner);
      Spot middle = Spot.of(bark - stem / 2, sling.y());
      Mark log = new Mark.Ring(middle, stem / 2, stemInk);
      Mark rings = new Mark.Ring(middle, stem / 4, Ink.line(Colour.BARK, 0.6));
      List<Mark> marks = List.of(new Mark.Track(limb, true, limbInk), log, rings);
      Spot half = Spot.of(stem / 2, stem / 2);
      return new Wood(
          List.of(new Mark.Group("wood", marks)),
          List.of(middle.minus(half), middle.plus(half), tip.plus(Spot.of(thin * lean, thin))),
          union,
          List.of(sling.plus(Spot.of(0.7 * beyond * flat, -thin))),
          List.of(Spot.of(middle.x(), middle.y() + stem / 2 - 4)),
          Spot.of(0, -thin),
          Spot.of(flat, 0));
    }

    /** From the upper edge over the end to the lower one. */
    private static List<Spot> halfRound(Spot middle, double half, double bulge) {
      List<Spot> spots = new ArrayList<>();
      for (int i = 0; i <= CURVE; i++) {
        double turn = Math.PI * (i / (double) CURVE - 0.5);
        spots.add(middle.plus(Spot.of(bulge * Math.cos(turn), half * Math.sin(turn))));
      }
      return spots;
    }

    /** An end that is broken off: there is more of it than is drawn. */
    private static List<Spot> broken(Spot from, Spot to) {
      Spot way = to.minus(from);
      Spot side = way.unit().quarterTurned().times(Math.min(5, way.length() / 4));
      return List.of(
          from.plus(way.times(0.3)).plus(side),
          from.plus(way.times(0.55)).minus(side),
          from.plus(way.times(0.8)).plus(side.times(0.6)));
    }
  }
}
