package rigspeak.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Reply.Change;
import rigspeak.dialogue.Reply.Hold;
import rigspeak.dialogue.Reply.Item;
import rigspeak.dialogue.Reply.Rung;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.quantity.UnitSystem;
import rigspeak.rig.Place;
import rigspeak.rig.Rig;
import rigspeak.rig.RopePath;
import rigspeak.rig.Said;
import rigspeak.rig.Slot;
import rigspeak.rig.Value;
import rigspeak.verdict.Judge;
import rigspeak.verdict.Loss;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;

/**
 * One step of the conversation: from where it stands and what was meant to where it goes and what
 * is replied. Pure: the same step always gives the same turn.
 */
public final class Dialogue {
  private final Catalogue catalogue;
  private final Judge judge;

  public Dialogue(Catalogue catalogue, Judge judge) {
    this.catalogue = catalogue;
    this.judge = judge;
  }

  public Turn step(Conversation before, Meaning meaning) {
    Step step = new Step(before);
    step.take(meaning);
    return step.turn();
  }

  /**
   * What is said when a conversation goes on that had been broken off: what was taken last, what
   * holds the climber, and what waits for an answer.
   */
  public static List<Reply> goingOn(Conversation now, String lastWords) {
    List<Reply> replies = new ArrayList<>();
    replies.add(new Reply.GoesOn(lastWords, now.rope().present(), now.rope().judged()));
    replies.add(new Reply.Attached(now.gate().lanyard(), now.rope().loaded()));
    if (now.floor().pending().isPresent()) {
      replies.add(new Reply.AffirmFirst(now.floor().pending().get()));
    } else {
      now.asked().map(Reply.Asked::new).ifPresent(replies::add);
    }
    return replies;
  }

  /** A step in the making. */
  private final class Step {
    private final List<Reply> replies = new ArrayList<>();
    private Conversation now;

    Step(Conversation before) {
      this.now = before;
    }

    Turn turn() {
      if (replies.stream().anyMatch(Step::isWorthRepeating)) {
        now = now.saying(replies);
      }
      return new Turn(now, replies);
    }

    /** "Say again" wants the last answer, not that something was not understood since. */
    private static boolean isWorthRepeating(Reply reply) {
      return !(reply instanceof Reply.Again
          || reply instanceof Reply.Listening
          || reply instanceof Reply.Silent
          || reply instanceof Reply.CannotHear);
    }

    void take(Meaning meaning) {
      if (meaning instanceof Meaning.NotUnderstood missed) {
        climbLadder(missed);
        return;
      }
      if (meaning instanceof Meaning.CannotHear cannot) {
        replies.add(new Reply.CannotHear(cannot.trouble()));
        return;
      }
      now = now.with(Ladder.foot());
      Optional<Pending> pending = now.floor().pending();
      if (meaning instanceof Meaning.Procedure) {
        pending.map(Reply.AffirmFirst::new).ifPresent(replies::add);
      } else if (pending.isPresent() && !mayComeBetween(meaning, pending.get())) {
        replies.add(new Reply.AffirmFirst(pending.get()));
      } else if (meaning instanceof Meaning.Values values) {
        takeValues(values.statements());
      } else if (meaning instanceof Meaning.Correction correction) {
        correct(correction.statements());
      } else if (meaning instanceof Meaning.GoTo goTo) {
        goTo(goTo.place());
      } else {
        obey((Command) meaning);
      }
    }

    /** While something waits for an affirm, only what settles it or takes it back goes on. */
    private boolean mayComeBetween(Meaning meaning, Pending pending) {
      if (meaning instanceof Meaning.Correction) {
        return !(pending instanceof Pending.ClippedIn);
      }
      if (meaning instanceof Meaning.Values values) {
        return pending instanceof Pending.Doubtful
            && values.statements().stream().allMatch(this::isOfWhatWaits);
      }
      if (meaning == Command.CLIPPED_IN) {
        return pending instanceof Pending.ClippedIn;
      }
      return meaning instanceof Command command
          && switch (command) {
            case AFFIRM, NEGATIVE, SCRAP, LANYARD_RELEASED, ATTACHMENTS -> true;
            case SAY_AGAIN, STOP_TALKING, STAND_BY, HELP -> true;
            case SLOWER, FASTER, BRIEF, FULL -> true;
            case WAKE -> true;
            default -> false;
          };
    }

    private boolean isOfWhatWaits(Statement statement) {
      return statement instanceof Statement.Value value && waitingSlots().contains(value.slot());
    }

    private void climbLadder(Meaning.NotUnderstood missed) {
      if (missed.reason() == Meaning.Reason.NOTHING_SAID) {
        Rung rung = now.ladder().nextSilent();
        now = now.with(now.ladder().silentAt(rung));
        replies.add(new Reply.Silent(rung, now.asked()));
      } else {
        Rung rung = now.ladder().nextMissed();
        now = now.with(now.ladder().missedAt(rung));
        replies.add(new Reply.Again(rung, missed.reason(), now.asked()));
      }
    }

    // ---- values ----

    private void takeValues(List<Statement> statements) {
      if (now.floor().correcting()) {
        correct(statements);
        return;
      }
      Optional<Pending.Doubtful> waiting = doubtful();
      Optional<Slot> asked = now.asked();
      List<Item> taken = new ArrayList<>();
      List<Item> doubtful = new ArrayList<>(stillDoubtful(statements));
      List<Reply> troubles = new ArrayList<>();
      Rig rig = now.rig();
      for (Statement statement : statements) {
        Optional<Reply> trouble = trouble(statement, statements);
        if (trouble.isPresent()) {
          troubles.add(trouble.get());
          continue;
        }
        Statement.Value value = (Statement.Value) statement;
        if (value.doubtful() && holds(taken, value.slot())) {
          // Said twice, and both alike: in digits, so it stands already.
          continue;
        }
        if (value.doubtful() && holds(doubtful, value.slot())) {
          addTo(doubtful, value);
          continue;
        }
        Item item = item(rig, value);
        doubtful.removeIf(other -> other.slot() == item.slot());
        rig = value.doubtful() ? rig.withdrawing(item.slot()) : rig.with(item.slot(), item.said());
        (value.doubtful() ? doubtful : taken).add(item);
      }
      if (!taken.isEmpty()) {
        replies.add(new Reply.Taken(taken));
      }
      if (waiting.isPresent() || !taken.isEmpty() || !doubtful.isEmpty()) {
        change(rig);
        now = now.with(now.floor().askingNothing().waitingForNothing().after(taken));
        Predicate<Slot> answered = slot -> now.rig().has(slot) || holds(doubtful, slot);
        boolean answers =
            waiting
                .map(Pending.Doubtful::answersQuestion)
                .orElseGet(() -> asked.filter(answered).isPresent());
        if (!doubtful.isEmpty()) {
          await(new Pending.Doubtful(doubtful, answers));
        } else if (troubles.isEmpty() && answers) {
          askNext();
        }
      }
      reply(troubles);
    }

    private Optional<Pending.Doubtful> doubtful() {
      return now.floor()
          .pending()
          .filter(Pending.Doubtful.class::isInstance)
          .map(Pending.Doubtful.class::cast);
    }

    /** What waits and has not been said again now. */
    private List<Item> stillDoubtful(List<Statement> statements) {
      List<Slot> again = statements.stream().flatMap(each -> slots(each).stream()).toList();
      return doubtful().map(Pending.Doubtful::items).orElse(List.of()).stream()
          .filter(item -> !again.contains(item.slot()))
          .toList();
    }

    private static boolean holds(List<Item> items, Slot slot) {
      return items.stream().anyMatch(item -> item.slot() == slot);
    }

    /** The first of them can be said again without its name. */
    private void await(Pending.Doubtful doubtful) {
      Slot first = doubtful.items().get(0).slot();
      now = now.with(now.floor().asking(first).waitingFor(doubtful));
      replies.add(new Reply.AffirmDoubtful(doubtful.items()));
    }

    /** Who answers a question is asked the next one. */
    private void askNext() {
      List<Slot> missing = missingHere();
      if (missing.isEmpty()) {
        nothingMissingHere();
      } else {
        ask(missing.get(0));
      }
    }

    private List<Slot> missingHere() {
      Place place = now.rope().present();
      return catalogue.missing(now.rope().path(place), place);
    }

    /** Then perhaps of another support that the rope runs over. */
    private void nothingMissingHere() {
      RopePath path = now.rope().path(now.rope().present());
      Optional<Place> elsewhere =
          path.places().stream()
              .filter(place -> !catalogue.missing(path, place).isEmpty())
              .findFirst();
      replies.add(
          elsewhere
              .<Reply>map(
                  place -> new Reply.MissingElsewhere(place, catalogue.missing(path, place)))
              .orElseGet(() -> new Reply.Missing(List.of())));
    }

    private void ask(Slot slot) {
      now = now.with(now.floor().asking(slot));
      replies.add(new Reply.Asked(slot));
    }

    /** Why a statement is not taken, if it is not. */
    private Optional<Reply> trouble(Statement statement, List<Statement> breath) {
      if (statement instanceof Statement.RopeAngle unclear) {
        return Optional.of(new Reply.WhichAngle(unclear.angle()));
      }
      Statement.Value value = (Statement.Value) statement;
      if (breath.stream().anyMatch(other -> contradict(value, other))) {
        return Optional.of(new Reply.SaidTwice(value.slot()));
      }
      return catalogue.offence(value.slot(), value.said().value()).map(Reply.Implausible::new);
    }

    /** Two values for one slot, unless the later one adds to the earlier, as faults do. */
    private static boolean contradict(Statement.Value value, Statement other) {
      return other instanceof Statement.Value second
          && second.slot() == value.slot()
          && value.slot() != Slot.UNION
          && !second.said().equals(value.said());
    }

    /** What was said of such a slot before is in doubt too. */
    private void reply(List<Reply> troubles) {
      for (Reply trouble : troubles.stream().distinct().toList()) {
        replies.add(trouble);
        if (trouble instanceof Reply.Implausible implausible) {
          askAgain(implausible.offence().slot());
        } else if (trouble instanceof Reply.SaidTwice twice) {
          askAgain(twice.slot());
        }
      }
    }

    private void askAgain(Slot slot) {
      withdraw(slot);
      now = now.with(now.floor().asking(slot));
    }

    /** A value said again without "correction": as a rule the latest stands, and is told so. */
    private static Item item(Rig rig, Statement.Value statement) {
      Optional<Said> before = rig.said(statement.slot());
      Said said = statement.said();
      Said standing =
          before
              .map(earlier -> new Said(said.value().after(earlier.value()), said.how()))
              .orElse(said);
      return new Item(
          statement.slot(), standing, before.filter(earlier -> !earlier.equals(standing)));
    }

    /** Puts a changed rig in place; verdicts on what has changed no longer stand. */
    private void change(Rig rig) {
      Support support = now.rope().support();
      if (!rig.equals(support.said())) {
        put(support.with(rig));
      }
    }

    private void put(Support support) {
      List<Place> fallen = new ArrayList<>(now.rope().judged());
      now = now.with(support);
      fallen.removeAll(now.rope().judged());
      if (!fallen.isEmpty()) {
        now = now.with(now.rope().unjudged(fallen));
        replies.add(new Reply.VerdictCancelled(fallen));
      }
    }

    private void correct(List<Statement> statements) {
      List<Slot> dropped = new ArrayList<>(waitingSlots());
      if (statements.isEmpty()) {
        askToCorrect(latestSlot());
        return;
      }
      List<Item> waiting = new ArrayList<>();
      List<Reply> troubles = new ArrayList<>();
      for (Statement statement : statements) {
        Optional<Reply> trouble = trouble(statement, statements);
        if (trouble.isPresent()) {
          troubles.add(trouble.get());
        } else {
          addTo(waiting, (Statement.Value) statement);
        }
        slots(statement).forEach(this::withdraw);
        dropped.removeAll(slots(statement));
      }
      now = now.with(now.floor().askingNothing().waitingForNothing());
      if (!dropped.isEmpty()) {
        replies.add(new Reply.Dropped(dropped));
      }
      if (!waiting.isEmpty()) {
        await(waiting);
      }
      reply(troubles);
    }

    /** Said twice for one slot in a breath, as two faults of a union are, it waits as one item. */
    private void addTo(List<Item> waiting, Statement.Value value) {
      for (int i = 0; i < waiting.size(); i++) {
        Item item = waiting.get(i);
        if (item.slot() == value.slot()) {
          Said both = new Said(value.said().value().after(item.said().value()), value.said().how());
          waiting.set(i, new Item(item.slot(), both, item.before()));
          return;
        }
      }
      waiting.add(new Item(value.slot(), value.said(), now.rig().said(value.slot())));
    }

    /** What a statement speaks of; an unclear rope angle may be either of two. */
    private List<Slot> slots(Statement statement) {
      return statement instanceof Statement.Value value
          ? List.of(value.slot())
          : Stream.of(Slot.INSIDE_ANGLE, Slot.BEND).filter(now.rig()::has).toList();
    }

    /** The latest value is wrong; what waited behind it is dropped aloud. */
    private void askToCorrect(Optional<Slot> wrong) {
      if (wrong.isEmpty()) {
        replies.add(new Reply.NothingToTakeBack());
        return;
      }
      List<Slot> dropped = new ArrayList<>(waitingSlots());
      dropped.remove(wrong.get());
      withdraw(wrong.get());
      if (!dropped.isEmpty()) {
        replies.add(new Reply.Dropped(dropped));
      }
      now = now.with(now.floor().waitingForNothing().askingToCorrect(wrong.get()));
      replies.add(new Reply.CorrectionAsked(wrong.get()));
    }

    private List<Slot> waitingSlots() {
      return waitingItems().stream().map(Item::slot).toList();
    }

    private List<Item> waitingItems() {
      Pending pending = now.floor().pending().orElse(null);
      if (pending instanceof Pending.Values values) {
        return values.items();
      }
      return pending instanceof Pending.Doubtful doubtful ? doubtful.items() : List.of();
    }

    private Optional<Slot> latestSlot() {
      if (!waitingItems().isEmpty()) {
        return Optional.of(waitingItems().get(0).slot());
      }
      List<Item> latest = now.floor().latest();
      return latest.isEmpty()
          ? Optional.empty()
          : Optional.of(latest.get(latest.size() - 1).slot());
    }

    /** Corrected values are affirmed one by one; until then their slots are empty. */
    private void await(List<Item> items) {
      Pending.Values waiting = new Pending.Values(items);
      now = now.with(now.floor().waitingFor(waiting));
      replies.add(new Reply.AffirmValue(waiting.first()));
    }

    private void withdraw(Slot slot) {
      change(now.rig().withdrawing(slot));
    }

    // ---- commands ----

    private void obey(Command command) {
      switch (command) {
        case WAKE -> wake();
        case CHECK -> check();
        case WHY -> onVerdict(Reply.Why::new);
        case HELP_RIG -> onVerdict(Reply.WouldHelp::new);
        case MISSING -> missing();
        case READ_BACK -> readBack();
        case SAY_AGAIN -> replies.addAll(now.said());
        case SCRAP -> scrap();
        case AFFIRM -> affirm();
        case NEGATIVE -> negative();
        case CLIPPED_IN -> clippedIn();
        case LANYARD_RELEASED -> lanyardReleased();
        case ATTACHMENTS ->
            replies.add(new Reply.Attached(now.gate().lanyard(), now.rope().loaded()));
        case LETS_GO -> letsGo();
        case SWING -> swing();
        case SET -> wants(Change.SET);
        case CHANGE -> wants(Change.MOVE);
        case TAKE_OFF -> wants(Change.TAKE_OFF);
        case LOADED -> loaded();
        case NEXT -> next();
        case STAND_BY -> replies.add(new Reply.StandingBy());
        case STOP_TALKING -> {}
        case BRIEF -> answer(Detail.BRIEF);
        case FULL -> answer(Detail.FULL);
        case SLOWER -> answer(now.manner().pace().slower());
        case FASTER -> answer(now.manner().pace().faster());
        case HELP -> replies.add(new Reply.Help());
      }
    }

    /** What still waits for an answer is said again: it may have been said long ago. */
    private void wake() {
      replies.add(new Reply.Listening());
      Optional<Pending> pending = now.floor().pending();
      if (pending.isPresent()) {
        replies.add(question(pending.get()));
      } else {
        boolean correcting = now.floor().correcting();
        now.asked()
            .map(slot -> correcting ? new Reply.CorrectionAsked(slot) : new Reply.Asked(slot))
            .ifPresent(replies::add);
      }
    }

    private static Reply question(Pending pending) {
      if (pending instanceof Pending.Values values) {
        return new Reply.AffirmValue(values.first());
      }
      return pending instanceof Pending.Doubtful doubtful
          ? new Reply.AffirmDoubtful(doubtful.items())
          : new Reply.AffirmClippedIn();
    }

    private void check() {
      PathVerdict verdict = judged();
      now = now.with(now.rope().support().judged(verdict));
      replies.add(new Reply.Judged(verdict, Governing.items(verdict)));
      boolean hereFirst = verdict.governing().equals(verdict.asked());
      if (hereFirst
          && verdict.ofAsked() instanceof Verdict.CannotSay cannot
          && !cannot.missing().isEmpty()) {
        now = now.with(now.floor().asking(cannot.missing().get(0)));
      } else {
        now = now.with(now.floor().askingNothing());
      }
    }

    private PathVerdict judged() {
      Place place = now.rope().present();
      return judge.judge(now.rope().path(place), place);
    }

    private void onVerdict(Function<PathVerdict, Reply> reply) {
      Optional<PathVerdict> standing = now.rope().standing(now.rope().present());
      replies.add(standing.map(reply).orElseGet(Reply.NotJudged::new));
    }

    private void letsGo() {
      PathVerdict verdict = judged();
      Place place = verdict.asked();
      Optional.ofNullable(verdict.losses().get(place))
          .ifPresentOrElse(
              loss -> replies.add(new Reply.LetsGo(place, loss, units(), now.gate().lanyard())),
              () -> notByNumbers(verdict));
    }

    private void swing() {
      PathVerdict verdict = judged();
      Place last = verdict.path().last();
      if (verdict.swing().isPresent()) {
        replies.add(new Reply.WouldSwing(verdict.swing().get(), units()));
      } else if (hasLegWithLength(verdict.path().at(last))) {
        notByNumbers(verdict);
      } else {
        replies.add(new Reply.SwingNotKnown(last));
      }
    }

    private static boolean hasLegWithLength(Rig rig) {
      return rig.value(Slot.WORKING_LEG, Value.Leg.class).flatMap(Value.Leg::length).isPresent();
    }

    /** A fall or a swing needs supports that are known; what keeps them from it is told. */
    private void notByNumbers(PathVerdict verdict) {
      boolean missing =
          verdict.supports().values().stream()
              .anyMatch(
                  each -> each instanceof Verdict.CannotSay cannot && !cannot.missing().isEmpty());
      if (missing) {
        missing();
      } else {
        replies.add(new Reply.Why(verdict));
      }
    }

    private UnitSystem units() {
      return now.rig()
          .value(Slot.ALL_UP, Value.Weight.class)
          .map(Value.Weight::said)
          .orElse(UnitSystem.INCH_POUND);
    }

    private void missing() {
      List<Slot> missing = missingHere();
      if (missing.isEmpty()) {
        nothingMissingHere();
      } else {
        replies.add(new Reply.Missing(missing));
        now = now.with(now.floor().asking(missing.get(0)));
      }
    }

    private void readBack() {
      List<Item> items = new ArrayList<>();
      now.rig().said().forEach((slot, said) -> items.add(new Item(slot, said, Optional.empty())));
      replies.add(new Reply.ReadBack(now.rope().present(), items));
    }

    private void scrap() {
      if (now.floor().pending().isPresent()) {
        negative();
        return;
      }
      Optional<Slot> wanted = now.asked().filter(now.rig().withdrawn()::contains);
      if (wanted.isPresent()) {
        change(now.rig().without(wanted.get()));
        now = now.with(now.floor().askingNothing());
        replies.add(new Reply.Dropped(List.of(wanted.get())));
        return;
      }
      List<Item> latest = now.floor().latest();
      if (latest.isEmpty()) {
        replies.add(new Reply.NothingToTakeBack());
        return;
      }
      Item last = latest.get(latest.size() - 1);
      change(now.rig().without(last.slot()));
      now = now.with(now.floor().askingNothing().after(latest.subList(0, latest.size() - 1)));
      replies.add(new Reply.Scrapped(last));
    }

    private void affirm() {
      Pending pending = now.floor().pending().orElse(null);
      now = now.with(now.floor().waitingForNothing());
      if (pending instanceof Pending.Values values) {
        Item item = values.first();
        change(now.rig().with(item.slot(), item.said()));
        now = now.with(now.floor().after(List.of(item)));
        if (values.rest().isEmpty()) {
          replies.add(new Reply.Affirmed());
        } else {
          await(values.rest());
        }
      } else if (pending instanceof Pending.Doubtful doubtful) {
        affirm(doubtful);
      } else if (pending instanceof Pending.ClippedIn) {
        Optional<Change> wanted = now.gate().wanted();
        now = now.with(now.gate().clippedIn());
        wanted.ifPresentOrElse(this::goAhead, () -> replies.add(clippedInReply(Optional.empty())));
      } else {
        replies.add(new Reply.Affirmed());
      }
    }

    private void affirm(Pending.Doubtful doubtful) {
      Rig rig = now.rig();
      for (Item item : doubtful.items()) {
        rig = rig.with(item.slot(), item.said());
      }
      change(rig);
      now = now.with(now.floor().askingNothing().after(doubtful.items()));
      replies.add(new Reply.Affirmed());
      if (doubtful.answersQuestion()) {
        askNext();
      }
    }

    private void negative() {
      Pending pending = now.floor().pending().orElse(null);
      if (pending instanceof Pending.Values values) {
        askToCorrect(Optional.of(values.first().slot()));
      } else if (pending instanceof Pending.Doubtful doubtful) {
        now = now.with(now.floor().waitingForNothing());
        drop(doubtful.items());
      } else if (pending instanceof Pending.ClippedIn) {
        now = now.with(now.floor().waitingForNothing()).with(now.gate().inDoubt());
        replies.add(new Reply.LanyardFirst(now.gate().wanted()));
      } else {
        dropLatest();
      }
    }

    /** "Negative" after a read-back: what was read back is wrong, all of it. */
    private void dropLatest() {
      List<Item> latest = now.floor().latest();
      if (latest.isEmpty()) {
        replies.add(new Reply.NothingToTakeBack());
        return;
      }
      drop(latest);
    }

    private void drop(List<Item> items) {
      List<Slot> slots = items.stream().map(Item::slot).distinct().toList();
      slots.forEach(this::withdraw);
      now = now.with(now.floor().after(List.of()));
      replies.add(new Reply.Dropped(slots));
      ask(slots.get(0));
    }

    // ---- the lanyard gate ----

    private void wants(Change change) {
      if (now.gate().isOpen()) {
        goAhead(change);
      } else {
        now = now.with(now.gate().wanting(change));
        replies.add(new Reply.LanyardFirst(Optional.of(change)));
      }
    }

    /** Whoever takes a support off is told what its loss would do to whoever hangs on it. */
    private void goAhead(Change change) {
      Place place = now.rope().present();
      Optional<Loss> loss =
          now.rope()
              .standing(place)
              .filter(verdict -> change != Change.SET)
              .map(verdict -> verdict.losses().get(place))
              .filter(found -> !(found instanceof Loss.NotKnown));
      begin(change);
      replies.add(clippedInReply(Optional.of(change)));
      loss.ifPresent(
          found -> replies.add(new Reply.LetsGo(place, found, units(), now.gate().lanyard())));
    }

    /** The gate is open and hands go to the support: it is no longer loaded. */
    private void begin(Change change) {
      Support support = now.rope().support();
      put(
          change == Change.SET
              ? support.in(Support.State.SET)
              : support.in(Support.State.OFF).unjudged());
      now = now.with(now.gate().nothingWanted());
    }

    private Reply clippedInReply(Optional<Change> change) {
      Place place = now.rope().present();
      return new Reply.ClippedIn(place, change, now.rope().standing(place));
    }

    private void clippedIn() {
      now = now.with(now.floor().waitingFor(new Pending.ClippedIn()));
      replies.add(new Reply.AffirmClippedIn());
    }

    private void loaded() {
      if (!now.gate().isOpen()) {
        replies.add(new Reply.LanyardFirst(Optional.empty()));
        return;
      }
      put(now.rope().support().in(Support.State.LOADED));
      Place place = now.rope().present();
      replies.add(new Reply.LoadHeard(place, now.rope().standing(place)));
    }

    /** Released means released or about to be; if it must not be, nothing is known any more. */
    private void lanyardReleased() {
      if (now.floor().pending().orElse(null) instanceof Pending.ClippedIn) {
        now = now.with(now.floor().waitingForNothing());
      }
      List<Hold> reasons = new ArrayList<>();
      Optional<PathVerdict> standing = now.rope().standing(now.rope().present());
      if (standing.isEmpty()) {
        reasons.add(Hold.NOT_JUDGED);
      } else if (!standing.get().isGood()) {
        reasons.add(Hold.NOT_GOOD);
      }
      if (now.rope().support().state() != Support.State.LOADED) {
        reasons.add(Hold.NOT_LOADED);
      }
      if (reasons.isEmpty()) {
        now = now.with(now.gate().released());
        replies.add(new Reply.LanyardReleased());
      } else {
        now = now.with(now.gate().inDoubt());
        replies.add(new Reply.HoldLanyard(reasons));
      }
    }

    // ---- from redirect to redirect ----

    private void next() {
      turnTo(now.rope().begun());
      replies.add(new Reply.Turned(now.rope().present(), true));
    }

    private void goTo(Place place) {
      if (!now.rope().has(place)) {
        replies.add(new Reply.NoSuchRedirect(place, now.rope().redirects()));
        return;
      }
      turnTo(now.rope().turnedTo(place));
      replies.add(new Reply.Turned(place, false));
    }

    /** What was about to be done to the one support is not let through for another. */
    private void turnTo(Rope turned) {
      now = now.with(turned).with(Floor.open()).with(now.gate().nothingWanted());
    }

    private void answer(Detail detail) {
      now = now.with(now.manner().with(detail));
      replies.add(new Reply.DetailSet(detail));
    }

    private void answer(Pace pace) {
      now = now.with(now.manner().with(pace));
      replies.add(new Reply.PaceSet(pace));
    }
  }
}
