package rigspeak.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rigspeak.answer.PictureWords;
import rigspeak.answer.PlanWords;
import rigspeak.drawing.Ink.Colour;
import rigspeak.plan.PlanVerdict;
import rigspeak.plan.PlanVerdict.Hanging;
import rigspeak.plan.Step;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;

/**
 * The card that people take to the tree: what comes of a plan, the steps in their order, every rope
 * and every support on it, on as many sheets as it takes. A picture unit is a point, 1/72 inch.
 */
public final class Card {
  private static final double EDGE = 36;
  private static final double GAP = 10;
  private static final double COLUMN_GAP = 18;
  private static final double BODY = 10.5;
  private static final double LABEL = 9.5;
  private static final double VIEWS = 205;
  private static final double OVERVIEW = 190;
  private static final double SIDE_SHARE = 0.46;

  /** What sheets are cut to. */
  public enum Sheet {
    /** 8.5 by 11 inches. */
    LETTER(612, 792),
    /** 210 by 297 millimetres. */
    A4(595.28, 841.89);

    private final double width;
    private final double height;

    Sheet(double width, double height) {
      this.width = width;
      this.height = height;
    }

    /** The usual one of who speaks in these units. */
    public static Sheet usual(UnitSystem units) {
      return units == UnitSystem.METRIC ? A4 : LETTER;
    }
  }

  private final PlanVerdict verdict;
  private final Sheet sheet;

  private Card(PlanVerdict verdict, Sheet sheet) {
    this.verdict = verdict;
    this.sheet = sheet;
  }

  /** The sheets of the card, on the paper that goes with the plan's units. */
  public static List<Picture> pages(PlanVerdict verdict) {
    UnitSystem units =
        verdict.ropes().stream()
            .findFirst()
            .map(Hanging::verdict)
            .map(path -> PictureWords.units(path.path().at(path.asked())))
            .orElse(UnitSystem.INCH_POUND);
    return new Card(verdict, Sheet.usual(units)).pages();
  }

  private List<Picture> pages() {
    List<Column> blocks = new ArrayList<>();
    blocks.add(head());
    blocks.add(beside(steps(), cautions()));
    List<Hanging> ropes = verdict.ropes();
    for (int i = 0; i < ropes.size(); i += 2) {
      Column left = rope(ropes.get(i));
      blocks.add(beside(left, i + 1 < ropes.size() ? rope(ropes.get(i + 1)) : half()));
    }
    for (Hanging hanging : ropes) {
      // The climber's end first: it is what hands are on.
      List<Place> places = new ArrayList<>(hanging.verdict().path().places());
      Collections.reverse(places);
      places.forEach(place -> blocks.add(support(hanging, place)));
    }
    blocks.add(sources());
    return set(blocks);
  }

  private double width() {
    return sheet.width - 2 * EDGE;
  }

  private Column half() {
    return new Column((width() - COLUMN_GAP) / 2);
  }

  private Column beside(Column left, Column right) {
    Column both = column();
    both.rule();
    left.marks().forEach(both::add);
    Spot across = Spot.of(left.width() + COLUMN_GAP, 0);
    right.marks().forEach(mark -> both.add(mark.movedBy(across)));
    both.space(Math.max(left.bottom(), right.bottom()));
    return both;
  }

  private Column column() {
    return new Column(width());
  }

  /* ---- the blocks ---- */

  private Column head() {
    Column head = column();
    head.text(PlanWords.title(verdict), Type.bold(18));
    head.space(4);
    head.outcome(verdict.outcome(), PlanWords.outcome(verdict), refused(), 13);
    return head;
  }

  private String refused() {
    return verdict.refused().stream()
        .findFirst()
        .map(told -> PlanWords.line(told.line().number()) + ": " + told.line().said())
        .orElse("");
  }

  private Column steps() {
    Column steps = half();
    steps.space(4);
    steps.text(PlanWords.steps(), Type.bold(12));
    if (verdict.steps().isEmpty()) {
      steps.text(PlanWords.noSteps(), Type.plain(BODY));
    }
    int number = 1;
    for (Step step : verdict.steps()) {
      double top = steps.bottom();
      Type type = step.isInOrder() ? Type.plain(BODY) : Type.bold(BODY);
      steps.text(number + ".  " + PlanWords.step(step), type, 22);
      steps.add(box(Spot.of(10, top + 0.95 * BODY)));
      number++;
    }
    return steps;
  }

  /** A box to tick. */
  private static Mark box(Spot centre) {
    double half = 4;
    return new Mark.Track(
        List.of(
            centre.plus(Spot.of(-half, -half)),
            centre.plus(Spot.of(half, -half)),
            centre.plus(Spot.of(half, half)),
            centre.plus(Spot.of(-half, half))),
        true,
        Ink.line(Colour.BLACK, 1));
  }

  private Column rope(Hanging hanging) {
    Column rope = half();
    rope.space(4);
    rope.text(PlanWords.rope(hanging), Type.bold(13));
    rope.outcome(hanging.verdict().outcome(), PlanWords.verdict(hanging.verdict()), "", 12);
    rope.add(
        new Mark.Group("overview", Overview.of(hanging.verdict(), rope.area(OVERVIEW), LABEL)));
    return rope;
  }

  private Column support(Hanging hanging, Place place) {
    Subject subject = Subject.judged(hanging.verdict(), place);
    Column support = column();
    support.rule();
    support.space(4);
    support.text(PlanWords.support(hanging, place), Type.bold(12));
    support.outcome(
        hanging.verdict().outcome(),
        PictureWords.verdict(hanging.verdict(), place),
        PictureWords.reason(hanging.verdict(), place),
        11.5);
    Area views = support.area(VIEWS);
    double middle = views.left() + SIDE_SHARE * views.width();
    Area side = new Area(views.left(), views.top(), middle, views.bottom());
    Area plan = new Area(middle, views.top(), views.right(), views.bottom());
    RigDrawing.side(support, subject, side, LABEL);
    RigDrawing.plan(support, subject, plan, LABEL);
    Optional<String> loadClass =
        subject.loaded().map(loaded -> PictureWords.loadClass(loaded.load()));
    loadClass.ifPresent(words -> support.text(words, Type.bold(BODY)));
    support.text(PlanWords.help(hanging.verdict(), place), Type.plain(BODY));
    support.text(PlanWords.ifLost(hanging.verdict(), place), Type.plain(BODY));
    support.text(
        PictureWords.key(subject.said(), subject.loaded()), Type.plain(8.5).in(Colour.GREY));
    return support;
  }

  private Column cautions() {
    Column cautions = half();
    cautions.space(4);
    cautions.text(PlanWords.cautionsTitle(), Type.bold(12));
    PlanWords.cautions().forEach(each -> cautions.text(each, Type.plain(BODY)));
    return cautions;
  }

  private Column sources() {
    Column sources = column();
    List<String> lines = PlanWords.sources(verdict);
    if (!lines.isEmpty()) {
      sources.text(PlanWords.sourcesTitle(), Type.bold(12));
      lines.forEach(line -> sources.text(line, Type.plain(9)));
    }
    return sources;
  }

  /* ---- on sheets ---- */

  private List<Picture> set(List<Column> blocks) {
    List<List<Mark>> pages = new ArrayList<>();
    List<Mark> page = new ArrayList<>();
    double y = EDGE;
    double room = sheet.height - EDGE - 2 * GAP;
    for (Column block : blocks) {
      if (y + block.bottom() > room && !page.isEmpty()) {
        pages.add(page);
        page = new ArrayList<>();
        y = EDGE;
      }
      Spot at = Spot.of(EDGE, y);
      for (Mark mark : block.marks()) {
        page.add(mark.movedBy(at));
      }
      y += block.bottom() + GAP;
    }
    pages.add(page);
    List<Picture> pictures = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      pictures.add(picture(pages.get(i), i + 1, pages.size()));
    }
    return pictures;
  }

  private Picture picture(List<Mark> marks, int number, int pages) {
    List<Mark> all = new ArrayList<>(marks);
    Type foot = Type.plain(8.5).in(Colour.GREY);
    double y = sheet.height - EDGE + GAP;
    String title = PlanWords.title(verdict);
    String page = PlanWords.page(number, pages);
    String cut = foot.wrapped(title, sheet.width - 2 * EDGE - 80).get(0);
    all.add(new Mark.Words(Spot.of(EDGE, y), cut, foot));
    all.add(new Mark.Words(Spot.of(sheet.width - EDGE, y), page, foot.from(Type.From.END)));
    String description = PlanWords.outcome(verdict) + " " + page + ".";
    return new Picture(sheet.width, sheet.height, title, description, all);
  }
}
