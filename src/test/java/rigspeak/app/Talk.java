package rigspeak.app;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import rigspeak.audio.Sound;

/**
 * rigspeak in a {@link SoundLoop}, and somebody who talks with it.
 *
 * <p>Each step waits for what the tool has done and none for a time, so a slow machine makes it
 * longer and nothing else. The tool is opened by the key and its window is as long as can be: it
 * has no remark on a silence, however long the other side needs.
 */
final class Talk implements AutoCloseable {
  static final String LISTENING = "Listening on default [default], speaking on default [default]";

  /** An answer is over when it has been quiet for so long: longer than any pause within one. */
  private static final double OVER_SECONDS = 0.8;

  private static final int MOST_AGAIN = 2;

  /** Nothing here takes so long on a machine that is not stuck. */
  static final double PATIENCE_SECONDS = 300;

  private final SoundLoop loop;
  private final Process process;
  private final RunningTool tool;
  private Tap tap;
  private int at;

  private Talk(SoundLoop loop) throws IOException {
    this.loop = loop;
    this.tap = loop.tap(loop.toolSpeaksOn());
    this.process = loop.rigspeak("listen", "--window", "600", "--json").start();
    this.tool = new RunningTool(process);
  }

  /** With one that waits for the call. */
  static Talk asleep(SoundLoop loop) throws IOException, InterruptedException {
    Talk talk = new Talk(loop);
    talk.awaitRemark(LISTENING);
    talk.hearOut();
    return talk;
  }

  /** With one that has been called. */
  static Talk open(SoundLoop loop) throws IOException, InterruptedException {
    Talk talk = asleep(loop);
    talk.process.getOutputStream().write('\n');
    talk.process.getOutputStream().flush();
    talk.awaitExchange();
    talk.hearOut();
    return talk;
  }

  /**
   * Says a recording and waits until it has been answered. What is not understood is said again, as
   * a person would: a machine that is busy makes holes in the sound, as a bad radio link does.
   */
  Answered say(Path wav) throws IOException, InterruptedException {
    Answered answered = sayOnce(wav);
    for (int again = 0; again < MOST_AGAIN && answered.asksToSayAgain(); again++) {
      answered = sayOnce(wav);
    }
    return answered;
  }

  private Answered sayOnce(Path wav) throws IOException, InterruptedException {
    loop.say(wav);
    JsonNode exchange = awaitExchange();
    return new Answered(exchange, hearOut());
  }

  /** Says it once, and of the answer only the beginning is waited for. */
  Answered sayAndHearBeginning(Path wav, double seconds) throws IOException, InterruptedException {
    loop.say(wav);
    JsonNode exchange = awaitExchange();
    int begin = awaitSound();
    at = begin + (int) (seconds * Sound.RATE);
    tap.awaitLength(at, PATIENCE_SECONDS);
    return new Answered(exchange, tap.part(begin, at));
  }

  JsonNode awaitExchange() throws IOException, InterruptedException {
    return new ObjectMapper().readTree(tool.awaitLine());
  }

  void awaitRemark(String wanted) throws InterruptedException {
    tool.awaitRemark(wanted);
  }

  /** The next thing that it speaks, from its first sound until it has been quiet for a while. */
  Sound hearOut() throws IOException {
    int begin = awaitSound();
    at = tap.awaitQuiet(begin, OVER_SECONDS, PATIENCE_SECONDS);
    return tap.part(begin, at);
  }

  /** Waits until it begins to speak, and gives the place of the first sample in the tap. */
  int awaitSound() throws IOException {
    at = tap.awaitSound(at, PATIENCE_SECONDS);
    return at;
  }

  /** Whatever the tap has heard so far counts no more. */
  void fromNow() {
    at = tap.length();
  }

  /** Waits until it says nothing, if only for a moment. */
  void awaitPause() throws IOException {
    at = tap.awaitQuiet(at, 0.1, PATIENCE_SECONDS);
  }

  Tap tap() {
    return tap;
  }

  /** Stops to listen to a loudspeaker that is about to be pulled. */
  void takeTapOff() {
    tap.close();
  }

  /** Listens to the loudspeaker that is there now. */
  void putTapOn() throws IOException {
    tap = loop.tap(loop.toolSpeaksOn());
    at = 0;
    tap.awaitLength(1, PATIENCE_SECONDS);
  }

  @Override
  public void close() {
    tool.close();
    tap.close();
  }

  /**
   * What came of something that was said.
   *
   * @param exchange as the tool printed it
   * @param answer as it was heard from the loudspeaker
   */
  record Answered(JsonNode exchange, Sound answer) {
    String said() {
      return exchange.get("said").asText();
    }

    private boolean asksToSayAgain() {
      return exchange.at("/meaning/reason").asText().equals("no_such_sentence");
    }

    /** All that was answered, as text. */
    String text() {
      StringBuilder text = new StringBuilder();
      exchange
          .get("answers")
          .forEach(answer -> text.append(answer.get("text").asText()).append(' '));
      return text.toString().strip();
    }
  }
}
