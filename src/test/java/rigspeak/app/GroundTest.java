package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the command refuses before it serves anything. */
class GroundTest {
  @TempDir Path folder;

  private Cli ground(String... options) throws IOException {
    Object[] arguments = new Object[options.length + 2];
    arguments[0] = "ground";
    arguments[1] = Files.writeString(folder.resolve("plan.txt"), "two wraps\n");
    System.arraycopy(options, 0, arguments, 2, options.length);
    return Cli.run(arguments);
  }

  @ParameterizedTest
  @CsvSource({
    "--bind=192.0.2.1, Away from this machine the page needs a token",
    "--bind=0.0.0.0 --token=abcdefghijklmnop, Say one address of this machine",
    "--bind=192.0.2.1 --token=short, A token has at least 16 letters",
    "--port=70000, A port is a number",
  })
  void whatCouldBeOpenToOthersIsRefusedInOneSentence(String options, String sentence)
      throws IOException {
    Cli cli = ground(options.split(" ", -1));
    assertEquals(2, cli.exitCode());
    assertTrue(cli.err().startsWith(sentence), cli.err());
    assertFalse(cli.hasStackTrace());
  }

  @Test
  void aPortThatIsTakenIsBadInput() throws IOException {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Cli cli = ground("--port=" + taken.getLocalPort(), "--type");
      assertEquals(Fault.BAD_INPUT, cli.exitCode());
      assertFalse(cli.hasStackTrace());
    }
  }
}
