package rigspeak.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * How long a page takes to show what was heard, and what fifty open pages cost the program that
 * serves them. Prints figures; run it with the tests' class path.
 */
public final class PageMeasurement {
  private static final int PORT = 8078;
  private static final int VALUES = 40;
  private static final int PAGES = 50;
  private static final int SECONDS = 30;

  private final Path folder;
  private final String url = "http://127.0.0.1:" + PORT;

  private PageMeasurement(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] arguments) throws Exception {
    PageMeasurement measurement = new PageMeasurement(Files.createTempDirectory("rigspeak-page"));
    PrintStream out = System.out;
    measurement.reaction(out);
    measurement.fiftyPages(out);
  }

  private Process serve() throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.txt"), PagePlan.LINES);
    Process process =
        new ProcessBuilder(
                OwnProcess.command(
                    List.of("-Xmx256m"),
                    List.of("ground", plan.toString(), "--type", "--port=" + PORT)))
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectErrorStream(false)
            .start();
    // It says where the page is once it is there.
    process.errorReader(StandardCharsets.UTF_8).readLine();
    return process;
  }

  private static void type(OutputStream to, String words) throws IOException {
    to.write((words + "\n").getBytes(StandardCharsets.UTF_8));
    to.flush();
  }

  /** From the moment the words are there to the moment the browser has put them on the page. */
  private void reaction(PrintStream out) throws IOException {
    Process process = serve();
    ChromeDriver browser = Chromium.open(folder.resolve("profile"));
    try (OutputStream keys = process.getOutputStream()) {
      Chromium.resize(browser, 320, 640);
      browser.get(url);
      await(browser, 1);
      int version = 1;
      for (String line : PagePlan.LINES.lines().toList()) {
        type(keys, line);
        version++;
        await(browser, version);
      }
      List<Double> waits = new ArrayList<>();
      for (int i = 0; i < VALUES; i++) {
        type(keys, "working leg down " + (20 + i) + " toward the tip");
        version++;
        await(browser, version);
        waits.add(
            Double.valueOf(
                (String) browser.executeScript("return document.body.dataset.reactedMs")));
      }
      waits.sort(null);
      out.printf(
          Locale.ROOT,
          "heard value to page, Chromium, %d values: median %.0f ms, 95 in 100 %.0f ms, most %.0f"
              + " ms%n",
          VALUES,
          waits.get(VALUES / 2),
          waits.get(VALUES * 95 / 100),
          waits.get(VALUES - 1));
    } finally {
      browser.quit();
      process.destroy();
    }
  }

  private static void await(ChromeDriver browser, int version) {
    browser.executeAsyncScript(
        """
        const done = arguments[arguments.length - 1];
        const wanted = arguments[0];
        const look = () => document.body.dataset.shown === String(wanted) ? done() : setTimeout(look, 5);
        look();
        """,
        version);
  }

  /** Processor time of the serving program, while a value comes in every second. */
  private void fiftyPages(PrintStream out) throws Exception {
    Process process = serve();
    List<InputStream> pages = new ArrayList<>();
    try (OutputStream keys = process.getOutputStream()) {
      for (String line : PagePlan.LINES.lines().toList()) {
        type(keys, line);
      }
      double alone = share(process, keys);
      HttpClient client = HttpClient.newHttpClient();
      HttpRequest request = HttpRequest.newBuilder(URI.create(url + "/events")).build();
      for (int i = 0; i < PAGES; i++) {
        InputStream page = client.send(request, HttpResponse.BodyHandlers.ofInputStream()).body();
        pages.add(page);
        Thread reader = new Thread(() -> readOn(page), "page");
        reader.setDaemon(true);
        reader.start();
      }
      double with = share(process, keys);
      out.printf(
          Locale.ROOT,
          "a value a second, the whole program: %.1f %% of a core with %d pages open, %.1f %% without"
              + " any%n",
          100 * with,
          PAGES,
          100 * alone);
    } finally {
      for (InputStream page : pages) {
        page.close();
      }
      process.destroy();
    }
  }

  private static double share(Process process, OutputStream keys) throws Exception {
    double[] halves = new double[2];
    for (int half = 0; half < halves.length; half++) {
      Duration before = process.info().totalCpuDuration().orElseThrow();
      long from = System.nanoTime();
      for (int i = 0; i < SECONDS / 2; i++) {
        type(keys, "working leg down " + (20 + i) + " toward the tip");
        Thread.sleep(1000);
      }
      Duration used = process.info().totalCpuDuration().orElseThrow().minus(before);
      halves[half] = used.toNanos() / (double) (System.nanoTime() - from);
    }
    // The first half still compiles.
    return halves[1];
  }

  private static void readOn(InputStream page) {
    try {
      byte[] bytes = new byte[65_536];
      while (page.read(bytes) >= 0) {
        Arrays.fill(bytes, (byte) 0);
      }
    } catch (IOException e) {
      // The server has gone.
    }
  }
}
