package rigspeak.answer;

import static rigspeak.answer.Sentences.sentence;
import static rigspeak.answer.Sentences.text;

import java.util.ArrayList;
import java.util.List;
import rigspeak.dialogue.Reply;
import rigspeak.rig.Place;
import rigspeak.verdict.PathVerdict;
import rigspeak.verdict.Verdict;
import rigspeak.verdict.Verdict.Rating;

/** Verdicts: what comes of a rope, why, and what would help. */
final class VerdictWords {
  private final Form form;
  private final SaidBack saidBack;
  private final LoadWords loads;
  private final CheckWords checks;
  private final Grounds grounds;
  private final NoNumbers noNumbers;

  private final Cases<Verdict, String> bodies;
  private final Cases<Verdict, String> reasons;
  private final Cases<Verdict, String> help;

  VerdictWords(Form form, SaidBack saidBack) {
    this.form = form;
    this.saidBack = saidBack;
    this.loads = new LoadWords(form);
    this.checks = new CheckWords(form);
    this.grounds = new Grounds(form);
    this.noNumbers = new NoNumbers(form);
    this.bodies =
        Cases.<Verdict, String>of(Verdict.class)
            .on(Verdict.Judged.class, judged -> text(checks.reason(judged), change(judged)))
            .on(Verdict.RefusedOutright.class, noNumbers::refused)
            .on(Verdict.CannotSay.class, noNumbers::unknown)
            .on(Verdict.WaitsFor.class, NoNumbers::waits)
            .all();
    this.reasons =
        Cases.<Verdict, String>of(Verdict.class)
            .on(Verdict.Judged.class, this::why)
            .on(Verdict.RefusedOutright.class, noNumbers::refused)
            .on(Verdict.CannotSay.class, noNumbers::unknown)
            .on(Verdict.WaitsFor.class, NoNumbers::waits)
            .all();
    this.help =
        Cases.<Verdict, String>of(Verdict.class)
            .on(Verdict.Judged.class, this::wouldHelp)
            .on(Verdict.RefusedOutright.class, NoNumbers::wayOut)
            .on(Verdict.CannotSay.class, noNumbers::unknown)
            .on(Verdict.WaitsFor.class, NoNumbers::waits)
            .all();
  }

  /** Verdict, load, reason, change; the values it hangs on; what stands above it. */
  List<Utterance> judged(Reply.Judged judged) {
    PathVerdict verdict = judged.verdict();
    String values =
        judged.governing().isEmpty()
            ? ""
            : text(form.inFull(byTheseValues(verdict)), saidBack.items(judged.governing()));
    String rules =
        verdict.isGood()
            ? form.or(
                "Local rules, your crew and a load test from the ground decide.",
                "Your crew and a load test decide.")
            : "";
    String lanyard =
        form.or("Clip in before you set, move or take off a redirect.", "Clip in first.");
    String rest = text(body(verdict), values, Grounds.supplied(verdict), lanyard, rules);
    Utterance head = head(verdict);
    return head.danger()
        ? List.of(head, Utterance.calm(rest))
        : List.of(Utterance.calm(text(head.text(), rest)));
  }

  private static String byTheseValues(PathVerdict verdict) {
    return isElsewhere(verdict) ? "By its values." : "By these values.";
  }

  /** The verdict alone, and which support it comes from if that is another one. */
  Utterance head(PathVerdict verdict) {
    String which = Places.title(verdict.asked());
    String because = isElsewhere(verdict) ? "because of " + Places.name(verdict.governing()) : "";
    return switch (verdict.outcome()) {
      case GOOD -> Utterance.calm(sentence("good to load", which, "by the numbers you gave"));
      case MARGINAL -> Utterance.calm(sentence("marginal", which, because, "do not load it yet"));
      case CANNOT_SAY ->
          Utterance.calm(text(sentence("cannot say", which, because), "Do not load it yet."));
      case REFUSE -> Utterance.danger(sentence("do not load", which, because));
    };
  }

  private static boolean isElsewhere(PathVerdict verdict) {
    return !verdict.governing().equals(verdict.asked());
  }

  String why(PathVerdict verdict) {
    return text(
        elsewhere(verdict),
        reasons.make(verdict.ofGoverning()),
        form.inFull(pullOnTheMainPoint(verdict)));
  }

  String wouldHelp(PathVerdict verdict) {
    return verdict.isGood()
        ? "It is good as it stands, by the numbers you gave."
        : text(elsewhere(verdict), help.make(verdict.ofGoverning()));
  }

  /**
   * The load on the support that was asked about, then all of the one that decides. Brief answers
   * leave the one out where the other is at fault.
   */
  private String body(PathVerdict verdict) {
    String load = verdict.ofAsked() instanceof Verdict.Judged judged ? loads.of(judged) : "";
    boolean goThere = isElsewhere(verdict) && verdict.outcome() == PathVerdict.Outcome.CANNOT_SAY;
    return text(
        form.isFull() || verdict.isGood() || !isElsewhere(verdict) ? load : "",
        isElsewhere(verdict) && verdict.ofGoverning() instanceof Verdict.Judged judged
            ? loads.pull(verdict.governing(), judged)
            : elsewhere(verdict),
        bodies.make(verdict.ofGoverning()),
        goThere ? sentence("say go to " + Places.name(verdict.governing())) : "");
  }

  /** Names the support that is spoken of where it is not the one that was asked about. */
  private static String elsewhere(PathVerdict verdict) {
    return isElsewhere(verdict) ? sentence(Places.title(verdict.governing())) : "";
  }

  /** How the main point is pulled now, where nobody has heard it yet. */
  private String pullOnTheMainPoint(PathVerdict verdict) {
    boolean told = verdict.governing().isMainPoint();
    return !told && verdict.supports().get(Place.MAIN_POINT) instanceof Verdict.Judged judged
        ? loads.pull(Place.MAIN_POINT, judged)
        : "";
  }

  /* ---- the change worth making ---- */

  /** A marginal support may also be good on a better measure; brief answers name one thing. */
  private String change(Verdict.Judged judged) {
    return switch (judged.rating()) {
      case GOOD -> "";
      case REFUSE -> cheapest(judged);
      case MARGINAL ->
          judged.remedies().isEmpty()
              ? text(cheapest(judged), measureAgain(judged))
              : text(cheapest(judged), form.inFull(measureAgain(judged)));
    };
  }

  private String cheapest(Verdict.Judged judged) {
    return judged.remedies().stream()
        .findFirst()
        .map(remedy -> RemedyWords.of(remedy, judged.rig().said()))
        .map(change -> sentence(change, form.inFull("then check again")))
        .orElse("Choose another limb or union.");
  }

  private String measureAgain(Verdict.Judged judged) {
    return judged
        .measureAgain()
        .map(RemedyWords::measured)
        .map(what -> sentence("or measure " + what + " again", form.inFull("it matters most")))
        .orElse("");
  }

  private String wouldHelp(Verdict.Judged judged) {
    List<String> changes =
        judged.remedies().stream()
            .limit(Sentences.MOST_ITEMS)
            .map(remedy -> RemedyWords.of(remedy, judged.rig().said()))
            .toList();
    String again = judged.rating() == Rating.MARGINAL ? measureAgain(judged) : "";
    if (changes.isEmpty()) {
      return text("No change I know makes it good.", "Choose another limb or union.", again);
    }
    List<String> sentences = new ArrayList<>();
    if (changes.size() > 1) {
      sentences.add(form.inFull("Each of these would do by itself."));
    }
    for (String change : changes) {
      sentences.add(sentence((change.equals(changes.get(0)) ? "" : "or ") + change));
    }
    sentences.add(again);
    sentences.add("Then check again.");
    return text(sentences);
  }

  /* ---- why ---- */

  private String why(Verdict.Judged judged) {
    return text(
        form.inFull(loads.parts(judged)),
        form.inFull(loads.turn(judged.load())),
        checks.demand(judged),
        form.inFull(checks.atItsLimit(judged)),
        grounds.of(judged));
  }
}
