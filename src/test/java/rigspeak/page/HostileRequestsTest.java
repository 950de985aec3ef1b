package rigspeak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import rigspeak.hostile.Hostile;
import rigspeak.quantity.UnitSystem;

/** Requests that no browser would send, by hand over a socket. */
@Timeout(value = 300, unit = TimeUnit.SECONDS)
class HostileRequestsTest {
  private static final String TOKEN = "abcdefghijklmnop1234";

  /** Nobody's board is longer than this up to its first event. */
  private static final int MOST_READ = 1 << 16;

  private final List<String> said = new CopyOnWriteArrayList<>();
  private final AtomicLong hours = new AtomicLong();
  private PageServer server;

  @BeforeEach
  void open() throws IOException {
    Feed feed = new Feed(UnitSystem.INCH_POUND);
    new Talk(feed).begin();
    server =
        PageServer.open(
            new InetSocketAddress(InetAddress.getLoopbackAddress(), 0),
            Optional.empty(),
            feed,
            Optional.of(said::add),
            new SlowClients(1_000),
            // For these the clock runs so fast that nobody asks too often.
            new Rates(() -> hours.incrementAndGet() * 3_600_000_000_000L));
  }

  @AfterEach
  void close() {
    server.close();
  }

  private Hostile requests() {
    String host = "Host: 127.0.0.1:" + server.port() + "\r\n";
    String origin = "Origin: http://127.0.0.1:" + server.port() + "\r\n";
    return Hostile.ofTexts(
        List.of(
            "GET / HTTP/1.1\r\n" + host + "\r\n",
            "GET /page.css HTTP/1.1\r\n" + host + "Accept: text/css\r\n\r\n",
            "GET /../../pom.xml HTTP/1.1\r\n" + host + "\r\n",
            "GET /%2e%2e/%2e%2e/pom.xml HTTP/1.1\r\n" + host + "\r\n",
            "GET /?token=" + TOKEN + " HTTP/1.1\r\n" + host + "\r\n",
            "GET /nothing HTTP/1.1\r\n" + host + "Cookie: a=b; rigspeak=" + TOKEN + "\r\n\r\n",
            "POST /say HTTP/1.1\r\n" + host + origin + "Content-Length: 9\r\n\r\ntwo wraps",
            "POST /say HTTP/1.1\r\n"
                + host
                + origin
                + "Transfer-Encoding: chunked\r\n\r\n9\r\ntwo wraps\r\n0\r\n\r\n",
            "OPTIONS * HTTP/1.1\r\n" + host + "\r\n",
            "CONNECT evil.example:443 HTTP/1.1\r\n" + host + "\r\n"));
  }

  @Test
  void hostileRequestsComeToNothing() throws IOException {
    attack(1, 600);
  }

  @Test
  @Tag("long")
  void manyMoreHostileRequestsComeToNothing() throws IOException {
    attack(1_000_000, 200_000);
  }

  private void attack(long firstSeed, int count) throws IOException {
    Hostile requests = requests();
    for (long seed = firstSeed; seed < firstSeed + count; seed++) {
      byte[] request = requests.input(seed);
      int before = said.size();
      String answer = answer(request);
      String what = "seed " + seed + ": " + answer;
      assertTrue(answer.isEmpty() || answer.matches("(?s)HTTP/1\\.1 [2-5][0-9][0-9].*"), what);
      // The JDK's own refusal names a kind of exception; ours name nothing.
      assertFalse(answer.contains("\tat ") || answer.contains("rigspeak."), what);
      assertFalse(answer.contains("<project"), what);
      if (said.size() > before) {
        String asked = new String(request, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
        assertTrue(asked.contains("http://127.0.0.1:" + server.port()), what);
        said.subList(before, said.size()).forEach(words -> assertEquals(1, words.lines().count()));
      }
      if (seed % 100 == 0) {
        assertStillServes();
      }
    }
    assertStillServes();
    System.out.printf("hostile %-10s %,9d requests%n", "page", count);
  }

  private void assertStillServes() throws IOException {
    String good = "GET / HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\n\r\n";
    assertTrue(answer(good.getBytes(StandardCharsets.US_ASCII)).startsWith("HTTP/1.1 200"));
  }

  /** The beginning of what is answered; nothing if the connection is closed instead. */
  private String answer(byte[] request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket.setSoTimeout(5_000);
      try {
        socket.getOutputStream().write(request);
        socket.shutdownOutput();
      } catch (SocketException e) {
        // Cut off while it was still sending; perhaps an answer is there all the same.
      }
      return begun(socket.getInputStream());
    }
  }

  private static String begun(InputStream in) throws IOException {
    byte[] answer = new byte[MOST_READ];
    int length = 0;
    try {
      int n = 0;
      while (n >= 0 && length < answer.length && !isStream(answer, length)) {
        length += n;
        n = in.read(answer, length, answer.length - length);
      }
    } catch (SocketTimeoutException | SocketException e) {
      // What is there counts.
    }
    return new String(answer, 0, length, StandardCharsets.ISO_8859_1);
  }

  private static boolean isStream(byte[] answer, int length) {
    return new String(answer, 0, length, StandardCharsets.ISO_8859_1).contains("event-stream");
  }

  /** The server does not wait for the end of a header that has none. */
  @Test
  void aHeaderWithoutEndIsCutOff() throws IOException {
    byte[] piece = new byte[1 << 20];
    Arrays.fill(piece, (byte) 'x');
    int sent = 0;
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket.getOutputStream().write("GET / HTTP/1.1\r\nX: ".getBytes(StandardCharsets.US_ASCII));
      while (sent < 200) {
        socket.getOutputStream().write(piece);
        sent++;
      }
    } catch (SocketException e) {
      // As it should be.
    }
    assertTrue(sent < 30, sent + " megabytes of header were taken");
    assertStillServes();
  }

  /** Whoever begins a request and does not go on is cut off after ten seconds. */
  @Test
  @Tag("long")
  void aRequestThatIsNotEndedIsCutOff() throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket.setSoTimeout(60_000);
      socket.getOutputStream().write("GET / HTTP/1.1\r\nHo".getBytes(StandardCharsets.US_ASCII));
      assertEquals(-1, socket.getInputStream().read());
    }
  }
}
