package org.steelyard.report.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.grade.text.FigureText;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.report.text.PlainNumber;
import org.steelyard.report.type.LimitTables;
import org.steelyard.report.type.TypeTable;

/**
 * What a student needs to know of the aircraft, as tables that page and workbook share. It comes from the type and its
 * standard masses alone, never from a loading, so that it gives no answer away.
 */
final class AircraftData {

    private final AircraftType type;
    private final FigureText text;

    private AircraftData(AircraftType type) {
        this.type = type;
        this.text = new FigureText(type);
    }

    /** The data for loadings of one type, with the standard masses of each scheme that they count by. */
    static List<TypeTable> of(List<Loading> loadings) {
        AircraftData data = new AircraftData(loadings.get(0).type());
        List<TypeTable> tables = new ArrayList<>();
        tables.add(data.limits());
        List<MassScheme> schemes =
                loadings.stream().map(Loading::scheme).distinct().toList();
        for (MassScheme scheme : schemes) {
            tables.add(data.masses(scheme, schemes.size() == 1 ? "" : tails(loadings, scheme)));
        }
        tables.add(data.tanks());
        data.type.envelopes().forEach(envelope -> tables.add(data.envelope(envelope)));
        data.type.trimScales().stream()
                .filter(scale -> scale.phase() == Phase.TAKEOFF)
                .forEach(scale -> tables.add(data.scale(scale)));
        return tables;
    }

    private static String tails(List<Loading> loadings, MassScheme scheme) {
        return ", "
                + String.join(
                        ", ",
                        loadings.stream()
                                .filter(loading -> loading.scheme().equals(scheme))
                                .map(loading -> loading.tail().registration())
                                .distinct()
                                .sorted()
                                .toList());
    }

    private TypeTable limits() {
        MassLimits limits = type.limits();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("maximum ramp mass", text.given(limits.maxRampKg())));
        rows.add(List.of("maximum take-off mass", text.given(limits.maxTakeoffKg())));
        rows.add(List.of("maximum landing mass", text.given(limits.maxLandingKg())));
        rows.add(List.of("maximum zero-fuel mass", text.given(limits.maxZeroFuelKg())));
        rows.add(List.of("minimum mass in flight", text.given(limits.minFlightKg())));
        rows.add(List.of("LEMAC", text.arm(type.geometry().chord().leadingEdgeM())));
        rows.add(List.of("MAC", text.arm(type.geometry().chord().lengthM())));
        rows.add(List.of(
                "index",
                "mass × (arm − " + text.armNumber(type.geometry().index().referenceArmM()) + ") / "
                        + text.momentNumber(type.geometry().index().divisorKgM()) + " + "
                        + FigureText.points(type.geometry().index().constant())));
        type.holds().forEach(hold -> rows.add(List.of(hold.name() + ", at most", text.given(hold.maxKg()))));
        type.groups().forEach(group -> rows.add(List.of(group.name() + ", at most", text.given(group.maxKg()))));
        return new TypeTable("Limits and reference", List.of("What", "#Value"), rows, "");
    }

    private TypeTable masses(MassScheme scheme, String tails) {
        List<List<String>> rows = List.of(
                List.of("adult", text.given(scheme.adultKg())),
                List.of("child", text.given(scheme.childKg())),
                List.of("infant", text.given(scheme.infantKg())),
                List.of("flight crew", text.given(scheme.flightCrewKg())),
                List.of("cabin crew", text.given(scheme.cabinCrewKg())));
        return new TypeTable("Standard masses" + tails, List.of("Person", "#Mass"), rows, "");
    }

    private TypeTable tanks() {
        List<List<String>> rows = new ArrayList<>();
        for (Tank tank : type.fuel().tanks()) {
            for (TankPoint point : tank.armTable()) {
                rows.add(List.of(tank.name(), text.given(point.quantityKg()), text.arm(point.armM())));
            }
        }
        String order = String.join(
                "; then ",
                type.fuel().burnOrder().stream()
                        .map(stage -> String.join(
                                " with ",
                                stage.shares().stream()
                                        .map(share -> type.fuel()
                                                        .tanks()
                                                        .get(share.tank())
                                                        .name()
                                                + (share.untilKg() > 0 ? " to " + text.given(share.untilKg()) : ""))
                                        .toList()))
                        .toList());
        return new TypeTable(
                "Tanks",
                List.of("Tank", "#Contents", "#Arm of all of it"),
                rows,
                "Between two rows the moment is linear in the contents. Burn order: " + order + ".");
    }

    private TypeTable envelope(Envelope envelope) {
        List<List<String>> rows = new ArrayList<>();
        for (LimitLine line : List.of(envelope.forward(), envelope.aft())) {
            for (LimitPoint point : line.points()) {
                rows.add(List.of(
                        line.side().label(),
                        text.given(point.massKg()),
                        text.arm(point.armM()),
                        text.cg(type.geometry().chord().percentAt(point.armM()), CgMeasure.PERCENT_MAC)));
            }
        }
        return new TypeTable(
                "Envelope, " + envelope.phase().label(),
                List.of("Limit", "#Mass", "#Arm", "#CG"),
                rows,
                "Between two rows the limit is straight in "
                        + envelope.forward().straight().name().toLowerCase(Locale.ROOT) + " (forward) and "
                        + envelope.aft().straight().name().toLowerCase(Locale.ROOT) + " (aft).");
    }

    private TypeTable scale(TrimScale scale) {
        TypeTable points = new LimitTables(type).points(scale);
        return new TypeTable(
                points.title(),
                points.headings(),
                points.rows(),
                "Straight between two CGs" + (scale.law() instanceof TrimTable ? " and between two masses" : "")
                        + ". The indicator is set in steps of " + PlainNumber.of(scale.stepUnits())
                        + "; UP is nose-up, DN nose-down.");
    }
}
