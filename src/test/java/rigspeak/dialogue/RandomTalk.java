package rigspeak.dialogue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import rigspeak.catalogue.Catalogue;
import rigspeak.catalogue.Resolution;
import rigspeak.grammar.Grammar;
import rigspeak.grammar.Phrase;
import rigspeak.grammar.Sentences;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Meaning.Command;
import rigspeak.meaning.Meaning.Statement;
import rigspeak.meaning.Understanding;
import rigspeak.rig.Place;
import rigspeak.rig.RopePath;

/**
 * Somebody who says anything at all, but often enough what leads far: whole rigs, checks, the
 * lanyard step by step, each now and then with a word between.
 */
final class RandomTalk {
  private static final Grammar GRAMMAR = Grammar.bundled();
  private static final Sentences SENTENCES = new Sentences(GRAMMAR);
  private static final Understanding UNDERSTANDING = new Understanding(GRAMMAR);
  private static final Catalogue CATALOGUE = Catalogue.bundled();
  private static final int STATEMENTS = 400;

  /** How often a step of a plan is left out. */
  private static final double FORGOTTEN = 0.02;

  /** Checks of whole rigs are slow; so many of them are made in one talk. */
  private static final int CHECKS = 4;

  private static final List<Meaning> CHANGE_OVER =
      List.of(
          Command.CHECK,
          Command.SET,
          Command.CLIPPED_IN,
          Command.AFFIRM,
          Command.LOADED,
          Command.LANYARD_RELEASED);

  private static final List<Meaning> TAKE_OFF =
      List.of(Command.TAKE_OFF, Command.CLIPPED_IN, Command.AFFIRM);

  private final SplittableRandom random;
  private final List<Statement> statements = new ArrayList<>();
  private final List<Meaning> goodMain = said("main");
  private final List<Meaning> goodRig = said("good");
  private final List<Meaning> goodSecond = said("second");
  private final Deque<Meaning> planned = new ArrayDeque<>();
  private boolean begun;
  private int checks;

  RandomTalk(long seed) {
    this.random = new SplittableRandom(seed);
    Phrase statement = new Phrase.Rule("statement");
    while (statements.size() < STATEMENTS) {
      Meaning meaning =
          UNDERSTANDING.hear(SENTENCES.any(statement, random::nextInt).text(), Optional.empty());
      if (meaning instanceof Meaning.Values values) {
        statements.addAll(values.statements());
      }
    }
  }

  private static List<Meaning> said(String rig) {
    return Situation.rigs().get(rig).stream().map(RandomTalk::meaning).toList();
  }

  /** Everybody begins with a rope that could be good; what they make of it is their own. */
  Meaning next(Conversation now) {
    if (!begun) {
      begun = true;
      planGoodRope(now);
    }
    if (random.nextDouble() < FORGOTTEN) {
      planned.poll();
    }
    if (!planned.isEmpty() && random.nextDouble() < 0.97) {
      return cheap(planned.poll(), now);
    }
    double draw = random.nextDouble();
    if (draw < 0.02) {
      planGoodRope(now);
    } else if (draw < 0.07) {
      planned.addAll(CHANGE_OVER.subList(1 + random.nextInt(4), CHANGE_OVER.size()));
    }
    return cheap(anything(), now);
  }

  /** The main point, the present redirect or a next one, then perhaps one beyond it. */
  private void planGoodRope(Conversation now) {
    planned.addAll(List.of(Command.AFFIRM, Command.AFFIRM));
    planned.add(new Meaning.GoTo(Place.MAIN_POINT));
    planned.addAll(goodMain);
    boolean next = now.rope().present().isMainPoint() || (begun && random.nextBoolean());
    planned.add(next ? Command.NEXT : new Meaning.GoTo(now.rope().present()));
    planned.addAll(goodRig);
    if (random.nextBoolean()) {
      planned.addAll(CHANGE_OVER);
    } else {
      planned.add(meaning("working leg down seventy five toward the tip ten feet by tape"));
      planned.addAll(CHANGE_OVER.subList(1, CHANGE_OVER.size()));
      planned.add(Command.NEXT);
      planned.addAll(goodSecond);
      planned.addAll(CHANGE_OVER);
    }
    if (random.nextBoolean()) {
      planned.addAll(TAKE_OFF);
    }
  }

  private Meaning anything() {
    double draw = random.nextDouble();
    if (draw < 0.40) {
      return pick(Command.values());
    }
    if (draw < 0.60) {
      return new Meaning.Values(some(1 + random.nextInt(3)));
    }
    if (draw < 0.70) {
      return new Meaning.Correction(some(random.nextInt(4)));
    }
    if (draw < 0.75) {
      return new Meaning.GoTo(new Place(random.nextInt(5)));
    }
    if (draw < 0.80) {
      return new Meaning.NotUnderstood(pick(Meaning.Reason.values()), "");
    }
    if (draw < 0.83) {
      return new Meaning.CannotHear(pick(Meaning.Trouble.values()));
    }
    // What moves something that waits.
    return pick(
        Command.AFFIRM,
        Command.NEGATIVE,
        Command.SCRAP,
        Command.CLIPPED_IN,
        Command.LOADED,
        Command.LANYARD_RELEASED);
  }

  private List<Statement> some(int howMany) {
    List<Statement> some = new ArrayList<>();
    for (int i = 0; i < howMany; i++) {
      some.add(statements.get(random.nextInt(statements.size())));
    }
    return some;
  }

  /** Judging a rope with anything whole on it is made only so often. */
  private Meaning cheap(Meaning meaning, Conversation now) {
    boolean judges =
        meaning == Command.CHECK || meaning == Command.LETS_GO || meaning == Command.SWING;
    if (!judges || now.floor().pending().isPresent() || !isLastWhole(now.rope())) {
      return meaning;
    }
    checks++;
    return checks <= CHECKS ? meaning : Command.READ_BACK;
  }

  /** As long as the support nearest the climber is not known, no other is judged by numbers. */
  private static boolean isLastWhole(Rope rope) {
    RopePath path = rope.path(rope.present());
    return CATALOGUE.resolve(path, path.last()) instanceof Resolution.Known;
  }

  @SafeVarargs
  private <T> T pick(T... any) {
    return any[random.nextInt(any.length)];
  }

  static Meaning meaning(String line) {
    return UNDERSTANDING.understand(line, Optional.empty());
  }
}
