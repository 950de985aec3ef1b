package rigspeak.dialogue;

import static rigspeak.meaning.Notation.key;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rigspeak.catalogue.Conflict;
import rigspeak.dialogue.Reply.Item;
import rigspeak.meaning.Notation;
import rigspeak.quantity.Length;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;
import rigspeak.verdict.Loss;
import rigspeak.verdict.Obstacle;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Spread;
import rigspeak.verdict.Swing;
import rigspeak.verdict.Verdict;

/**
 * How replies are written in the situations: a line of few words for each. A redirect is its
 * number, the main tie-in point is "main".
 */
final class ReplyNotation {
  private static final Pattern ITEM = Pattern.compile("(\\w+ = [^;()]+?)(?: \\(was ([^)]+)\\))?");

  /** A line whose end is a list of values. */
  private static final Pattern WITH_ITEMS =
      Pattern.compile(
          "(taken|affirm|affirm or digits|read back (?:\\d+|main):|scrapped) (\\w+ = .*)");

  private static final Pattern RANGE = Pattern.compile("implausible (\\w+ = .*)");

  private ReplyNotation() {}

  // ---- what the program replied ----

  static String of(Reply reply) {
    if (reply instanceof Reply.Taken taken) {
      return "taken " + items(taken.items());
    }
    if (reply instanceof Reply.AffirmValue affirm) {
      return "affirm " + item(affirm.item());
    }
    if (reply instanceof Reply.AffirmDoubtful doubtful) {
      return "affirm or digits " + items(doubtful.items());
    }
    if (reply instanceof Reply.ReadBack back) {
      String items = back.items().isEmpty() ? "nothing" : items(back.items());
      return "read back " + place(back.place()) + ": " + items;
    }
    if (reply instanceof Reply.Scrapped scrapped) {
      return "scrapped " + item(scrapped.item());
    }
    if (reply instanceof Reply.Judged judged) {
      PathVerdict verdict = judged.verdict();
      return "judged %s %s%s".formatted(place(verdict.asked()), whole(verdict), on(judged));
    }
    if (reply instanceof Reply.Implausible implausible) {
      Conflict.OutOfRange offence = implausible.offence();
      return "implausible %s, %s %s"
          .formatted(
              offence.slot().key(), Notation.number(offence.value()), key(offence.range().unit()));
    }
    if (reply instanceof Reply.WhichAngle which) {
      return "which angle: " + Notation.number(which.angle().degrees());
    }
    return ofLanyard(reply).or(() -> ofFall(reply)).or(() -> ofTalk(reply)).orElseThrow();
  }

  private static Optional<String> ofLanyard(Reply reply) {
    if (reply instanceof Reply.LanyardFirst first) {
      return Optional.of("lanyard first" + change(first.change()));
    }
    if (reply instanceof Reply.AffirmClippedIn) {
      return Optional.of("affirm clipped in");
    }
    if (reply instanceof Reply.ClippedIn in) {
      return Optional.of(
          "clipped in on %s%s, %s"
              .formatted(place(in.place()), change(in.change()), standing(in.standing())));
    }
    if (reply instanceof Reply.LoadHeard load) {
      return Optional.of(
          "load heard on %s, %s".formatted(place(load.place()), standing(load.standing())));
    }
    if (reply instanceof Reply.HoldLanyard hold) {
      return Optional.of(
          "hold the lanyard: "
              + hold.reasons().stream().map(Notation::key).collect(Collectors.joining(", ")));
    }
    if (reply instanceof Reply.LanyardReleased) {
      return Optional.of("lanyard released");
    }
    if (reply instanceof Reply.Attached attached) {
      String loaded = attached.loaded().isEmpty() ? "none" : places(attached.loaded());
      return Optional.of(
          "held by lanyard %s, loaded %s".formatted(key(attached.lanyard()), loaded));
    }
    return Optional.empty();
  }

  private static Optional<String> ofTalk(Reply reply) {
    String line = null;
    if (reply instanceof Reply.Affirmed) {
      line = "affirmed";
    } else if (reply instanceof Reply.Dropped dropped) {
      line = "dropped " + slots(dropped.slots());
    } else if (reply instanceof Reply.VerdictCancelled cancelled) {
      line = "verdict cancelled on " + places(cancelled.places());
    } else if (reply instanceof Reply.SaidTwice twice) {
      line = "said twice " + twice.slot().key();
    } else if (reply instanceof Reply.Asked asked) {
      line = "asked " + asked.slot().key();
    } else if (reply instanceof Reply.Missing missing) {
      line = "missing " + (missing.slots().isEmpty() ? "nothing" : slots(missing.slots()));
    } else if (reply instanceof Reply.MissingElsewhere missing) {
      line =
          "missing nothing here, %s %s".formatted(place(missing.place()), slots(missing.slots()));
    } else if (reply instanceof Reply.Why why) {
      line = "why " + brief(why.verdict());
    } else if (reply instanceof Reply.WouldHelp help) {
      line = "what would help: " + brief(help.verdict());
    } else if (reply instanceof Reply.NotJudged) {
      line = "not judged";
    } else if (reply instanceof Reply.Turned turned) {
      String which =
          turned.place().isMainPoint() ? "main point" : "redirect " + place(turned.place());
      line = which + (turned.begun() ? " begun" : " again");
    } else if (reply instanceof Reply.NoSuchRedirect none) {
      line = "no redirect %s of %d".formatted(place(none.place()), none.howMany());
    } else if (reply instanceof Reply.CorrectionAsked asked) {
      line = "say the right " + asked.slot().key();
    } else if (reply instanceof Reply.NothingToTakeBack) {
      line = "nothing to take back";
    } else if (reply instanceof Reply.AffirmFirst first) {
      line = "affirm first: " + pending(first.pending());
    } else if (reply instanceof Reply.Again again) {
      line = "%s, %s%s".formatted(key(again.rung()), key(again.reason()), asked(again.asked()));
    } else if (reply instanceof Reply.Silent silent) {
      line = "%s, silence%s".formatted(key(silent.rung()), asked(silent.asked()));
    } else if (reply instanceof Reply.CannotHear cannot) {
      line = "cannot hear: " + key(cannot.trouble());
    } else if (reply instanceof Reply.StandingBy) {
      line = "standing by";
    } else if (reply instanceof Reply.DetailSet set) {
      line = "answers " + key(set.detail());
    } else if (reply instanceof Reply.PaceSet set) {
      line = "pace " + key(set.pace());
    } else if (reply instanceof Reply.Listening) {
      line = "listening";
    } else if (reply instanceof Reply.FallenAsleep) {
      line = "asleep";
    } else if (reply instanceof Reply.Help) {
      line = "what can be said";
    }
    return Optional.ofNullable(line);
  }

  /** What a fall or a swing comes to with every value at its word, in feet and degrees. */
  private static Optional<String> ofFall(Reply reply) {
    if (reply instanceof Reply.LetsGo lets) {
      return Optional.of("if %s lets go: %s".formatted(place(lets.place()), loss(lets.loss())));
    }
    if (reply instanceof Reply.WouldSwing would) {
      Swing swing = would.swing();
      return Optional.of(
          "swing from %s: %.0f deg off plumb, %s to the side, stem %s"
              .formatted(
                  place(swing.from()),
                  swing.offPlumbDeg().nominal(),
                  feet(swing.offsetM()),
                  obstacle(swing.obstacle())));
    }
    if (reply instanceof Reply.SwingNotKnown unknown) {
      return Optional.of("swing not known from " + place(unknown.place()));
    }
    return Optional.empty();
  }

  private static String loss(Loss loss) {
    if (loss instanceof Loss.NotKnown unknown) {
      return "not known, %s %s".formatted(place(unknown.place()), slots(unknown.legs()));
    }
    if (loss instanceof Loss.Falls falls) {
      return "%s catches, drop %s, stem %s"
          .formatted(place(falls.catching()), feet(falls.dropM()), obstacle(falls.obstacle()));
    }
    return "nothing else holds";
  }

  private static String obstacle(Obstacle obstacle) {
    if (obstacle instanceof Obstacle.Clear) {
      return "clear";
    }
    return obstacle instanceof Obstacle.Reached ? "reached" : "not said";
  }

  private static String feet(Spread metres) {
    return String.format(Locale.ROOT, "%.2f ft", Length.ofMetres(metres.nominal()).feet());
  }

  private static String places(List<Place> places) {
    return places.stream().map(ReplyNotation::place).collect(Collectors.joining(", "));
  }

  /** A redirect is its number. */
  private static String place(Place place) {
    return place.isMainPoint() ? "main" : String.valueOf(place.redirect());
  }

  private static String asked(Optional<Slot> slot) {
    return slot.map(s -> ", asked " + s.key()).orElse("");
  }

  private static String change(Optional<Reply.Change> change) {
    return change.map(c -> " (" + key(c) + ")").orElse("");
  }

  private static String pending(Pending pending) {
    if (pending instanceof Pending.Doubtful doubtful) {
      return slots(doubtful.items().stream().map(Item::slot).toList());
    }
    return pending instanceof Pending.Values values
        ? values.items().get(0).slot().key()
        : "clipped in";
  }

  private static String standing(Optional<PathVerdict> verdict) {
    return verdict.map(ReplyNotation::brief).orElse("not judged");
  }

  private static String brief(PathVerdict verdict) {
    return verdict.ofGoverning() instanceof Verdict.RefusedOutright
        ? "refused outright"
        : key(verdict.outcome()).replace('_', ' ');
  }

  /** What governs at another support begins with that support. */
  private static String whole(PathVerdict verdict) {
    String where =
        verdict.governing().equals(verdict.asked()) ? "" : place(verdict.governing()) + " ";
    return brief(verdict)
        + because(verdict.ofGoverning())
            .map(why -> ", " + where + why)
            .collect(Collectors.joining());
  }

  private static Stream<String> because(Verdict verdict) {
    if (verdict instanceof Verdict.Judged judged) {
      return Stream.of("governed by " + judged.governing().kind().key());
    }
    if (verdict instanceof Verdict.RefusedOutright outright) {
      return Stream.of(
          outright.refusals().stream().map(Notation::key).collect(Collectors.joining(", ")));
    }
    if (verdict instanceof Verdict.WaitsFor waits) {
      return Stream.of("waits for " + place(waits.place()));
    }
    Verdict.CannotSay cannot = (Verdict.CannotSay) verdict;
    Stream<String> missing =
        cannot.missing().isEmpty() ? Stream.of() : Stream.of("missing " + slots(cannot.missing()));
    Stream<String> conflicts =
        cannot.conflicts().isEmpty()
            ? Stream.of()
            : Stream.of(
                "conflict "
                    + cannot.conflicts().stream()
                        .map(conflict -> conflict.getClass().getSimpleName())
                        .collect(Collectors.joining(", ")));
    return Stream.concat(missing, conflicts);
  }

  private static String on(Reply.Judged judged) {
    return judged.governing().isEmpty()
        ? ""
        : ", on " + slots(judged.governing().stream().map(Item::slot).toList());
  }

  static String slots(List<Slot> slots) {
    return slots.stream().map(Slot::key).collect(Collectors.joining(", "));
  }

  private static String items(List<Item> items) {
    return items.stream().map(ReplyNotation::item).collect(Collectors.joining("; "));
  }

  private static String item(Item item) {
    return Notation.of(item.slot(), item.said())
        + item.before().map(before -> " (was " + Notation.of(before) + ")").orElse("");
  }

  // ---- what a situation expects, in the same form ----

  static String expected(String line) {
    Matcher withItems = WITH_ITEMS.matcher(line);
    if (withItems.matches()) {
      return withItems.group(1) + " " + expectedItems(withItems.group(2));
    }
    Matcher range = RANGE.matcher(line);
    if (range.matches()) {
      // "out = 16.002 m inch_pound by_eye" is told as "out, 16.002 metre"
      String[] value = Notation.expected(range.group(1)).split(" ", -1);
      return "implausible %s, %s %s".formatted(value[0], value[2], rangeUnit(value[3]));
    }
    return line;
  }

  private static String rangeUnit(String symbol) {
    return switch (symbol) {
      case "m" -> "metre";
      case "kg" -> "kilogram";
      case "N" -> "newton";
      case "deg" -> "degree";
      default -> throw new IllegalArgumentException("no unit of a range: " + symbol);
    };
  }

  private static String expectedItems(String items) {
    return Arrays.stream(items.split(";", -1))
        .map(String::strip)
        .map(ReplyNotation::expectedItem)
        .collect(Collectors.joining("; "));
  }

  private static String expectedItem(String text) {
    Matcher item = ITEM.matcher(text);
    if (!item.matches()) {
      throw new IllegalArgumentException("no value: " + text);
    }
    String slot = item.group(1).substring(0, item.group(1).indexOf(' '));
    String before = item.group(2);
    return Notation.expected(item.group(1))
        + (before == null
            ? ""
            : " (was " + Notation.expected(Slot.of(slot).orElseThrow(), before) + ")");
  }

  /** A verdict or a fall may be told in part: what a situation leaves out it does not claim. */
  static boolean fits(String expected, String actual) {
    boolean inPart =
        Stream.of("judged ", "if ", "swing ").anyMatch(start -> expected.startsWith(start));
    return expected.equals(actual) || (inPart && actual.startsWith(expected + ","));
  }
}
