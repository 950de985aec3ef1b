package rigspeak.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigspeak.quantity.UnitSystem;

/** The server as a browser, or somebody worse, talks to it. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class PageServerTest {
  private static final String TOKEN = "abcdefghijklmnop1234";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final HttpClient client =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
  private final List<String> said = new ArrayList<>();
  private final Feed feed = new Feed(UnitSystem.INCH_POUND);
  private final Talk talk = new Talk(feed);
  private PageServer server;

  @BeforeEach
  void open() throws IOException {
    server = open(Optional.empty(), Optional.empty());
    talk.begin();
  }

  @AfterEach
  void close() {
    server.close();
  }

  private PageServer open(Optional<String> token, Optional<Predicate<String>> typed)
      throws IOException {
    return PageServer.open(
        new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), token, feed, typed);
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(server.url().replaceAll("/$", "") + path))
        .timeout(Duration.ofSeconds(20));
  }

  private HttpResponse<String> get(String path, String... headers)
      throws IOException, InterruptedException {
    HttpRequest.Builder request = request(path);
    if (headers.length > 0) {
      request.headers(headers);
    }
    return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpResponse<String> say(String words, String origin)
      throws IOException, InterruptedException {
    HttpRequest.Builder request = request("/say").POST(HttpRequest.BodyPublishers.ofString(words));
    if (!origin.isEmpty()) {
      request.header("Origin", origin);
    }
    return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private String origin() {
    return server.url().replaceAll("/$", "");
  }

  /** The boards of one open page. */
  private final class Stream implements AutoCloseable {
    private final InputStream in;
    private final BufferedReader lines;

    Stream(String query) throws IOException, InterruptedException {
      in =
          client
              .send(request("/events" + query).build(), HttpResponse.BodyHandlers.ofInputStream())
              .body();
      lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    JsonNode next() throws IOException {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.startsWith("data: {")) {
          return MAPPER.readTree(line.substring("data: ".length()));
        }
      }
      throw new IOException("the stream has ended");
    }

    @Override
    public void close() throws IOException {
      in.close();
    }
  }

  // ---- what it is for ----

  @Test
  void thePageAndItsFilesAreThereAndNeedNothingElse() throws Exception {
    for (String path : List.of("/", "/page.css", "/page.js")) {
      HttpResponse<String> response = get(path);
      assertEquals(200, response.statusCode(), path);
      assertFalse(response.body().replace("http://www.w3.org", "").contains("http"), path);
    }
  }

  @Test
  void everyExchangeComesAsABoard() throws Exception {
    try (Stream stream = new Stream("")) {
      assertEquals("not_checked", stream.next().at("/verdict/outcome").asText());
      talk.say("limb eight inches by tape");
      JsonNode board = stream.next();
      assertEquals("limb eight inches by tape", board.at("/journal/0/said").asText());
      assertEquals("Limb, eight inches, by tape.", board.at("/journal/0/answers/0/text").asText());
      assertEquals("limb, 8 inches, by tape", row(board, "limb_diameter").get("said").asText());
      assertEquals("differs", row(board, "limb_diameter").get("state").asText());
      assertTrue(board.get("picture").asText().startsWith("<svg"));
    }
  }

  private static JsonNode row(JsonNode board, String slot) {
    for (JsonNode row : board.get("rows")) {
      if (row.get("slot").asText().equals(slot)) {
        return row;
      }
    }
    throw new AssertionError("no row for " + slot + " in " + board.get("rows"));
  }

  @Test
  void whoeverComesLaterSeesWhatWasSaidBefore() throws Exception {
    talk.say("two wraps");
    try (Stream stream = new Stream("?units=metric")) {
      JsonNode board = stream.next();
      assertEquals("two wraps", board.at("/journal/0/said").asText());
      assertEquals("metric", board.get("units").asText());
    }
  }

  @Test
  void sizesComeInTheUnitsThatAreAskedFor() throws Exception {
    talk.say("limb ten inches by tape");
    talk.say("out four feet");
    try (Stream metric = new Stream("?units=metric");
        Stream inches = new Stream("?units=inch_pound");
        Stream nonsense = new Stream("?units=%3Cb%3E")) {
      assertEquals(
          "limb, 25.4 centimeters, by tape",
          row(metric.next(), "limb_diameter").get("said").asText());
      assertEquals(
          "limb, 10 inches, by tape", row(inches.next(), "limb_diameter").get("said").asText());
      assertEquals("inch_pound", nonsense.next().get("units").asText());
    }
  }

  /**
   * The JSON carries it as it was typed; no picture does but escaped, nor any line of the stream.
   */
  @Test
  void aHostileValueStaysText() throws Exception {
    String hostile = "<script>alert(1)</script>\u2028data: {\"verdict\":1}\n\nevent: board";
    talk.say(hostile);
    try (Stream stream = new Stream("")) {
      JsonNode board = stream.next();
      assertEquals(hostile, board.at("/journal/0/said").asText());
      assertEquals("not_checked", board.at("/verdict/outcome").asText());
      assertFalse(board.get("picture").asText().contains("<script"));
    }
  }

  @Test
  void fiftyPagesSeeTheSame() throws Exception {
    List<Stream> streams = new ArrayList<>();
    try {
      for (int i = 0; i < 50; i++) {
        streams.add(new Stream(""));
        streams.get(i).next();
      }
      talk.say("two wraps");
      for (Stream stream : streams) {
        assertEquals("two wraps", stream.next().at("/journal/0/said").asText());
      }
    } finally {
      for (Stream stream : streams) {
        stream.close();
      }
    }
  }

  /** As many as may look at once open the stream and never read it; in the end others may look. */
  @Test
  void whoDoesNotTakeWhatIsSentIsCutOff() throws Exception {
    server.close();
    Feed crowded = new Feed(UnitSystem.INCH_POUND);
    Talk busy = new Talk(crowded);
    busy.begin();
    List<Socket> sockets = new ArrayList<>();
    server =
        PageServer.open(
            new InetSocketAddress(InetAddress.getLoopbackAddress(), 0),
            Optional.empty(),
            crowded,
            Optional.empty(),
            new SlowClients(200),
            new Rates(System::nanoTime));
    try {
      for (int i = 0; i < PageServer.MOST_STREAMS; i++) {
        sockets.add(silentReader());
      }
      int status = streamStatus();
      assertEquals(503, status);
      while (status == 503) {
        busy.say("two wraps");
        status = streamStatus();
      }
      assertEquals(200, status);
    } finally {
      for (Socket socket : sockets) {
        socket.close();
      }
    }
  }

  private Socket silentReader() throws IOException {
    Socket socket = new Socket();
    socket.setReceiveBufferSize(4096);
    socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), server.port()));
    String request = "GET /events HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\n\r\n";
    socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
    // Let in, it reads no further.
    String begun = new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII);
    assertEquals("HTTP/1.1 200", begun);
    return socket;
  }

  private int streamStatus() throws IOException, InterruptedException {
    HttpResponse<InputStream> response =
        client.send(request("/events").build(), HttpResponse.BodyHandlers.ofInputStream());
    response.body().close();
    return response.statusCode();
  }

  // ---- what it is not for ----

  @Test
  void everyAnswerForbidsWhatThePageDoesNotNeed() throws Exception {
    for (String path : List.of("/", "/page.js", "/nothing", "/say")) {
      HttpResponse<String> response = get(path);
      String policy = response.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("default-src 'none'; script-src 'self'"), path);
      assertFalse(policy.contains("unsafe"), path);
      assertEquals(Optional.of("nosniff"), response.headers().firstValue("X-Content-Type-Options"));
      assertEquals(Optional.of("no-store"), response.headers().firstValue("Cache-Control"));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/page.html",
        "/../pom.xml",
        "/..%2f..%2fpom.xml",
        "/%2e%2e/page.css",
        "/page.css/",
        "//",
        "/page.css%00",
        "/events/",
        "/rigspeak/page/page.css",
        "/.git/config"
      })
  void thereAreNoOtherPaths(String path) throws IOException {
    String status = status("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + server.port());
    // What is no path at all is refused before it is looked for.
    assertEquals(path.equals("//") ? "400" : "404", status);
  }

  @ParameterizedTest
  @CsvSource({
    "evil.example, 421",
    "127.0.0.1, 421",
    "127.0.0.1:1, 421",
    "localhost:PORT, 200",
    "127.0.0.1:PORT, 200",
    "localhost:PORT.evil.example, 421",
  })
  void onlyItsOwnNamesAreServed(String host, String status) throws IOException {
    String named = host.replace("PORT", Integer.toString(server.port()));
    assertEquals(status, status("GET / HTTP/1.1\r\nHost: " + named));
  }

  @Test
  void withoutANameOrWithTwoNothingIsServed() throws IOException {
    String good = "Host: 127.0.0.1:" + server.port();
    assertTrue(List.of("400", "421").contains(status("GET / HTTP/1.1\r\nA: b")));
    assertTrue(
        List.of("400", "421").contains(status("GET / HTTP/1.1\r\n" + good + "\r\nHost: evil")));
  }

  /** One request as it stands, by hand; the status of the answer. */
  private String status(String request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket.setSoTimeout(20_000);
      socket
          .getOutputStream()
          .write((request + "\r\nConnection: close\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
      BufferedReader in =
          new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII));
      return in.readLine().split(" ", 3)[1];
    }
  }

  /** The clock stands still: four hundred requests in a burst, and no more. */
  @Test
  void whoAsksTooOftenHasToWait() throws Exception {
    server.close();
    Rates rates = new Rates(() -> 0);
    server = open(Optional.empty(), rates);
    for (int i = 0; i < 397; i++) {
      assertTrue(rates.allows(InetAddress.getLoopbackAddress()));
    }
    List<Integer> statuses = new ArrayList<>();
    while (statuses.size() < 4) {
      statuses.add(get("/nothing").statusCode());
    }
    assertEquals(List.of(404, 404, 404, 429), statuses);
    assertEquals("That is too often; wait a moment.", get("/").body());
  }

  @Test
  void whoGuessesAtTheTokenHasToWait() throws Exception {
    server.close();
    server = open(Optional.of(TOKEN), new Rates(() -> 0));
    int guesses = 0;
    while (get("/?token=" + "guess".repeat(4)).statusCode() == 401) {
      guesses++;
    }
    assertTrue(guesses <= 12, guesses + " guesses");
    assertEquals(429, get("/?token=" + TOKEN).statusCode());
  }

  private static PageServer open(Optional<String> token, Rates rates) throws IOException {
    return PageServer.open(
        new InetSocketAddress(InetAddress.getLoopbackAddress(), 0),
        token,
        new Feed(UnitSystem.INCH_POUND),
        Optional.empty(),
        new SlowClients(SlowClients.PATIENCE_MILLIS),
        rates);
  }

  @Test
  void twoOriginsAreNone() throws IOException {
    String request =
        "GET / HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nOrigin: %s\r\nOrigin: http://evil.example";
    assertEquals("403", status(request.formatted(server.port(), origin())));
  }

  @Test
  void anotherPageIsRefused() throws Exception {
    assertEquals(403, get("/", "Origin", "http://evil.example").statusCode());
    assertEquals(403, get("/events", "Origin", "null").statusCode());
    assertEquals(200, get("/", "Origin", origin()).statusCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "TRACE"})
  void whatIsReadIsOnlyRead(String method) throws Exception {
    for (String path : List.of("/", "/events")) {
      HttpRequest request =
          request(path).method(method, HttpRequest.BodyPublishers.noBody()).build();
      assertEquals(
          405, client.send(request, HttpResponse.BodyHandlers.ofString()).statusCode(), path);
    }
  }

  @Test
  void aTooLongRequestIsCutOff() throws Exception {
    assertTrue(get("/nothing?" + "x".repeat(100_000)).statusCode() >= 400);
  }

  // ---- typing ----

  @Test
  void withoutTheOptionNothingIsTyped() throws Exception {
    HttpResponse<String> response = say("two wraps", origin());
    assertEquals(403, response.statusCode());
    assertEquals("This page only reads; start it with --may-type to type here.", response.body());
  }

  @Test
  void withTheOptionThePageItselfTypesOneLine() throws Exception {
    server.close();
    Feed open = new Feed(UnitSystem.INCH_POUND);
    server =
        PageServer.open(
            new InetSocketAddress(InetAddress.getLoopbackAddress(), 0),
            Optional.empty(),
            open,
            Optional.of(words -> said.size() < 2 && said.add(words)));
    assertEquals(202, say(" two wraps ", origin()).statusCode());
    assertEquals(405, say("three wraps", "").statusCode());
    assertEquals(403, say("three wraps", "http://evil.example").statusCode());
    assertEquals(400, say("two wraps\ncheck redirect", origin()).statusCode());
    assertEquals(400, say("two wraps\u001b[2K\rgood to load", origin()).statusCode());
    assertEquals(400, say("  ", origin()).statusCode());
    assertEquals(413, say("x".repeat(2_001), origin()).statusCode());
    assertEquals(202, say("check redirect", origin()).statusCode());
    assertEquals(429, say("tell me why", origin()).statusCode());
    assertEquals(List.of("two wraps", "check redirect"), said);
  }

  // ---- the token ----

  @Test
  void aTokenIsNeededWhereThereIsOne() throws Exception {
    server.close();
    server = open(Optional.of(TOKEN), Optional.empty());
    assertEquals(401, get("/").statusCode());
    assertEquals(401, get("/events").statusCode());
    assertEquals(401, get("/", "Cookie", "rigspeak=" + TOKEN + "x").statusCode());
    assertEquals(401, get("/?token=" + TOKEN.substring(1)).statusCode());
    HttpResponse<String> let = get("/?token=" + TOKEN);
    assertEquals(303, let.statusCode());
    assertEquals(
        Optional.of("rigspeak=" + TOKEN + "; HttpOnly; SameSite=Strict; Path=/"),
        let.headers().firstValue("Set-Cookie"));
    assertEquals(200, get("/", "Cookie", "a=b; rigspeak=" + TOKEN).statusCode());
    assertFalse(get("/", "Cookie", "rigspeak=" + TOKEN).body().contains(TOKEN));
  }

  @ParameterizedTest
  @CsvSource({
    "192.0.2.1, ,Away from this machine the page needs a token",
    "192.0.2.1, short, A token has at least 16 letters",
    "192.0.2.1, abcdefghijklmnop1234;x=y, A token has at least 16 letters",
    "127.0.0.1, short, A token has at least 16 letters",
    "0.0.0.0, abcdefghijklmnop1234, Say one address",
  })
  void awayFromTheLoopbackOnlyWithAToken(String address, String token, String sentence) {
    InetSocketAddress at = new InetSocketAddress(address, 0);
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class, () -> Access.to(at, Optional.ofNullable(token)));
    assertTrue(refused.getMessage().startsWith(sentence), refused.getMessage());
  }
}
