package rigspeak.app;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import rigspeak.answer.Utterance;
import rigspeak.audio.LostDevice;
import rigspeak.audio.Loudspeaker;
import rigspeak.audio.Microphone;
import rigspeak.audio.Sound;
import rigspeak.audio.SoundStream;
import rigspeak.audio.Squelch;
import rigspeak.hearing.ClosingPause;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;
import rigspeak.readback.Channel;
import rigspeak.readback.Channel.Action;
import rigspeak.readback.Channel.Event;
import rigspeak.readback.Readback;

/**
 * A read-back by the microphone and loudspeaker lines of a half-duplex radio. All times are seconds
 * of the sound that came in; while the tool speaks it goes on listening for others on the channel.
 */
final class RadioLine {
  /** So long nothing is looked at, seconds, while nothing is to be spoken. */
  private static final double PATIENCE_SECONDS = 2;

  private static final long HUSH_MILLIS = 20;

  private final RadioTalk talk;
  private final RadioReport report;
  private final Mouth mouth;
  private final Monitor monitor;
  private final Loudspeaker loudspeaker;
  private Channel channel = Channel.clearSince(0);

  RadioLine(
      RadioTalk talk,
      RadioReport report,
      Mouth mouth,
      Microphone microphone,
      Loudspeaker loudspeaker,
      Squelch squelch) {
    this.talk = talk;
    this.report = report;
    this.mouth = mouth;
    this.monitor = new Monitor(microphone, squelch);
    this.loudspeaker = loudspeaker;
  }

  /**
   * Listens and speaks until it is confirmed, or nothing more comes.
   *
   * @param ears loads the recogniser
   * @throws LostDevice if a line broke off
   */
  void run(Supplier<Ear> ears, ClosingPause pause) throws IOException {
    try (Listening listening = ears.get().listen(monitor, pause)) {
      while (!isOver()) {
        Optional<Heard> heard = listening.next(talk.expected(), patienceSeconds());
        if (heard.isEmpty()) {
          return;
        }
        take(heard.get());
        tell(new Event.Passed(monitor.seconds()));
      }
    }
  }

  private boolean isOver() {
    return talk.readback().stand() instanceof Readback.Stand.Ended && !channel.owes();
  }

  private double patienceSeconds() {
    return channel
        .lookAgainAt()
        .map(at -> Math.max(0.05, at - monitor.seconds()))
        .orElse(PATIENCE_SECONDS);
  }

  private void take(Heard heard) throws IOException {
    boolean tooEarly = channel.owes();
    Optional<RadioTalk.Passage> passage = tooEarly ? talk.heardTooEarly(heard) : talk.heard(heard);
    if (passage.isPresent()) {
      report.passage("heard", passage.get());
      List<String> texts = passage.get().transmissions().stream().map(Utterance::text).toList();
      tell(new Event.Wanted(monitor.seconds(), texts));
    } else if (tooEarly && heard instanceof Heard.Words words) {
      report.tooEarly(words.text());
    }
  }

  private void tell(Event event) throws IOException {
    Channel.Step step = channel.after(event);
    channel = step.next();
    if (step.action().orElse(null) instanceof Action.Speak speak) {
      speak(speak.text());
    }
  }

  /** Speaks to the end, or until somebody else is on the air. */
  private void speak(String text) throws IOException {
    CompletableFuture<Void> spoken = CompletableFuture.runAsync(() -> play(text));
    boolean steppedOn = false;
    short[] frame = new short[Squelch.FRAME];
    while (!spoken.isDone() && !steppedOn && monitor.read(frame, 0, frame.length) > 0) {
      steppedOn = channel.traffic() instanceof Channel.Traffic.Busy;
    }
    if (steppedOn) {
      hush(spoken);
    }
    try {
      spoken.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof Lost lost) {
        throw lost.why;
      }
      throw e;
    }
    if (!steppedOn) {
      tell(new Event.Spoken(monitor.seconds()));
    }
  }

  /** Again and again until it is silent: the first time it may not have begun yet. */
  private void hush(CompletableFuture<Void> spoken) {
    while (!spoken.isDone()) {
      loudspeaker.hush();
      try {
        spoken.get(HUSH_MILLIS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException | ExecutionException stillOrNeverSpoken) {
        // Whoever waits for the end is told.
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  private void play(String text) {
    try {
      loudspeaker.play(mouth.transmission(text, talk.readback().talk().manner().pace()));
    } catch (LostDevice e) {
      throw new Lost(e);
    }
  }

  /** A lost loudspeaker, on its way out of another thread. */
  private static final class Lost extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final LostDevice why;

    Lost(LostDevice why) {
      super(why);
      this.why = why;
    }
  }

  /** The microphone's line; whoever reads it also learns whether the channel is busy. */
  private final class Monitor implements SoundStream {
    private final Microphone microphone;
    private final Squelch squelch;
    private final short[] frame = new short[Squelch.FRAME];
    private int filled;
    private long samples;

    Monitor(Microphone microphone, Squelch squelch) {
      this.microphone = microphone;
      this.squelch = squelch;
    }

    double seconds() {
      return samples / (double) Sound.RATE;
    }

    @Override
    public int read(short[] into, int from, int most) throws IOException {
      int read = microphone.read(into, from, Math.min(most, frame.length - filled));
      if (read > 0) {
        samples += read;
        System.arraycopy(into, from, frame, filled, read);
        filled += read;
        if (filled == frame.length) {
          filled = 0;
          squelch.take(frame).ifPresent(change -> channel = channel.after(event(change)).next());
        }
      }
      return read;
    }

    private Event event(Squelch.Change change) {
      return switch (change) {
        case BECAME_BUSY -> new Event.BecameBusy(seconds());
        case BECAME_CLEAR -> new Event.BecameClear(seconds());
      };
    }

    @Override
    public void close() {
      microphone.close();
    }
  }
}
