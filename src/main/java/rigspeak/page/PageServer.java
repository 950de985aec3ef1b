package rigspeak.page;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.function.Predicate;
import rigspeak.quantity.UnitSystem;

/**
 * Serves the page: a handful of fixed routes, the stream of boards, and, where it is allowed, one
 * to type by. It runs in threads of its own until it is closed.
 */
public final class PageServer implements AutoCloseable {
  /** So many look at once. */
  static final int MOST_STREAMS = 64;

  /** More than anybody says in a breath. */
  static final int LONGEST_UTTERANCE_BYTES = 2_000;

  private static final int MOST_THREADS = MOST_STREAMS + 16;
  private static final int BACKLOG = 50;
  private static final long ALIVE_MILLIS = 10_000;
  private static final ByteBuffer ALIVE = ByteBuffer.wrap(utf8("event: alive\ndata: \n\n"));
  private static final ByteBuffer AGAIN_AFTER = ByteBuffer.wrap(utf8("retry: 1000\n\n"));

  /** Every file there is; what is not here cannot be asked for. */
  private static final Map<String, Resource> RESOURCES =
      Map.of(
          "/", Resource.of("page.html", "text/html; charset=utf-8"),
          "/page.css", Resource.of("page.css", "text/css; charset=utf-8"),
          "/page.js", Resource.of("page.js", "text/javascript; charset=utf-8"));

  private static final Map<String, String> ALWAYS =
      Map.of(
          "Content-Security-Policy",
              "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self';"
                  + " img-src 'self' data:; base-uri 'none'; form-action 'none';"
                  + " frame-ancestors 'none'",
          "X-Content-Type-Options", "nosniff",
          "X-Frame-Options", "DENY",
          "Referrer-Policy", "no-referrer",
          "Cross-Origin-Resource-Policy", "same-origin",
          "Cross-Origin-Opener-Policy", "same-origin",
          "Cache-Control", "no-store");

  static {
    // Whoever does not end a request within so many seconds is cut off. Read when the JDK's server
    // is first used.
    System.setProperty("sun.net.httpserver.maxReqTime", "10");
    System.setProperty("sun.net.httpserver.maxReqHeaders", "60");
  }

  private final HttpServer server;
  private final ExecutorService threads =
      Executors.newFixedThreadPool(MOST_THREADS, PageServer::daemon);
  private final SlowClients slow;
  private final Semaphore streams = new Semaphore(MOST_STREAMS);
  private final Rates rates;
  private final Access access;
  private final Feed feed;
  private final Optional<Predicate<String>> typed;

  private record Resource(String text, String type) {
    static Resource of(String name, String type) {
      try (InputStream in = PageServer.class.getResourceAsStream("/rigspeak/page/" + name)) {
        return new Resource(new String(in.readAllBytes(), StandardCharsets.UTF_8), type);
      } catch (IOException e) {
        throw new IllegalStateException("the page is missing from the program", e);
      }
    }
  }

  private PageServer(
      HttpServer server,
      Access access,
      Feed feed,
      Optional<Predicate<String>> typed,
      SlowClients slow,
      Rates rates) {
    this.server = server;
    this.rates = rates;
    this.slow = slow;
    this.access = access;
    this.feed = feed;
    this.typed = typed;
  }

  /**
   * Begins to serve.
   *
   * @param address where; port 0 takes any that is free
   * @param token what whoever asks must know; needed away from the loopback
   * @param typed takes what is typed on the page, or refuses it while too much waits; nothing if
   *     the page may only be read
   * @throws IOException if the address cannot be had
   * @throws IllegalArgumentException if the token is missing or too short, in one sentence
   */
  public static PageServer open(
      InetSocketAddress address,
      Optional<String> token,
      Feed feed,
      Optional<Predicate<String>> typed)
      throws IOException {
    SlowClients slow = new SlowClients(SlowClients.PATIENCE_MILLIS);
    return open(address, token, feed, typed, slow, new Rates(System::nanoTime));
  }

  static PageServer open(
      InetSocketAddress address,
      Optional<String> token,
      Feed feed,
      Optional<Predicate<String>> typed,
      SlowClients slow,
      Rates rates)
      throws IOException {
    Access.to(address, token);
    HttpServer http = HttpServer.create(address, BACKLOG);
    PageServer server =
        new PageServer(http, Access.to(http.getAddress(), token), feed, typed, slow, rates);
    http.setExecutor(server.threads);
    http.createContext("/", server::handle);
    http.start();
    return server;
  }

  /** Where the page is. */
  public String url() {
    InetSocketAddress at = server.getAddress();
    String host = at.getAddress().getHostAddress();
    String name = host.contains(":") ? "[" + host + "]" : host;
    return "http://" + name + ":" + at.getPort() + "/";
  }

  public int port() {
    return server.getAddress().getPort();
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "page");
    thread.setDaemon(true);
    return thread;
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      Request request = new Request(exchange);
      ALWAYS.forEach((name, value) -> exchange.getResponseHeaders().set(name, value));
      if (!rates.allows(request.from())) {
        answer(exchange, 429, "That is too often; wait a moment.");
      } else if (!access.knowsHost(request.header("Host"))) {
        answer(exchange, 421, "This page is not served under that name.");
      } else if (request.repeats("Origin") || !access.isOurs(request.header("Origin"))) {
        answer(exchange, 403, "Another page must not ask for this one.");
      } else if (request.path().equals("/") && request.asks("token").isPresent()) {
        letIn(exchange, request);
      } else if (!access.opens(request.cookie(Access.COOKIE))) {
        rates.guessed(request.from());
        answer(exchange, 401, "Open the page with its token: add ?token= and the token.");
      } else {
        route(exchange, request);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The token comes once by the address and from then on by a cookie, so that no page shows it. */
  private void letIn(HttpExchange exchange, Request request) throws IOException {
    Optional<String> said = request.asks("token");
    if (access.token().isPresent() && access.opens(said)) {
      exchange
          .getResponseHeaders()
          .set(
              "Set-Cookie",
              Access.COOKIE + "=" + said.orElseThrow() + "; HttpOnly; SameSite=Strict; Path=/");
      exchange.getResponseHeaders().set("Location", "/");
      answer(exchange, 303, "");
    } else {
      rates.guessed(request.from());
      answer(exchange, 401, "That is not the token.");
    }
  }

  private void route(HttpExchange exchange, Request request)
      throws IOException, InterruptedException {
    boolean reads = exchange.getRequestMethod().equals("GET");
    if (request.path().equals("/say")) {
      say(exchange, request);
    } else if (request.path().equals("/events") && reads) {
      stream(exchange, request);
    } else if (RESOURCES.containsKey(request.path()) && reads) {
      Resource resource = RESOURCES.get(request.path());
      answer(exchange, 200, resource.type(), utf8(resource.text()));
    } else if (RESOURCES.containsKey(request.path()) || request.path().equals("/events")) {
      answer(exchange, 405, "This can only be read.");
    } else {
      answer(exchange, 404, "There is no such page.");
    }
  }

  private void say(HttpExchange exchange, Request request) throws IOException {
    if (typed.isEmpty()) {
      answer(exchange, 403, "This page only reads; start it with --may-type to type here.");
      return;
    }
    if (!exchange.getRequestMethod().equals("POST") || request.header("Origin").isEmpty()) {
      answer(exchange, 405, "Only the page itself says something.");
      return;
    }
    byte[] body = exchange.getRequestBody().readNBytes(LONGEST_UTTERANCE_BYTES + 1);
    String words = new String(body, StandardCharsets.UTF_8).strip();
    if (body.length > LONGEST_UTTERANCE_BYTES) {
      answer(exchange, 413, "That is more than anybody says in a breath.");
    } else if (words.isEmpty() || words.lines().count() > 1) {
      answer(exchange, 400, "Say one thing, in one line.");
    } else if (typed.get().test(words)) {
      answer(exchange, 202, "");
    } else {
      answer(exchange, 429, "Too much waits to be said; try again.");
    }
  }

  private void stream(HttpExchange exchange, Request request)
      throws IOException, InterruptedException {
    if (!streams.tryAcquire()) {
      answer(exchange, 503, "Too many look at once.");
      return;
    }
    try {
      UnitSystem units =
          switch (request.asks("units").orElse("")) {
            case "metric" -> UnitSystem.METRIC;
            case "inch_pound" -> UnitSystem.INCH_POUND;
            default -> feed.usual();
          };
      exchange.getResponseHeaders().set("Content-Type", "text/event-stream; charset=utf-8");
      exchange.sendResponseHeaders(200, 0);
      OutputStream out = exchange.getResponseBody();
      send(out, AGAIN_AFTER);
      long seen = 0;
      while (!feed.isClosed()) {
        Optional<Feed.Numbered> next = feed.after(seen, units, ALIVE_MILLIS);
        seen = next.map(Feed.Numbered::version).orElse(seen);
        send(out, next.map(Feed.Numbered::event).orElse(ALIVE));
      }
    } finally {
      streams.release();
    }
  }

  /** Whoever does not take it in time is cut off. */
  private void send(OutputStream out, ByteBuffer event) throws IOException {
    // A thread that is interrupted in the middle of a channel's write closes that channel.
    Future<?> cut = slow.cutOffLater(Thread.currentThread()::interrupt);
    try {
      byte[] bytes = new byte[event.remaining()];
      event.duplicate().get(bytes);
      out.write(bytes);
      out.flush();
    } finally {
      cut.cancel(false);
    }
  }

  private static void answer(HttpExchange exchange, int status, String sentence)
      throws IOException {
    answer(exchange, status, "text/plain; charset=utf-8", utf8(sentence));
  }

  private static void answer(HttpExchange exchange, int status, String type, byte[] bytes)
      throws IOException {
    exchange.getResponseHeaders().set("Content-Type", type);
    exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
    if (bytes.length > 0) {
      exchange.getResponseBody().write(bytes);
    }
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public void close() {
    feed.close();
    server.stop(0);
    threads.shutdownNow();
    slow.close();
  }

  /** What was asked for. */
  private record Request(HttpExchange exchange) {
    String path() {
      return Optional.ofNullable(exchange.getRequestURI().getRawPath()).orElse("");
    }

    InetAddress from() {
      return exchange.getRemoteAddress().getAddress();
    }

    boolean repeats(String name) {
      return exchange.getRequestHeaders().getOrDefault(name, List.of()).size() > 1;
    }

    /** A header that stands there once; twice it counts as none. */
    Optional<String> header(String name) {
      List<String> values = exchange.getRequestHeaders().getOrDefault(name, List.of());
      return values.size() == 1 ? Optional.of(values.get(0)) : Optional.empty();
    }

    Optional<String> asks(String name) {
      return value(
          Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse(""), "&", name);
    }

    Optional<String> cookie(String name) {
      return value(header("Cookie").orElse(""), "; ", name);
    }

    private static Optional<String> value(String pairs, String between, String name) {
      return Arrays.stream(pairs.split(between, -1))
          .filter(pair -> pair.startsWith(name + "="))
          .map(pair -> pair.substring(name.length() + 1))
          .findFirst();
    }
  }
}
