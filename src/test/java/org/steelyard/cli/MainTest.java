package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @ParameterizedTest
    @CsvSource({"--help, Usage: steelyard", "--version, Steelyard 0.1.0"})
    void helpAndVersionGoToTheOutputAndEndWithZero(String option, String expected) {
        assertThat(run(option)).isZero();
        assertThat(out.toString()).contains(expected);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void withoutArgumentsTheUsageIsShown() {
        assertThat(run()).isZero();
        assertThat(out.toString()).contains("Usage: steelyard");
    }

    @Test
    void anUnknownOptionIsNamedAndEndsWithTwo() {
        assertThat(run("--nonsense")).isEqualTo(2);
        assertThat(err.toString()).contains("--nonsense");
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }
}
