package rigspeak.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import rigspeak.catalogue.Catalogue;
import rigspeak.grammar.Grammar;
import rigspeak.page.Boards;
import rigspeak.page.Feed;
import rigspeak.page.PageServer;
import rigspeak.quantity.UnitSystem;

/**
 * The page in a real browser. It is left out where there is no Chromium, but never where {@code CI}
 * is set.
 */
@Tag("browser")
@Timeout(value = 120, unit = TimeUnit.SECONDS)
class BrowserTest {
  private static final Path PICTURES = Path.of("docs", "figures");
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-05-04T12:00:00Z"), ZoneOffset.UTC);

  @TempDir static Path folder;
  private static ChromeDriver browser;
  private static Grammar grammar;
  private static PlannedRig plan;

  private Feed feed;
  private Stage stage;
  private PageServer server;
  private long said;

  @BeforeAll
  static void openBrowser() throws IOException {
    boolean must = System.getenv("CI") != null;
    Assumptions.assumeTrue(must || Chromium.isThere(), "no Chromium here");
    grammar = Grammar.bundled();
    plan = PlannedRig.read(write("plan.txt", PagePlan.LINES).toString());
    browser = Chromium.open(folder.resolve("profile"));
  }

  private static Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @AfterAll
  static void closeBrowser() {
    if (browser != null) {
      browser.quit();
    }
  }

  @BeforeEach
  void openPage() throws IOException {
    Chromium.resize(browser, 1280, 800);
    begin(0, NOON);
    browser.get(server.url());
    await("document.body.dataset.shown === '1'");
  }

  /** A conversation of which nothing has been said, on a server that has just been started. */
  private void begin(int port, Clock clock) throws IOException {
    feed = new Feed(UnitSystem.INCH_POUND);
    Boards boards = new Boards(Catalogue.bundled(), plan.name(), plan.rope(), false);
    stage = new Stage(new Session(grammar), boards, feed, clock);
    server =
        PageServer.open(
            new InetSocketAddress(InetAddress.getLoopbackAddress(), port),
            Optional.empty(),
            feed,
            Optional.empty());
    said = 1;
  }

  @AfterEach
  void closePage() {
    server.close();
  }

  /** Says something and waits until the page shows it. */
  private void say(String words) {
    stage.said(words);
    said++;
    await("document.body.dataset.shown === '" + said + "'");
  }

  /** Waits for a change of the page after which this holds. */
  private static void await(String condition) {
    browser.executeAsyncScript(
        """
        const done = arguments[arguments.length - 1];
        const holds = () => %s;
        if (holds()) {
          done();
          return;
        }
        const watch = new MutationObserver(() => {
          if (holds()) {
            watch.disconnect();
            done();
          }
        });
        watch.observe(document, {subtree: true, childList: true, attributes: true, characterData: true});
        """
            .formatted(condition));
  }

  private static String text(String id) {
    return browser.findElement(By.id(id)).getText();
  }

  @Test
  void aValueShowsAtOnceAndTheVerdictWithItsReason() {
    assertEquals("Not checked", text("verdict-word"));
    assertEquals("Not known", text("lanyard-word"));
    for (String line : PagePlan.LINES.lines().toList()) {
      say(line.replace("out one foot", "out eight feet").replace("ten inches", "five inches"));
    }
    assertTrue(text("tally").startsWith("2 of "), text("tally"));
    WebElement row = browser.findElements(By.cssSelector("tr[data-state=differs]")).get(1);
    assertTrue(row.getText().contains("out, 1 foot"), row.getText());
    assertTrue(row.getText().contains("out, 8 feet"), row.getText());
    assertEquals(1, browser.findElements(By.cssSelector("#picture svg")).size());
    assertEquals("Not checked", text("verdict-word"));
    say("check redirect");
    assertEquals("Do not load", text("verdict-word"));
    assertFalse(text("verdict-reason").isEmpty());
    say("clipped in");
    assertEquals("Not known", text("lanyard-word"));
    say("affirm");
    assertEquals("Clipped in", text("lanyard-word"));
    // What is changed is no longer judged.
    say("correction out one foot");
    say("affirm");
    assertEquals("Not checked", text("verdict-word"));
  }

  @Test
  void whatIsSaidIsNeverMarkup() {
    String hostile = "<img src=x onerror=\"document.title='taken'\"><script>alert(1)</script>";
    say(hostile);
    assertEquals(hostile, text("heard"));
    assertEquals(0, browser.findElements(By.cssSelector("main img, main script")).size());
    assertFalse(browser.getTitle().equals("taken"));
    assertTrue(text("entries").contains(hostile));
  }

  @Test
  void itSaysThatItIsOldAndFindsTheServerAgain() throws IOException {
    int port = server.port();
    say("two wraps");
    server.close();
    await("document.getElementById('connection').dataset.state === 'lost'");
    assertTrue(text("connection").contains("What is shown is old"), text("connection"));
    begin(port, NOON);
    await("document.getElementById('connection').dataset.state === 'live'");
    assertEquals("Live.", text("connection"));
    await("document.body.dataset.shown === '1'");
    say("three wraps");
    assertEquals("three wraps", text("heard"));
  }

  @Test
  void everythingIsReachedByKeyboard() {
    say("limb eight inches by tape");
    WebElement body = browser.findElement(By.tagName("body"));
    body.sendKeys(Keys.TAB);
    WebElement first = browser.switchTo().activeElement();
    assertEquals("To the verdict", first.getText());
    first.sendKeys(Keys.ENTER);
    assertEquals("verdict", browser.switchTo().activeElement().getDomAttribute("id"));
    WebElement units = browser.findElement(By.cssSelector("input[value=inch_pound]"));
    units.sendKeys(Keys.ARROW_DOWN);
    await("document.getElementById('rows').textContent.includes('20.32 centimeters')");
    browser.switchTo().activeElement().sendKeys(Keys.TAB);
    assertEquals("Against the plan", browser.switchTo().activeElement().getText());
    browser.switchTo().activeElement().sendKeys(Keys.TAB);
    assertEquals("region", browser.switchTo().activeElement().getDomAttribute("role"));
  }

  @ParameterizedTest
  @CsvSource({"320, 640", "1280, 800"})
  void axeFindsNothing(int width, int height) throws IOException {
    Chromium.resize(browser, width, height);
    assertNoViolations("nothing said");
    assertTrue(
        (Boolean)
            browser.executeScript(
                "return document.scrollingElement.scrollWidth <= window.innerWidth"),
        "wider than the screen");
    PagePlan.sayWrongly(this::say);
    assertNoViolations("a verdict");
    assertTrue(
        (Boolean)
            browser.executeScript(
                "return document.scrollingElement.scrollWidth <= window.innerWidth"),
        "wider than the screen");
    keepPicture(width < 600 ? "page-phone" : "page-desk");
    server.close();
    await("document.getElementById('connection').dataset.state === 'lost'");
    assertNoViolations("no connection");
  }

  /** The rules of axe-core, WCAG 2.2 to level AAA, contrast of 7 to 1 among them. */
  private static void assertNoViolations(String when) throws IOException {
    try (InputStream in = BrowserTest.class.getResourceAsStream("/axe.min.js")) {
      browser.executeScript(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    Object found =
        browser.executeAsyncScript(
            """
            const done = arguments[arguments.length - 1];
            axe.run(document, {
              runOnly: ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'wcag22aa',
                'best-practice'],
              rules: {'color-contrast-enhanced': {enabled: true}}
            }).then((result) => done(result.violations.map((each) =>
              each.id + ': ' + each.nodes.map((node) => node.html + ' ' + node.failureSummary))));
            """);
    assertEquals(List.of(), found, when);
  }

  /** With -Drewrite the pictures of the documents are taken anew. */
  private static void keepPicture(String name) throws IOException {
    Path to =
        System.getProperty("rewrite") != null
            ? PICTURES
            : Files.createDirectories(Path.of("target"));
    Files.write(to.resolve(name + ".png"), browser.getScreenshotAs(OutputType.BYTES));
  }

  /**
   * The drawn arrow points where check says, to half a degree: seen from the side and from above.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "working leg straight down",
        "working leg down five zero toward the tip",
        "working leg down two zero at two o'clock",
        "working leg down ten to the left",
        "working leg level to the right",
        "working leg down seven five at seven o'clock",
      })
  void theArrowPointsWhereCheckSays(String leg) throws IOException {
    String rig = PagePlan.LINES.replaceAll("working leg .*", leg);
    rig.lines().forEach(this::say);
    JsonNode json = Cli.run("check", "--json", write("rig.txt", rig)).json().get(0);
    double elevation = Math.toRadians(json.at("/elevation_deg/nominal").asDouble());
    double bearing = Math.toRadians(json.at("/bearing_deg/nominal").asDouble());
    double across = Math.cos(elevation) * Math.cos(bearing);
    assertArrow("side", across, Math.sin(elevation));
    assertArrow("plan", across, Math.cos(elevation) * Math.sin(bearing));
  }

  private static void assertArrow(String view, double right, double up) {
    @SuppressWarnings("unchecked")
    Map<String, Number> drawn =
        (Map<String, Number>)
            browser.executeScript(
                """
                const arrow = document.querySelector('#picture .load.%s');
                arrow.getAnimations().forEach((each) => each.finish());
                const line = arrow.querySelector('line');
                if (arrow.querySelector('circle')) {
                  return null;
                }
                const spot = (x, y) => new DOMPoint(x, y).matrixTransform(line.getScreenCTM());
                const from = spot(line.x1.baseVal.value, line.y1.baseVal.value);
                const to = spot(line.x2.baseVal.value, line.y2.baseVal.value);
                return {x: to.x - from.x, y: from.y - to.y};
                """
                    .formatted(view));
    if (drawn == null) {
      // Seen end on it has no angle on the sheet.
      assertTrue(Math.hypot(right, up) < 0.35, view);
      return;
    }
    double angle = Math.atan2(drawn.get("y").doubleValue(), drawn.get("x").doubleValue());
    double off = Math.IEEEremainder(angle - Math.atan2(up, right), 2 * Math.PI);
    assertEquals(0, Math.toDegrees(off), 0.5, view);
  }
}
