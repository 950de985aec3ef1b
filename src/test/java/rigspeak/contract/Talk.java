package rigspeak.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Reply;
import rigspeak.dialogue.Turn;
import rigspeak.grammar.Grammar;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;
import rigspeak.rig.Slot;
import rigspeak.verdict.Judge;
import rigspeak.verdict.PathVerdict;

/** A conversation from words to words, each step of it held against the contract. */
final class Talk {
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final Understanding UNDERSTANDING = new Understanding(Grammar.bundled());
  private static final Map<List<Object>, Meaning> UNDERSTOOD = new ConcurrentHashMap<>();

  /** As the tool judges. */
  static final Dialogue WHOLE = new Dialogue(CATALOGUE, new Judge(CATALOGUE));

  /** With few samples, for what does not hang on how many are tried. */
  static final Dialogue BRIEF = new Dialogue(CATALOGUE, new Judge(CATALOGUE, 8));

  private final Dialogue dialogue;
  private final Contract contract;
  private Conversation now;
  private final List<String> said;

  private Talk(Dialogue dialogue, Contract contract, Conversation now, List<String> said) {
    this.dialogue = dialogue;
    this.contract = contract;
    this.now = now;
    this.said = new ArrayList<>(said);
  }

  static Talk with(Dialogue dialogue) {
    return new Talk(dialogue, new Contract(), Conversation.begin(), List.of());
  }

  /** The same talk, to go on in another way. */
  Talk fork() {
    return new Talk(dialogue, contract.copy(), now, said);
  }

  /** The same talk from here on before another judge. */
  Talk before(Dialogue other) {
    return new Talk(other, contract.copy(), now, said);
  }

  /** What came of a step. */
  record Step(Meaning meaning, List<Reply> replies, List<PathVerdict> good) {
    boolean has(Class<? extends Reply> kind) {
      return replies.stream().anyMatch(kind::isInstance);
    }

    boolean understood() {
      return !(meaning instanceof Meaning.NotUnderstood);
    }
  }

  Step type(String words) {
    return step(words, false);
  }

  Step hear(String words) {
    return step(words, true);
  }

  private Step step(String words, boolean byEar) {
    Meaning meaning = meaning(words, byEar, now.asked());
    said.add(words);
    Turn turn = dialogue.step(now, meaning);
    now = turn.next();
    try {
      return new Step(
          meaning,
          turn.replies(),
          contract.see(words, byEar, meaning, turn.replies(), now.manner().detail()));
    } catch (AssertionError broken) {
      throw new AssertionError(broken.getMessage() + "\n> " + String.join("\n> ", said), broken);
    }
  }

  static Meaning meaning(String words, boolean byEar, Optional<Slot> asked) {
    return UNDERSTOOD.computeIfAbsent(
        List.of(words, byEar, asked),
        key -> byEar ? UNDERSTANDING.hear(words, asked) : UNDERSTANDING.understand(words, asked));
  }

  /** By ear, and whatever is doubtful is affirmed. */
  Step hearAndAffirm(String words) {
    Step step = hear(words);
    if (step.has(Reply.AffirmDoubtful.class)) {
      type("affirm");
    }
    return step;
  }

  /** Says all of it, from the main point to the last redirect; every slot is an utterance. */
  Talk sayAll(SaidRope rope) {
    Place there = Place.redirectNumber(1);
    for (SaidRope.Line line : rope.lines()) {
      if (!line.place().equals(there)) {
        turnTo(line.place());
        there = line.place();
      }
      hearAndAffirm(line.said());
    }
    turnTo(rope.last());
    return this;
  }

  void turnTo(Place place) {
    if (place.equals(now.rope().present())) {
      return;
    }
    if (now.rope().has(place)) {
      type(
          place.isMainPoint()
              ? "go to the main point"
              : "go to redirect " + "one two three".split(" ", -1)[place.redirect() - 1]);
    } else {
      type("next redirect");
    }
  }

  /** The rope that a check would be about. */
  RopePath rope() {
    return now.rope().path(now.rope().present());
  }

  Conversation conversation() {
    return now;
  }

  List<String> said() {
    return List.copyOf(said);
  }

  /** All that the talk has come to, here and in the record beside it. */
  List<Object> state() {
    return List.of(now, contract.record());
  }
}
