package rigspeak.speaking;

import com.sun.speech.freetts.Age;
import com.sun.speech.freetts.Gender;
import com.sun.speech.freetts.ProcessException;
import com.sun.speech.freetts.Token;
import com.sun.speech.freetts.Tokenizer;
import com.sun.speech.freetts.Utterance;
import com.sun.speech.freetts.UtteranceProcessor;
import com.sun.speech.freetts.en.us.CMUDiphoneVoice;
import com.sun.speech.freetts.en.us.CMULexicon;
import com.sun.speech.freetts.en.us.cmu_us_kal.KevinVoiceDirectory;
import com.sun.speech.freetts.relp.LPCResult;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rigspeak.audio.Sound;

/**
 * FreeTTS's 16 kHz diphone voice.
 *
 * <p>Its steps are run here one after the other and the samples taken from the last: neither its
 * player (which waits for ever where there is no sound device) nor its output thread is ever made.
 * The voice is not made for several threads, so one phrase is spoken at a time.
 */
public final class FreeTtsVoice implements Voice {
  private static final Pattern PHRASE = Pattern.compile("([^.,;:?!]*)([.,;:?!]*)");

  private static final double COMMA_SECONDS = 0.22;
  private static final double STOP_SECONDS = 0.42;

  /**
   * The voice's own rate for one word a minute over the answers of a day, pauses included; measured
   * on the answers to demo-data/one-day.txt.
   */
  private static final double NOMINAL_PER_MEASURED = 0.95;

  /** Around a phrase, samples smaller than this are silence. */
  private static final int SILENT = 120;

  /** Kept before and after a phrase, so that no soft sound is cut off. */
  private static final int MARGIN = Sound.RATE / 50;

  private final Kevin kevin;

  private FreeTtsVoice(Kevin kevin) {
    this.kevin = kevin;
  }

  /** Loads the voice, which takes about half a second. */
  public static FreeTtsVoice load() {
    try {
      Kevin kevin = new Kevin();
      kevin.prepare();
      FreeTtsVoice voice = new FreeTtsVoice(kevin);
      voice.learnPronunciations();
      return voice;
    } catch (IOException e) {
      throw new UncheckedIOException("The voice is missing from the program; build it again.", e);
    }
  }

  @Override
  public Stream<Supplier<Sound>> phrases(String words, Pace pace) {
    double stretch = Pace.ORDINARY.wordsPerMinute() / pace.wordsPerMinute();
    List<Supplier<Sound>> parts = new ArrayList<>();
    double pause = 0;
    Matcher phrases = PHRASE.matcher(words.toLowerCase(Locale.ROOT));
    while (phrases.find()) {
      String phrase = phrases.group(1).strip();
      if (!phrase.isEmpty()) {
        if (!parts.isEmpty()) {
          Sound silence = Sound.silence(pause * stretch);
          parts.add(() -> silence);
        }
        parts.add(() -> phrase(phrase, pace));
        pause = 0;
      }
      String mark = phrases.group(2);
      if (!mark.isEmpty()) {
        pause =
            Math.max(pause, mark.chars().allMatch(c -> c == ',') ? COMMA_SECONDS : STOP_SECONDS);
      }
    }
    return parts.stream();
  }

  private synchronized Sound phrase(String phrase, Pace pace) {
    kevin.setRate((float) (NOMINAL_PER_MEASURED * pace.wordsPerMinute()));
    return trimmed(kevin.say(phrase));
  }

  private void learnPronunciations() throws IOException {
    try (InputStream in =
            FreeTtsVoice.class.getResourceAsStream("/rigspeak/speaking/pronunciations.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      String line = lines.readLine();
      while (line != null) {
        if (!line.isBlank() && !line.startsWith("#")) {
          String[] parts = line.strip().split("\\s+", -1);
          String[] phones = Arrays.copyOfRange(parts, 1, parts.length);
          kevin.getLexicon().addAddendum(parts[0], null, phones);
        }
        line = lines.readLine();
      }
    }
  }

  private static Sound trimmed(Sound sound) {
    int first = 0;
    int last = sound.length() - 1;
    while (first < last && Math.abs(sound.sample(first)) < SILENT) {
      first++;
    }
    while (last > first && Math.abs(sound.sample(last)) < SILENT) {
      last--;
    }
    return sound.part(Math.max(0, first - MARGIN), Math.min(sound.length(), last + MARGIN));
  }

  /** The voice itself, with its steps laid open. */
  private static final class Kevin extends CMUDiphoneVoice {
    Kevin() {
      super(
          "kevin16",
          Gender.MALE,
          Age.YOUNGER_ADULT,
          "16 kHz diphone voice",
          Locale.US,
          "general",
          "cmu",
          new CMULexicon("cmulex"),
          KevinVoiceDirectory.class.getResource("cmu_us_kal16.bin"));
    }

    /** The voice's files lie beside its own class, not beside this one. */
    @Override
    protected URL getResource(String name) {
      return CMUDiphoneVoice.class.getResource(name);
    }

    void prepare() throws IOException {
      getLexicon().load();
      loader();
      setLoaded(true);
    }

    Sound say(String phrase) {
      Utterance utterance = new Utterance(this, tokens(phrase));
      utterance.setFirst(true);
      utterance.setLast(true);
      try {
        for (Object step : getUtteranceProcessors()) {
          ((UtteranceProcessor) step).processUtterance(utterance);
        }
      } catch (ProcessException e) {
        throw new IllegalStateException("the voice cannot say: " + phrase, e);
      }
      return sound(((LPCResult) utterance.getObject("target_lpcres")).getWaveSamples());
    }

    private List<Token> tokens(String phrase) {
      Tokenizer tokenizer = getTokenizer();
      tokenizer.setInputText(phrase);
      List<Token> tokens = new ArrayList<>();
      while (tokenizer.hasMoreTokens()) {
        Token token = tokenizer.getNextToken();
        if (token != null && !token.getWord().isEmpty()) {
          tokens.add(token);
        }
      }
      return tokens;
    }

    /** The voice's samples come with their high byte first. */
    private static Sound sound(byte[] bytes) {
      short[] samples = new short[bytes.length / 2];
      for (int i = 0; i < samples.length; i++) {
        samples[i] = (short) (bytes[2 * i] << 8 | (bytes[2 * i + 1] & 0xff));
      }
      return Sound.of(samples);
    }
  }
}
