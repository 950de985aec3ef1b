package rigspeak.app;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import rigspeak.answer.Answers;
import rigspeak.answer.Mishap;
import rigspeak.answer.Utterance;
import rigspeak.dialogue.Conversation;
import rigspeak.dialogue.Dialogue;
import rigspeak.dialogue.Turn;
import rigspeak.meaning.Meaning;
import rigspeak.meaning.Understanding;

/**
 * From what came to what is answered, with an end to how long it may take and a word for whatever
 * goes wrong in it. All of it is pure, so one that is not waited for any longer does no harm.
 */
final class Reckoning {
  /** A rope of five supports takes a fiftieth of it; a judgement. */
  static final Duration PATIENCE = Duration.ofSeconds(10);

  private final Understanding understanding;
  private final Step step;
  private final Duration patience;

  /** From where a conversation stands to where it goes. */
  interface Step {
    Turn step(Conversation before, Meaning meaning);
  }

  /** What comes of an input. */
  sealed interface Result {
    record Reckoned(Meaning meaning, Turn turn, List<Utterance> answers) implements Result {}

    record Failed(Mishap mishap, Throwable fault) implements Result {}
  }

  Reckoning(Understanding understanding, Dialogue dialogue) {
    this(understanding, dialogue::step, PATIENCE);
  }

  Reckoning(Understanding understanding, Step step, Duration patience) {
    this.understanding = understanding;
    this.step = step;
    this.patience = patience;
  }

  /** What comes of it; the conversation is where it was if anything fails. */
  Result of(Conversation before, Input input) {
    FutureTask<Result> task = new FutureTask<>(task(before, input));
    Thread thread = new Thread(task, "reckoning");
    thread.setDaemon(true);
    try {
      thread.start();
      return task.get(patience.toNanos(), TimeUnit.NANOSECONDS);
    } catch (TimeoutException e) {
      task.cancel(true);
      return new Result.Failed(Mishap.TOO_LONG, e);
    } catch (ExecutionException e) {
      return new Result.Failed(mishap(e.getCause()), e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new Result.Failed(Mishap.RECKONING_FAILED, e);
    } catch (OutOfMemoryError e) {
      return new Result.Failed(Mishap.OUT_OF_MEMORY, e);
    }
  }

  private Callable<Result> task(Conversation before, Input input) {
    return () -> {
      Meaning meaning = meaning(before, input);
      Turn turn = step.step(before, meaning);
      List<Utterance> answers = Answers.say(turn.replies(), turn.next().manner().detail());
      return new Result.Reckoned(meaning, turn, answers);
    };
  }

  private Meaning meaning(Conversation before, Input input) {
    if (input instanceof Input.Typed typed) {
      return understanding.understand(typed.words(), before.asked());
    }
    if (input instanceof Input.Heard heard) {
      return understanding.hear(heard.words(), before.asked());
    }
    if (input instanceof Input.Doubtful doubtful) {
      return understanding.hearDoubtful(doubtful.words(), before.asked());
    }
    return input instanceof Input.Unheard unheard ? unheard.why() : Meaning.Command.WAKE;
  }

  private static Mishap mishap(Throwable fault) {
    return fault instanceof OutOfMemoryError ? Mishap.OUT_OF_MEMORY : Mishap.RECKONING_FAILED;
  }
}
