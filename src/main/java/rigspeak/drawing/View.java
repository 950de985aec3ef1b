package rigspeak.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import rigspeak.answer.PictureWords;
import rigspeak.drawing.Ink.Colour;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Rig;

/** A support as it is seen from one aspect, to scale, in an area of a sheet. */
final class View {

  /** Room for labels round what is drawn. */
  private static final double MARGIN = 16;

  private static final double FOOT = 34;
  private static final double HEAD = 26;

  /** The sling from the bark to its connector; how long it is nobody said. */
  private static final double SLING = 26;

  private static final double LEG = 98;

  /** Where the room is as wide and high as this, sling, legs and forces have their full length. */
  private static final double FULL_ROOM = 225;

  /** The tension of the working leg. */
  private static final double FORCE = 60;

  private static final double SHORTEST_ARROW = 18;
  private static final double LONGEST_ARROW = 112;
  private static final double CONNECTOR = 4.5;

  /** A way that is seen shorter than this is seen end on. */
  private static final double END_ON = 9;

  private static final double WRAP = 4.5;
  private static final double SHRINK = 0.96;
  private static final double THICKEST = 56;
  private static final double WIDEST_STEM = 94;

  private final Subject subject;
  private final Aspect aspect;
  private final Area frame;
  private final Area room;
  private final double label;

  /** What is not to scale is drawn smaller where there is less room. */
  private final double share;

  private final Sizes sizes;
  private final Pull pull;
  private final List<Mark> marks = new ArrayList<>();
  private final Labels labels;

  private View(Subject subject, Aspect aspect, Area frame, double label) {
    this.subject = subject;
    this.aspect = aspect;
    this.frame = frame;
    this.room = frame.within(MARGIN, HEAD, MARGIN, FOOT);
    this.label = label;
    this.share = Math.min(1, Math.min(room.width(), room.height()) / FULL_ROOM);
    this.sizes = Sizes.of(subject);
    this.pull = Pull.of(subject);
    this.labels = new Labels(frame.within(3, HEAD - 6, 3, 4));
  }

  /**
   * @param label the size of its letters
   */
  static List<Mark> of(Subject subject, Aspect aspect, Area frame, double label) {
    View view = new View(subject, aspect, frame, label);
    view.draw();
    return view.marks;
  }

  private void draw() {
    double scale = scale();
    Area rough = Area.around(reach(scale, Spot.of(0, 0)));
    Spot sling = room.centre().minus(rough.centre());
    title();
    orientation();
    ScaleBar.at(
            Spot.of(frame.left() + MARGIN, frame.bottom() - 10),
            scale,
            PictureWords.units(subject.said()),
            label - 1)
        .forEach(this::add);
    Wood wood = Wood.of(sizes, aspect, scale, sling);
    wood.marks().forEach(this::add);
    Spot end = sling.plus(aspect.across(pull.sling().heading()).times(strand(scale)));
    spread(end);
    ropes(end);
    sling(wood, sling, end);
    load(end);
    label(wood, sling, end);
  }

  private void add(Mark mark) {
    marks.add(mark);
    labels.keepOff(mark);
  }

  private void title() {
    String words = aspect == Aspect.SIDE ? PictureWords.fromTheSide() : PictureWords.fromAbove();
    Spot at = Spot.of(frame.left() + 6, frame.top() + label + 3);
    marks.add(new Mark.Words(at, words, Type.bold(label + 0.5)));
  }

  /** Which way is down, or toward the tip. */
  private void orientation() {
    Spot corner = Spot.of(frame.right() - 32, frame.top() + 32);
    if (aspect == Aspect.PLAN) {
      Rose.at(corner).forEach(this::add);
      labels.keepOff(new Area(corner.x() - 28, frame.top(), frame.right(), corner.y() + 28));
    } else {
      List<Mark> plumb = new ArrayList<>();
      Spot top = Spot.of(frame.right() - 12, frame.top() + 8);
      plumb.addAll(Arrows.arrow(top, top.plus(Spot.of(0, 30)), 1.2, 9, Colour.GREY));
      Type type = Type.plain(label - 1).in(Colour.GREY).from(Type.From.END);
      plumb.add(new Mark.Words(top.plus(Spot.of(-7, 18)), PictureWords.plumb(), type));
      plumb.forEach(this::add);
      labels.keepOff(new Area(top.x() - 50, frame.top(), frame.right(), top.y() + 32));
    }
  }

  /* ---- how large ---- */

  /** Picture units a metre: as large as the room allows. */
  private double scale() {
    double scale =
        share * Math.min(THICKEST / sizes.limb().value(), WIDEST_STEM / sizes.stem().value());
    Area there = Area.around(reach(scale, Spot.of(0, 0)));
    while (scale > 1 && (there.width() > room.width() || there.height() > room.height())) {
      scale *= SHRINK;
      there = Area.around(reach(scale, Spot.of(0, 0)));
    }
    return scale;
  }

  private List<Spot> reach(double scale, Spot sling) {
    List<Spot> reach = new ArrayList<>(Wood.of(sizes, aspect, scale, sling).reach());
    Spot end = sling.plus(aspect.across(pull.sling().heading()).times(strand(scale)));
    reach.add(end);
    pull.legs().forEach(leg -> reach.add(end.plus(aspect.across(leg.heading()).times(leg()))));
    pull.load().ifPresent(arrow -> reach.add(end.plus(way(arrow))));
    return reach;
  }

  private double leg() {
    return share * LEG;
  }

  private double force() {
    return share * FORCE;
  }

  private double strand(double scale) {
    return sizes.limb().value() * scale / 2 + share * SLING;
  }

  /** From the tail of the load's arrow to its tip. */
  private Spot way(Pull.Arrow arrow) {
    double length =
        Math.max(SHORTEST_ARROW, Math.min(share * LONGEST_ARROW, force() * arrow.size()));
    return aspect.across(arrow.heading()).times(length);
  }

  /* ---- the sling ---- */

  private void sling(Wood wood, Spot at, Spot end) {
    List<Mark> sling = new ArrayList<>();
    boolean fromItsEnd = wood.along().length() < 0.5;
    int turns = fromItsEnd ? 0 : Wraps.drawn(subject.said());
    if (fromItsEnd) {
      sling.add(new Mark.Ring(at, 1.06 * wood.across().length(), Ink.line(Colour.BLACK, 2.6)));
    }
    for (int i = 0; i < turns; i++) {
      Spot middle = at.plus(wood.along().times(WRAP * (i - (turns - 1) / 2.0)));
      Spot half = wood.across().times(1.06);
      sling.add(new Mark.Line(middle.plus(half), middle.minus(half), Ink.line(Colour.BLACK, 2.6)));
    }
    Ink strand = pull.sling().said() ? Ink.line(Colour.BLACK, 3.4) : Ink.dashed(Colour.BLACK, 2.2);
    sling.add(new Mark.Line(at, end, strand));
    sling.add(new Mark.Ring(end, CONNECTOR, Ink.line(Colour.BLACK, 1.8).filledWith(Colour.WHITE)));
    add(new Mark.Group("sling", sling));
  }

  /* ---- the rope ---- */

  private void ropes(Spot end) {
    for (Pull.Leg leg : pull.legs()) {
      Spot way = aspect.across(leg.heading()).times(leg());
      List<Mark> rope = new ArrayList<>();
      boolean anyWay = aspect == Aspect.PLAN && leg.known() == Pull.Known.SLOPE;
      if (anyWay && way.length() >= END_ON) {
        rope.add(new Mark.Ring(end, way.length() / 2, Ink.dashed(Colour.ROPE, 1.6)));
      } else if (way.length() < END_ON) {
        rope.addAll(Arrows.endOn(end, 9, aspect.towardViewer(leg.heading()) > 0, Colour.ROPE, 1.6));
      } else {
        Ink ink =
            leg.known() == Pull.Known.ALL ? Ink.line(Colour.ROPE, 2) : Ink.dashed(Colour.ROPE, 2);
        rope.add(new Mark.Line(end, end.plus(way), ink));
        if (leg.tension() > 0) {
          rope.add(
              Arrows.head(
                  end.plus(way.times(force() * leg.tension() / leg())), way, 9, Colour.ROPE));
        }
      }
      add(new Mark.Group("rope", rope));
    }
  }

  /* ---- the load ---- */

  private void load(Spot end) {
    Optional<Pull.Arrow> known = pull.load();
    if (known.isEmpty()) {
      return;
    }
    Pull.Arrow arrow = known.get();
    Spot way = way(arrow);
    parallelogram(end, arrow);
    List<Mark> load = new ArrayList<>();
    if (aspect == Aspect.PLAN && !arrow.sideKnown()) {
      load.add(new Mark.Ring(end, 14, Ink.dashed(Colour.LOAD, 3)));
    } else if (way.length() < END_ON) {
      load.addAll(Arrows.endOn(end, 14, aspect.towardViewer(arrow.heading()) > 0, Colour.LOAD, 3));
    } else {
      load.addAll(Arrows.arrow(end, end.plus(way), 4.6, 15, Colour.LOAD));
    }
    TreeMap<String, String> data = new TreeMap<>();
    data.put("elevation-deg", Double.toString(arrow.load().elevationDeg().nominal()));
    data.put("bearing-deg", Double.toString(arrow.load().bearingDeg().nominal()));
    String kind = aspect == Aspect.SIDE ? "load side" : "load plan";
    add(new Mark.Group(kind, data, load));
  }

  /** What the two legs pull adds up to the load, where the arrow is long enough to show it. */
  private void parallelogram(Spot end, Pull.Arrow arrow) {
    double length = force() * arrow.size();
    boolean asLong = length >= SHORTEST_ARROW && length <= share * LONGEST_ARROW;
    if (pull.legs().size() < 2 || !asLong) {
      return;
    }
    Spot tip = end.plus(way(arrow));
    for (Pull.Leg leg : pull.legs()) {
      Spot head = end.plus(aspect.across(leg.heading()).times(force() * leg.tension()));
      if (tip.minus(head).length() > END_ON) {
        marks.add(new Mark.Line(head, tip, Ink.dotted(Colour.GREY, 1)));
      }
    }
  }

  private void spread(Spot end) {
    pull.load()
        .flatMap(arrow -> Wedge.of(arrow.load(), aspect, end, way(arrow).length() + 16))
        .ifPresent(this::add);
  }

  /* ---- the labels ---- */

  private void label(Wood wood, Spot sling, Spot end) {
    Rig said = subject.said();
    UnitSystem units = PictureWords.units(said);
    Optional<Pull.Arrow> load = pull.load();
    if (load.isPresent()) {
      Pull.Arrow arrow = load.get();
      boolean anyWay = aspect == Aspect.PLAN && !arrow.sideKnown();
      List<Spot> along = anyWay ? List.of(end) : along(end, way(arrow), 1, 0.6);
      List<String> words = PictureWords.load(arrow.load(), arrow.sideKnown(), units);
      put(words, along, Type.bold(label).in(Colour.LOAD));
    }
    for (Pull.Leg leg : pull.legs()) {
      boolean anyWay = aspect == Aspect.PLAN && leg.known() == Pull.Known.SLOPE;
      Spot way = aspect.across(leg.heading()).times(anyWay ? leg() / 2 : leg());
      put(words(leg, said), along(end, way, 1, 0.85, 0.7), Type.plain(label).in(Colour.ROPE));
    }
    if (aspect == Aspect.SIDE) {
      put(PictureWords.limb(said), wood.limbSpots(), Type.plain(label));
      put(PictureWords.stem(said), wood.stemSpots(), Type.plain(label));
      dimension(wood, sling);
    }
  }

  private static List<Spot> along(Spot from, Spot way, double... shares) {
    return DoubleStream.of(shares).mapToObj(share -> from.plus(way.times(share))).toList();
  }

  private static List<String> words(Pull.Leg leg, Rig said) {
    double elevationDeg = leg.heading().elevationDeg();
    return switch (leg.known()) {
      case ALL -> PictureWords.leg(leg.slot(), elevationDeg, leg.heading().bearingDeg(), said);
      case SLOPE -> PictureWords.legOfSlope(leg.slot(), elevationDeg);
      case ANGLE -> PictureWords.legOfAngle(leg.slot());
    };
  }

  /** How far out the sling is, measured along the limb. */
  private void dimension(Wood wood, Spot sling) {
    Spot side = wood.across().length() == 0 ? Spot.of(0, -1) : wood.across().unit();
    Spot away = side.times(wood.across().length() + 10);
    Spot from = wood.union().plus(away);
    Spot to = sling.plus(away);
    Spot at = from.plus(to.minus(from).times(0.5));
    Spot below = wood.union().minus(wood.across());
    List<Spot> union = List.of(below, wood.union().plus(wood.across()));
    if (to.minus(from).length() > 8) {
      add(new Mark.Group("out", Arrows.span(from, to)));
      put(PictureWords.out(subject.said()), List.of(at), Type.plain(label));
      put(PictureWords.union(subject.said()), union, Type.plain(label));
    } else {
      put(PictureWords.outAndUnion(subject.said()), union, Type.plain(label));
    }
  }

  private void put(List<String> lines, List<Spot> near, Type type) {
    marks.addAll(labels.label(lines, near, type));
  }
}
