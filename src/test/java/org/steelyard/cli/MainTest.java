package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private static final String HELP = """
            Mass, CG and stabilizer trim of every flight of a season.
            Usage: steelyard [-hV] [COMMAND]

            Give it a folder of loadings as CSV or XLSX. It computes every flight, flags what is outside a
            limit or close to one, and writes a workbook, tables and a page into the reports folder.

              -h, --help      Show this help message and exit.
              -V, --version   Print version information and exit.
            Commands:
              set             The trim to set for one flight, now: with states, margins and findings.
              cards           Trim cards: a one-page table of settings for each type and flap setting.
              check-config    Prove the configuration, and show each aircraft type as tables and pictures.
              audit           Audit a season: every flight computed, checked and reported.
              against         This season against another: what moved, and is it more than chance.
              fit-scale       Fit a trim scale to recorded settings, and list the ones that do not belong.
              estimate-scale  Estimate a trim scale from wing, tail and flap data, for a type without any.
              grade           Mark students' load sheets: points, what follows on, and the likely slip.
              make-exercises  Make load sheet exercises: blank sheets, the key with its working, and the
                                loadings to mark by.
              curtail         The operational envelope of a type: its limits less what a load sheet does not
                                show.
              propose-map     Draft a heading map for a file that none reads yet.

            Exit codes: 0 finished, 1 finished and found what --fail-on asked for, 2 cannot start or write, 3 a
            fault of the program.

            For simulation, training and analysis only. For real flight the approved manual of the aircraft,
            the operator's procedures, local rules and licensed people decide.
            """;

    @Test
    void helpGoesToTheOutputAndEndsWithZeroAlsoWithoutArguments() {
        for (List<String> args : List.of(List.of("--help"), List.of("-h"), List.<String>of())) {
            out.getBuffer().setLength(0);
            assertThat(run(args.toArray(String[]::new))).isZero();
            assertThat(out.toString()).isEqualToNormalizingNewlines(HELP);
            assertThat(err.toString()).isEmpty();
        }
    }

    @Test
    void theVersionIsOneLine() {
        assertThat(run("--version")).isZero();
        assertThat(out.toString()).isEqualToNormalizingNewlines("Steelyard 0.1.0\n");
        assertThat(err.toString()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"--nonsense, Unknown option: '--nonsense'", "audti, Unmatched argument at index 0: 'audti'"})
    void whatIsNotKnownIsNamedAndEndsWithTwo(String arg, String firstLine) {
        assertThat(run(arg)).isEqualTo(2);
        assertThat(err.toString().lines()).first().isEqualTo(firstLine);
        assertThat(out.toString()).isEmpty();
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }
}
