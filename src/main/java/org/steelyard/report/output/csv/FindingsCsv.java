package org.steelyard.report.output.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.Quantity;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;
import org.steelyard.report.text.OutputColumn;
import org.steelyard.report.text.TypedRow;
import org.steelyard.report.text.Work;
import org.steelyard.report.words.RemedyCell;

/**
 * {@code findings.csv}: one line for each finding, flights in order. {@code value}, {@code limit} and {@code margin}
 * are in the units of the type's users, the {@code _si} columns in kg, % MAC, kg/m, kg/m², seats or trim units; the
 * margin is negative outside. They are empty for a finding without numbers. {@code remedy} is what would put the flight
 * right, on each of its breaches.
 */
public final class FindingsCsv implements SeasonOutput {

    private static final List<String> HEADINGS = List.of(
            "file",
            "row",
            "flight",
            "date",
            "tail",
            "type",
            "severity",
            "code",
            "phase",
            "subject",
            "value",
            "limit",
            "margin",
            "unit",
            "value_si",
            "limit_si",
            "margin_si",
            "unit_si",
            "sentence",
            "sheet",
            "remedy");

    private static final List<String> NUMBERS =
            List.of("value", "limit", "margin", "value_si", "limit_si", "margin_si");

    /** The columns, as other formats need them. */
    static List<OutputColumn> columns() {
        return HEADINGS.stream()
                .map(name -> new OutputColumn(
                        name,
                        NUMBERS.contains(name)
                                ? OutputColumn.Kind.NUMBER
                                : name.equals("row") ? OutputColumn.Kind.WHOLE : OutputColumn.Kind.TEXT))
                .toList();
    }

    /** The cells of each finding of one flight. */
    static List<List<Object>> cells(AuditedFlight flight) {
        List<List<Object>> rows = new ArrayList<>();
        for (Finding finding : flight.assessment().findings()) {
            TypedRow row = new TypedRow();
            add(row, flight.loading(), finding, RemedyCell.of(flight, finding));
            rows.add(row.cells());
        }
        return rows;
    }

    private final CsvFile file;

    public FindingsCsv(Path path) throws IOException {
        file = new CsvFile(path, HEADINGS);
    }

    @Override
    public Work begin(List<AuditedFlight> flights) {
        return () -> {
            byte[] lines = lines(flights);
            return () -> file.write(lines);
        };
    }

    private static byte[] lines(List<AuditedFlight> flights) {
        CsvLine line = new CsvLine();
        for (AuditedFlight flight : flights) {
            for (Finding finding : flight.assessment().findings()) {
                add(line, flight.loading(), finding, RemedyCell.of(flight, finding));
            }
        }
        return line.take();
    }

    private static void add(CsvLine line, Loading loading, Finding finding, String remedy) {
        line.text(loading.origin().file())
                .whole(loading.origin().row())
                .text(loading.flight().flight())
                .text(loading.flight().date().toString())
                .text(loading.tail().registration())
                .text(loading.type().id())
                .text(finding.severity().label())
                .text(finding.code().code())
                .text(finding.phase().label())
                .text(finding.subject());
        figures(line, loading.type(), finding);
        line.text(FindingText.sentence(finding, loading.type()))
                .text(loading.origin().sheet())
                .text(remedy)
                .next();
    }

    private static void figures(CsvLine line, AircraftType type, Finding finding) {
        if (finding.quantity() == Quantity.NONE) {
            for (int i = 0; i < 8; i++) {
                line.blank();
            }
            return;
        }
        line.number(FindingText.value(finding, type))
                .number(FindingText.limit(finding, type))
                .number(FindingText.margin(finding, type))
                .text(FindingText.unit(finding.quantity(), type))
                .number(finding.value())
                .number(finding.limit())
                .number(finding.margin())
                .text(insideUnit(finding.quantity()));
    }

    private static String insideUnit(Quantity quantity) {
        return switch (quantity) {
            case MASS -> "kg";
            case CG -> "% MAC";
            case COUNT -> "seats";
            case PERSONS -> "passengers";
            case TRIM -> "units";
            case TRIM_DEGREES -> "degrees";
            case RUNNING_LOAD -> "kg/m";
            case AREA_LOAD -> "kg/m²";
            case NONE -> "";
        };
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        file.close();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
