package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.cli.text.BigLetters;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** One flight at once, on the shipped configuration. */
class SetCommandTest {

    private static final List<String> FULL = List.of(
            "tail=QI-JAA",
            "flaps=5",
            "passengers.A=20",
            "passengers.B=22",
            "passengers.C=25",
            "passengers.D=25",
            "passengers.E=22",
            "passengers.F=20",
            "hold-mass.1=800kg",
            "hold-mass.2=1.2t",
            "hold-mass.3=900kg",
            "hold-mass.4=600kg",
            "hold-mass.5=100kg",
            "fuel.left=3500kg",
            "fuel.right=3500kg",
            "taxi-fuel=200kg",
            "trip-fuel=4800kg");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int set(String... args) {
        return set(Stream.of(args).toList());
    }

    private int set(List<String> args) {
        String[] all = Stream.concat(Stream.of("set", "--ascii"), args.stream()).toArray(String[]::new);
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), all);
    }

    private void assertFitsATerminal() {
        assertThat(out.toString().lines()).allSatisfy(line -> {
            assertThat(line.length()).as(line).isLessThanOrEqualTo(80);
            assertThat(line).matches("[\\x20-\\x7E°]*");
        });
    }

    @Test
    void aCgAndFlapsAreEnoughWhereTheScaleLooksAtNothingElse() {
        assertThat(set("--type", "jet180", "-f", "5", "--takeoff-cg", "27.5%")).isZero();
        assertThat(out.toString())
                .contains("Take-off trim to set: 0.2 UP")
                .contains("this setting is right for")
                .contains("27.23 to 27.78 % MAC")
                .contains("no mass was given, so nothing but the trim is said or checked")
                .contains("simulation, training and analysis only")
                .doesNotContain("Verdict", "mass-low", "below the minimum");
        assertFitsATerminal();
    }

    @Test
    void bigLettersShowTheSetting() {
        assertThat(set("--type", "jet180", "-f", "5", "--takeoff-cg", "27.5%")).isZero();
        assertThat(out.toString())
                .contains(String.join(
                        "\n",
                        BigLetters.draw("0.2 UP", true).stream()
                                .map(line -> "    " + line)
                                .toList()));
    }

    @Test
    void aScaleByMassAsksForTheMass() {
        assertThat(set("--type", "jet180", "-f", "1", "--takeoff-cg", "24.5%")).isEqualTo(2);
        assertThat(err.toString()).contains("takeoff-mass: the trim scale for flaps 1 depends on take-off mass");
        assertThat(set("--type", "jet180", "-f", "1", "--takeoff-cg", "24.5%", "-m", "63.6t"))
                .isZero();
        assertThat(out.toString()).contains("Take-off trim to set: 0.9 UP").contains("Verdict: CLEAN");
    }

    @ParameterizedTest
    @ValueSource(strings = {"63600kg", "63.6t", "140214.0lb"})
    void theUnitDoesNotMatter(String mass) {
        assertThat(set("--tail", "QI-JAA", "-f", "1", "-g", "18.58m", "-m", mass))
                .isZero();
        assertThat(out.toString()).contains("24.50").contains("63,600").contains("0.9 UP");
    }

    @Test
    void aWholeLoadingShowsStatesMarginsAndTheEnvelope() {
        assertThat(set(FULL)).isZero();
        assertThat(out.toString())
                .contains("dry operating")
                .contains("zero fuel")
                .contains("in flight, nearest")
                .contains("traffic load allowed")
                .contains("X take-off   z zero fuel   l landing")
                .containsPattern("take-off +\\d\\d,\\d{3} +\\d\\d\\.\\d\\d +\\d\\d\\.\\d\\d +\\+\\d");
        assertFitsATerminal();
    }

    /** Tanks of 14 US gal each at 0.71 kg/L, one burnt before take-off: 1 lb more than the 2,700 lb permitted. */
    @Test
    void aPoundTooMuchTakesAPoundOff() {
        assertThat(set(
                        "--tail",
                        "QI-SAB",
                        "flight-crew-mass=198lb",
                        "passengers.front=1",
                        "passenger-mass.front=192lb",
                        "passengers.rear=2",
                        "passenger-mass.rear=378lb",
                        "hold-mass.1=66lb",
                        "hold-mass.2=42lb",
                        "fuel.left=14US gal",
                        "fuel.right=14US gal",
                        "taxi-fuel=1US gal",
                        "trip-fuel=11US gal"))
                .isZero();
        assertThat(out.toString())
                .contains("leave behind 1 lb from baggage 2")
                .doesNotContain("leave behind 1 passenger");
    }

    @Test
    void zeroFuelAndFuelAreEnough() {
        assertThat(set(
                        "--tail",
                        "QI-JAA",
                        "-f",
                        "5",
                        "--zero-fuel-mass",
                        "55t",
                        "--zero-fuel-cg",
                        "25%",
                        "--fuel",
                        "8t",
                        "--taxi-fuel",
                        "200kg",
                        "--trip-fuel",
                        "5t"))
                .isZero();
        assertThat(out.toString()).contains("62,800").contains("57,800").contains("l landing");
    }

    @Test
    void findingsAreTold() {
        assertThat(set("--tail", "QI-JAA", "-f", "5", "-m", "76t", "-g", "24%")).isZero();
        assertThat(out.toString())
                .contains("Verdict: BREACHED")
                .contains("BREACH    take-off mass 76000 kg is 1500 kg above the maximum take-off mass");
        assertFitsATerminal();
    }

    @Test
    void aSettingIsComparedAndToldWhatItStandsFor() {
        assertThat(set("--type", "jet180", "-f", "5", "-g", "27.5%", "-r", "1.0UP"))
                .isZero();
        assertThat(out.toString())
                .contains("recorded would be right for 22.86 to 23.43 % MAC")
                .contains("0.80 UP: it may rotate early");
    }

    @Test
    void aTypeInInchesAndPoundsAnswersInThem() {
        assertThat(set("--tail", "QI-SAA", "-m", "2300lb", "-g", "98in")).isZero();
        assertThat(out.toString()).contains("2,300").contains("98.00").contains("The type has no take-off trim scale");
        assertFitsATerminal();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--tail QI-JAX -f 5 -m 60t -g 25% | tail: unknown tail (value 'QI-JAX'",
                "--tail QI-JAA -f 5 -m 60 -g 25% | takeoff-mass: the unit is missing",
                "--type jet18 -f 5 -g 25% | type: unknown type (value 'jet18'; expected one of jet180, prop70, single4)",
                "--type jet180 -f 5 passengers=3 fuel=9t trip-fuel=5t | type: a load needs the basic mass of a tail",
                "--type jet180 --tail QI-JAA -g 25% | type: both type and tail are given",
                "--type jet180 -f 5 -g 45index | takeoff-mass: an index means nothing without its mass",
                "flaps | 'flaps' is not a name with a value",
                "flaps=5 flaps=1 | flaps is given twice",
                "--tail QI-JAA -f 5 -m 60t -g 25% --write x.doc | --write: 'x.doc' is of no known kind",
            })
    void whatDoesNotFitIsToldAndEndsWithTwo(String args, String message) {
        assertThat(set(args.split(" "))).isEqualTo(2);
        assertThat(err.toString()).contains(message);
        assertThat(out.toString()).isEmpty();
    }

    @Test
    @ResourceLock(Resources.SYSTEM_PROPERTIES)
    void nothingGivenWithoutATerminalSaysWhatToDo() {
        assertThat(set()).isEqualTo(2);
        assertThat(err.toString()).contains("--ask");
    }

    private int ask(String... answers) {
        InputStream before = System.in;
        try {
            System.setIn(
                    new ByteArrayInputStream((String.join("\n", answers) + "\n").getBytes(StandardCharsets.UTF_8)));
            return set("--ask");
        } finally {
            System.setIn(before);
        }
    }

    @Test
    @ResourceLock("System.in")
    void askedFieldByFieldWrongAnswersAreToldAndAskedAgain() {
        assertThat(ask("QI-JAX", "qi-jaa", "7", "1", "1", "24.5", "24.5%", "", "63.6t"))
                .isZero();
        assertThat(out.toString())
                .contains("unknown tail (value 'QI-JAX'")
                .contains("one of 1, 5, 15")
                .contains("takeoff-cg: the unit is missing")
                .contains("a value is needed here")
                .contains("Take-off trim to set: 0.9 UP");
    }

    @Test
    @ResourceLock("System.in")
    void askedForAWholeLoadingPlacesMayBeLeftOut() {
        assertThat(ask(
                        "QI-JAA", "5", "3", "20", "22", "25", "25", "22", "20", "800kg", "1.2t", "900kg", "600kg",
                        "100kg", "3500kg", "", "3500kg", "200kg", "4800kg"))
                .isZero();
        String asked = out.toString()
                .lines()
                .filter(line -> line.contains("trim to set"))
                .findFirst()
                .orElseThrow();
        out.getBuffer().setLength(0);
        assertThat(set(FULL)).isZero();
        assertThat(out.toString()).contains(asked);
    }

    @Test
    @ResourceLock("System.in")
    void askedForATypeWithZeroFuel() {
        assertThat(ask("jet180", "5", "2", "55t", "25%", "8t", "", "5t")).isZero();
        assertThat(out.toString()).contains("63,000").contains("Take-off trim to set");
    }

    @Test
    @ResourceLock("System.in")
    void anInputThatEndsEarlyEndsWithTwo() {
        assertThat(ask("QI-JAA", "5")).isEqualTo(2);
        assertThat(err.toString()).contains("The input ended before all was known.");
    }

    private static Document xml(String page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    @Test
    void theLoadSummaryIsAPageThatLoadsNothingAndTheSameBytesTwice() throws Exception {
        Path one = folder.resolve("one.html");
        Path two = folder.resolve("two.html");
        assertThat(set(with(one, "from=<b>&"))).isZero();
        assertThat(set(with(two, "from=<b>&"))).isZero();
        String page = Files.readString(one, StandardCharsets.UTF_8);
        assertThat(page).isEqualTo(Files.readString(two, StandardCharsets.UTF_8));
        Document document = xml(page);
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(document.getElementsByTagName("link").getLength()).isZero();
        assertThat(page)
                .contains("default-src &#39;none&#39;")
                .contains("&lt;b&gt;&amp;")
                .contains("simulation, training and analysis only")
                .containsPattern("class=\"setting\">\\d\\.\\d UP<")
                .doesNotContain("http://www.w3.org/1999/xlink", "url(");
    }

    private static List<String> with(Path file, String... more) {
        return Stream.of(FULL.stream(), Stream.of(more), Stream.of("-w", file.toString()))
                .flatMap(one -> one)
                .toList();
    }

    @Test
    void theLoadSummaryIsAWorkbookToo() throws IOException {
        Path one = folder.resolve("one.xlsx");
        Path two = folder.resolve("two.XLSX");
        assertThat(set(with(one))).isZero();
        assertThat(set(with(two))).isZero();
        assertThat(Files.mismatch(one, two)).isEqualTo(-1);
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(one))) {
            StringBuilder text = new StringBuilder();
            book.getSheetAt(0)
                    .forEach(row -> row.forEach(cell -> text.append(cell).append('\n')));
            assertThat(text)
                    .contains("QI-JAA, Twin-jet of 180 seats")
                    .contains("this setting is right for")
                    .contains("simulation, training and analysis only")
                    .contains("hold 2\n1,200 kg");
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsTold() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        assertThat(set(with(file.resolve("s.html")))).isEqualTo(2);
        assertThat(err.toString()).contains("The load summary cannot be written to");
    }

    @Test
    void unicodeIsDrawnWhereItIsKnown() {
        assertThat(BigLetters.draw("1.1 DN", false))
                .anySatisfy(line -> assertThat(line).contains("█"));
        assertThat(BigLetters.draw("0123456789.UPDN°- ", true))
                .hasSize(5)
                .allSatisfy(line -> assertThat(line).matches("[# ]*"));
    }
}
