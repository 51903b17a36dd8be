package org.steelyard.report.flight;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;

/**
 * A real browser without a window, for the tests of pages: Debian's chromium by its chromium-driver, both already on
 * this machine; nothing is downloaded, and no name on any network is resolved. Where one is missing, tests are skipped
 * aloud, but fail where the environment says {@code CI=true}.
 */
public final class Browser implements AutoCloseable {

    private static final String HOW = "the pages cannot be looked at: no chromium or no chromedriver on the path"
            + " (apt-get install chromium chromium-driver)";

    /** The driver's own log warns of parts of the protocol that are not used here; held so that it stays set. */
    private static final Logger LOG = Logger.getLogger("org.openqa.selenium");

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    public static Browser start() {
        Optional<File> browser = onPath("chromium", "chromium-browser", "google-chrome");
        Optional<File> control = onPath("chromedriver");
        if (browser.isEmpty() || control.isEmpty()) {
            if ("true".equals(System.getenv("CI"))) {
                fail(HOW);
            }
            System.err.println("SKIPPED: " + HOW);
            abort(HOW);
        }
        LOG.setLevel(Level.SEVERE);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--hide-scrollbars",
                "--host-resolver-rules=MAP * ~NOTFOUND");
        options.setCapability("goog:loggingPrefs", Map.of("browser", "ALL", "performance", "ALL"));
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(control.orElseThrow())
                .withSilent(true)
                .build();
        return new Browser(new ChromeDriver(service, options));
    }

    private static Optional<File> onPath(String... names) {
        List<Path> folders = Pattern.compile(Pattern.quote(File.pathSeparator))
                .splitAsStream(System.getenv("PATH"))
                .map(Path::of)
                .toList();
        return Stream.of(names)
                .flatMap(name -> folders.stream().map(folder -> folder.resolve(name)))
                .filter(Files::isExecutable)
                .map(Path::toFile)
                .findFirst();
    }

    /** Opens a page from disk, with nothing left of the one before. */
    public void open(Path page, int width, String scheme) {
        driver.get("about:blank");
        console();
        requests();
        media("screen", scheme);
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
        driver.get(page.toUri().toString());
    }

    /** For paper or screen, dark or light. */
    public void media(String media, String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("media", media, "features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    public void scripts(boolean run) {
        driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
    }

    /** What a script answers, by the way of a person at the console. */
    public Object js(String script, Object... args) {
        return driver.executeScript(script, args);
    }

    public long number(String script, Object... args) {
        return ((Number) js(script, args)).longValue();
    }

    public WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    public List<String> texts(String selector) {
        return driver.findElements(By.cssSelector(selector)).stream()
                .map(WebElement::getText)
                .toList();
    }

    public WebElement focused() {
        return driver.switchTo().activeElement();
    }

    public Actions hands() {
        return new Actions(driver);
    }

    /** Waits until a script says true. */
    public void until(String script) {
        for (int tries = 0; tries < 200; tries++) {
            if (Boolean.TRUE.equals(js("return " + script))) {
                return;
            }
            hands().pause(50).perform();
        }
        fail("never true: " + script);
    }

    /** Lines of the console since it was last asked, errors and all else, breaches of the page's policy among them. */
    public List<String> console() {
        return log("browser");
    }

    /** Addresses that were asked for since this was last asked. */
    public List<String> requests() {
        return log("performance").stream()
                .filter(line -> line.contains("\"Network.requestWillBeSent\""))
                .map(line -> line.replaceAll("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
                .toList();
    }

    private List<String> log(String kind) {
        return driver.manage().logs().get(kind).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    @Override
    public void close() {
        driver.quit();
    }
}
