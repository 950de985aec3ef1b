package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import rigspeak.audio.VirtualLine;

/** The live conversation, on a line without a device. */
class LiveTest {
  @Test
  void aMicrophoneThatIsLostIsAFaultOfTheAudioDevice() {
    VirtualLine headset = new VirtualLine("headset");
    headset.lose();
    StringWriter out = new StringWriter();

    IOException fault =
        assertThrows(
            IOException.class,
            () ->
                ListenCommand.converse(
                    headset,
                    headset,
                    new ProfileOption(),
                    new Report(new PrintWriter(out, true), false),
                    new PrintWriter(out, true)));

    // The exit code that README promises for an audio device.
    assertEquals(4, Fault.exitCode(fault));
    assertEquals("The microphone headset is gone.", Fault.sentence(fault));
  }
}
