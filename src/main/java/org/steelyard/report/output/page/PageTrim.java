package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTables;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.html.TrimPicture;
import org.steelyard.report.text.Shown;
import org.steelyard.report.words.SeasonWords;
import org.steelyard.report.words.TypeNames;
import tech.tablesaw.api.Row;
import tech.tablesaw.api.Table;

/** How take-off trim and CG spread by type and flap setting, as pictures and figures. */
final class PageTrim {

    private static final String[] HEADINGS = {
        "Type", "Flaps", "#n", "#Mean", "#SD", "#Min", "#P5", "#P25", "#Median", "#P75", "#P95", "#Max"
    };
    private static final List<String> FIGURES = List.of("min", "p5", "p25", "median", "p75", "p95", "max");

    private PageTrim() {}

    static void write(Html html, SeasonSummary summary, TypeNames names) {
        if (summary.trim().isEmpty()) {
            return;
        }
        html.open("section", "id", "trim").element("h2", "Spread of take-off trim");
        pictures(html, summary, names);
        List<TrimGroup> groups = summary.trim();
        table(html, groups, "Take-off trim", SeasonTables.trimSpread(summary), (row, column) -> {
            double units = row.getDouble(column);
            TrimGroup group = groups.get(row.getRowNumber());
            return column.equals("sd") ? Shown.fixed(units, 2) : SeasonWords.trim(units, group.unit());
        });
        html.element("h3", "Take-off CG, % MAC");
        table(
                html,
                groups,
                "Take-off CG in % MAC",
                SeasonTables.cgSpread(summary),
                (row, column) -> Shown.fixed(row.getDouble(column), 2));
        html.element(
                "p",
                "Percentiles by the inclusive method (definition 7 of Hyndman and Fan); SD with divisor n − 1, none"
                        + " for a single flight; UP is nose-up, DN nose-down.",
                "class",
                "hint");
        html.closeBlock();
    }

    private static void pictures(Html html, SeasonSummary summary, TypeNames names) {
        html.open("div", "class", "pictures still");
        for (StatusCount type : summary.types()) {
            List<TrimGroup> groups = summary.trim().stream()
                    .filter(group -> group.typeId().equals(type.group()))
                    .filter(group -> group.trimUnits().isPresent())
                    .toList();
            if (!groups.isEmpty()) {
                html.open("figure");
                new TrimPicture(names.of(type.group()), groups).draw(html);
                html.open("figcaption").element("strong", names.of(type.group()));
                html.text(". Box: middle half, with the median; line: 5th to 95th percentile; dots: least and"
                        + " greatest.");
                html.close().closeBlock();
            }
        }
        html.closeBlock();
    }

    private interface Cell {
        String of(Row row, String column);
    }

    private static void table(Html html, List<TrimGroup> groups, String name, Table table, Cell cell) {
        ScrolledTables.open(html, name, "", HEADINGS);
        for (Row row : table) {
            html.open("tr")
                    .open("th", "scope", "row")
                    .data(row.getString("type"))
                    .close();
            html.open("td").data(groups.get(row.getRowNumber()).flapsShown()).close();
            ScrolledTables.numbers(html, Shown.count(row.getLong("n")));
            ScrolledTables.numbers(html, shown(row, "mean", cell), shown(row, "sd", cell));
            FIGURES.forEach(figure -> ScrolledTables.numbers(html, shown(row, figure, cell)));
            html.closeBlock();
        }
        ScrolledTables.close(html);
    }

    private static String shown(Row row, String column, Cell cell) {
        return row.isMissing(column) ? "–" : cell.of(row, column);
    }
}
