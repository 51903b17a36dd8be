package org.steelyard.report.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.grade.make.Difficulty;
import org.steelyard.grade.make.ExerciseMaker;
import org.steelyard.grade.make.LoadShift;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.grade.mark.MarkedItem;
import org.steelyard.grade.mark.Marker;
import org.steelyard.grade.mark.Outcome;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.report.file.Destination;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What a student holds in hand: the printed exercises, the blank workbooks, and afterwards the key. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExercisePapersTest {

    private static final EdgeTable EDGES = new EdgeTable(ExercisePapersTest.class);
    private static final int COUNT = 16;

    @TempDir
    private static Path folder;

    private Configuration configuration;
    private final Map<String, Papers> papers = new TreeMap<>();

    @AfterAll
    static void write() {
        EDGES.write();
    }

    @BeforeAll
    void load() {
        configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
    }

    // ------------------------------------------------------------ making and reading

    private List<Tail> tails(String type) {
        return configuration.tails().values().stream()
                .filter(tail -> tail.type().id().equals(type))
                .toList();
    }

    private List<MadeExercise> made(List<Tail> tails, int count, long seed) {
        ExerciseMaker maker = new ExerciseMaker(tails, configuration.policy(), new SplittableRandom(seed)::nextInt);
        List<MadeExercise> made = new ArrayList<>();
        for (int i = 0; made.size() < count; i++) {
            maker.make("X" + (made.size() + 1), List.of(Difficulty.values()).get(i % Difficulty.values().length))
                    .ifPresent(made::add);
        }
        return made;
    }

    /** Exercises of all difficulties on one aircraft, as they are written. */
    private record Papers(List<MadeExercise> made, Path into) {}

    private Papers papers(String type) throws IOException {
        Papers there = papers.get(type);
        if (there == null) {
            List<MadeExercise> made = made(tails(type).subList(0, 1), COUNT, 1);
            there = new Papers(made, written(made, type));
            papers.put(type, there);
        }
        return there;
    }

    private Path written(List<MadeExercise> made, String name) throws IOException {
        Path into = folder.resolve(name);
        ExerciseFiles.write(made, configuration.policy(), CgMeasure.PERCENT_MAC, Destination.of(into), "1.0");
        return into;
    }

    /** The cells of each table of the printed page by the words above it, the headings as first row. */
    private static Map<String, List<List<String>>> printed(Path page) throws Exception {
        Element root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(Files.readString(page).replace("<!DOCTYPE html>", ""))))
                .getDocumentElement();
        Map<String, List<List<String>>> tables = new TreeMap<>();
        NodeList frames = root.getElementsByTagName("div");
        for (int i = 0; i < frames.getLength(); i++) {
            Element frame = (Element) frames.item(i);
            List<List<String>> rows = new ArrayList<>();
            NodeList all = frame.getElementsByTagName("tr");
            for (int r = 0; r < all.getLength(); r++) {
                rows.add(cells((Element) all.item(r)));
            }
            tables.put(frame.getAttribute("aria-label"), rows);
        }
        return tables;
    }

    private static List<String> cells(Element row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getChildNodes().getLength(); i++) {
            if (row.getChildNodes().item(i) instanceof Element cell) {
                cells.add(cell.getTextContent());
            }
        }
        return cells;
    }

    private static List<List<String>> sheet(Path file, String name) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            List<List<String>> rows = new ArrayList<>();
            for (Row row : book.getSheet(name)) {
                List<String> cells = new ArrayList<>();
                for (Cell cell : row) {
                    cells.add(cell.toString());
                }
                rows.add(cells);
            }
            return rows;
        }
    }

    private static Path blank(Path into, int number) {
        return into.resolve("blank/x" + number + ".xlsx");
    }

    // ------------------------------------------------------------ trim scales

    /** Reads a printed scale as a student does: between its rows and between its columns of mass. */
    private static double readOff(List<List<String>> table, double cgPercentMac, double massKg) {
        int row = 2;
        while (number(table.get(row).get(0)) < cgPercentMac && row < table.size() - 1) {
            row++;
        }
        double low = alongMass(table, row - 1, massKg);
        double high = alongMass(table, row, massKg);
        double from = number(table.get(row - 1).get(0));
        double to = number(table.get(row).get(0));
        return low + (high - low) * (cgPercentMac - from) / (to - from);
    }

    private static double alongMass(List<List<String>> table, int row, double massKg) {
        List<String> heads = table.get(0);
        if (heads.size() == 2) {
            return trim(table.get(row).get(1));
        }
        int column = 2;
        while (number(heads.get(column)) < massKg && column < heads.size() - 1) {
            column++;
        }
        double share =
                (massKg - number(heads.get(column - 1))) / (number(heads.get(column)) - number(heads.get(column - 1)));
        double left = trim(table.get(row).get(column - 1));
        return left + share * (trim(table.get(row).get(column)) - left);
    }

    private static double number(String text) {
        return Double.parseDouble(text.replaceAll("[^0-9.]", ""));
    }

    private static double trim(String text) {
        return number(text) * (text.contains("DN") ? -1 : 1);
    }

    private Outcome marked(MadeExercise made, double units) {
        Exercise asked = Exercise.of(made.asked(), configuration.policy());
        Claim claim = new Claim.Figure(units, 0.05, CgMeasure.PERCENT_MAC, String.valueOf(units));
        StudentSheet sheet =
                Plain.studentSheet(new Origin("sheets.csv", "", 2), "Wren", "", Map.of(SheetItem.TRIM, claim));
        return new Marker(asked, configuration.marking().orElseThrow())
                .mark(sheet).items().stream()
                        .filter(item -> item.item() == SheetItem.TRIM)
                        .map(MarkedItem::outcome)
                        .findFirst()
                        .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"jet180", "prop70"})
    void whoReadsThePrintedScaleRightlyGetsTheTrimOfEveryExercise(String type) throws Exception {
        List<MadeExercise> made = papers(type).made();
        Map<String, List<List<String>>> page = printed(papers(type).into().resolve("exercises.html"));
        int right = 0;
        for (MadeExercise one : made) {
            String flaps = one.given().setting().flaps();
            List<List<String>> table = page.entrySet().stream()
                    .filter(entry -> entry.getKey().matches(".*rim.*flaps " + flaps + "\\b.*"))
                    .findFirst()
                    .orElseThrow()
                    .getValue();
            MassMoment takeoff =
                    Exercise.of(one.asked(), configuration.policy()).balance().takeoff();
            double cg = one.given().type().geometry().chord().percentAt(takeoff.armM());
            double step = one.given().type().trimScales().get(0).stepUnits();
            double units = readOff(table, Math.rint(cg * 100) / 100, Math.rint(takeoff.massKg()));
            right += marked(one, Math.rint(units / step) * step) == Outcome.RIGHT ? 1 : 0;
        }
        EDGES.row(
                EdgeTopic.PRINTED_SCALE,
                type + ", 16 exercises: trims read off the printed scale at the exercise's own mass and marked right",
                "16",
                String.valueOf(right));
    }

    @Test
    void theWholeScaleIsPrintedMassByCgAndByFlap() throws Exception {
        Map<String, List<List<String>>> page = printed(papers("jet180").into().resolve("exercises.html"));
        assertThat(page.keySet())
                .filteredOn(title -> title.contains("trim, flaps"))
                .hasSize(3);
        List<List<String>> table = page.entrySet().stream()
                .filter(entry -> entry.getKey().equals("Take-off trim, flaps 1"))
                .findFirst()
                .orElseThrow()
                .getValue();
        // as config/types/jet180.yaml has it, nose-up positive there
        EDGES.row(
                EdgeTopic.PRINTED_SCALE,
                "jet180, flaps 1: masses across the printed scale",
                "46,000 kg, 58,000 kg, 70,000 kg, 75,000 kg",
                String.join(", ", table.get(0).subList(1, table.get(0).size())));
        EDGES.row(
                EdgeTopic.PRINTED_SCALE,
                "jet180, flaps 1: the row of 32 % MAC",
                "32.0, 0.70 DN, 0.45 DN, 0.20 DN, 0.10 DN",
                String.join(", ", table.get(4)));
        List<List<String>> slope = page.entrySet().stream()
                .filter(entry -> entry.getKey().contains("flaps 15"))
                .findFirst()
                .orElseThrow()
                .getValue();
        EDGES.row(
                EdgeTopic.PRINTED_SCALE,
                "jet180, flaps 15: ends of a slope of -0.15 through -0.1 at 27.5 % MAC, from 13 to 32 % MAC",
                "13.0 2.075 UP; 32.0 0.775 DN",
                String.join(" ", slope.get(1)) + "; " + String.join(" ", slope.get(2)));
    }

    @Test
    void everyWorkbookCarriesTheSameAircraftData() throws IOException {
        Path into = papers("jet180").into();
        List<List<String>> first = sheet(blank(into, 1), "Aircraft data");
        assertThat(first.toString()).contains("46,000 kg").contains("75,000 kg");
        for (int i = 2; i <= COUNT; i++) {
            assertThat(sheet(blank(into, i), "Aircraft data")).isEqualTo(first);
        }
    }

    @Test
    void standardMassesAreThoseThatTheTailCountsBy() throws Exception {
        Tail tail = tails("jet180").get(0);
        MassScheme own = new MassScheme("own", "own masses", 84.5, 66, 84.5, 35.25, 0, 14, 90.5, 78);
        Tail other = new Tail(tail.registration(), tail.type(), tail.basic(), Optional.of(own));
        List<MadeExercise> made = made(List.of(other), 1, 3);
        Map<String, List<List<String>>> page = printed(written(made, "scheme").resolve("exercises.html"));
        assertThat(page.get("Standard masses").toString())
                .contains("[adult, 84.50 kg]")
                .contains("[child, 35.25 kg]")
                .contains("[flight crew, 90.50 kg]")
                .contains("[cabin crew, 78 kg]");
        assertThat(page.get("Load").toString()).contains("2 at 90.50 kg").contains(" at 78 kg");
    }

    // ------------------------------------------------------------ nothing is given away

    @Test
    void blanksOfExercisesThatDifferOnlyInTheirAnswersAreTheSame() throws IOException {
        List<MadeExercise> made = papers("jet180").made().subList(0, 8);
        Loading given = made.get(0).given();
        MadeExercise plain = new MadeExercise(Difficulty.INSIDE, given, "A change.", given, Optional.empty());
        for (int i = 1; i < made.size(); i++) {
            Loading other = made.get(i).asked();
            MadeExercise differs = new MadeExercise(
                    made.get(i).difficulty(),
                    given,
                    "A change.",
                    given.with(other.load(), other.fuel()),
                    Optional.of(new LoadShift(0, 1, 100 + i)));
            Path one = written(List.of(plain), "plain" + i);
            Path two = written(List.of(differs), "differs" + i);
            assertThat(blank(two, 1)).hasSameBinaryContentAs(blank(one, 1));
            assertThat(two.resolve("exercises.html")).hasSameBinaryContentAs(one.resolve("exercises.html"));
        }
    }

    /** Every cell of a blank but what is given: name, loads, fuel and the change. */
    private static List<String> besidesTheGiven(Path file, MadeExercise made) throws IOException {
        List<String> words = new ArrayList<>();
        boolean load = false;
        for (List<String> row : sheet(file, "Load sheet")) {
            String first = row.isEmpty() ? "" : row.get(0);
            boolean gap = row.stream().allMatch(String::isEmpty);
            boolean title = row.stream().skip(1).allMatch(String::isEmpty);
            load = title ? first.equals("Load") || first.equals("Fuel") : load;
            if (!gap
                    && !first.equals(SheetForm.EXERCISE)
                    && (made.change().isEmpty() || !first.equals(made.change()))) {
                List<String> kept = new ArrayList<>(row);
                if (load && kept.size() > 1) {
                    kept.set(1, "given");
                }
                words.add(String.join("|", kept));
            }
        }
        sheet(file, "Aircraft data").forEach(row -> words.add(String.join("|", row)));
        return words;
    }

    @ParameterizedTest
    @ValueSource(strings = {"jet180", "prop70", "single4"})
    void blanksOfOneAircraftDifferOnlyInWhatIsGiven(String type) throws IOException {
        List<MadeExercise> made = papers(type).made();
        Path into = papers(type).into();
        Map<String, List<String>> first = new TreeMap<>();
        for (int i = 0; i < made.size(); i++) {
            Loading given = made.get(i).given();
            String same = given.setting().flaps() + " " + given.crew().pantryCode();
            List<String> words = besidesTheGiven(blank(into, i + 1), made.get(i));
            List<String> before = first.putIfAbsent(same, words);
            if (before != null) {
                assertThat(words)
                        .as("%s of %s", made.get(i).given().flight(), type)
                        .isEqualTo(before);
            }
        }
        assertThat(first).hasSizeLessThan(COUNT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"jet180", "prop70", "single4"})
    void whatIsAskedHasAnAnswerInEveryExercise(String type) throws IOException {
        List<MadeExercise> made = papers(type).made();
        Path into = papers(type).into();
        for (int i = 0; i < made.size(); i++) {
            Exercise exercise = Exercise.of(made.get(i).asked(), configuration.policy());
            List<String> labels = sheet(blank(into, i + 1), "Load sheet").stream()
                    .filter(row -> !row.isEmpty())
                    .map(row -> row.get(0))
                    .toList();
            for (SheetItem item : SheetItem.ALL) {
                assertThat(labels.contains(SheetForm.label(item)))
                        .as("%s of %s", item, made.get(i).given().flight())
                        .isEqualTo(exercise.right(item, CgMeasure.PERCENT_MAC).isPresent());
            }
        }
    }

    @Test
    void noFigureOfTheAnswerStandsOnTheBlank() throws IOException {
        List<MadeExercise> made = papers("jet180").made();
        Path into = papers("jet180").into();
        int given = 0;
        for (int i = 0; i < made.size(); i++) {
            Exercise exercise = Exercise.of(made.get(i).asked(), configuration.policy());
            String all =
                    sheet(blank(into, i + 1), "Load sheet").toString() + sheet(blank(into, i + 1), "Aircraft data");
            double massKg = exercise.balance().takeoff().massKg();
            given += all.contains(String.format(Locale.ROOT, "%,d kg", Math.round(massKg))) ? 1 : 0;
        }
        EDGES.row(
                EdgeTopic.BLANK_SHEETS,
                "jet180, 16 exercises: blank workbooks on which the take-off mass can be read",
                "0",
                String.valueOf(given));
    }

    @Test
    void aLoadShiftIsAskedForWithoutSayingThatTheCgIsOutside() throws IOException {
        MadeExercise shift = papers("jet180").made().stream()
                .filter(one -> one.difficulty() == Difficulty.LOAD_SHIFT)
                .findFirst()
                .orElseThrow();
        EDGES.row(
                EdgeTopic.BLANK_SHEETS,
                "the task of a load shift: what it says of the CG",
                "If a CG is outside its limits",
                shift.change().substring(0, Math.min(29, shift.change().length())));
    }

    // ------------------------------------------------------------ the key

    @Test
    void theKeySaysOnWhichSideOfALimitTheCgIs() throws IOException {
        String key = Files.readString(papers("jet180").into().resolve("key.html"));
        assertThat(key).doesNotContainPattern("-[0-9.]+ % MAC (behind|ahead)");
        List<String> lines = key.lines().toList();
        int at = 0;
        while (!lines.get(at).contains("outside: take-off CG")) {
            at++;
        }
        String outside = lines.get(at).replaceAll(".*outside: ", "");
        String amount = outside.replaceAll(".* is ([0-9.]+) % MAC behind the aft limit.*", "$1");
        String take = lines.stream()
                .filter(line -> line.startsWith("take-off ") && line.contains(amount + " % MAC"))
                .findFirst()
                .orElseThrow();
        EDGES.row(
                EdgeTopic.KEY,
                "jet180, take-off CG " + amount + " % MAC behind the aft limit: the margin in the key",
                amount + " % MAC behind the aft limit",
                take.replaceAll(".*forward limit, ", ""));
    }
}
