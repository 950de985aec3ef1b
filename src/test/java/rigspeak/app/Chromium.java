package rigspeak.app;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** Debian's Chromium, without a screen, driven through its own driver. */
final class Chromium {
  private static final Optional<Path> BROWSER = program("chromium");
  private static final Optional<Path> DRIVER = program("chromedriver");

  private Chromium() {}

  static boolean isThere() {
    return BROWSER.isPresent() && DRIVER.isPresent();
  }

  private static Optional<Path> program(String name) {
    String path = System.getenv().getOrDefault("PATH", "");
    return Arrays.stream(path.split(File.pathSeparator, -1))
        .map(folder -> Path.of(folder, name))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /**
   * A browser that knows nothing.
   *
   * @param profile an empty folder
   */
  static ChromeDriver open(Path profile) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(BROWSER.orElseThrow().toFile());
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-dev-shm-usage",
        "--hide-scrollbars",
        "--user-data-dir=" + profile);
    ChromeDriverService driver =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(DRIVER.orElseThrow().toFile())
            .usingAnyFreePort()
            .build();
    ChromeDriver browser = new ChromeDriver(driver, options);
    browser.manage().timeouts().scriptTimeout(Duration.ofSeconds(20));
    return browser;
  }

  /** A screen of so many CSS pixels. */
  static void resize(ChromeDriver browser, int width, int height) {
    browser.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    browser.manage().window().setSize(new Dimension(width, height));
  }
}
