package org.steelyard.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.report.output.RunFacts;
import org.steelyard.samples.Plain;

/** A season in a folder of its own, made of lines of the demo's files, and audited with the configuration shipped. */
record Season(Path folder) {

    private static final Path DEMO = Path.of("data-in/demo");
    private static final Progress SILENT = new Progress() {};

    static final Charset CLUB = Charset.forName("windows-1252");

    Path input() {
        return folder.resolve("season");
    }

    Path report(String name) {
        return folder.resolve("reports").resolve("season").resolve(name);
    }

    static List<String> demo(String file, Charset charset, int lines) {
        try {
            return Files.readAllLines(DEMO.resolve(file), charset).subList(0, lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The house's headings and first flights. */
    static List<String> house(int flights) {
        return demo("season-2026-04.csv", StandardCharsets.UTF_8, flights + 1);
    }

    Season with(String name, Charset charset, List<String> lines) throws IOException {
        Files.createDirectories(input());
        Files.write(input().resolve(name), lines, charset);
        return this;
    }

    Season with(String name, List<String> lines) throws IOException {
        return with(name, StandardCharsets.UTF_8, lines);
    }

    RunFacts audit() throws Exception {
        return audit(DuplicateRule.FIRST, 2);
    }

    RunFacts audit(DuplicateRule duplicates, int threads) throws Exception {
        Configuration configuration = configuration(duplicates);
        return SeasonRun.audit(
                        Plain.seasonRequest(
                                input(),
                                "season",
                                configuration,
                                ReadOptions.of(configuration.maps()),
                                folder.resolve("reports"),
                                threads,
                                "0",
                                List.of()),
                        SILENT)
                .facts();
    }

    /** The configuration shipped, with a rule for duplicates. */
    private Configuration configuration(DuplicateRule duplicates) throws IOException {
        Path shipped = Path.of("config");
        Path copy = folder.resolve("config");
        try (Stream<Path> paths = Files.walk(shipped)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                Path to = copy.resolve(shipped.relativize(path).toString());
                Files.createDirectories(to.getParent());
                Files.copy(path, to, StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Path policy = copy.resolve("policy.yaml");
        String text = Files.readString(policy, StandardCharsets.UTF_8);
        Files.writeString(policy, text.replace("duplicates: first stands", "duplicates: " + duplicates.label()));
        return ((ConfigResult.Loaded) ConfigFolder.load(copy)).configuration();
    }

    /** The lines of a report without its headings. */
    List<String> lines(String report) throws IOException {
        List<String> lines = Files.readAllLines(report(report), StandardCharsets.UTF_8);
        return lines.subList(1, lines.size());
    }

    List<CSVRecord> records(Path file) throws IOException {
        try (CSVParser parser = CSVParser.parse(
                file,
                StandardCharsets.UTF_8,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return parser.getRecords();
        }
    }

    /** A cell to be put right. */
    record Fix(String file, String row, String heading, String value) {}

    /** Puts cells of a report's rejected rows right, as a program would, and drops the file into the season. */
    void putRight(String as, Fix... fixes) throws IOException {
        List<CSVRecord> records = records(report("rejected.csv"));
        List<String> headings = records.get(0).getParser().getHeaderNames();
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = CSVFormat.RFC4180.print(out)) {
            printer.printRecord(headings);
            for (CSVRecord row : records) {
                List<String> cells = new ArrayList<>(row.toList());
                for (Fix fix : fixes) {
                    if (row.get("steelyard_file").equals(fix.file())
                            && row.get("steelyard_row").equals(fix.row())) {
                        cells.set(headings.indexOf(fix.heading()), fix.value());
                    }
                }
                printer.printRecord(cells);
            }
        }
        Files.writeString(input().resolve(as), out, StandardCharsets.UTF_8);
    }
}
