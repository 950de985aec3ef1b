package rigspeak.meaning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import rigspeak.grammar.Expected;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning.Command;
import rigspeak.meaning.Meaning.NotUnderstood;
import rigspeak.meaning.Meaning.Reason;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.quantity.Angle;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;

/** From words to exactly one meaning, or to none. */
public final class Understanding {
  private final Grammar grammar;

  public Understanding(Grammar grammar) {
    this.grammar = grammar;
  }

  /**
   * What typed words mean.
   *
   * @param text as it was typed
   * @param asked the slot that has just been asked for, whose bare value is then taken too
   */
  public Meaning understand(String text, Optional<Slot> asked) {
    return understand(text, expected(asked), asked, Came.TYPED);
  }

  /** What heard words mean: the same, but a fifteen may have been a fifty. */
  public Meaning hear(String text, Optional<Slot> asked) {
    return understand(text, expected(asked), asked, Came.HEARD);
  }

  /**
   * What words mean that were perhaps said: a value that has to be affirmed, or what is asked back
   * anyway. Of anything else nothing is taken.
   */
  public Meaning hearDoubtful(String text, Optional<Slot> asked) {
    return askedBack(understand(text, expected(asked), asked, Came.DOUBTFUL));
  }

  /** What words typed in place of a radio mean; a value is said with its name. */
  public Meaning understandRadio(String text) {
    return understand(text, Expected.overTheRadio(), Optional.empty(), Came.TYPED);
  }

  /** What words heard over a radio mean. */
  public Meaning hearRadio(String text) {
    return understand(text, Expected.overTheRadio(), Optional.empty(), Came.HEARD);
  }

  /** What words mean that were perhaps said over a radio. */
  public Meaning hearRadioDoubtful(String text) {
    return askedBack(understand(text, Expected.overTheRadio(), Optional.empty(), Came.DOUBTFUL));
  }

  private static Meaning askedBack(Meaning meaning) {
    boolean waits =
        meaning instanceof Meaning.Values
            || meaning == Command.CLIPPED_IN
            || (meaning instanceof Meaning.Correction correction
                && !correction.statements().isEmpty());
    return waits ? meaning : new NotUnderstood(Reason.NO_SUCH_SENTENCE, "");
  }

  private static Expected expected(Optional<Slot> asked) {
    return asked.map(slot -> Expected.answerFor(slot.key())).orElseGet(Expected::anything);
  }

  private Meaning understand(String text, Expected expected, Optional<Slot> asked, Came came) {
    List<String> words = Spelling.words(text);
    if (words.isEmpty()) {
      return new NotUnderstood(Reason.NOTHING_SAID, "");
    }
    String said = String.join(" ", words);
    Set<Meaning> meanings = new LinkedHashSet<>();
    for (List<String> tags : grammar.match(words, expected)) {
      meanings.add(obey(tags, new Reader(asked, came), said));
    }
    return switch (meanings.size()) {
      case 0 -> new NotUnderstood(Reason.NO_SUCH_SENTENCE, said);
      case 1 -> meanings.iterator().next();
      default -> new NotUnderstood(Reason.TWO_MEANINGS, said);
    };
  }

  /** Whether these words begin with the call. */
  public boolean isCall(String text) {
    return !grammar.match(Spelling.words(text), Expected.call()).isEmpty();
  }

  private static Meaning obey(List<String> tags, Reader reader, String said) {
    try {
      for (String tag : tags) {
        reader.take(tag);
      }
      return reader.meaning();
    } catch (SlotValue.BeyondPlumb e) {
      return new NotUnderstood(Reason.BEYOND_PLUMB, said);
    }
  }

  /** How words came, and how far they can be relied on. */
  private enum Came {
    TYPED,
    HEARD,
    DOUBTFUL;

    boolean leavesInDoubt(Breath breath) {
      return switch (this) {
        case TYPED -> false;
        case HEARD -> breath.hasTwin();
        case DOUBTFUL -> true;
      };
    }
  }

  /** Obeys tags from left to right. */
  private static final class Reader {
    private static final String ROPE_ANGLE = "rope_angle";

    private final List<Statement> statements = new ArrayList<>();
    private Optional<String> slot;
    private Breath breath = new Breath();
    private Optional<String> command = Optional.empty();
    private Optional<Meaning> procedure = Optional.empty();
    private final Came came;
    private boolean called;
    private boolean correcting;

    Reader(Optional<Slot> asked, Came came) {
      this.came = came;
      this.slot = asked.map(Slot::key);
    }

    void take(String tag) throws SlotValue.BeyondPlumb {
      int space = tag.indexOf(' ');
      String verb = space < 0 ? tag : tag.substring(0, space);
      String argument = space < 0 ? "" : tag.substring(space + 1).strip();
      switch (verb) {
        case "slot" -> {
          endValue();
          slot = Optional.of(argument);
        }
        case "do" -> obey(argument);
        default -> breath.take(verb, argument);
      }
    }

    private void obey(String order) {
      switch (order) {
        case "wake" -> called = true;
        case "correct" -> correcting = true;
        case "roger" -> procedure = Optional.of(Meaning.Procedure.ROGER);
        case "over" -> procedure = Optional.of(Meaning.Procedure.OVER);
        default -> command = Optional.of(order);
      }
    }

    private void endValue() throws SlotValue.BeyondPlumb {
      if (breath.isEmpty()) {
        return;
      }
      String name = slot.orElseThrow();
      if (name.equals(ROPE_ANGLE)) {
        Breath.Piece.Amount angle = (Breath.Piece.Amount) breath.pieces().get(0);
        statements.add(new Statement.RopeAngle(Angle.ofDegrees(angle.number())));
      } else {
        Slot named = Slot.of(name).orElseThrow();
        statements.add(
            new Statement.Value(named, SlotValue.of(named, breath), came.leavesInDoubt(breath)));
      }
      breath = new Breath();
    }

    Meaning meaning() throws SlotValue.BeyondPlumb {
      if (procedure.isPresent()) {
        return procedure.get();
      }
      if (command.isPresent()) {
        return command(command.get());
      }
      endValue();
      // Before anything else the call says nothing of the rig.
      if (called && !correcting && statements.isEmpty()) {
        return Command.WAKE;
      }
      return correcting ? new Meaning.Correction(statements) : new Meaning.Values(statements);
    }

    private Meaning command(String order) {
      List<Breath.Piece> pieces = breath.pieces();
      return switch (order) {
        case "go_to" ->
            new Meaning.GoTo(
                Place.redirectNumber((int) ((Breath.Piece.Amount) pieces.get(0)).number()));
        case "go_to_main" -> new Meaning.GoTo(Place.MAIN_POINT);
        default -> Command.valueOf(order.toUpperCase(Locale.ROOT));
      };
    }
  }
}
