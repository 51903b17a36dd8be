package org.steelyard.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.cli.HostileOutputs;
import org.steelyard.report.flight.Browser;

/** Every page of every command in a real browser, with names that are attacks: none runs, none asks for anything. */
class HostilePagesIT {

    @TempDir
    private static Path folder;

    @Test
    void nothingRunsIsAskedForOrComplainedOf() throws IOException {
        try (Browser browser = Browser.start()) {
            List<Path> pages;
            try (Stream<Path> all = Files.walk(HostileOutputs.write(folder))) {
                pages = all.filter(path -> path.toString().endsWith(".html")).toList();
            }
            assertThat(pages).hasSizeGreaterThan(25);
            for (Path page : pages) {
                browser.open(page, 1280, "light");
                if (page.endsWith("report.html")) {
                    browser.until("performance.getEntriesByName('pictures-drawn').length === 1");
                    assertThat(browser.texts("h1, title")).isNotEmpty();
                }
                assertThat(browser.js("return window.bad === undefined"))
                        .as(page.toString())
                        .isEqualTo(true);
                assertThat(browser.console()).as(page.toString()).isEmpty();
                assertThat(browser.requests())
                        .as(page.toString())
                        .containsExactly(page.toUri().toString());
            }
        }
    }
}
