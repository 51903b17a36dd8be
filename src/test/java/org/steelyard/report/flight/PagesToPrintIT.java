package org.steelyard.report.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.report.output.page.Flights.JET;
import static org.steelyard.report.output.page.Flights.aft;
import static org.steelyard.report.output.page.Flights.flight;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.finding.Severity;
import org.steelyard.report.text.Caution;
import org.steelyard.trim.TrimCard;
import org.steelyard.trim.TrimCards;

/** The load summary and the trim cards in a real browser. */
class PagesToPrintIT {

    @TempDir
    private static Path folder;

    private static Browser browser;

    @BeforeAll
    static void writeAndStart() throws IOException {
        browser = Browser.start();
        LoadSummary summary = new LoadSummary(
                flight("1").inDetail().found(aft(Severity.BREACH, -1)).build(), true);
        write("summary.html", LoadSummaryPage.of(summary, "0.1.0"));
        TrimCard card = TrimCards.card(JET, JET.trimScales().get(0), 1, OptionalDouble.empty());
        write("cards.html", TrimCardsPage.of(List.of(card), "0.1.0"));
    }

    private static void write(String name, String page) throws IOException {
        Files.writeString(folder.resolve(name), page, StandardCharsets.UTF_8);
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "summary.html, 1280, light",
        "summary.html, 390, dark",
        "cards.html, 1280, dark",
        "cards.html, 390, light",
    })
    void thePageFitsCarriesTheCautionAndComplainsOfNothing(String name, int width, String scheme) {
        browser.open(folder.resolve(name), width, scheme);
        assertThat(browser.console()).isEmpty();
        assertThat(browser.requests())
                .containsExactly(folder.resolve(name).toUri().toString());
        assertThat(browser.number("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(width);
        assertThat(browser.find(".caution").getText()).isEqualTo(Caution.TEXT);
        assertThat(browser.js("return getComputedStyle(document.body).backgroundColor"))
                .isEqualTo(scheme.equals("dark") ? "rgb(20, 24, 28)" : "rgb(255, 255, 255)");
    }
}
