package org.steelyard.report.type;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.report.text.NumberText;
import org.steelyard.report.text.PlainNumber;

/** A type's envelopes by their vertices, and its trim scales by their points. */
public final class LimitTables {

    private static final int MOST_DECIMALS = 3;
    private static final double SAME = 1e-6;

    private final AircraftType type;
    private final TypeUnits units;

    public LimitTables(AircraftType type) {
        this.type = type;
        this.units = new TypeUnits(type);
    }

    List<TypeTable> tables() {
        List<TypeTable> tables = new ArrayList<>();
        type.envelopes().forEach(envelope -> tables.add(envelope(envelope)));
        tables.add(scales());
        type.trimScales().forEach(scale -> tables.add(points(scale)));
        return tables;
    }

    private TypeTable envelope(Envelope envelope) {
        List<List<String>> rows = new ArrayList<>();
        line(envelope.forward(), "forward", rows);
        line(envelope.aft(), "aft", rows);
        return new TypeTable(
                "Envelope, " + envelope.phase().label(),
                List.of(
                        "limit",
                        "straight in",
                        "#mass, " + units.massUnit(),
                        "#% MAC",
                        "#arm, " + units.lengthUnit(),
                        "#index"),
                rows,
                "");
    }

    private void line(LimitLine line, String name, List<List<String>> rows) {
        boolean first = true;
        String straight = line.straight() == Straightness.ARM ? "arm and % MAC" : "moment and index";
        for (LimitPoint point : line.points()) {
            rows.add(List.of(
                    first ? name : "",
                    first ? straight : "",
                    units.mass(point.massKg()),
                    units.percentText(point.armM()),
                    units.arm(point.armM()),
                    units.index(point.massKg(), point.armM())));
            first = false;
        }
    }

    private TypeTable scales() {
        List<List<String>> rows = new ArrayList<>();
        for (TrimScale scale : type.trimScales()) {
            rows.add(List.of(
                    scale.phase().label(),
                    scale.flaps(),
                    scale.thrustRating().isBlank() ? "any" : scale.thrustRating(),
                    scale.basis().label(),
                    scale.unit().measure().label(),
                    PlainNumber.of(scale.stepUnits()),
                    trim(scale, scale.bandLowUnits(), scale.stepUnits()) + " to "
                            + trim(scale, scale.bandHighUnits(), scale.stepUnits()),
                    units.cg(scale.law().cgRange().fromPercentMac()) + " to "
                            + units.cg(scale.law().cgRange().toPercentMac())));
        }
        return new TypeTable(
                "Trim scales",
                List.of("phase", "flaps", "thrust", "basis", "in", "#step", "band", "covers"),
                rows,
                "UP is nose-up, DN nose-down.");
    }

    private static String trim(TrimScale scale, double trimUnits, double step) {
        return FindingText.trim(trimUnits, step, scale.unit());
    }

    /** The points of a law, to their last decimal: CGs down, masses across where it depends on them. */
    public TypeTable points(TrimScale scale) {
        List<String> headings = new ArrayList<>(List.of("#" + units.cgAxis()));
        List<List<TrimPoint>> columns = new ArrayList<>();
        if (scale.law() instanceof TrimTable table) {
            for (int i = 0; i < table.massesKg().size(); i++) {
                headings.add("#" + units.massWithUnit(table.massesKg().at(i)));
                columns.add(table.pointsAt(table.massesKg().at(i)));
            }
        } else {
            headings.add("#trim");
            columns.add(scale.law().pointsAt(type.limits().maxTakeoffKg()));
        }
        int cgDecimals = decimals(columns.get(0).stream().mapToDouble(point -> units.cgIn(point.cgPercentMac())), 1);
        int decimals = decimals(columns.stream().flatMap(List::stream).mapToDouble(TrimPoint::trimUnits), 2);
        List<List<String>> rows = new ArrayList<>();
        for (int j = 0; j < columns.get(0).size(); j++) {
            double cg = units.cgIn(columns.get(0).get(j).cgPercentMac());
            List<String> row = new ArrayList<>(List.of(NumberText.fixed(cg, cgDecimals)));
            for (List<TrimPoint> column : columns) {
                row.add(trim(scale, column.get(j).trimUnits(), Math.pow(10, -decimals)));
            }
            rows.add(row);
        }
        return new TypeTable(name(scale), headings, rows, "");
    }

    /** The fewest decimals, from so many on, that show every value as it is. */
    private static int decimals(DoubleStream values, int least) {
        double[] all = values.toArray();
        int decimals = least;
        while (decimals < MOST_DECIMALS && !areShown(all, Math.pow(10, decimals))) {
            decimals++;
        }
        return decimals;
    }

    private static boolean areShown(double[] values, double steps) {
        return Arrays.stream(values).allMatch(value -> Math.abs(value * steps - Math.rint(value * steps)) < SAME);
    }

    /** The phase and setting that a scale is for. */
    static String name(TrimScale scale) {
        String phase = scale.phase().label();
        return Character.toUpperCase(phase.charAt(0)) + phase.substring(1) + " trim, flaps " + scale.flaps()
                + (scale.thrustRating().isBlank() ? "" : ", thrust " + scale.thrustRating());
    }
}
