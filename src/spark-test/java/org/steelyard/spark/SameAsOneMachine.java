package org.steelyard.spark;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.hadoop.conf.Configuration;
import org.apache.parquet.example.data.Group;
import org.apache.parquet.hadoop.ParquetReader;
import org.apache.parquet.hadoop.example.GroupReadSupport;
import org.steelyard.report.column.ColumnList;
import org.steelyard.report.column.FindingList;
import org.steelyard.report.column.FlightList;
import org.steelyard.report.column.ListColumn;
import org.steelyard.report.text.CsvLine;

/**
 * Holds the reports of a season that was audited on Spark against those of one machine: {@code SameAsOneMachine
 * ONE_MACHINE SPARK}, two folders. Rows are compared byte for byte after sorting; means and standard deviations to 1e-12;
 * percentiles exactly up to 4,096 flights and by their rank among the flights beyond.
 */
final class SameAsOneMachine {

    private static final double RANK_ERROR = 0.0015;
    private static final double RELATIVE = 1e-12;
    private static final Map<String, Integer> PERCENTILES =
            Map.of("p5", 5, "p25", 25, "median", 50, "p75", 75, "p95", 95);
    private static final Map<String, String> COLUMN_OF = Map.of(
            "take-off CG", "tow_cg_pct_mac",
            "take-off trim", "trim_units",
            "zero-fuel CG", "zfw_cg_pct_mac",
            "landing CG", "lw_cg_pct_mac");

    private final Path one;
    private final Path spark;
    private final List<String> differences = new ArrayList<>();
    private final List<String> agreed = new ArrayList<>();
    private double worstRank;

    private SameAsOneMachine(Path one, Path spark) {
        this.one = one;
        this.spark = spark;
    }

    public static void main(String[] args) throws IOException {
        SameAsOneMachine all = compare(Path.of(args[0]), Path.of(args[1]));
        all.agreed.forEach(System.out::println);
        all.differences.forEach(System.out::println);
        System.exit(all.differences.isEmpty() ? 0 : 1);
    }

    static SameAsOneMachine compare(Path one, Path spark) throws IOException {
        SameAsOneMachine all = new SameAsOneMachine(one, spark);
        all.rows("flights", FlightList.COLUMNS);
        all.rows("findings", FindingList.COLUMNS);
        all.rejected();
        all.statistics();
        all.run();
        all.workbook();
        return all;
    }

    List<String> differences() {
        return Collections.unmodifiableList(differences);
    }

    // flights and findings

    private <T> void rows(String name, ColumnList<T> columns) throws IOException {
        Sorted exact = new Sorted();
        records(one.resolve(name + ".csv"), exact::add);
        Sorted parts = new Sorted();
        for (Path file : files(spark.resolve(name + ".parquet"))) {
            try (ParquetReader<Group> rows = ParquetReader.builder(
                            new GroupReadSupport(), new org.apache.hadoop.fs.Path(file.toUri()))
                    .withConf(new Configuration(false))
                    .build()) {
                for (Group row = rows.read(); row != null; row = rows.read()) {
                    parts.add(line(row, columns.inFiles()));
                }
            }
        }
        same(name, exact.digest(), parts.digest());
    }

    private static <T> String line(Group row, List<ListColumn<T>> columns) {
        CsvLine line = new CsvLine();
        for (int i = 0; i < columns.size(); i++) {
            if (row.getFieldRepetitionCount(i) == 0) {
                line.blank();
            } else {
                switch (columns.get(i).kind()) {
                    case TEXT, SENTENCE, SETTING, MARK, DATE -> line.text(row.getString(i, 0));
                    case WHOLE -> line.whole(row.getLong(i, 0));
                    case NUMBER -> line.number(row.getDouble(i, 0));
                }
            }
        }
        return new String(line.end(), StandardCharsets.UTF_8);
    }

    /** The records of a file of ours below its headings, with their line ends; a record may go over several lines. */
    private static void records(Path file, Consumer<String> each) throws IOException {
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            StringBuilder open = new StringBuilder();
            boolean quoted = false;
            boolean headings = true;
            for (int sign = in.read(); sign >= 0; sign = in.read()) {
                open.append((char) sign);
                quoted ^= sign == '"';
                if (sign == '\n' && !quoted) {
                    if (!headings) {
                        each.accept(open.toString());
                    }
                    headings = false;
                    open.setLength(0);
                }
            }
        }
    }

    /** Lines in order, kept as digests so that millions fit. */
    private static final class Sorted {

        private final List<Long> digests = new ArrayList<>();

        void add(String line) {
            digests.add(digest(line));
        }

        private static long digest(String line) {
            try {
                byte[] sha = java.security.MessageDigest.getInstance("SHA-256")
                        .digest(line.getBytes(StandardCharsets.UTF_8));
                return java.nio.ByteBuffer.wrap(sha).getLong();
            } catch (java.security.NoSuchAlgorithmException e) {
                throw new IllegalStateException(e);
            }
        }

        String digest() {
            Collections.sort(digests);
            return digests.size() + " rows, " + HexFormat.of().toHexDigits(digests.hashCode());
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith("part-"))
                    .sorted()
                    .toList();
        }
    }

    private void same(String what, Object exact, Object parts) {
        if (exact.equals(parts)) {
            agreed.add(what + ": the same, " + (exact.toString().length() > 60 ? "all" : exact));
        } else {
            differences.add(what + ": " + exact + " on one machine, " + parts + " on Spark");
        }
    }

    // rejected rows: by their cells, as the parts have their own headings

    private void rejected() throws IOException {
        List<String> exact = filled(one.resolve("rejected.csv"));
        List<String> parts = new ArrayList<>();
        for (Path file : files(spark.resolve("rejected"))) {
            parts.addAll(filled(file));
        }
        Collections.sort(exact);
        Collections.sort(parts);
        same("rejected, " + exact.size() + " rows", exact, parts);
    }

    private static List<String> filled(Path file) throws IOException {
        List<String> rows = new ArrayList<>();
        for (Map<String, String> row : table(file)) {
            row.values().removeIf(String::isEmpty);
            rows.add(new TreeMap<>(row).toString());
        }
        return rows;
    }

    private static List<Map<String, String>> table(Path file) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        CSVFormat format =
                CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            for (CSVRecord row : parser) {
                rows.add(new LinkedHashMap<>(row.toMap()));
            }
        }
        return rows;
    }

    // statistics

    private void statistics() throws IOException {
        List<Map<String, String>> exact = table(one.resolve("statistics.csv"));
        List<Map<String, String>> parts = table(spark.resolve("statistics.csv"));
        if (exact.size() != parts.size()) {
            differences.add("statistics: " + exact.size() + " groups on one machine, " + parts.size() + " on Spark");
            return;
        }
        Map<String, double[]> values = new HashMap<>();
        boolean many = exact.stream().anyMatch(row -> Long.parseLong(row.get("n")) > 4096);
        if (many) {
            values = values();
        }
        long figures = 0;
        long ranks = 0;
        for (int i = 0; i < exact.size(); i++) {
            Map<String, String> row = exact.get(i);
            for (Map.Entry<String, String> cell : row.entrySet()) {
                String other = parts.get(i).get(cell.getKey());
                boolean estimated = Long.parseLong(row.get("n")) > 4096
                        && (PERCENTILES.containsKey(cell.getKey()) || cell.getKey().matches("p\\d+_(from|to)"));
                if (estimated) {
                    ranks += rank(row, cell.getKey(), other, values);
                } else if (agree(cell.getValue(), other)) {
                    figures++;
                } else {
                    differences.add("statistics, " + row.get("grouping") + " " + row.get("group") + " "
                            + row.get("measure") + ", " + cell.getKey() + ": " + cell.getValue() + " on one machine, "
                            + other + " on Spark");
                }
            }
        }
        agreed.add("statistics: " + figures + " cells of " + exact.size() + " groups the same to 1e-12, " + ranks
                + " estimated percentiles within " + RANK_ERROR + " of their rank, the worst off by " + worstRank);
    }

    private static boolean agree(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        try {
            double a = Double.parseDouble(one);
            double b = Double.parseDouble(other);
            return Math.abs(a - b) <= RELATIVE * Math.max(Math.abs(a), Math.abs(b));
        } catch (NumberFormatException e) {
            return false;
        }
    }

    /** The flights' figures by grouping, type, flaps, thrust, group and measure, sorted. */
    private Map<String, double[]> values() throws IOException {
        Map<String, List<Double>> lists = new HashMap<>();
        for (Map<String, String> row : table(one.resolve("flights.csv"))) {
            String type = row.get("type");
            String thrust = row.get("trim_thrust");
            String scale = row.get("flaps") + "|" + thrust;
            String setting = row.get("flaps") + (thrust.isEmpty() ? "" : ", thrust " + thrust);
            Map<String, String> groups = Map.of(
                    "type", type,
                    "flap setting", setting,
                    "tail", row.get("tail"),
                    "route", row.get("from") + "–" + row.get("to"),
                    "month", row.get("date").substring(0, 7));
            COLUMN_OF.forEach((measure, column) -> {
                String value = row.get(column);
                if (!value.isEmpty()) {
                    String within = measure.equals("take-off trim") ? scale : "|";
                    groups.forEach((grouping, group) -> lists.computeIfAbsent(
                                    String.join("|", grouping, type, within, group, measure),
                                    key -> new ArrayList<>())
                            .add(Double.parseDouble(value)));
                }
            });
        }
        Map<String, double[]> values = new HashMap<>();
        lists.forEach((key, list) -> {
            double[] sorted = list.stream().mapToDouble(Double::doubleValue).toArray();
            Arrays.sort(sorted);
            values.put(key, sorted);
        });
        return values;
    }

    private int rank(Map<String, String> row, String column, String other, Map<String, double[]> values) {
        Integer percent = PERCENTILES.get(column);
        double[] sorted = values.get(String.join(
                "|",
                row.get("grouping"),
                row.get("type"),
                row.get("flaps"),
                row.get("thrust"),
                row.get("group").equals("not given") ? "" : row.get("group"),
                row.get("measure")));
        if (percent == null || sorted == null) {
            return 0;
        }
        double value = Double.parseDouble(other);
        double below = lower(sorted, value) / (double) sorted.length;
        double upTo = lower(sorted, Math.nextUp(value)) / (double) sorted.length;
        double off = Math.max(0, Math.max(below - percent / 100.0, percent / 100.0 - upTo));
        worstRank = Math.max(worstRank, off);
        if (off > RANK_ERROR) {
            differences.add("statistics, " + row.get("grouping") + " " + row.get("group") + " " + row.get("measure")
                    + ", " + column + ": rank off by " + off);
        }
        return 1;
    }

    private static int lower(double[] sorted, double value) {
        int at = Arrays.binarySearch(sorted, value);
        while (at > 0 && sorted[at - 1] == value) {
            at--;
        }
        return at < 0 ? -at - 1 : at;
    }

    // run.json: counts, inputs with checksums, policy and methods

    private void run() throws IOException {
        com.fasterxml.jackson.databind.ObjectMapper json = new com.fasterxml.jackson.databind.ObjectMapper();
        var exact = (com.fasterxml.jackson.databind.node.ObjectNode)
                json.readTree(one.resolve("run.json").toFile());
        var parts = (com.fasterxml.jackson.databind.node.ObjectNode)
                json.readTree(spark.resolve("run.json").toFile());
        for (String own : List.of("outputs", "remarks", "version")) {
            exact.remove(own);
            parts.remove(own);
        }
        same("run.json but for outputs and remarks", exact, parts);
    }

    // the workbook: every sheet but that of the run's facts, as long as it lists all flights

    private void workbook() throws IOException {
        AtomicLong flights = new AtomicLong();
        records(one.resolve("flights.csv"), row -> flights.incrementAndGet());
        if (flights.get() > 4096) {
            return;
        }
        int same = 0;
        try (ZipFile exact = new ZipFile(one.resolve("season.xlsx").toFile());
                ZipFile parts = new ZipFile(spark.resolve("season.xlsx").toFile())) {
            List<String> names =
                    exact.stream().map(ZipEntry::getName).sorted().toList();
            if (!names.equals(parts.stream().map(ZipEntry::getName).sorted().toList())) {
                differences.add("season.xlsx: not the same sheets");
                return;
            }
            for (String name : names) {
                if (Arrays.equals(bytes(exact, name), bytes(parts, name))) {
                    same++;
                } else {
                    agreed.add("season.xlsx: " + name + " differs");
                }
            }
        }
        agreed.add("season.xlsx: " + same + " parts byte for byte the same");
    }

    private static byte[] bytes(ZipFile zip, String name) throws IOException {
        try (InputStream in = zip.getInputStream(zip.getEntry(name))) {
            return in.readAllBytes();
        }
    }
}
