package org.steelyard.report.output.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.report.output.page.Flights.JET;
import static org.steelyard.report.output.page.Flights.aft;
import static org.steelyard.report.output.page.Flights.flight;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.report.flight.Browser;

/** The page in a real browser, as a person uses it by mouse, by keys and on paper. */
class ReportPageIT {

    private static final String EVIL =
            "<img src=x onerror='window.bad=1'></script><script>window.bad=1</script>\u2028& \u202Eabc";
    private static final int WIDE = 1280;

    @TempDir
    private static Path folder;

    private static Browser browser;
    private static List<AuditedFlight> flights;
    private static Path page;

    @BeforeAll
    static void writeAndStart() throws IOException {
        browser = Browser.start();
        flights = new ArrayList<>(Flights.season(9, 400));
        flights.add(flight("LONE")
                .row("season.csv", 900)
                .takeoff(48_000, 30)
                .inDetail()
                .found(aft(Severity.BREACH, -1))
                .build());
        flights.add(flight(EVIL)
                .row("season.csv", 901)
                .takeoff(61_000, 21)
                .extra(EVIL, EVIL)
                .build());
        List<RejectedRow> rejected = IntStream.range(0, 60)
                .mapToObj(i -> Runs.rejected(1000 + i, List.of("ZFW"), i == 7 ? EVIL : "value" + i))
                .toList();
        page = Runs.write(folder, flights, rejected).resolve("report.html");
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void open() {
        show(WIDE, "light");
    }

    private static void show(int width, String scheme) {
        browser.open(page, width, scheme);
        browser.until("performance.getEntriesByName('pictures-drawn').length === 1");
    }

    private static long with(Status status) {
        return flights.stream()
                .filter(flight -> flight.assessment().status() == status)
                .count();
    }

    private static String count(long number) {
        return number + " of " + flights.size() + " flights";
    }

    @ParameterizedTest
    @CsvSource({"1280, light", "1280, dark", "390, light", "390, dark"})
    void everyPictureIsDrawnAndNothingOverflowsOrComplains(int width, String scheme) {
        show(width, scheme);
        assertThat(browser.console()).isEmpty();
        assertThat(browser.requests()).containsExactly(page.toUri().toString());
        assertThat(browser.number("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(width);
        // colours that each canvas shows, marks and axes among them
        assertThat((List<?>) browser.js("""
                        return [...document.querySelectorAll('canvas')].map(canvas => {
                          const bytes = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height).data;
                          return new Set(new Uint32Array(bytes.buffer)).size; })"""))
                .hasSize(4)
                .allSatisfy(colours -> assertThat(((Number) colours).intValue()).isGreaterThan(10));
        assertThat(browser.js("return getComputedStyle(document.body).backgroundColor"))
                .isEqualTo(scheme.equals("dark") ? "rgb(20, 24, 28)" : "rgb(250, 249, 245)");
    }

    @Test
    void theSwitchOfColoursOverridesTheSystem() {
        browser.find("#theme option[value=dark]").click();
        assertThat(browser.js("return getComputedStyle(document.body).backgroundColor"))
                .isEqualTo("rgb(20, 24, 28)");
    }

    @Test
    void thePolicyStopsWhatIsNotOfThePage() {
        browser.js("""
                const script = document.createElement('script');
                script.textContent = 'window.bad = 1';
                document.body.append(script);
                const image = document.createElement('img');
                image.src = 'http://example.invalid/x.png';
                document.body.append(image);""");
        browser.until("performance.now() > 0");
        assertThat(browser.js("return window.bad")).isNull();
        assertThat(browser.console())
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(line -> assertThat(line).contains("Content Security Policy"));
    }

    @Test
    void textFromDataStaysText() {
        browser.find("#search").sendKeys("onerror");
        browser.until("document.querySelector('#found').textContent.startsWith('1 of')");
        browser.find("#panel-0 .chooser").click();
        assertThat(browser.find("#flight-title").getAttribute("textContent")).contains("<img src=x");
        browser.find("#tab-3").click();
        assertThat(browser.texts("#panel-3 td")).singleElement().asString().contains("<img src=x");
        assertThat(browser.js("return window.bad")).isNull();
        assertThat(browser.number("return document.images.length")).isZero();
        assertThat(browser.console()).isEmpty();
    }

    @Test
    void aFilterByStatusHoldsForPicturesAndTables() {
        browser.find("#status-clean").click();
        browser.find("#status-marginal").click();
        assertThat(browser.find("#found").getText()).isEqualTo(count(with(Status.BREACHED)));
        assertThat(browser.texts("#panel-0 td .mark")).isNotEmpty().containsOnly("breached");
        long jets = flights.stream()
                .filter(flight -> flight.assessment().status() == Status.BREACHED)
                .filter(flight -> flight.loading().type().equals(JET))
                .count();
        assertThat(browser.find("#envelope .plot").getAttribute("data-points")).isEqualTo(Long.toString(jets));
        browser.find(".asked [type=reset]").click();
        browser.until("document.querySelector('#found').textContent === '" + count(flights.size()) + "'");
    }

    @Test
    void typeAndTailAndKindAskForTheirFlights() {
        long single = flights.stream()
                .filter(flight -> flight.loading().type().equals(Flights.SINGLE))
                .count();
        browser.find("#type option:nth-child(3)").click();
        assertThat(List.of(browser.find("#found").getText()))
                .containsAnyOf(count(single), count(flights.size() - single));
        browser.find("#type option:first-child").click();
        browser.find(".types button:not([aria-pressed=true])").click();
        assertThat(browser.find("#envelope-title").getText()).isEqualTo("Light single L4: take-off envelope");
        assertThat(browser.find("#histogram .hint").getText()).contains("No flight asked for has a trim");
        browser.find(".kind-button").click();
        String found = browser.find("#found").getText();
        long asked = Long.parseLong(found, 0, found.indexOf(' '), 10);
        assertThat(asked).isPositive().isLessThan(flights.size());
        assertThat(browser.find(".kind-button[aria-pressed=true] .kind-count").getText())
                .isEqualTo(Long.toString(asked));
    }

    @Test
    void thePointerNamesAFlightAndAClickShowsItWithItsFuelPath() {
        WebElement frame = browser.find("#envelope .u-over");
        browser.js("document.querySelector('#envelope').scrollIntoView()");
        long x = browser.number("return Math.round(page.envelope.plot.u.valToPos(30, 'x'))");
        long y = browser.number("return Math.round(page.envelope.plot.u.valToPos(48000, 'y'))");
        int dx = (int) (x - frame.getSize().getWidth() / 2);
        int dy = (int) (y - frame.getSize().getHeight() / 2);
        browser.hands().moveToElement(frame, dx, dy).perform();
        assertThat(browser.find("#envelope .tip").getText())
                .contains("LONE, 2025-03-14, ZZ-JA")
                .contains("breached")
                .contains("48,000 kg")
                .contains("30.00 % MAC");
        String before = ink();
        browser.hands().click().perform();
        assertThat(browser.find("#flight-title").getText()).isEqualTo("LONE");
        assertThat(ink()).as("ring and fuel path").isNotEqualTo(before);
        assertThat(browser.texts("#flight tbody th"))
                .containsExactly("dry operating", "zero fuel", "ramp", "take-off", "landing");
        assertThat(browser.find("#flight .sentences").getText()).contains("1.00 % MAC behind the aft limit");
        assertThat(browser.find("#flight .big-trim").getText()).isEqualTo("1.9 UP");
        assertThat(browser.find("#said").getAttribute("textContent"))
                .contains("LONE")
                .contains("trim to set 1.9 UP");
    }

    private static String ink() {
        return browser.js("return document.querySelector('#envelope canvas').toDataURL()")
                .toString();
    }

    @Test
    void aFlightIsChosenByKeysAndTheFocusComesBack() {
        browser.js("document.querySelector('#envelope .u-over').focus()");
        browser.hands().sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT).perform();
        String said = browser.find("#said").getAttribute("textContent");
        assertThat(said).contains("take-off mass").contains("CG");
        browser.hands().sendKeys(Keys.ENTER).perform();
        assertThat(browser.focused().getAttribute("id")).isEqualTo("flight-title");
        assertThat(said).startsWith(browser.focused().getText());
        browser.find("#flight .tool").sendKeys(Keys.ENTER);
        assertThat(browser.focused().getAttribute("class")).contains("u-over");
    }

    @Test
    void thePictureIsZoomedMovedAndShownWholeAgain() {
        WebElement frame = browser.find("#envelope .u-over");
        String whole = view();
        browser.hands()
                .moveToElement(frame, -40, -40)
                .clickAndHold()
                .moveByOffset(80, 80)
                .release()
                .perform();
        String part = view();
        assertThat(part).isNotEqualTo(whole);
        browser.hands()
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.ARROW_LEFT)
                .keyUp(Keys.SHIFT)
                .perform();
        assertThat(view()).isNotEqualTo(part);
        browser.find("#envelope .tools button:last-child").click();
        assertThat(view()).isEqualTo(whole);
        browser.js("document.querySelector('#envelope .u-over').focus()");
        browser.hands().sendKeys("+").perform();
        assertThat(view()).isNotEqualTo(whole);
        browser.hands().sendKeys("0").perform();
        assertThat(view()).isEqualTo(whole);
    }

    private static String view() {
        browser.until("new Promise(done => requestAnimationFrame(() => done(true)))");
        return browser.js("const {x, y} = page.envelope.plot.u.scales; return [x.min, x.max, y.min, y.max].join()")
                .toString();
    }

    @Test
    void thePhaseOfTheEnvelopeCanBeChosen() {
        assertThat(browser.texts("#phase option")).containsExactly("take-off");
        assertThat(browser.find("#envelope .u-over").getAttribute("aria-label"))
                .startsWith("Twin jet J180, take-off envelope with");
    }

    @Test
    void aTableIsSortedByKeysAndSaysSo() {
        browser.find("#panel-0 th:nth-child(7) button").sendKeys(Keys.ENTER);
        assertThat(browser.find("#panel-0 th:nth-child(7)").getAttribute("aria-sort"))
                .isEqualTo("ascending");
        assertThat(browser.focused().getText()).startsWith("Take-off mass");
        assertThat(flightsShown()).startsWith(lightest(Comparator.naturalOrder()));
        browser.focused().sendKeys(Keys.ENTER);
        assertThat(browser.find("#panel-0 th:nth-child(7)").getAttribute("aria-sort"))
                .isEqualTo("descending");
        assertThat(flightsShown()).startsWith(lightest(Comparator.reverseOrder()));
        assertThat(browser.find("#said").getAttribute("textContent"))
                .isEqualTo("Flights sorted by Take-off mass, descending");
    }

    private static List<String> flightsShown() {
        return browser.texts("#panel-0 tbody th").subList(0, 3);
    }

    private static String[] lightest(Comparator<Double> order) {
        return flights.stream()
                .sorted(Comparator.comparing(
                        flight -> flight.balance().takeoff().massKg(), order))
                .limit(3)
                .map(flight -> flight.loading().flight().flight())
                .toArray(String[]::new);
    }

    @Test
    void tablesAreTurnedAndChangedByKeys() {
        assertThat(browser.find("#panel-0 .place").getText()).isEqualTo("1 to 50 of " + flights.size());
        browser.find("#panel-0 .pager button:last-of-type").sendKeys(Keys.ENTER);
        assertThat(browser.find("#panel-0 .place").getText()).isEqualTo("51 to 100 of " + flights.size());
        browser.find("#tab-0").sendKeys(Keys.ARROW_LEFT);
        assertThat(browser.focused().getText()).isEqualTo("Rejected rows (60)");
        assertThat(browser.find("#panel-3 .place").getText()).isEqualTo("1 to 50 of 60");
        assertThat(browser.find("#panel-0").isDisplayed()).isFalse();
    }

    @Test
    void theFirstKeyShowsTheWayPastTheHead() {
        browser.hands().sendKeys(Keys.TAB).perform();
        assertThat(browser.focused().getText()).isEqualTo("Skip to the report");
        assertThat(browser.focused().getCssValue("outline-style")).isEqualTo("solid");
    }

    @Test
    void paperShowsStillPicturesInPlaceOfLiveOnes() {
        assertThat(browser.find("#envelopes").isDisplayed()).isFalse();
        browser.media("print", "dark");
        assertThat(browser.find("#live").isDisplayed()).isFalse();
        assertThat(browser.find("#envelopes svg").isDisplayed()).isTrue();
        assertThat(browser.find("#trim svg").isDisplayed()).isTrue();
        assertThat(browser.js("return getComputedStyle(document.body).backgroundColor"))
                .isEqualTo("rgb(255, 255, 255)");
    }

    @Test
    void withoutScriptsThePageShowsStillPictures() {
        browser.scripts(false);
        browser.open(page, WIDE, "light");
        browser.scripts(true);
        assertThat(browser.js("return document.documentElement.className")).isEqualTo("");
        assertThat(browser.find("#envelopes svg").isDisplayed()).isTrue();
        assertThat(browser.console()).isEmpty();
    }

    @Test
    void aThinnedPageSaysSoAndItsCountsStandForTheSeason() throws IOException {
        Path thin = Runs.thinned(folder, flights, new PageLimits(5, 8, 60));
        browser.open(thin, WIDE, "light");
        browser.until("document.querySelector('#thinning') !== null");
        assertThat(browser.find("#thinning").getText())
                .startsWith("Thinned: this page holds 60 of " + flights.size() + " flights: 5 of "
                        + with(Status.BREACHED) + " breached, drawn by lot; 3 of " + with(Status.MARGINAL));
        assertThat(browser.find("#found").getText())
                .isEqualTo("60 of 60 flights, which stand for about " + flights.size() + " of " + flights.size());
        assertThat(browser.console()).isEmpty();
    }
}
