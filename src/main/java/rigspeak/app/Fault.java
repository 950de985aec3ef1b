package rigspeak.app;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import rigspeak.audio.LostDevice;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.UnreadableSound;
import rigspeak.catalogue.CatalogueFault;
import rigspeak.grammar.GrammarFault;
import rigspeak.hearing.HearingFault;

/** What went wrong, in one sentence and one exit code. */
final class Fault {
  static final int BAD_INPUT = 3;
  static final int AUDIO_DEVICE = 4;
  private static final int OUR_MISTAKE = 1;

  private Fault() {}

  static int exitCode(Throwable fault) {
    if (fault instanceof NoSuchDevice || fault instanceof LostDevice) {
      return AUDIO_DEVICE;
    }
    if (fault instanceof IOException
        || fault instanceof GrammarFault
        || fault instanceof CatalogueFault
        || fault instanceof HearingFault) {
      return BAD_INPUT;
    }
    return OUR_MISTAKE;
  }

  static String sentence(Throwable fault) {
    if (fault instanceof NoSuchFileException missing) {
      return "There is no file " + missing.getFile() + ".";
    }
    if (fault instanceof UnreadablePlan
        || fault instanceof WholeFile.TooLong
        || fault instanceof UnreadableSound
        || fault instanceof NoSuchDevice
        || fault instanceof LostDevice
        || fault instanceof GrammarFault
        || fault instanceof CatalogueFault
        || fault instanceof HearingFault) {
      return fault.getMessage();
    }
    if (fault instanceof IOException) {
      return "A file could not be read or written: " + fault.getMessage();
    }
    if (fault instanceof OutOfMemoryError) {
      return "There is not enough memory; give the program more with java -Xmx256m.";
    }
    return "Something in rigspeak itself went wrong ("
        + fault.getClass().getSimpleName()
        + "); nothing that was taken is good to load by it.";
  }
}
