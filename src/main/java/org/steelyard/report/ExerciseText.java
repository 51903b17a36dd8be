package org.steelyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.grade.Exercise;
import org.steelyard.grade.FigureText;
import org.steelyard.grade.Line;
import org.steelyard.grade.MadeExercise;
import org.steelyard.model.AircraftType;
import org.steelyard.model.CgMeasure;
import org.steelyard.model.CrewRole;
import org.steelyard.model.Envelope;
import org.steelyard.model.Fuel;
import org.steelyard.model.LimitLine;
import org.steelyard.model.LimitPoint;
import org.steelyard.model.Load;
import org.steelyard.model.Loading;
import org.steelyard.model.MassLimits;
import org.steelyard.model.MassScheme;
import org.steelyard.model.Passengers;
import org.steelyard.model.Phase;
import org.steelyard.model.Policy;
import org.steelyard.model.SheetItem;
import org.steelyard.model.Tank;
import org.steelyard.model.TankPoint;
import org.steelyard.model.TrimPoint;
import org.steelyard.model.TrimScale;

/** What an exercise gives to the student, as rows of words that page and workbook share. */
final class ExerciseText {

    private final MadeExercise made;
    private final Exercise given;
    private final AircraftType type;
    private final FigureText text;

    /** A table with its headings; those over numbers begin with #. */
    record Table(String title, List<String> headings, List<List<String>> rows) {

        Table {
            headings = List.copyOf(headings);
            rows = List.copyOf(rows);
        }
    }

    ExerciseText(MadeExercise made, Policy policy) {
        this.made = made;
        this.given = Exercise.of(made.given(), policy);
        this.type = made.given().type();
        this.text = new FigureText(type);
    }

    String name() {
        return made.given().flight().flight();
    }

    FigureText figures() {
        return text;
    }

    AircraftType type() {
        return type;
    }

    String task() {
        return made.change();
    }

    String facts() {
        Loading loading = made.given();
        String flaps = loading.setting().flaps();
        return loading.tail().registration() + ", " + type.name()
                + (flaps.isBlank() ? "" : "; take-off flaps " + flaps);
    }

    /** Load by line, with room for the student's masses and moments. */
    Table load() {
        List<List<String>> rows = new ArrayList<>();
        int zone = 0;
        int hold = 0;
        for (Line line : given.lines()) {
            String what = switch (line.kind()) {
                case BASIC, PANTRY, STATE -> text.mass(line.massKg());
                case CREW -> crew(line);
                case ZONE -> passengers(zone++);
                case HOLD -> hold(hold++);
            };
            rows.add(List.of(line.name(), what, "", text.armNumber(line.armM()), ""));
        }
        return new Table(
                "Load",
                List.of(
                        "Item",
                        "Given",
                        "#Mass, " + text.massUnitName(),
                        "#Arm, " + text.armUnitName(),
                        "#Moment, " + text.momentUnitName()),
                rows);
    }

    private String crew(Line line) {
        CrewRole role = line.name().equals(CrewRole.FLIGHT.label()) ? CrewRole.FLIGHT : CrewRole.CABIN;
        double eachKg = type.cabin().scheme().massKg(role);
        return Math.round(line.massKg() / eachKg) + " at " + text.mass(eachKg);
    }

    private String passengers(int zone) {
        Passengers all = ((Load.ByPlace) made.given().load()).zones().get(zone).passengers();
        List<String> words = new ArrayList<>();
        count(words, all.male(), "man", "men");
        count(words, all.female(), "woman", "women");
        count(words, all.adult(), "adult", "adults");
        count(words, all.child(), "child", "children");
        count(words, all.infant(), "infant", "infants");
        return words.isEmpty() ? "empty" : String.join(", ", words);
    }

    private static void count(List<String> words, int count, String one, String several) {
        if (count > 0) {
            words.add(count + " " + (count == 1 ? one : several));
        }
    }

    private String hold(int hold) {
        double kg = ((Load.ByPlace) made.given().load())
                .holds()
                .get(hold)
                .massKg(type.cabin().scheme());
        return kg == 0 ? "empty" : text.mass(kg);
    }

    Table fuel() {
        Fuel.ByTank fuel = (Fuel.ByTank) made.given().fuel();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < type.fuel().tanks().size(); i++) {
            rows.add(List.of(
                    type.fuel().tanks().get(i).name(), text.mass(fuel.tanksKg().at(i)), "", "", ""));
        }
        rows.add(List.of("taxi fuel", text.mass(fuel.taxiKg()), "", "", ""));
        rows.add(List.of("trip fuel", text.mass(fuel.tripKg()), "", "", ""));
        return new Table("Fuel", List.of("Item", "Given", "#Ramp", "#Take-off", "#Landing"), rows);
    }

    /** What is asked, with its unit: the figures that the loading has an answer for. */
    List<List<String>> asked(CgMeasure measure) {
        List<List<String>> rows = new ArrayList<>();
        Exercise asked = Exercise.of(made.asked(), new Policy(0, 0, 0, 0, org.steelyard.model.SharingRule.BY_CAPACITY));
        for (SheetItem item : SheetItem.ALL) {
            if (asked.right(item, measure).isPresent()) {
                rows.add(List.of(org.steelyard.model.SheetForm.label(item), unit(item, measure), hint(item)));
            }
        }
        return rows;
    }

    private String unit(SheetItem item, CgMeasure measure) {
        return switch (item.kind()) {
            case MASS -> text.massUnitName();
            case CG ->
                switch (measure) {
                    case PERCENT_MAC -> "% MAC";
                    case ARM -> armUnit();
                    case INDEX -> "index";
                };
            case TRIM -> "units, UP or DN";
            case LIMIT, VERDICT -> "words";
        };
    }

    /** A unit of arms that sheets are read back in. */
    private String armUnit() {
        return switch (type.geometry().units().length()) {
            case M -> "m";
            case CM, MM -> "mm";
            case IN, FT -> "in";
        };
    }

    private static String hint(SheetItem item) {
        return switch (item) {
            case LIMITING_MASS -> "the least that all limits allow";
            case LIMITED_BY -> "zero-fuel, take-off, landing, ramp";
            case TRIM -> "as 0.2 UP or 1.1 DN";
            case VERDICT -> "in limits or out of limits";
            default -> "";
        };
    }

    // ------------------------------------------------------------ aircraft data

    List<Table> data() {
        List<Table> tables = new ArrayList<>();
        tables.add(limits());
        tables.add(masses());
        tables.add(tanks());
        for (Envelope envelope : type.envelopes()) {
            tables.add(envelope(envelope));
        }
        for (TrimScale scale : type.trimScales()) {
            if (scale.phase() == Phase.TAKEOFF) {
                tables.add(scale(scale));
            }
        }
        return tables;
    }

    private Table limits() {
        MassLimits limits = type.limits();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("maximum ramp mass", text.mass(limits.maxRampKg())));
        rows.add(List.of("maximum take-off mass", text.mass(limits.maxTakeoffKg())));
        rows.add(List.of("maximum landing mass", text.mass(limits.maxLandingKg())));
        rows.add(List.of("maximum zero-fuel mass", text.mass(limits.maxZeroFuelKg())));
        rows.add(List.of("minimum mass in flight", text.mass(limits.minFlightKg())));
        rows.add(List.of("LEMAC", text.arm(type.geometry().chord().leadingEdgeM())));
        rows.add(List.of("MAC", text.arm(type.geometry().chord().lengthM())));
        rows.add(List.of(
                "index",
                "mass × (arm − " + text.armNumber(type.geometry().index().referenceArmM()) + ") / "
                        + text.momentNumber(type.geometry().index().divisorKgM()) + " + "
                        + FigureText.points(type.geometry().index().constant())));
        type.holds().forEach(hold -> rows.add(List.of(hold.name() + ", at most", text.mass(hold.maxKg()))));
        type.groups().forEach(group -> rows.add(List.of(group.name() + ", at most", text.mass(group.maxKg()))));
        return new Table("Limits and reference", List.of("What", "#Value"), rows);
    }

    private Table masses() {
        MassScheme scheme = type.cabin().scheme();
        List<List<String>> rows = List.of(
                List.of("adult", text.mass(scheme.adultKg())),
                List.of("child", text.mass(scheme.childKg())),
                List.of("infant", text.mass(scheme.infantKg())),
                List.of("flight crew", text.mass(scheme.flightCrewKg())),
                List.of("cabin crew", text.mass(scheme.cabinCrewKg())));
        return new Table("Standard masses", List.of("Person", "#Mass"), rows);
    }

    private Table tanks() {
        List<List<String>> rows = new ArrayList<>();
        for (Tank tank : type.fuel().tanks()) {
            for (TankPoint point : tank.armTable()) {
                rows.add(List.of(tank.name(), text.mass(point.quantityKg()), text.arm(point.armM())));
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
                                                + (share.untilKg() > 0 ? " to " + text.mass(share.untilKg()) : ""))
                                        .toList()))
                        .toList());
        return new Table(
                "Tanks: between two rows the moment is linear in the contents. Burn order: " + order + ".",
                List.of("Tank", "#Contents", "#Arm of all of it"),
                rows);
    }

    private Table envelope(Envelope envelope) {
        List<List<String>> rows = new ArrayList<>();
        for (LimitLine line : List.of(envelope.forward(), envelope.aft())) {
            for (LimitPoint point : line.points()) {
                rows.add(List.of(
                        line.side().label(),
                        text.mass(point.massKg()),
                        text.arm(point.armM()),
                        text.cg(type.geometry().chord().percentAt(point.armM()), CgMeasure.PERCENT_MAC)));
            }
        }
        return new Table(
                "Envelope, " + envelope.phase().label() + ": straight in "
                        + envelope.forward().straight().name().toLowerCase(Locale.ROOT) + " (forward) and "
                        + envelope.aft().straight().name().toLowerCase(Locale.ROOT) + " (aft) between rows",
                List.of("Limit", "#Mass", "#Arm", "#CG"),
                rows);
    }

    private Table scale(TrimScale scale) {
        List<List<String>> rows = new ArrayList<>();
        double massKg = given.balance().takeoff().massKg();
        Optional<List<TrimPoint>> points =
                Optional.of(scale.law().pointsAt(massKg)).filter(found -> !found.isEmpty());
        for (TrimPoint point : points.orElse(List.of())) {
            rows.add(List.of(text.cg(point.cgPercentMac(), CgMeasure.PERCENT_MAC), text.trim(point.trimUnits(), 0.01)));
        }
        return new Table(
                "Trim scale, flaps " + scale.flaps() + ", near " + text.mass(massKg) + " at take-off; in steps of "
                        + FigureText.points(scale.stepUnits()),
                List.of("#CG", "#Trim"),
                rows);
    }
}
