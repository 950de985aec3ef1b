package rigspeak.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import rigspeak.answer.PageWords;
import rigspeak.answer.PictureWords;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Lanyard;
import rigspeak.drawing.RigDrawing;
import rigspeak.drawing.Subject;
import rigspeak.quantity.UnitSystem;
import rigspeak.readback.Difference;
import rigspeak.readback.Differences;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.verdict.LoadAsSaid;
import rigspeak.verdict.PathVerdict;

/** Makes boards: a pure view of a conversation beside its plan. */
public final class Boards {
  private final Catalogue catalogue;
  private final String name;
  private final RopePath plan;
  private final boolean mayType;

  /**
   * @param name what the plan is called
   * @param mayType whether the page may say something for the climber
   */
  public Boards(Catalogue catalogue, String name, RopePath plan, boolean mayType) {
    this.catalogue = catalogue;
    this.name = name;
    this.plan = plan;
    this.mayType = mayType;
  }

  /**
   * The board of a moment.
   *
   * @param journal everything said so far, the latest last
   * @param units in which sizes are shown, whatever units they were said in
   * @param version of the conversation, counted up
   * @param heardAtMs when the latest thing was heard, milliseconds since 1970
   */
  public Board of(
      Conversation talk,
      List<Board.Entry> journal,
      UnitSystem units,
      long version,
      long heardAtMs) {
    Place place = talk.rope().present();
    RopePath said = InUnits.of(units, talk.rope().path(place));
    RopePath planned = InUnits.of(units, plan);
    Optional<PathVerdict> verdict =
        talk.rope().standing(place).map(standing -> InUnits.of(units, standing));
    Subject now = subject(said, place, verdict);
    Optional<Subject> then =
        planned.has(place)
            ? Optional.of(subject(planned, place, Optional.empty()))
            : Optional.empty();
    List<Board.Row> rows = rows(talk, planned, said, place);
    return new Board(
        name,
        place.key(),
        PictureWords.title(place),
        told(verdict),
        held(talk),
        load(now),
        RigDrawing.sideAndPlan(now),
        then.map(Boards::load).orElseGet(PageWords::notInThePlan),
        then.map(RigDrawing::sideAndPlan).orElse(""),
        PageWords.tally(
            rows.size(),
            count(rows, State.DIFFERS) + count(rows, State.NOT_PLANNED),
            count(rows, State.NOT_SAID)),
        rows,
        journal,
        key(units),
        mayType,
        version,
        heardAtMs);
  }

  private Subject subject(RopePath path, Place place, Optional<PathVerdict> verdict) {
    if (verdict.isPresent()) {
      // The verdict stands beside it; in the picture only what may be true of the load is of it.
      Subject judged = Subject.judged(verdict.get(), place);
      return new Subject(place, judged.said(), judged.loaded(), Optional.empty());
    }
    SortedMap<Place, LoadAsSaid> loads = LoadAsSaid.of(catalogue, path);
    return Subject.asSaid(path, place, Optional.ofNullable(loads.get(place)));
  }

  private static String load(Subject subject) {
    return subject
        .loaded()
        .map(loaded -> PageWords.load(loaded.load(), PictureWords.units(subject.said())))
        .orElseGet(PageWords::loadNotKnown);
  }

  private static Board.Told told(Optional<PathVerdict> verdict) {
    if (verdict.isEmpty()) {
      return new Board.Told("not_checked", PageWords.notCheckedWord(), "", PageWords.notChecked());
    }
    return new Board.Told(
        key(verdict.get().outcome()),
        PageWords.word(verdict.get().outcome()),
        PageWords.head(verdict.get()),
        PageWords.reason(verdict.get()));
  }

  private static Board.Held held(Conversation talk) {
    Lanyard lanyard = talk.gate().lanyard();
    return new Board.Held(
        key(lanyard), PageWords.lanyard(lanyard), PageWords.gate(talk.gate(), talk.rope()));
  }

  // ---- item by item ----

  private enum State {
    AS_PLANNED,
    DIFFERS,
    NOT_PLANNED,
    NOT_SAID
  }

  private List<Board.Row> rows(Conversation talk, RopePath planned, RopePath said, Place place) {
    Map<Slot, Difference> different = new LinkedHashMap<>();
    for (Difference each : Differences.between(plan, Differences.asSaid(talk.rope()))) {
      if (each.slot().scope() == Slot.Scope.CLIMB || each.place().equals(place)) {
        different.put(each.slot(), each);
      }
    }
    Rig first = planned.at(planned.places().get(0));
    Rig there = planned.has(place) ? planned.at(place) : Rig.empty().withClimbOf(first);
    List<Board.Row> rows = new ArrayList<>();
    for (Slot slot : Slot.values()) {
      Optional<Said> then = there.said(slot);
      Optional<Said> now = said.at(place).said(slot);
      if (then.isPresent() || now.isPresent() || different.containsKey(slot)) {
        rows.add(row(slot, then, now, state(different.get(slot))));
      }
    }
    return rows;
  }

  private static State state(Difference difference) {
    if (difference == null) {
      return State.AS_PLANNED;
    }
    if (difference instanceof Difference.Other) {
      return State.DIFFERS;
    }
    return difference instanceof Difference.NotPlanned ? State.NOT_PLANNED : State.NOT_SAID;
  }

  private static Board.Row row(Slot slot, Optional<Said> then, Optional<Said> now, State state) {
    String so =
        switch (state) {
          case AS_PLANNED -> PageWords.asPlanned();
          case DIFFERS -> PageWords.differs();
          case NOT_PLANNED -> PageWords.notPlanned();
          case NOT_SAID -> PageWords.notSaid();
        };
    return new Board.Row(
        slot.key(),
        PageWords.name(slot),
        then.map(value -> PageWords.value(slot, value)).orElse(PageWords.nothing()),
        now.map(value -> PageWords.value(slot, value)).orElse(PageWords.nothing()),
        key(state),
        so);
  }

  private static int count(List<Board.Row> rows, State state) {
    return (int) rows.stream().filter(row -> row.state().equals(key(state))).count();
  }

  private static String key(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
