package rigspeak.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigspeak.audio.NoSuchDevice;
import rigspeak.audio.WavFile;
import rigspeak.catalogue.Catalogue;
import rigspeak.dialogue.Attention;
import rigspeak.grammar.Grammar;
import rigspeak.hearing.Ear;
import rigspeak.hearing.Heard;
import rigspeak.hearing.Listening;
import rigspeak.page.Boards;
import rigspeak.page.Feed;
import rigspeak.page.PageServer;
import rigspeak.quantity.UnitSystem;

/** The conversation, and a page on which the ground worker follows it beside the plan. */
@Command(
    name = "ground",
    mixinStandardHelpOptions = true,
    description = {
      "The conversation, and a page on which the ground worker follows it beside the plan.",
      "The conversation is live as with listen, or typed, or from recordings.",
      "The page is served to this machine alone unless --bind says otherwise, and then only to",
      "whoever has the token. It reads; --may-type lets it say something for the climber.",
      "It stays until Ctrl-C."
    })
final class GroundCommand implements Callable<Integer> {
  private static final int MOST_WAITING = 16;
  private static final int HIGHEST_PORT = 65_535;

  @Parameters(paramLabel = "PLAN", description = "the plan, see docs/formats.md")
  private String file;

  @Option(names = "--port", paramLabel = "N", defaultValue = "8077", description = "(8077)")
  private int port;

  @Option(
      names = "--bind",
      paramLabel = "ADDRESS",
      defaultValue = "127.0.0.1",
      description = "one address of this machine (127.0.0.1); another one needs --token")
  private String address;

  @Option(
      names = "--token",
      paramLabel = "T",
      description = "at least 16 letters and figures, which whoever opens the page must know")
  private String token;

  @Option(names = "--may-type", description = "the page may say something for the climber")
  private boolean mayType;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      defaultValue = "inch",
      description = "sizes on the page at first, inch or cm (inch); the page can change them")
  private Units units;

  @Option(
      names = "--type",
      arity = "0..1",
      fallbackValue = "-",
      paramLabel = "FILE",
      description = "the conversation is typed, a line each; here, if no file is named")
  private String typed;

  @Option(
      names = "--from",
      paramLabel = "DIR",
      description = "the conversation is in these recordings, a folder's in the order of names")
  private List<Path> recordings = List.of();

  @Option(names = "--always-open", description = "live, listen at any time, without the call")
  private boolean alwaysOpen;

  @Mixin private LiveOptions live;

  @Mixin private Window window;

  @Mixin private final EarOptions hearing = new EarOptions();

  @Mixin private JournalOptions journal;

  @Spec private CommandSpec spec;

  private final BlockingQueue<String> waiting = new ArrayBlockingQueue<>(MOST_WAITING);

  /** In what sizes are shown at first. */
  enum Units {
    INCH(UnitSystem.INCH_POUND),
    CM(UnitSystem.METRIC);

    private final UnitSystem system;

    Units(UnitSystem system) {
      this.system = system;
    }
  }

  @Override
  public Integer call() throws IOException, NoSuchDevice, InterruptedException {
    Grammar grammar = Grammar.bundled();
    PlannedRig plan = PlannedRig.read(file);
    try (Scribe scribe = journal.scribeIfNamed()) {
      return serve(grammar, plan, scribe);
    }
  }

  private int serve(Grammar grammar, PlannedRig plan, Scribe scribe)
      throws IOException, NoSuchDevice, InterruptedException {
    Session session = new Session(grammar, isLive() ? attention() : Attention.alwaysOpen(), scribe);
    Feed feed = new Feed(units.system);
    Stage stage =
        new Stage(
            session,
            new Boards(Catalogue.bundled(), plan.name(), plan.rope(), mayType),
            feed,
            Clock.system(ZoneId.systemDefault()));
    Report report = new Report(spec.commandLine().getOut(), false);
    try (PageServer server = server(feed)) {
      spec.commandLine().getErr().println("The page is at " + server.url() + withToken());
      if (isLive()) {
        listen(grammar, session, stage, report);
        return 0;
      }
      session
          .begin()
          .ifPresent(
              exchange -> {
                stage.exchange("said", exchange);
                report.exchange("said", exchange);
              });
      boolean allRead = typed != null ? typeHere() : hear(grammar, session, stage, report);
      serve(stage, report);
      return allRead ? 0 : Fault.BAD_INPUT;
    }
  }

  private boolean isLive() {
    return typed == null && recordings.isEmpty();
  }

  private Attention attention() {
    return alwaysOpen ? Attention.alwaysOpen() : window.asleep();
  }

  private String withToken() {
    return token == null ? "" : "?token= and the token";
  }

  private PageServer server(Feed feed) throws IOException {
    if (port < 0 || port > HIGHEST_PORT) {
      throw usage("A port is a number from 0 to 65535.");
    }
    Optional<Predicate<String>> says = mayType ? Optional.of(waiting::offer) : Optional.empty();
    try {
      InetAddress at = InetAddress.getByName(address);
      return PageServer.open(
          new InetSocketAddress(at, port), Optional.ofNullable(token), feed, says);
    } catch (UnknownHostException e) {
      throw usage(address + " is no address of this machine.");
    } catch (IllegalArgumentException e) {
      throw usage(e.getMessage());
    }
  }

  private ParameterException usage(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }

  private void listen(Grammar grammar, Session session, Stage stage, Report report)
      throws IOException, NoSuchDevice {
    live.conversation(
            grammar,
            session,
            hearing,
            waiting,
            (verb, exchange) -> {
              stage.exchange(verb, exchange);
              report.exchange(verb, exchange);
            })
        .run(() -> session.begin().stream().toList());
  }

  /** What is typed here takes its turn with what is typed on the page. */
  private boolean typeHere() {
    Thread reader =
        new Thread(
            () -> {
              try (Lines lines = Lines.of(typed)) {
                for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
                  waiting.put(line.get());
                }
              } catch (IOException e) {
                spec.commandLine().getErr().println(Fault.sentence(e));
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
            },
            "typed");
    reader.setDaemon(true);
    reader.start();
    return true;
  }

  private boolean hear(Grammar grammar, Session session, Stage stage, Report report)
      throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    hearing.read(err);
    Ear ear = hearing.open(grammar, err);
    boolean allRead = true;
    for (Path wav : Recordings.named(recordings)) {
      try (WavFile sound = WavFile.open(wav);
          Listening listening = ear.listen(sound)) {
        for (Optional<Heard> heard = listening.next(session.expected());
            heard.isPresent();
            heard = listening.next(session.expected())) {
          session
              .heard(heard.get())
              .ifPresent(
                  exchange -> {
                    stage.exchange("heard", exchange);
                    report.exchange("heard", exchange);
                  });
        }
        session.streamEnded();
        sound.remark().ifPresent(err::println);
      } catch (IOException e) {
        err.println(Fault.sentence(e));
        allRead = false;
      }
    }
    return allRead;
  }

  /** Takes what is typed, here or on the page, until the program is ended. */
  private void serve(Stage stage, Report report) throws InterruptedException {
    while (true) {
      report.exchange("said", stage.said(waiting.take()));
    }
  }
}
