package org.steelyard.report.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Relative luminance and contrast ratio as WCAG 2.2 defines them; 4.5 is its level AA for text (1.4.3). */
class WorkbookPaletteTest {

    @ParameterizedTest
    @CsvSource({
        "INK, PAPER",
        "INK, TINT",
        "QUIET, PAPER",
        "SLATE, PAPER",
        "PAPER, SLATE",
        "CLEAN_INK, CLEAN_FILL",
        "MARGINAL_INK, MARGINAL_FILL",
        "BREACH_INK, BREACH_FILL"
    })
    void textIsReadableOnItsFill(WorkbookPalette ink, WorkbookPalette fill) {
        assertThat(contrast(luminance(ink), luminance(fill))).isGreaterThanOrEqualTo(4.5);
    }

    @Test
    void verdictsDifferInLightnessAlone() {
        double clean = luminance(WorkbookPalette.CLEAN_FILL);
        double marginal = luminance(WorkbookPalette.MARGINAL_FILL);
        double breach = luminance(WorkbookPalette.BREACH_FILL);
        assertThat(contrast(clean, marginal)).isGreaterThan(1.1);
        assertThat(contrast(marginal, breach)).isGreaterThan(4.5);
    }

    @Test
    void theRatioOfBlackAndWhiteIsTwentyOne() {
        assertThat(contrast(1, 0)).isEqualTo(21);
        assertThat(luminance(WorkbookPalette.PAPER)).isEqualTo(1);
    }

    private static double contrast(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double luminance(WorkbookPalette color) {
        int rgb = color.rgb();
        return 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
