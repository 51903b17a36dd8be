package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The audit as a user starts it: what is said and with which exit code, on the shipped configuration. */
class AuditCommandTest {

    private static final List<String> HEADINGS = List.of(
            "flight",
            "date",
            "tail",
            "from",
            "to",
            "pilot",
            "flaps",
            "pax A",
            "pax B",
            "pax C",
            "pax D",
            "pax E",
            "pax F",
            "hold 1 kg",
            "hold 2 kg",
            "hold 3 kg",
            "hold 4 kg",
            "hold 5 kg",
            "fuel left kg",
            "fuel centre kg",
            "fuel right kg",
            "taxi kg",
            "trip kg");
    private static final String CLEAN =
            "T101,2026-05-01,QI-JAA,PORTA,LANDB,owl,5,20,22,25,25,22,20,800,1200,900,600,100,3500,0,3500,200,4800";
    private static final String AFT =
            "T102,2026-05-02,QI-JAA,PORTA,LANDB,owl,5,0,0,0,30,30,30,0,0,1900,1600,500,3500,0,3500,200,4800";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private Path season(String... rows) {
        return file("season", "season-1.csv", StandardCharsets.UTF_8, rows);
    }

    private Path file(String season, String name, Charset charset, String... rows) {
        try {
            Path path = Files.createDirectories(folder.resolve(season)).resolve(name);
            String text = String.join(",", HEADINGS) + "\n" + String.join("\n", rows) + "\n";
            Files.writeString(path, text, charset);
            return path.getParent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int audit(Path season, String... options) {
        Stream<String> fixed =
                Stream.of("audit", season.toString(), "--reports", reports().toString());
        return run(Stream.concat(fixed, Stream.of(options)).toArray(String[]::new));
    }

    private Path reports() {
        return folder.resolve("reports");
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private String report(String season, String name) throws IOException {
        return Files.readString(reports().resolve(season).resolve(name), StandardCharsets.UTF_8);
    }

    @Test
    void aSeasonIsAuditedAndSummedUp() throws IOException {
        assertThat(audit(season(CLEAN, AFT, ",,,,,,,,,,,,,,,,,,,,,,"))).isZero();
        assertThat(out.toString())
                .contains("rows seen          3 = 2 accepted + 0 rejected + 1 blank + 0 skipped, from 1 file")
                .contains("T102 QI-JAA: ")
                .contains("simulation, training and analysis only");
        assertThat(err.toString()).isEmpty();
        assertThat(reports().resolve("season")).isDirectoryContaining("glob:**/season.xlsx");
        assertThat(report("season", "flights.csv"))
                .startsWith("file,row,flight,date,tail,type,from,to,flaps,zfw_kg,zfw_cg_pct_mac,ramp_kg,tow_kg,"
                        + "tow_cg_pct_mac,lw_kg,lw_cg_pct_mac,trim_units,trim_setting,status,findings")
                .contains("season-1.csv,2,T101,2026-05-01,QI-JAA,jet180,PORTA,LANDB,5,")
                .contains(",clean,")
                .contains(",breached,");
    }

    @ParameterizedTest
    @CsvSource({"breach, 1", "BREACH, 1", "marginal, 0", "rejected, 0", "'breach,rejected', 1"})
    void failOnTurnsWhatWasFoundIntoExitCodeOne(String kinds, int exitCode) {
        assertThat(audit(season(CLEAN, AFT), "--fail-on", kinds)).isEqualTo(exitCode);
    }

    @Test
    void whatIsPassedOverIsListedWithItsReasonOnEveryOutput() throws IOException {
        Path season = season(CLEAN, "Total" + ",".repeat(HEADINGS.size() - 1), CLEAN, AFT);
        assertThat(audit(season)).isZero();
        String totals = "season-1.csv:3: totals: it begins with 'Total' and has no flight, date and tail";
        String repeated = "season-1.csv:4: the flight stands in season-1.csv:2 cell for cell";
        assertThat(out.toString())
                .contains("rows seen          4 = 2 accepted + 0 rejected + 0 blank + 2 skipped, from 1 file")
                .contains("Not read or passed over\n  " + totals + "\n  " + repeated + "\n");
        assertThat(report("season", "skipped.csv")).isEqualTo("""
                        file,sheet,row,kind,reason
                        season-1.csv,,3,totals,"totals: it begins with 'Total' and has no flight, date and tail"
                        season-1.csv,,4,repeated,the flight stands in season-1.csv:2 cell for cell
                        """);
        assertThat(report("season", "run.json"))
                .contains("\"skipped\" : 2")
                .contains("\"totals\" : 1")
                .contains("\"repeated\" : 1")
                .contains("\"reason\" : \"the flight stands in season-1.csv:2 cell for cell\"");
        assertThat(report("season", "report.html")).contains("season-1.csv:4: the flight stands in season-1.csv:2");
        try (XSSFWorkbook workbook = new XSSFWorkbook(
                Files.newInputStream(reports().resolve("season").resolve("season.xlsx")))) {
            assertThat(workbook.getSheet("Run facts"))
                    .anyMatch(row -> row.getCell(0) != null
                            && row.getCell(0).toString().equals("season-1.csv:4")
                            && row.getCell(1).toString().equals("the flight stands in season-1.csv:2 cell for cell"));
        }
    }

    /** Hold 2 and zone F are left blank by a map that does not say what that means. */
    @Test
    void blankLoadCellsThatNobodyExplainsAreCountedOnEveryOutput() throws IOException {
        Path config = Files.createDirectories(folder.resolve("silent"));
        copy(Path.of("config"), config);
        Path house = config.resolve("columns/house.yaml");
        Files.writeString(house, Files.readString(house).replace("blank: none\n", ""));
        String blank = CLEAN.replace(",20,800,1200,", ",,800,,");
        assertThat(audit(season(blank, AFT), "--config", config.toString())).isZero();
        assertThat(out.toString()).contains("  blanks             1 with blank load cells, counted as none;");
        assertThat(report("season", "run.json"))
                .contains("\"blanks_as_none\" : 1")
                .contains("1 flight has blank load");
        assertThat(report("season", "report.html")).contains("1 flight has blank load cells");
        assertThat(report("season", "findings.csv"))
                .contains("blank-load,ramp,")
                .contains("2 blank load cells were counted as none: pax F, hold 2 kg");
        List<String> flights = report("season", "flights.csv").lines().toList();
        int column = List.of(flights.get(0).split(",", -1)).indexOf("blanks_as_none");
        assertThat(flights.stream().skip(1).map(line -> line.split(",", -1)[column]))
                .containsExactly("2", "0");
        try (XSSFWorkbook workbook = new XSSFWorkbook(
                Files.newInputStream(reports().resolve("season").resolve("season.xlsx")))) {
            assertThat(workbook.getSheet("Run facts"))
                    .anyMatch(row -> row.getCell(1) != null
                            && row.getCell(1).toString().startsWith("1 flight has blank load cells"));
        }
        assertThat(audit(season(blank, AFT))).isZero();
        assertThat(report("season", "run.json"))
                .contains("\"blanks_as_none\" : 0")
                .doesNotContain("remarks");
    }

    @Test
    void rejectedRowsAreNoFailureUnlessAskedFor() {
        String bad = CLEAN.replace("QI-JAA", "QI-XXX");
        assertThat(audit(season(CLEAN, bad))).isZero();
        assertThat(audit(season(CLEAN, bad), "--fail-on", "rejected")).isEqualTo(1);
    }

    @Test
    void aRowWithFiveFaultsListsFiveReasons() throws IOException {
        String bad = "T103,32.13,QI-JXX,PORTA,LANDB,owl,5,0,0,0,30,30,30,0,0,1900,-1600,\"12,5\",3500,0,3500,200,";
        assertThat(audit(season(CLEAN, bad))).isZero();
        assertThat(report("season", "rejected.csv").lines().skip(1).findFirst().orElseThrow())
                .startsWith("season-1.csv,,3,house,")
                .contains("date: not a date (value '32.13'; expected ")
                .contains("tail: unknown tail (value 'QI-JXX'; expected ")
                .contains("hold 4 kg: less than zero (value '-1600'; expected ")
                .contains("hold 5 kg: not a number (value '12,5'; expected ")
                .contains("trip kg: trip fuel is missing (expected ")
                .endsWith(
                        "T103,32.13,QI-JXX,PORTA,LANDB,owl,5,0,0,0,30,30,30,0,0,1900,-1600,\"12,5\",3500,0,3500,200,,");
    }

    @Test
    void aFolderWithoutFilesCannotBeAudited() throws IOException {
        Path empty = Files.createDirectories(folder.resolve("nothing"));
        assertThat(audit(empty)).isEqualTo(2);
        assertThat(err.toString())
                .contains("nothing")
                .contains("holds no file to read")
                .contains(".xlsx");
        assertThat(reports().resolve("nothing")).doesNotExist();
    }

    @Test
    void aMissingSeasonCannotBeAudited() {
        assertThat(audit(folder.resolve("gone"))).isEqualTo(2);
        assertThat(err.toString()).contains("gone").contains("no such file or folder");
    }

    @Test
    void anEmptyFileCannotBeAuditedAlone() throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.csv"));
        assertThat(audit(empty)).isEqualTo(2);
        assertThat(err.toString()).contains("empty.csv").contains("empty");
    }

    @Test
    void anEmptyFileAmongOthersIsToldAndTheRestIsFinished() throws IOException {
        Path season = season(CLEAN);
        Files.createFile(season.resolve("zero.csv"));
        assertThat(audit(season)).isZero();
        assertThat(err.toString()).contains("zero.csv").contains("empty");
        assertThat(report("season", "run.json")).contains("zero.csv");
        assertThat(audit(season, "--fail-on", "rejected")).isEqualTo(1);
    }

    @Test
    void aDuplicateHeadingIsNamed() throws IOException {
        Path season = Files.createDirectories(folder.resolve("twice"));
        String headings = String.join(",", HEADINGS) + ",Pax  A";
        Files.writeString(season.resolve("season-2.csv"), headings + "\n" + CLEAN + ",1\n", StandardCharsets.UTF_8);
        assertThat(audit(season)).isEqualTo(2);
        assertThat(err.toString()).contains("season-2.csv:1").contains("Pax  A").contains("twice");
    }

    @Test
    void faultsOfTheConfigurationAreAllToldAtOnce() throws IOException {
        Path config = Files.createDirectories(folder.resolve("config"));
        copy(Path.of("config"), config);
        Path jet = config.resolve("types/jet180.yaml");
        String text = Files.readString(jet, StandardCharsets.UTF_8);
        Files.writeString(
                jet,
                text.replace("  max-landing: 65.0 t\n", "").replace("divisor: 1000 kg m", "divisor: many"),
                StandardCharsets.UTF_8);
        assertThat(audit(season(CLEAN), "--config", config.toString())).isEqualTo(2);
        assertThat(err.toString())
                .contains("types/jet180.yaml:")
                .contains("max-landing")
                .contains("divisor")
                .contains("many");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "--threads, 0, --threads",
        "--charset, klingon, --charset",
        "--delimiter, ab, --delimiter",
        "--map, nosuch, nosuch",
        "--fail-on, everything, everything"
    })
    void aBadOptionIsNamed(String option, String value, String said) {
        assertThat(audit(season(CLEAN), option, value)).isEqualTo(2);
        assertThat(err.toString()).contains(said);
    }

    @Test
    void theNumberOfThreadsDoesNotChangeAByte() throws IOException {
        String[] rows = Stream.iterate(0, i -> i + 1)
                .limit(2500)
                .map(i -> (i % 7 == 0 ? AFT : CLEAN).replace("T10", "T" + i + "x"))
                .toArray(String[]::new);
        Path season = season(rows);
        List<String> names = List.of(
                "findings.csv",
                "flights.csv",
                "rejected.csv",
                "report.html",
                "run.json",
                "season.xlsx",
                "skipped.csv",
                "statistics.csv");
        for (String threads : List.of("1", "2", "7")) {
            Path into = folder.resolve("by-" + threads);
            assertThat(Main.run(
                            new PrintWriter(out, true),
                            new PrintWriter(err, true),
                            "audit",
                            season.toString(),
                            "--reports",
                            into.toString(),
                            "--name",
                            "one",
                            "--threads",
                            threads))
                    .as(err.toString())
                    .isZero();
            for (String name : names) {
                assertThat(into.resolve("one").resolve(name))
                        .as(threads)
                        .hasSameBinaryContentAs(folder.resolve("by-1/one").resolve(name));
            }
        }
        assertThat(Files.readString(folder.resolve("by-1/one/flights.csv")).lines())
                .hasSize(2501);
        try (Stream<Path> files = Files.list(folder.resolve("by-7/one"))) {
            assertThat(files.map(file -> String.valueOf(file.getFileName())).filter(name -> !name.startsWith(".")))
                    .containsExactlyInAnyOrderElementsOf(names);
        }
    }

    @Test
    void theSameSeasonAsWorkbookGivesTheSameResults() throws IOException {
        String bad = CLEAN.replace("QI-JAA", "QI-XXX");
        assertThat(audit(season(CLEAN, bad, AFT))).isZero();
        Path workbook = Files.createDirectories(folder.resolve("book")).resolve("season-1.xlsx");
        writeWorkbook(workbook, CLEAN, bad, AFT);
        assertThat(audit(workbook.getParent())).isZero();
        assertThat(report("book", "flights.csv")
                        .replace("season-1.xlsx", "season-1.csv")
                        .replace("Loadings", ""))
                .isEqualTo(report("season", "flights.csv"));
        assertThat(report("book", "findings.csv")
                        .replace("season-1.xlsx", "season-1.csv")
                        .replace("Loadings", ""))
                .isEqualTo(report("season", "findings.csv"));
    }

    /**
     * The house files of the demo season, thousands of rows of every level and with every fault, as one workbook each.
     */
    @Test
    void theDemoSeasonAsWorkbooksGivesTheSameResults() throws IOException {
        Path texts = Files.createDirectories(folder.resolve("texts"));
        Path books = Files.createDirectories(folder.resolve("books"));
        for (String month : List.of("04", "05", "06", "07", "09")) {
            String name = "season-2026-" + month;
            Path text = Path.of("data-in/demo", name + ".csv");
            Files.copy(text, texts.resolve(name + ".csv"));
            List<List<String>> rows;
            try (CSVParser parser = CSVParser.parse(text, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
                rows = parser.stream().map(CSVRecord::toList).toList();
            }
            writeWorkbook(books.resolve(name + ".xlsx"), rows);
        }
        assertThat(audit(texts)).isZero();
        assertThat(audit(books)).isZero();
        for (String name : List.of("flights.csv", "findings.csv")) {
            List<String> ofTexts = withoutPlace("texts", name);
            assertThat(ofTexts).as(name).hasSizeGreaterThan(100).isEqualTo(withoutPlace("books", name));
        }
    }

    /** The rows of a report without file and sheet. Row numbers agree, as no cell of the demo holds a line break. */
    private List<String> withoutPlace(String season, String name) throws IOException {
        try (CSVParser parser = CSVParser.parse(
                reports().resolve(season).resolve(name),
                StandardCharsets.UTF_8,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return parser.stream()
                    .map(CSVRecord::toMap)
                    .peek(row -> {
                        row.remove("file");
                        row.remove("sheet");
                    })
                    .map(Object::toString)
                    .toList();
        }
    }

    /** Numbers as numbers, the rest as text. */
    private static void writeWorkbook(Path path, String... rows) throws IOException {
        List<List<String>> cells = new ArrayList<>(List.of(HEADINGS));
        Stream.of(rows).map(row -> List.of(row.split(",", -1))).forEach(cells::add);
        writeWorkbook(path, cells);
    }

    private static void writeWorkbook(Path path, List<List<String>> rows) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream to = Files.newOutputStream(path)) {
            XSSFSheet sheet = workbook.createSheet("Loadings");
            for (int i = 0; i < rows.size(); i++) {
                fill(sheet.createRow(i), rows.get(i));
            }
            workbook.write(to);
        }
    }

    private static void fill(XSSFRow row, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).matches("\\d+")) {
                row.createCell(i).setCellValue(Double.parseDouble(cells.get(i)));
            } else {
                row.createCell(i).setCellValue(cells.get(i));
            }
        }
    }

    @Test
    void windows1252IsReadWhenToldAndRefusedWithAdviceWhenNot() throws IOException {
        Charset western = Charset.forName("windows-1252");
        Path season = file("western", "season-1.csv", western, CLEAN.replace("owl", "Zoë"));
        assertThat(audit(season)).isEqualTo(2);
        assertThat(err.toString()).contains("season-1.csv").contains("--charset");
        assertThat(audit(season, "--charset", "windows-1252")).isZero();
        assertThat(report("western", "flights.csv")).contains("pilot=Zoë");
    }

    @Test
    void anUnwritableReportsFolderIsSaid() throws IOException {
        Path blocked = Files.createFile(folder.resolve("blocked"));
        assertThat(run("audit", season(CLEAN).toString(), "--reports", blocked.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("cannot be written").contains("blocked");
    }
}
