package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimScale;

/** Scales fitted, estimated and printed as cards, on the shipped configuration. */
class ScaleCommandsTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    /** The shipped configuration with a trim section in place of, or behind, that of a type's file. */
    private Configuration with(String typeFile, String section) throws IOException {
        Path copy = folder.resolve("config");
        Path shipped = Path.of("config");
        try (Stream<Path> files = Files.walk(shipped)) {
            files.forEach(file -> {
                try {
                    Path target = copy.resolve(shipped.relativize(file).toString());
                    if (Files.isDirectory(file)) {
                        Files.createDirectories(target);
                    } else {
                        Files.copy(file, target);
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
        Path type = copy.resolve("types").resolve(typeFile);
        String text = Files.readString(type);
        int trim = text.indexOf("\ntrim:\n");
        Files.writeString(type, (trim < 0 ? text : text.substring(0, trim + 1)) + section);
        ConfigResult result = ConfigFolder.load(copy);
        assertThat(result).isInstanceOf(ConfigResult.Loaded.class);
        return ((ConfigResult.Loaded) result).configuration();
    }

    @Test
    void pointsReadOffAPrintedScaleBecomeASectionThatTheTypeCanHave() throws IOException {
        StringBuilder pairs = new StringBuilder("cg (% MAC),setting,note\n");
        for (int cg = 8; cg <= 38; cg += 2) {
            double trim = cg == 22 ? 0.1 : 4.4 - 0.15 * cg;
            pairs.append(String.format(
                    Locale.ROOT,
                    "%d,%.1f %s,%s%n",
                    cg,
                    Math.abs(trim),
                    trim < 0 ? "DN" : "UP",
                    cg == 22 ? "misread" : ""));
        }
        Path table = Files.writeString(folder.resolve("points.csv"), pairs.toString());
        Path section = folder.resolve("trim.yaml");
        assertThat(run(
                        "fit-scale",
                        table.toString(),
                        "--pairs",
                        "--type",
                        "jet180",
                        "-f",
                        "5",
                        "-s",
                        section.toString()))
                .isZero();
        assertThat(out.toString())
                .contains("jet180, flaps 5: 16 pairs")
                .contains("1 outliers, without weight in the fit:")
                .contains("1.00 DN off  recorded 0.10 UP at 22.00 % MAC  points.csv:9")
                .contains("simulation, training and analysis only");
        TrimScale scale = with("jet180.yaml", Files.readString(section))
                .types()
                .get("jet180")
                .trimScale(Phase.TAKEOFF, "5", "")
                .orElseThrow();
        assertThat(scale.basis()).isEqualTo(TrimBasis.EVIDENCE);
        assertThat(scale.law().trimUnitsAt(22, 0).orElseThrow())
                .isCloseTo(1.1, org.assertj.core.api.Assertions.within(0.06));
    }

    @Test
    void aFlightThatStandsInTwoRowsCountsOnce() throws IOException {
        Path once = Files.createDirectory(folder.resolve("once")).resolve("season.csv");
        Path twice = Files.createDirectory(folder.resolve("twice")).resolve("season.csv");
        List<String> lines =
                Files.readAllLines(Path.of("data-in/demo/season-2026-05.csv")).subList(0, 201);
        Files.write(once, lines);
        List<String> more = new ArrayList<>(lines);
        more.addAll(lines.subList(1, 101));
        Files.write(twice, more);

        assertThat(run("fit-scale", once.toString(), "--type", "jet180", "--resamples", "40"))
                .isZero();
        String expected = out.toString();
        out.getBuffer().setLength(0);
        assertThat(run("fit-scale", twice.toString(), "--type", "jet180", "--resamples", "40"))
                .isZero();

        assertThat(out.toString()).isEqualTo(expected).contains(" pairs");
        assertThat(err.toString()).contains("rows are left out: their flights stand in other rows, too.");
    }

    /** The demo season records what the demo scales ask for, give or take a step: the scales come back. */
    @Test
    void theDemoSeasonGivesBackTheScaleThatMadeIt() throws IOException {
        Path section = folder.resolve("trim.yaml");
        assertThat(run(
                        "fit-scale",
                        "data-in/demo/season-2026-05.csv",
                        "--type",
                        "jet180",
                        "-s",
                        section.toString(),
                        "--resamples",
                        "40"))
                .isZero();
        Configuration shipped = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
        Configuration fitted = with("jet180.yaml", Files.readString(section));
        for (String flaps : new String[] {"1", "5", "15"}) {
            TrimScale truth = shipped.types()
                    .get("jet180")
                    .trimScale(Phase.TAKEOFF, flaps, "")
                    .orElseThrow();
            TrimScale scale = fitted.types()
                    .get("jet180")
                    .trimScale(Phase.TAKEOFF, flaps, "")
                    .orElseThrow();
            double from = scale.law().cgRange().fromPercentMac();
            double to = scale.law().cgRange().toPercentMac();
            for (double part : new double[] {0.2, 0.5, 0.8}) {
                double cg = from + part * (to - from);
                double massKg = 66_000;
                assertThat(scale.law().trimUnitsAt(cg, massKg).orElseThrow())
                        .as("flaps %s at %.1f", flaps, cg)
                        .isCloseTo(
                                truth.law().trimUnitsAt(cg, massKg).orElseThrow(),
                                org.assertj.core.api.Assertions.within(0.08));
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fit-scale data-in/demo/season-2026-05.csv --type prop71 | The season holds no recorded trim for that.",
                "fit-scale data-in/none | there is no such file or folder",
                "fit-scale data-in/demo-key.csv --pairs --type jet180 -f 5 | demo-key.csv:1: unknown heading",
                "fit-scale x --pairs --type jet181 -f 5 | There is no type 'jet181'",
                "fit-scale x --pairs --type jet180 | --pairs needs --type and --flaps",
                "fit-scale x --resamples 3 | --resamples: 3; expected 40 to 100000",
                "fit-scale x --step 0 | --step: expected more than 0",
                "estimate-scale jet181 | There is no type 'jet181'; there are jet180, prop70, single4.",
                "estimate-scale jet180 | The type jet180 has no airframe; there are single4.",
                "cards --type jet181 | There is no type 'jet181'",
                "cards --type jet180 --flaps 99 | There is no trim scale for that: jet180, flaps 99.",
                "cards --cg-step 1 | --cg-step: the unit is missing",
                "cards --cg-step 0.01% | bands must be more than zero wide",
                "cards --mass-step 0t | --mass-step: must be more than zero",
            })
    void whatDoesNotFitIsToldAndEndsWithTwo(String args, String message) {
        assertThat(run(args.split(" "))).isEqualTo(2);
        assertThat(err.toString()).contains(message);
    }

    @Test
    void tooFewPairsMakeNoScale() throws IOException {
        Path table = Files.writeString(folder.resolve("few.csv"), "cg (% MAC),setting\n10,3 UP\n20,1 UP\n");
        assertThat(run("fit-scale", table.toString(), "--pairs", "--type", "jet180", "-f", "5"))
                .isEqualTo(2);
        assertThat(out.toString()).contains("no scale: a scale needs at least 8 pairs");
        assertThat(err.toString()).contains("No scale could be fitted.");
    }

    @Test
    void anEstimateIsSaidToBeOneEverywhere() throws IOException {
        Path section = folder.resolve("trim.yaml");
        assertThat(run("estimate-scale", "single4", "-s", section.toString())).isZero();
        assertThat(out.toString()).contains("single4, flaps 0: ESTIMATE").contains("static margin");
        String yaml = Files.readString(section);
        assertThat(yaml).contains("basis: estimate").contains("# ESTIMATE from the balance of moments");
        Configuration configuration = with("single4.yaml", yaml);
        assertThat(configuration.types().get("single4").trimScales())
                .hasSize(2)
                .allSatisfy(scale -> assertThat(scale.basis()).isEqualTo(TrimBasis.ESTIMATE));
        String config = folder.resolve("config").toString();
        assertThat(run("set", "--ascii", "-c", config, "--tail", "QI-SAA", "-f", "0", "-m", "2300lb", "-g", "98in"))
                .isZero();
        assertThat(out.toString())
                .contains("Take-off trim to set, an ESTIMATE:")
                .contains("scale                       ESTIMATE from the balance of moments, not from the")
                .contains("NOTE      the take-off trim for flaps 0 is an estimate");
        assertThat(run(
                        "cards",
                        "-c",
                        config,
                        "--type",
                        "single4",
                        "-o",
                        folder.resolve("cards").toString()))
                .isZero();
        assertThat(Files.readString(folder.resolve("cards").resolve("trim-cards.html")))
                .contains("ESTIMATE from the balance of moments: not a figure of the type")
                .contains("93.0 – 93.5");
    }

    @Test
    void cardsHoldTheSettingsOfTheScale() throws IOException {
        Path cards = folder.resolve("cards");
        assertThat(run("cards", "--type", "jet180", "-o", cards.toString())).isZero();
        assertThat(out.toString()).contains("4 trim cards are in");
        Path again = folder.resolve("again");
        assertThat(run("cards", "--type", "jet180", "-o", again.toString())).isZero();
        for (String name : new String[] {"trim-cards.html", "trim-cards.xlsx"}) {
            assertThat(Files.mismatch(cards.resolve(name), again.resolve(name)))
                    .as(name)
                    .isEqualTo(-1);
        }
        String page = Files.readString(cards.resolve("trim-cards.html"));
        assertThat(page)
                .contains("default-src &#39;none&#39;")
                .contains("simulation, training and analysis only")
                .contains("The scale does not depend on mass: one column holds for every mass.")
                .doesNotContain("<script");
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(cards.resolve("trim-cards.xlsx")))) {
            assertThat(book.getNumberOfSheets()).isEqualTo(4);
            // flaps 5 by points: at 24.5 % MAC 0.85 - 0.5 × 0.65 / 3.5 = 0.757, so 0.8 UP
            assertThat(beside(book.getSheet("jet180 take-off 5"), "24.0 – 25.0", 1))
                    .isEqualTo("0.8 UP");
            // flaps 15 by a slope: -0.1 + 0.15 × 8 = 1.1 at 19.5
            assertThat(beside(book.getSheet("jet180 take-off 15"), "19.0 – 20.0", 1))
                    .isEqualTo("1.1 UP");
            // flaps 1 by a table: at 24.5 % and 62.5 t between 0.85 − 0.0625 × 1.30 … and 1.15 − 0.0625 × 1.35 …
            double light = 0.85 - 0.5 * 1.30 / 8;
            double heavy = 1.15 - 0.5 * 1.35 / 8;
            double trim = light + (62.5 - 58) / 12 * (heavy - light);
            assertThat(beside(book.getSheet("jet180 take-off 1"), "24.0 – 25.0", 5))
                    .isEqualTo(String.format(Locale.ROOT, "%.1f UP", trim));
        }
    }

    private static String beside(XSSFSheet sheet, String first, int column) {
        for (var row : sheet) {
            Cell cell = row.getCell(0);
            if (cell != null && cell.toString().equals(first)) {
                return row.getCell(column).toString();
            }
        }
        throw new AssertionError("no row " + first);
    }
}
