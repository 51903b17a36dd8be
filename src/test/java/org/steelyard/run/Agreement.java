package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.steelyard.model.loading.Origin;

/** Holds every figure that two outputs of a season state to be the same in both, to the digits that are printed. */
final class Agreement {

    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    private static final List<String> MARGIN_PHASES = List.of("zfw", "tow", "flight", "lw");

    /** Columns of the workbook's flights that hold what a column of flights.csv holds. */
    private static final Map<String, String> FLIGHT =
            columns("Flight=flight,Tail=tail,Type=type,From=from,To=to,Flaps=flaps,Take-off trim setting=trim_setting,"
                    + "Take-off trim; units=trim_units,Recorded trim; units=recorded_trim_units,"
                    + "Dry operating mass; kg=dow_kg,Dry operating CG; % MAC=dow_cg_pct_mac,Zero-fuel mass; kg=zfw_kg,"
                    + "Zero-fuel CG; % MAC=zfw_cg_pct_mac,Ramp mass; kg=ramp_kg,Ramp CG; % MAC=ramp_cg_pct_mac,"
                    + "Take-off mass; kg=tow_kg,Take-off CG; % MAC=tow_cg_pct_mac,Landing mass; kg=lw_kg,"
                    + "Landing CG; % MAC=lw_cg_pct_mac,Traffic load aboard; kg=traffic_load_kg,"
                    + "Limited by=limited_by,Landing flaps=landing_flaps,Landing trim setting=landing_trim_setting,"
                    + "Landing trim; units=landing_trim_units,Assumed; not given=assumed_parts,File=file,Sheet=sheet,"
                    + "Row=row");

    private static final Map<String, String> FINDING = columns(
            "Flight=flight,Tail=tail,Type=type,State=phase,Kind=code,Value=value,Limit=limit,Margin=margin,Unit=unit,"
                    + "File=file,Sheet=sheet,Row=row");

    private static final Map<String, String> STATISTICS = columns(
            "Grouping=grouping,Type=type,Flaps=flaps,Thrust=thrust,Group=group,Measure=measure,Unit=unit,n=n,Mean=mean,sd=sd,Min=min,"
                    + "p5=p5,p25=p25,Median=median,p75=p75,p95=p95,Max=max,p5 from=p5_from,p5 to=p5_to,"
                    + "p95 from=p95_from,p95 to=p95_to,Marginal=share_marginal,Breached=share_breached");

    private final WrittenReports reports;
    private final List<CSVRecord> flights;
    private final List<CSVRecord> findings;
    private final JsonNode run;
    private final JsonNode page;
    private final String words;

    Agreement(WrittenReports reports) throws IOException {
        this.reports = reports;
        flights = reports.csv("flights.csv");
        findings = reports.csv("findings.csv");
        run = reports.run();
        page = reports.pageData();
        words = reports.pageWords();
    }

    private static Map<String, String> columns(String pairs) {
        Map<String, String> columns = new LinkedHashMap<>();
        for (String pair : pairs.split(",", -1)) {
            String[] names = pair.split("=", -1);
            columns.put(names[0].replace(';', ','), names[1]);
        }
        return columns;
    }

    /** All of it. */
    void hold() throws IOException {
        counts();
        flightsOfTheWorkbook();
        flightsOfThePage();
        findings();
        statistics();
        typical();
        tails();
        worstGroups();
        exceedances();
        months();
        few();
        inputs();
        rejected();
        skipped();
        room();
        facts();
    }

    private long with(String status) {
        return flights.stream().filter(row -> row.get("status").equals(status)).count();
    }

    void counts() {
        List<String> statuses = List.of("clean", "marginal", "breached");
        List<Long> counted = statuses.stream().map(this::with).toList();
        JsonNode counts = run.get("flights");
        assertThat(statuses.stream().map(one -> counts.get(one).asLong())).isEqualTo(counted);
        assertThat(counts.get("total").asLong()).isEqualTo(flights.size());
        assertThat(longs(page.get("sample").get("seen"))).isEqualTo(counted);
        assertThat(longs(page.get("sample").get("kept"))).isEqualTo(counted);
        JsonNode rows = run.get("rows");
        var cards = reports.book().getSheet("Overview").getRow(4);
        assertThat(Stream.of(1, 4, 7, 10, 13).map(at -> (long) cards.getCell(at).getNumericCellValue()))
                .containsExactly(
                        (long) flights.size(),
                        counted.get(0),
                        counted.get(1),
                        counted.get(2),
                        rows.get("rejected").asLong());
        assertThat(reports.list("Flights").stream()
                        .map(row -> row.get("Status").toString().substring(2))
                        .toList())
                .isEqualTo(flights.stream().map(row -> row.get("status")).toList());
        assertThat(words)
                .contains("|" + grouped(flights.size()) + "|flights|")
                .contains("|" + grouped(counted.get(0)) + "|clean|")
                .contains("|" + grouped(counted.get(1)) + "|marginal|")
                .contains("|" + grouped(counted.get(2)) + "|breached|")
                .contains("|" + grouped(counted.get(2)) + " flights are outside at least one limit (")
                .contains("|" + grouped(rows.get("rejected").asLong()) + "|rejected|")
                .contains(String.format(
                        java.util.Locale.ROOT,
                        "%,d rows read from %d files: %,d accepted, %,d rejected, %,d blank, %,d skipped",
                        rows.get("seen").asLong(),
                        run.get("inputs").size(),
                        rows.get("accepted").asLong(),
                        rows.get("rejected").asLong(),
                        rows.get("blank").asLong(),
                        rows.get("skipped").asLong()));
    }

    private static String grouped(long count) {
        return String.format(java.util.Locale.ROOT, "%,d", count);
    }

    private static List<Long> longs(JsonNode numbers) {
        return stream(numbers).map(JsonNode::asLong).toList();
    }

    private static Stream<JsonNode> stream(JsonNode nodes) {
        return StreamSupport.stream(nodes.spliterator(), false);
    }

    /** A cell of a workbook and one of a CSV file; numbers are held in full in both. */
    private static void same(Object cell, String csv, String what) {
        if (cell instanceof Double number) {
            assertThat(csv).as(what).isNotEmpty();
            assertThat(Double.parseDouble(csv)).as(what).isEqualTo(number);
        } else {
            assertThat(cell).as(what).isEqualTo(csv);
        }
    }

    private static void rowsAgree(
            List<Map<String, Object>> sheet, List<CSVRecord> csv, Map<String, String> columns, String what) {
        assertThat(sheet).as(what).hasSameSizeAs(csv);
        for (int i = 0; i < csv.size(); i++) {
            for (Map.Entry<String, String> column : columns.entrySet()) {
                same(
                        sheet.get(i).get(column.getKey()),
                        csv.get(i).get(column.getValue()),
                        what + " " + (i + 1) + ", " + column.getKey());
            }
        }
    }

    void flightsOfTheWorkbook() {
        List<Map<String, Object>> rows = reports.list("Flights");
        rowsAgree(rows, flights, FLIGHT, "flight");
        for (int i = 0; i < flights.size(); i++) {
            CSVRecord csv = flights.get(i);
            Map<String, Object> row = rows.get(i);
            same(days(row.get("Date")), csv.get("date"), "date of flight " + i);
            permitted(row.get("Least room forward, % MAC"), least(csv, "_fwd_margin_pct_mac"), 2, "forward " + i);
            permitted(row.get("Least room aft, % MAC"), least(csv, "_aft_margin_pct_mac"), 2, "aft " + i);
            permitted(row.get("Traffic load allowed, kg"), csv.get("traffic_load_allowed_kg"), 0, "allowed " + i);
            permitted(row.get("Underload, kg"), csv.get("underload_kg"), 0, "underload " + i);
            assertThat(row.get("Findings").toString())
                    .isEqualTo(String.join(", ", new java.util.LinkedHashSet<>(codes(csv))));
        }
    }

    /** A cell that holds what is permitted: the full figure rounded down to what is shown. */
    private static void permitted(Object cell, String csv, int decimals, String what) {
        if (csv.isEmpty()) {
            assertThat(cell).as(what).isEqualTo(csv);
            return;
        }
        assertDown((Double) cell, csv, decimals, what);
    }

    private static void assertDown(double shown, String csv, int decimals, String what) {
        double grain = Math.pow(10, -decimals);
        assertThat(Double.parseDouble(csv) - shown)
                .as(what + ": " + shown + " for " + csv)
                .isBetween(-1e-4 * grain, grain * (1 + 1e-4));
    }

    private static Object days(Object date) {
        return date instanceof Double days ? DAY_ZERO.plusDays(days.longValue()).toString() : date;
    }

    private static String least(CSVRecord csv, String margin) {
        return MARGIN_PHASES.stream()
                .map(phase -> csv.get(phase + margin))
                .filter(cell -> !cell.isEmpty())
                .min(java.util.Comparator.comparingDouble(Double::parseDouble))
                .orElse("");
    }

    private static List<String> codes(CSVRecord csv) {
        return Stream.of(csv.get("findings").split("; "))
                .filter(one -> !one.isEmpty())
                .map(one -> one.substring(0, one.indexOf(' ')))
                .toList();
    }

    void flightsOfThePage() {
        JsonNode all = page.get("flights");
        assertThat(all.size()).isEqualTo(flights.size());
        List<String> statuses = List.of("clean", "marginal", "breached");
        for (int i = 0; i < flights.size(); i++) {
            CSVRecord csv = flights.get(i);
            JsonNode flight = all.get(i);
            String what = "flight " + (i + 1);
            assertThat(List.of(
                            flight.get(0).asText(),
                            flight.get(1).asText(),
                            page.get("tails").get(flight.get(2).asInt()).asText(),
                            page.get("types")
                                    .get(flight.get(3).asInt())
                                    .get("id")
                                    .asText(),
                            flight.get(4).asText(),
                            flight.get(5).asText(),
                            flight.get(6).asText(),
                            statuses.get(flight.get(7).asInt()),
                            flight.get(9).asText(),
                            flight.get(10).asText(),
                            flight.get(12).asText(),
                            flight.get(13).asText()))
                    .as(what)
                    .isEqualTo(List.of(
                            csv.get("flight"),
                            csv.get("date"),
                            csv.get("tail"),
                            csv.get("type"),
                            csv.get("from"),
                            csv.get("to"),
                            setting(csv.get("flaps"), csv.get("trim_thrust")),
                            csv.get("status"),
                            csv.get("trim_setting"),
                            csv.get("landing_trim_setting"),
                            csv.get("assumed_parts"),
                            new Origin(csv.get("file"), csv.get("sheet"), Integer.parseInt(csv.get("row")))
                                    .toString()));
            rounded(flight.get(8), csv.get("trim_units"), 3, what + " trim");
            states(flight.get(14), csv, what);
            margins(flight.get(15), csv, what);
            assertThat(stream(flight.get(17))
                            .filter(JsonNode::isNumber)
                            .map(kind ->
                                    page.get("kinds").get(kind.asInt()).get(0).asText()))
                    .as(what)
                    .isEqualTo(codes(csv));
        }
    }

    private static void rounded(JsonNode shown, String csv, int decimals, String what) {
        if (csv.isEmpty()) {
            assertThat(shown.isNull()).as(what).isTrue();
            return;
        }
        double half = 0.5 * Math.pow(10, -decimals);
        assertThat(Math.abs(shown.asDouble() - Double.parseDouble(csv)))
                .as(what + ": " + shown + " for " + csv)
                .isLessThanOrEqualTo(half * (1 + 1e-6));
    }

    private void states(JsonNode states, CSVRecord csv, String what) {
        Map<String, String> columns =
                Map.of("dry operating", "dow", "zero fuel", "zfw", "ramp", "ramp", "take-off", "tow", "landing", "lw");
        Set<String> seen = new TreeSet<>();
        for (int i = 0; i < states.size(); i += 4) {
            String column =
                    columns.get(page.get("phases").get(states.get(i).asInt()).asText());
            seen.add(column);
            rounded(states.get(i + 1), csv.get(column + "_kg"), 1, what + " mass " + column);
            rounded(states.get(i + 2), csv.get(column + "_cg_pct_mac"), 3, what + " CG " + column);
            if (!column.equals("ramp")) {
                rounded(states.get(i + 3), csv.get(column + "_index"), 2, what + " index " + column);
            }
        }
        columns.values()
                .forEach(column -> assertThat(csv.get(column + "_kg").isEmpty())
                        .as(what + " " + column)
                        .isNotEqualTo(seen.contains(column)));
    }

    private void margins(JsonNode margins, CSVRecord csv, String what) {
        Map<String, String> columns =
                Map.of("zero fuel", "zfw", "take-off", "tow", "in flight", "flight", "landing", "lw");
        for (int i = 0; i < margins.size(); i += 3) {
            String column =
                    columns.get(page.get("phases").get(margins.get(i).asInt()).asText());
            assertDown(margins.get(i + 1).asDouble(), csv.get(column + "_fwd_margin_pct_mac"), 3, what + column);
            assertDown(margins.get(i + 2).asDouble(), csv.get(column + "_aft_margin_pct_mac"), 3, what + column);
        }
    }

    void findings() {
        List<CSVRecord> serious = findings.stream()
                .filter(row -> !row.get("severity").equals("note"))
                .toList();
        List<CSVRecord> notes = findings.stream()
                .filter(row -> row.get("severity").equals("note"))
                .toList();
        rowsAgree(reports.list("Findings"), serious, FINDING, "finding");
        rowsAgree(reports.list("Notes"), notes, FINDING, "note");
        Map<String, Long> counted = new TreeMap<>();
        Map<String, Set<String>> on = new TreeMap<>();
        Map<String, List<String>> ofFlights = new TreeMap<>();
        for (CSVRecord row : findings) {
            String kind = row.get("code") + " " + row.get("severity");
            counted.merge(kind, 1L, Long::sum);
            on.computeIfAbsent(kind, key -> new TreeSet<>()).add(place(row));
            ofFlights
                    .computeIfAbsent(place(row), key -> new ArrayList<>())
                    .add(row.get("code") + " " + row.get("phase"));
        }
        Map<String, Long> inRun = new TreeMap<>();
        Map<String, Long> flightsInRun = new TreeMap<>();
        for (JsonNode kind : run.get("findings")) {
            String name = kind.get("code").asText() + " " + kind.get("severity").asText();
            inRun.put(name, kind.get("findings").asLong());
            flightsInRun.put(name, kind.get("flights").asLong());
        }
        assertThat(inRun).isEqualTo(counted);
        assertThat(flightsInRun.keySet()).isEqualTo(on.keySet());
        on.forEach((kind, places) -> {
            assertThat(flightsInRun.get(kind)).as(kind).isEqualTo(places.size());
            String[] names = kind.split(" ", -1);
            if (!names[1].equals("note")) {
                assertThat(words).contains("|" + names[0] + "|" + places.size() + "|" + counted.get(kind) + "|");
            }
        });
        Set<String> inPage = new TreeSet<>();
        page.get("kinds")
                .forEach(kind -> inPage.add(kind.get(0).asText() + " "
                        + List.of("note", "marginal", "breach").get(kind.get(1).asInt())));
        assertThat(inPage).isEqualTo(counted.keySet());
        for (CSVRecord row : flights) {
            assertThat(row.get("findings")).isEqualTo(String.join("; ", ofFlights.getOrDefault(place(row), List.of())));
        }
    }

    private static String place(CSVRecord row) {
        return row.get("file") + "!" + row.get("sheet") + ":" + row.get("row");
    }

    void statistics() throws IOException {
        List<Map<String, Object>> rows = new ArrayList<>(reports.list("Trim and CG statistics"));
        rows.removeIf(row -> "".equals(row.get("Measure")));
        rowsAgree(rows, reports.csv("statistics.csv"), STATISTICS, "statistics");
    }

    private static String setting(String flaps, String thrust) {
        return thrust.isEmpty() ? flaps : flaps + ", thrust " + thrust;
    }

    /** The typical trim on overview and page, from the statistics. */
    void typical() throws IOException {
        Map<String, CSVRecord> trim = new TreeMap<>();
        for (CSVRecord row : reports.csv("statistics.csv")) {
            if (row.get("measure").equals("take-off trim")
                    && row.get("grouping").equals("flap setting")) {
                trim.put(row.get("type") + " " + setting(row.get("flaps"), row.get("thrust")), row);
            }
        }
        assertThat(trim).isNotEmpty();
        assertThat(page.get("typical").size()).isEqualTo(trim.size());
        for (JsonNode group : page.get("typical")) {
            CSVRecord row = trim.get(group.get(0).asText() + " " + group.get(1).asText());
            assertThat(group.get(2).asLong()).isEqualTo(Long.parseLong(row.get("n")));
            rounded(group.get(3), row.get("p5"), 4, "typical p5");
            rounded(group.get(4), row.get("median"), 4, "typical median");
            rounded(group.get(5), row.get("p95"), 4, "typical p95");
        }
        assertThat(words).containsPattern("\\|Type\\|Flaps\\|Flights\\|5 %\\|Median\\|95 %\\|");
        for (Map<String, Object> shown : overview("Type", 1)) {
            if (shown.get("Type").toString().isEmpty() || !(shown.get("Flights") instanceof Double)) {
                continue;
            }
            CSVRecord row = trim.get(shown.get("Type") + " " + shown.get("Flaps"));
            assertThat(shown.get("Flights")).isEqualTo(Double.valueOf(row.get("n")));
            setting(shown.get("5 %"), row.get("p5"));
            setting(shown.get("Median"), row.get("median"));
            setting(shown.get("95 %"), row.get("p95"));
            assertThat(words)
                    .contains("|" + shown.get("Flaps") + "|" + grouped(Long.parseLong(row.get("n"))) + "|"
                            + shown.get("5 %") + "|" + shown.get("Median") + "|" + shown.get("95 %") + "|");
        }
    }

    /** A cell's value; of a trim what the cell shows. */
    private static Object asRead(Cell cell) {
        return cell.getCellType() == CellType.NUMERIC
                        && cell.getCellStyle().getDataFormatString().contains(" UP")
                ? new DataFormatter(Locale.ROOT).formatCellValue(cell)
                : WrittenReports.value(cell);
    }

    private static void setting(Object shown, String csv) {
        String[] parts = shown.toString().replace("°", "").split(" ", -1);
        double units = Double.parseDouble(parts[0]) * (parts.length > 1 && parts[1].equals("DN") ? -1 : 1);
        assertThat(Math.abs(units - Double.parseDouble(csv)))
                .as(shown + " for " + csv)
                .isLessThanOrEqualTo(0.005 + 1e-9);
    }

    /** A table of the overview by the heading of one of its columns. */
    private List<Map<String, Object>> overview(String heading, int column) {
        var sheet = reports.book().getSheet("Overview");
        for (var row : sheet) {
            var cell = row.getCell(column);
            var flaps = row.getCell(column + 1);
            if (cell != null
                    && cell.toString().equals(heading)
                    && (!heading.equals("Type")
                            || (flaps != null && flaps.toString().equals("Flaps")))) {
                return WrittenReports.table(sheet, row.getRowNum(), column, Agreement::asRead);
            }
        }
        throw new AssertionError("the overview has no table by " + heading);
    }

    void tails() {
        Map<String, long[]> counted = new TreeMap<>();
        for (CSVRecord row : flights) {
            long[] counts = counted.computeIfAbsent(row.get("tail"), tail -> new long[3]);
            counts[0] += row.get("status").equals("breached") ? 1 : 0;
            counts[1] += row.get("status").equals("marginal") ? 1 : 0;
            counts[2]++;
        }
        assertThat(page.get("tailsSeen").asInt()).isEqualTo(counted.size());
        for (JsonNode tail : page.get("tailCounts")) {
            assertThat(List.of(
                            tail.get(1).asLong(),
                            tail.get(2).asLong(),
                            tail.get(3).asLong()))
                    .as(tail.get(0).asText())
                    .isEqualTo(java.util.Arrays.stream(counted.get(tail.get(0).asText()))
                            .boxed()
                            .toList());
        }
        for (Map<String, Object> row : overview("Tail", 1)) {
            if (row.get("Breached") instanceof Double breached) {
                long[] counts = counted.get(row.get("Tail").toString());
                assertThat(List.of(row.get("Flights"), breached))
                        .isEqualTo(List.of((double) counts[2], (double) counts[0]));
            }
        }
    }

    /** Flights, breached and marginal ones of a group. */
    private record Counts(String group, long flights, long breached, long marginal) {

        boolean few() {
            return flights <= 20;
        }

        double share(long some) {
            return (double) some / flights;
        }
    }

    private List<Counts> counted(Function<CSVRecord, String> group) {
        Map<String, List<CSVRecord>> groups =
                flights.stream().collect(Collectors.groupingBy(group, TreeMap::new, Collectors.toList()));
        groups.remove("–");
        return groups.entrySet().stream()
                .map(of -> new Counts(
                        of.getKey(),
                        of.getValue().size(),
                        of.getValue().stream()
                                .filter(row -> row.get("status").equals("breached"))
                                .count(),
                        of.getValue().stream()
                                .filter(row -> row.get("status").equals("marginal"))
                                .count()))
                .toList();
    }

    /** The greatest share outside a limit first, then close to one, by name; those of 20 flights and fewer last. */
    private List<Counts> worstFirst(Function<CSVRecord, String> group) {
        return counted(group).stream()
                .sorted(Comparator.comparing(Counts::few)
                        .thenComparing(of -> -of.share(of.breached()))
                        .thenComparing(of -> -of.share(of.marginal()))
                        .thenComparing(Counts::group))
                .toList();
    }

    /** Tails and routes: who is worst, in the same order and by the same measure on page and workbook. */
    void worstGroups() throws IOException {
        worstGroups("tail", row -> row.get("tail"), 1);
        worstGroups("route", row -> row.get("from") + "–" + row.get("to"), 9);
        assertThat(stream(page.get("tailCounts")).map(tail -> tail.get(0).asText()))
                .isEqualTo(worstFirst(row -> row.get("tail")).stream()
                        .map(Counts::group)
                        .toList());
        Map<String, Double> shares = new TreeMap<>();
        for (CSVRecord row : reports.csv("statistics.csv")) {
            if (row.get("grouping").equals("tail") && row.get("measure").equals("take-off CG")) {
                shares.put(row.get("group"), Double.valueOf(row.get("share_breached")));
            }
        }
        for (Counts tail : counted(row -> row.get("tail"))) {
            assertThat(shares.get(tail.group())).as(tail.group()).isEqualTo(tail.share(tail.breached()));
        }
    }

    private void worstGroups(String kind, Function<CSVRecord, String> group, int column) {
        String heading = kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1);
        List<Counts> ranked =
                worstFirst(group).stream().filter(of -> of.breached() > 0).toList();
        List<Map<String, Object>> inBook = overview(heading, column);
        inBook.removeIf(row -> !(row.get("Flights") instanceof Double));
        assertThat(inBook).hasSizeGreaterThan(2);
        for (int i = 0; i < inBook.size(); i++) {
            Counts of = ranked.get(i);
            assertThat(inBook.get(i))
                    .as(kind + " " + (i + 1))
                    .containsAllEntriesOf(Map.of(
                            heading,
                            of.group(),
                            "Flights",
                            (double) of.flights(),
                            "Breached",
                            (double) of.breached(),
                            "Marginal",
                            (double) of.marginal(),
                            "Share",
                            of.share(of.breached())));
        }
        String inPage = wordsFrom("|" + heading + "|Flights|Breached|Marginal|Share|");
        int at = 0;
        for (Counts of : ranked.subList(0, Math.min(10, ranked.size()))) {
            int next = inPage.indexOf(
                    "|" + of.group() + "|" + of.flights() + "|" + of.breached() + "|" + of.marginal() + "|", at);
            assertThat(next).as(of.group() + " on the page").isGreaterThan(at);
            at = next;
        }
        String sentence = String.format(
                Locale.ROOT,
                "Worst %s: %s, %d of its %,d flights outside a limit (",
                kind,
                ranked.get(0).group(),
                ranked.get(0).breached(),
                ranked.get(0).flights());
        assertThat(words).contains(sentence);
        assertThat(overviewTexts()).anyMatch(text -> text.contains(sentence));
    }

    private String wordsFrom(String heading) {
        assertThat(words).contains(heading);
        return words.substring(words.indexOf(heading));
    }

    private List<String> overviewTexts() {
        List<String> texts = new ArrayList<>();
        for (var row : reports.book().getSheet("Overview")) {
            row.forEach(cell -> texts.add(cell.toString()));
        }
        return texts;
    }

    /** What is exceeded, from the kinds of findings. */
    private static final Map<String, List<String>> EXCEEDED = new LinkedHashMap<>();

    static {
        EXCEEDED.put("CG", List.of("cg-forward", "cg-aft"));
        EXCEEDED.put("mass", List.of("mass-high", "mass-low", "mass-off-envelope"));
        EXCEEDED.put(
                "structure",
                List.of("hold-mass", "group-mass", "floor-running", "floor-area", "zone-seats", "crew-seats"));
        EXCEEDED.put("fuel", List.of("tank-capacity", "fuel-imbalance", "fuel-short"));
    }

    /** The flights farthest outside: on the overview of the workbook and twice on the page, in the same order. */
    void exceedances() {
        List<Map<String, Object>> inBook = new ArrayList<>(overview("Exceeded", 1));
        inBook.removeIf(row -> row.get("What was found").toString().isEmpty()
                || row.get("Exceeded").toString().isEmpty());
        String top = wordsFrom("|Farthest outside|").replaceFirst("(?s)\\|Typical take-off trim\\|.*", "");
        int at = 0;
        for (Map<String, Object> row : inBook) {
            String sentence = row.get("What was found").toString().replaceFirst("\\.$", "");
            int next = top.toLowerCase(Locale.ROOT).indexOf(sentence.toLowerCase(Locale.ROOT), at);
            assertThat(next).as(sentence).isGreaterThan(at);
            assertThat(top.substring(at, next)).contains("|" + row.get("Exceeded") + "|", row.get("Flight") + "|");
            at = next;
        }
        EXCEEDED.forEach((kind, codes) -> {
            List<String> expected = farthest(codes);
            assertThat(expected).as(kind).isNotEmpty();
            assertThat(inBook.stream()
                            .filter(row -> row.get("Exceeded").equals(kind))
                            .map(row -> row.get("Flight").toString()))
                    .as(kind)
                    .isEqualTo(expected.subList(0, Math.min(expected.size(), kind.matches("CG|mass") ? 2 : 1)));
            String table = wordsFrom("|Outside a limit: " + kind + "|");
            int place = 0;
            for (String flight : expected.subList(0, Math.min(10, expected.size()))) {
                int next = table.indexOf("|" + flight + "|", place);
                assertThat(next).as(kind + " " + flight).isGreaterThan(place);
                place = next;
            }
        });
        assertThat(inBook.stream().map(row -> row.get("Exceeded")).distinct().limit(4))
                .containsExactlyElementsOf(EXCEEDED.keySet());
    }

    /** Flights by their farthest breach of some kinds: a CG by % MAC, all else by its share of the limit. */
    private List<String> farthest(List<String> codes) {
        Map<String, Double> beyond = new LinkedHashMap<>();
        for (CSVRecord row : findings) {
            if (row.get("severity").equals("breach") && codes.contains(row.get("code"))) {
                double by = -Double.parseDouble(row.get("margin"))
                        / (codes.contains("cg-aft")
                                ? row.get("unit").equals("% MAC") ? 1 : armPerPercent(row.get("type"))
                                : Double.parseDouble(row.get("limit")));
                beyond.merge(row.get("flight"), by, Math::max);
            }
        }
        return beyond.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** One % MAC in the users' unit of arms. */
    private double armPerPercent(String type) {
        return stream(page.get("types"))
                .filter(one -> one.get("id").asText().equals(type))
                .mapToDouble(one -> one.get("armPerPercent").asDouble())
                .findFirst()
                .orElseThrow();
    }

    /** Flights by month, breached and marginal: a table of the page, and what a chart of the workbook draws. */
    void months() {
        List<Counts> months = counted(row -> row.get("date").substring(0, 7));
        String table = "|Month|Flights|Breached|Share|Marginal|Share|";
        var sheet = reports.book().getSheet("Chart data");
        int first = StreamSupport.stream(sheet.spliterator(), false)
                .filter(row ->
                        row.getCell(1) != null && row.getCell(1).toString().equals("breached, %"))
                .findFirst()
                .orElseThrow()
                .getRowNum();
        List<Map<String, Object>> drawn = WrittenReports.table(sheet, first, 0);
        assertThat(drawn).hasSize(months.size());
        for (int i = 0; i < months.size(); i++) {
            Counts month = months.get(i);
            assertThat(drawn.get(i))
                    .isEqualTo(Map.of(
                            "month", month.group(),
                            "breached, %", 100 * month.share(month.breached()),
                            "marginal, %", 100 * month.share(month.marginal())));
            assertThat(words)
                    .containsPattern("\\|" + month.group() + "\\|" + grouped(month.flights()) + "\\|" + month.breached()
                            + "\\|[^|]+\\|" + month.marginal() + "\\|");
        }
        assertThat(words.replace("|\n", "").replace("\n", "")).contains(table);
    }

    /** Few flights are 20 and fewer, wherever they are marked. */
    void few() throws IOException {
        Map<String, String> few = new TreeMap<>();
        for (CSVRecord row : reports.csv("statistics.csv")) {
            assertThat(row.get("few")).isEqualTo(Long.parseLong(row.get("n")) <= 20 ? "yes" : "no");
            if (row.get("measure").equals("take-off CG") && row.get("grouping").equals("tail")) {
                few.put(row.get("group"), row.get("few"));
            }
        }
        for (Map<String, Object> row : reports.list("Trim and CG statistics")) {
            if (row.get("n") instanceof Double n) {
                assertThat(row.get("Mark")).isEqualTo(n <= 20 ? "few flights" : "");
            }
        }
        var spread = reports.book().getSheet("Trim spread");
        for (var row : spread) {
            if (row.getCell(2) != null && row.getCell(2).getCellType() == CellType.NUMERIC) {
                boolean small = row.getCell(2).getNumericCellValue() > 0
                        && row.getCell(2).getNumericCellValue() <= 20;
                assertThat(row.getCell(14) != null && row.getCell(14).toString().equals("few flights"))
                        .isEqualTo(small);
            }
        }
        assertThat(few).containsValue("no");
    }

    void inputs() {
        List<Map<String, Object>> rows = facts("File", "Heading map");
        assertThat(rows).hasSize(run.get("inputs").size() + 1);
        Map<String, String> columns = new LinkedHashMap<>();
        columns.put("Rows seen", "rows_seen");
        for (String count : List.of("Accepted", "Rejected", "Blank", "Skipped", "Bytes")) {
            columns.put(count, count.toLowerCase(java.util.Locale.ROOT));
        }
        Map<String, Long> together = new TreeMap<>();
        for (int i = 0; i < run.get("inputs").size(); i++) {
            JsonNode input = run.get("inputs").get(i);
            Map<String, Object> row = rows.get(i);
            assertThat(List.of(row.get("File"), row.get("Heading map"), row.get("SHA-256")))
                    .isEqualTo(List.of(
                            input.get("file").asText(),
                            input.get("map").asText(),
                            input.get("sha256").asText()));
            columns.forEach((heading, key) -> {
                assertThat(row.get(heading))
                        .as(heading)
                        .isEqualTo(input.get(key).asDouble());
                together.merge(heading, input.get(key).asLong(), Long::sum);
            });
            assertThat(words).contains(input.get("file").asText());
        }
        Map<String, Object> last = rows.get(rows.size() - 1);
        for (String count : List.of("Rows seen", "Accepted", "Rejected", "Blank", "Skipped")) {
            String key = count.equals("Rows seen") ? "seen" : count.toLowerCase(java.util.Locale.ROOT);
            assertThat(last.get(count)).isEqualTo((double) together.get(count));
            assertThat(run.get("rows").get(key).asLong()).as(count).isEqualTo(together.get(count));
        }
    }

    private List<Map<String, Object>> facts(String first, String second) {
        var sheet = reports.book().getSheet("Run facts");
        for (var row : sheet) {
            if (row.getCell(0) != null
                    && row.getCell(1) != null
                    && row.getCell(0).toString().equals(first)
                    && row.getCell(1).toString().equals(second)) {
                return WrittenReports.table(sheet, row.getRowNum(), 0);
            }
        }
        throw new AssertionError("no table of " + first + " and " + second);
    }

    void rejected() throws IOException {
        List<CSVRecord> csv = reports.csv("rejected.csv");
        assertThat(csv).hasSize(run.get("rows").get("rejected").asInt());
        assertThat(page.get("rejectedSeen").asInt()).isEqualTo(csv.size());
        List<Map<String, Object>> rows = reports.list("Rejected rows").stream()
                .filter(row -> row.get("Faults") instanceof Double)
                .toList();
        rowsAgree(
                rows,
                csv,
                Map.of("File", "steelyard_file", "Sheet", "steelyard_sheet", "Row", "steelyard_row"),
                "rejected row");
        for (int i = 0; i < csv.size(); i++) {
            assertThat(rows.get(i).get("Reasons").toString().replace("\n", " | "))
                    .isEqualTo(csv.get(i).get("steelyard_reasons"));
        }
        for (int i = 0; i < page.get("rejected").size(); i++) {
            assertThat(page.get("rejected").get(i).get(0).asText())
                    .endsWith(":" + csv.get(i).get("steelyard_row"))
                    .startsWith(csv.get(i).get("steelyard_file"));
        }
    }

    void skipped() throws IOException {
        List<CSVRecord> csv = reports.csv("skipped.csv");
        assertThat(csv).hasSize(run.get("rows").get("skipped").asInt());
        Map<String, Long> counted = new TreeMap<>();
        csv.forEach(row -> counted.merge(row.get("kind"), 1L, Long::sum));
        Map<String, Long> inRun = new TreeMap<>();
        run.get("skipped_rows")
                .get("counts")
                .properties()
                .forEach(kind -> inRun.put(kind.getKey(), kind.getValue().asLong()));
        assertThat(inRun).isEqualTo(counted);
        List<JsonNode> first = stream(run.get("skipped_rows").get("first")).toList();
        for (int i = 0; i < first.size(); i++) {
            assertThat(first.get(i).get("row").asText()).isEqualTo(csv.get(i).get("row"));
            assertThat(first.get(i).get("reason").asText()).isEqualTo(csv.get(i).get("reason"));
            assertThat(words).contains(csv.get(i).get("reason"));
        }
    }

    /** What can still be taken is said of flights of the season without a breach. */
    void room() throws IOException {
        Map<String, String> status = new TreeMap<>();
        flights.forEach(
                row -> status.put(row.get("file") + ":" + row.get("row") + ":" + row.get("flight"), row.get("status")));
        List<CSVRecord> rows = reports.csv("room.csv");
        assertThat(rows).isNotEmpty();
        for (CSVRecord row : rows) {
            assertThat(status.get(row.get("file") + ":" + row.get("row") + ":" + row.get("flight")))
                    .isIn("clean", "marginal");
        }
    }

    void facts() {
        assertThat(reports.book().getSheet("Overview").getRow(0).getCell(1).toString())
                .isEqualTo("Season " + run.get("season").asText());
        assertThat(page.get("season").asText()).isEqualTo(run.get("season").asText());
        List<String> inBook = new ArrayList<>();
        for (var row : reports.book().getSheet("Run facts")) {
            row.forEach(cell -> inBook.add(cell.toString()));
        }
        for (JsonNode config : run.get("config")) {
            assertThat(inBook)
                    .contains(config.get("file").asText(), config.get("sha256").asText());
        }
        assertThat(inBook).contains("Steelyard " + run.get("version").asText());
        run.get("options")
                .forEach(option -> assertThat(String.join("\n", inBook)).contains(option.asText()));
        assertThat(stream(run.get("outputs")).map(output -> output.get("file").asText()))
                .allSatisfy(name -> assertThat(reports.folder().resolve(name)).isRegularFile())
                .allSatisfy(name -> assertThat(words).contains("|" + name + "|"));
    }
}
