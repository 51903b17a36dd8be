package org.steelyard.report.output.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.report.html.ChartLibrary;

/**
 * Contrast of text against what it stands on, by relative luminance and contrast ratio as WCAG 2.2 defines them:
 * success criterion 1.4.3 asks 4.5 to 1 of text, 1.4.11 asks 3 to 1 of graphics.
 */
@Tag("validation")
class PageColoursTest {

    private record Scheme(String name, Map<String, String> colours) {

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Scheme> schemes() throws IOException {
        try (InputStream sheet = ChartLibrary.class.getResourceAsStream("page.css")) {
            String css = new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
            Matcher roots =
                    Pattern.compile(":root[^{]*\\{\n(.*?)}", Pattern.DOTALL).matcher(css);
            List<Map<String, String>> all =
                    roots.results().map(root -> colours(root.group(1))).toList();
            return Stream.of(
                    new Scheme("light", all.get(0)),
                    new Scheme("dark of the system", all.get(1)),
                    new Scheme("dark by choice", all.get(2)),
                    new Scheme("print", all.get(3)));
        }
    }

    private static Map<String, String> colours(String block) {
        Map<String, String> colours = new HashMap<>();
        Pattern.compile("--([a-z]+): #([0-9a-f]{6});")
                .matcher(block)
                .results()
                .forEach(colour -> colours.put(colour.group(1), colour.group(2)));
        return colours;
    }

    @ParameterizedTest
    @MethodSource("schemes")
    void textContrastsWithPaperAndCard(Scheme scheme) {
        for (String ground : List.of("paper", "card")) {
            for (String text : List.of("ink", "quiet", "clean", "marginal", "breached", "rejected", "link")) {
                assertThat(contrast(scheme, text, ground))
                        .as(text + " on " + ground)
                        .isGreaterThanOrEqualTo(4.5);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("schemes")
    void marksContrastWithTheEnvelope(Scheme scheme) {
        for (String mark : List.of("ink", "clean", "marginal", "breached")) {
            assertThat(contrast(scheme, mark, "envelope")).as(mark).isGreaterThanOrEqualTo(3);
        }
    }

    /** Text in pictures stands on the card or on the envelope, the chosen row of a table is of its colour. */
    @ParameterizedTest
    @MethodSource("schemes")
    void textContrastsWithTheEnvelope(Scheme scheme) {
        for (String text : List.of("ink", "quiet", "clean", "marginal", "breached", "link")) {
            assertThat(contrast(scheme, text, "envelope")).as(text).isGreaterThanOrEqualTo(4.5);
        }
    }

    @ParameterizedTest
    @MethodSource("schemes")
    void edgesOfWhatCanBeUsedContrastWithTheirGround(Scheme scheme) {
        for (String ground : List.of("paper", "card")) {
            assertThat(contrast(scheme, "quiet", ground)).isGreaterThanOrEqualTo(3);
            assertThat(contrast(scheme, "link", ground)).isGreaterThanOrEqualTo(3);
        }
    }

    @Test
    void darkIsTheSameByChoiceAsByTheSystem() throws IOException {
        List<Scheme> all = schemes().toList();
        assertThat(all).hasSize(4);
        assertThat(all.get(2).colours())
                .isEqualTo(all.get(1).colours())
                .isNotEqualTo(all.get(0).colours());
    }

    /** Black on white is 21 to 1, a colour on itself 1 to 1. */
    @Test
    void theMeasureItselfIsRight() {
        Scheme plain = new Scheme("plain", Map.of("a", "000000", "b", "ffffff"));
        assertThat(contrast(plain, "a", "b")).isEqualTo(21);
        assertThat(contrast(plain, "b", "b")).isEqualTo(1);
    }

    private static double contrast(Scheme scheme, String one, String other) {
        double a = luminance(scheme.colours().get(one));
        double b = luminance(scheme.colours().get(other));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        return 0.2126 * channel(colour, 0) + 0.7152 * channel(colour, 2) + 0.0722 * channel(colour, 4);
    }

    private static double channel(String colour, int at) {
        double share = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
