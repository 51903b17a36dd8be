package org.steelyard.report.file;

import java.util.List;
import java.util.stream.Stream;

/** The files of a season's reports. */
public enum OutputFile {
    SEASON("season.xlsx", "the workbook: overview, findings, flights, charts, statistics, rejected rows, run facts"),
    FLIGHTS("flights.csv", "every flight with all results, kg and % MAC at full precision"),
    FINDINGS("findings.csv", "every finding with value, limit and margin in the users' units and a sentence"),
    STATISTICS("statistics.csv", "spread of trim and CG by type, tail, route and more, at full precision"),
    ROOM("room.csv", "what each place of each flight could still take"),
    REJECTED("rejected.csv", "rows that could not be used, with reasons: put right, it can be read again"),
    SKIPPED("skipped.csv", "rows that are no flights or stand elsewhere, as totals and repeats, with the reason"),
    FLIGHTS_IN_PARTS("flights.parquet", "every flight with all results, kg and % MAC at full precision, in parts"),
    FINDINGS_IN_PARTS("findings.parquet", "every finding with value, limit and margin and a sentence, in parts"),
    REJECTED_IN_PARTS("rejected", "rows that could not be used, with reasons, in parts that can each be read again"),
    SKIPPED_IN_PARTS("skipped", "rows that are no flights or stand elsewhere, with the reason, in parts"),
    PAGE("report.html", "this page"),
    RUN("run.json", "inputs with checksums, counts, options, policy and methods");

    private final String fileName;
    private final String content;

    OutputFile(String fileName, String content) {
        this.fileName = fileName;
        this.content = content;
    }

    /** The one of a name. */
    static OutputFile named(String fileName) {
        return Stream.of(values())
                .filter(file -> file.fileName.equals(fileName))
                .findFirst()
                .orElseThrow();
    }

    /** Names of all of them. */
    public static List<String> fileNames() {
        return Stream.of(values()).map(OutputFile::fileName).toList();
    }

    public String fileName() {
        return fileName;
    }

    /** The folder that holds the same in parts; the file itself where there is none. */
    public OutputFile inParts() {
        return switch (this) {
            case FLIGHTS -> FLIGHTS_IN_PARTS;
            case FINDINGS -> FINDINGS_IN_PARTS;
            case REJECTED -> REJECTED_IN_PARTS;
            case SKIPPED -> SKIPPED_IN_PARTS;
            default -> this;
        };
    }

    public String content() {
        return content;
    }
}
