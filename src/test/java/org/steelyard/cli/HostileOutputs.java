package org.steelyard.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Everything that every command writes when names of all kinds are attacks: on spreadsheets, pages and folders. */
public final class HostileOutputs {

    /** Texts that a program might run, or take for a path, a mark or an end of something. */
    public static final List<String> EVIL = List.of(
            "=HYPERLINK(\"http://elsewhere.invalid/\",\"x\")",
            "<img src=x onerror='window.bad=1'></script><script>window.bad=1</script>",
            "\u2028]]>--><!--</style></title></svg>\" onload=\"window.bad=1",
            "@SUM(1)|'cmd'!A0",
            "+1+1",
            "-1-1",
            "\t=1+1",
            "\uFF1D1+1",
            "../../x",
            "CON",
            "a/b\\c",
            "&\"Arial\"&A&amp;",
            "\u202E{{7*7}}${7*7}",
            "y".repeat(300));

    /** A type's id and a tail that are attacks themselves. */
    public static final String TYPE = "=T<script>window.bad=1</script>\"&'/../x";

    private static final String TAIL = "=QI<i onclick=alert(1)>&\"'";

    private final Path folder;

    private HostileOutputs(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes all of it.
     *
     * @param folder an empty folder; inputs go into {@code in} in it, outputs into {@code out/…}
     * @return the folder of the outputs
     * @throws IOException if an input cannot be written
     */
    public static Path write(Path folder) throws IOException {
        HostileOutputs outputs = new HostileOutputs(folder);
        outputs.config();
        outputs.seasons();
        outputs.sheets();
        outputs.commands();
        return folder.resolve("out");
    }

    private Path in(String name) throws IOException {
        Path path = folder.resolve("in").resolve(name);
        Files.createDirectories(path.getParent());
        return path;
    }

    private void config() throws IOException {
        Path shipped = Path.of("config");
        try (Stream<Path> paths = Files.walk(shipped)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                Files.copy(path, in("config/" + shipped.relativize(path)), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        String jet = Files.readString(Path.of("config/types/jet180.yaml"), StandardCharsets.UTF_8);
        type(jet, "evil", TYPE);
        type(jet, "evil-too", TYPE.replace("=T", "=T.."));
        Path fleet = in("config/fleet.csv");
        try (CSVPrinter rows = new CSVPrinter(
                Files.newBufferedWriter(fleet, java.nio.file.StandardOpenOption.APPEND), CSVFormat.RFC4180)) {
            rows.printRecord(TAIL, TYPE, "40950 kg", "24.2 % MAC", EVIL.get(1));
            rows.printRecord(TAIL + "2", TYPE.replace("=T", "=T.."), "40950 kg", "24.2 % MAC", EVIL.get(0));
        }
    }

    private void type(String jet, String file, String id) throws IOException {
        String evil = jet.replaceFirst("type: jet180", "type: " + yaml(id))
                .replaceFirst("name: Twin-jet of 180 seats", "name: " + yaml(EVIL.get(1)))
                .replace("name: hold 1,", "name: " + yaml(EVIL.get(2).replace("\u2028", "")) + ",");
        Files.writeString(in("config/types/" + file + ".yaml"), evil, StandardCharsets.UTF_8);
    }

    private static String yaml(String text) {
        return "'" + text.replace("'", "''") + "'";
    }

    private void seasons() throws IOException {
        for (String name : List.of("one", "two")) {
            List<String> house = Files.readAllLines(
                    Path.of("data-in/demo/season-2026-0" + (name.equals("one") ? 4 : 5) + ".csv"),
                    StandardCharsets.UTF_8);
            List<String> headings = new ArrayList<>(List.of(house.get(0).split(",")));
            headings.addAll(EVIL.subList(0, 7));
            Path file = in(name + "/season-='<b>&\"" + name + ".csv");
            try (CSVPrinter rows =
                    new CSVPrinter(Files.newBufferedWriter(file, StandardCharsets.UTF_8), CSVFormat.RFC4180)) {
                rows.printRecord(headings);
                for (int i = 1; i < 261; i++) {
                    rows.printRecord(row(house.get(i), headings.size(), i));
                }
            }
            workbook(house, in(name + "/season-book.xlsx"));
        }
    }

    private static List<String> row(String line, int columns, int number) {
        List<String> cells = new ArrayList<>(List.of(line.split(",", -1)));
        String evil = EVIL.get(number % EVIL.size());
        cells.set(0, evil + number);
        cells.set(2, number % 2 == 0 ? TAIL : TAIL + "2");
        cells.set(3, evil);
        cells.set(4, EVIL.get((number + 1) % EVIL.size()));
        cells.set(5, EVIL.get((number + 2) % EVIL.size()));
        if (number % 9 == 0) {
            cells.set(15, evil);
        }
        if (number % 7 == 0) {
            cells.set(25, "9999");
        }
        while (cells.size() < columns) {
            cells.add(EVIL.get((number + cells.size()) % EVIL.size()));
        }
        return cells;
    }

    private static void workbook(List<String> house, Path file) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            var sheet = book.createSheet("=A1'<b>&\"x");
            for (int i = 0; i < 9; i++) {
                var row = sheet.createRow(i);
                List<String> cells = i == 0 ? List.of(house.get(0).split(",")) : row(house.get(300 + i), 0, i + 1);
                for (int column = 0; column < cells.size(); column++) {
                    row.createCell(column).setCellValue(cells.get(column));
                }
            }
            book.write(out);
        }
    }

    private void sheets() throws IOException {
        List<String> all = Files.readAllLines(Path.of("data-in/class/sheets.csv"), StandardCharsets.UTF_8);
        List<String> students = new ArrayList<>(EVIL);
        students.addAll(List.of("Zo\u00EB", "ZOE", "zoe", "."));
        try (CSVPrinter rows = new CSVPrinter(
                Files.newBufferedWriter(in("sheets/sheets.csv"), StandardCharsets.UTF_8), CSVFormat.RFC4180)) {
            rows.printRecord((Object[]) all.get(0).split(","));
            for (int i = 0; i < students.size(); i++) {
                String[] cells = all.get(1 + i).split(",", -1);
                cells[0] = students.get(i);
                rows.printRecord((Object[]) cells);
            }
        }
        Files.copy(Path.of("data-in/class/given.csv"), in("sheets/given.csv"));
    }

    private void commands() throws IOException {
        String out = folder.resolve("out").toString();
        String in = folder.resolve("in").toString();
        String season = in + "/one/season-='<b>&\"one.csv";
        run(
                "audit",
                in + "/one",
                "-n",
                "=a'&",
                "--by",
                "pilot," + EVIL.get(0).substring(0, 10),
                "--room",
                "-o",
                out + "/audit");
        run("audit", in + "/two", "-n", "=b'&", "-o", out + "/audit");
        run("against", out + "/audit/=a'&", out + "/audit/=b'&", "-o", out + "/against");
        run("grade", in + "/sheets", "-n", "=c", "-o", out + "/grade");
        run("make-exercises", TYPE, "--count", "2", "-o", out + "/exercises");
        run("cards", "--type", TYPE, "-o", out + "/cards");
        run("check-config", "--brief", "--write", out + "/types");
        run("curtail", TYPE, "--page", out + "/curtail/p.html", "--section", out + "/curtail/envelopes.yaml");
        for (String ending : List.of("html", "xlsx")) {
            run(
                    "set",
                    "--tail",
                    TAIL,
                    "-f",
                    "5",
                    "-m",
                    "60t",
                    "-g",
                    "24%",
                    "flight=" + EVIL.get(1),
                    "from=" + EVIL.get(0),
                    "to=" + EVIL.get(2),
                    "--write",
                    out + "/set/s." + ending);
        }
        run("propose-map", season, "--type", TYPE, "--name", "evil", "--write", out + "/map/evil.yaml");
        run("fit-scale", in + "/one", "--type", TYPE, "--section", out + "/fit/trim.yaml");
    }

    private void run(String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.add("-c");
        all.add(folder.resolve("in").resolve("config").toString());
        StringWriter said = new StringWriter();
        int exitCode = Main.run(new PrintWriter(said, true), new PrintWriter(said, true), all.toArray(String[]::new));
        if (exitCode != 0) {
            throw new AssertionError(String.join(" ", args) + ": " + exitCode + "\n" + said);
        }
    }
}
