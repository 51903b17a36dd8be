package org.steelyard.report.column;

import static org.steelyard.report.column.ListColumn.text;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.Quantity;
import org.steelyard.report.column.ListColumn.Kind;
import org.steelyard.report.words.RemedyCell;

/**
 * The columns of the list of findings, flights in order; a finding without numbers has none. New columns come at the
 * end.
 */
public final class FindingList {

    /**
     * A finding with its flight.
     *
     * @param flight the flight
     * @param finding one of its findings
     */
    public record Found(AuditedFlight flight, Finding finding) {

        private Loading loading() {
            return flight.loading();
        }

        private AircraftType type() {
            return flight.loading().type();
        }

        private boolean hasNumbers() {
            return finding.quantity() != Quantity.NONE;
        }
    }

    public static final ColumnList<Found> COLUMNS = new ColumnList<>(
            Stream.concat(LoadingColumns.first(Found::loading), results()).toList(),
            List.of(
                    "Severity",
                    "Flight",
                    "Date",
                    "Tail",
                    "Type",
                    "From",
                    "To",
                    "State",
                    "Kind",
                    "What was found",
                    "Value",
                    "Limit",
                    "Margin",
                    "Unit",
                    "File",
                    "Sheet",
                    "Row",
                    "What would put it right"));

    private FindingList() {}

    private static Stream<ListColumn<Found>> results() {
        return Stream.of(
                ListColumn.<Found>of(
                                "severity",
                                ListUnit.NONE,
                                Kind.MARK,
                                "breach, marginal or note",
                                (found, cells) -> cells.severity(found.finding().severity()))
                        .onSheet("Severity"),
                ListColumn.<Found>text(
                                "code",
                                "kind of finding",
                                found -> found.finding().code().code())
                        .onSheet("Kind", 17),
                ListColumn.<Found>text(
                                "phase",
                                "state of the flight that it is of",
                                found -> found.finding().phase().label())
                        .onSheet("State", 13),
                text(
                        "subject",
                        "the limit, place or part that it is about",
                        found -> found.finding().subject()),
                figure("value", "figure of the flight", FindingText::value).onSheet("Value"),
                figure("limit", "what is permitted", FindingText::limit).onSheet("Limit"),
                figure("margin", "room to the limit, negative outside", FindingText::margin)
                        .onSheet("Margin"),
                unit(
                                "unit",
                                "unit of these three, that of the type's users",
                                found -> FindingText.unit(found.finding().quantity(), found.type()))
                        .onSheet("Unit", 8),
                inside("value_si", "figure of the flight", Finding::value),
                inside("limit_si", "what is permitted", Finding::limit),
                inside("margin_si", "room to the limit, negative outside", Finding::margin),
                unit(
                        "unit_si",
                        "unit of these three: kg, % MAC, kg/m, kg/m², seats, passengers, units or degrees",
                        found -> insideUnit(found.finding().quantity())),
                ListColumn.<Found>text(
                                "sentence",
                                Kind.SENTENCE,
                                "what was found, in the units of the type's users",
                                found -> FindingText.sentence(found.finding(), found.type()))
                        .onSheet("What was found"),
                LoadingColumns.SHEET.of(Found::loading),
                ListColumn.<Found>text(
                                "remedy",
                                Kind.SENTENCE,
                                "what would put the flight right, on each of its breaches",
                                found -> RemedyCell.of(found.flight(), found.finding()))
                        .onSheet("What would put it right", 70),
                LoadingColumns.FROM.of(Found::loading).onSheetOnly(),
                LoadingColumns.TO.of(Found::loading).onSheetOnly());
    }

    /** The findings of a flight, in their order. */
    public static List<Found> of(AuditedFlight flight) {
        List<Finding> findings = flight.assessment().findings();
        if (findings.isEmpty()) {
            return List.of();
        }
        return findings.stream().map(finding -> new Found(flight, finding)).toList();
    }

    @FunctionalInterface
    private interface Figure {
        double of(Finding finding, AircraftType type);
    }

    private static ListColumn<Found> figure(String name, String meaning, Figure figure) {
        return ListColumn.of(name, ListUnit.BESIDE, Kind.NUMBER, meaning, (found, cells) -> {
            if (found.hasNumbers()) {
                cells.figure(
                        figure.of(found.finding(), found.type()),
                        FindingText.decimals(found.finding().quantity(), found.type()));
            } else {
                cells.blank();
            }
        });
    }

    private static ListColumn<Found> inside(String name, String meaning, ToDoubleFunction<Finding> figure) {
        return ListColumn.of(name, ListUnit.INSIDE, Kind.NUMBER, meaning, (found, cells) -> {
            if (found.hasNumbers()) {
                cells.number(figure.applyAsDouble(found.finding()));
            } else {
                cells.blank();
            }
        });
    }

    private static ListColumn<Found> unit(String name, String meaning, Function<Found, String> unit) {
        return ListColumn.of(name, ListUnit.NONE, Kind.TEXT, meaning, (found, cells) -> {
            if (found.hasNumbers()) {
                cells.text(unit.apply(found));
            } else {
                cells.blank();
            }
        });
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
}
