package org.steelyard.report.grade;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.grade.text.FigureText;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Line;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CrewRole;
import org.steelyard.report.type.TypeTable;

/** What an exercise gives to the student, as rows of words that page and workbook share. */
final class ExerciseText {

    private final MadeExercise made;
    private final Exercise given;
    private final AircraftType type;
    private final FigureText text;

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
    TypeTable load() {
        List<List<String>> rows = new ArrayList<>();
        int zone = 0;
        int hold = 0;
        for (Line line : given.lines()) {
            String what = switch (line.kind()) {
                case BASIC, PANTRY, STATE -> text.given(line.massKg());
                case CREW -> crew(line);
                case ZONE -> passengers(zone++);
                case HOLD -> hold(hold++);
            };
            rows.add(List.of(line.name(), what, "", text.armNumber(line.armM()), ""));
        }
        return new TypeTable(
                "Load",
                List.of(
                        "Item",
                        "Given",
                        "#Mass, " + text.massUnitName(),
                        "#Arm, " + text.armUnitName(),
                        "#Moment, " + text.momentUnitName()),
                rows,
                "");
    }

    private String crew(Line line) {
        CrewRole role = line.name().equals(CrewRole.FLIGHT.label()) ? CrewRole.FLIGHT : CrewRole.CABIN;
        double eachKg = made.given().scheme().massKg(role);
        return Math.round(line.massKg() / eachKg) + " at " + text.given(eachKg);
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
                .massKg(made.given().scheme());
        return kg == 0 ? "empty" : text.given(kg);
    }

    TypeTable fuel() {
        Fuel.ByTank fuel = (Fuel.ByTank) made.given().fuel();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < type.fuel().tanks().size(); i++) {
            rows.add(List.of(
                    type.fuel().tanks().get(i).name(), text.given(fuel.tanksKg().at(i)), "", "", ""));
        }
        rows.add(List.of("taxi fuel", text.given(fuel.taxiKg()), "", "", ""));
        rows.add(List.of("trip fuel", text.given(fuel.tripKg()), "", "", ""));
        return new TypeTable("Fuel", List.of("Item", "Given", "#Ramp", "#Take-off", "#Landing"), rows, "");
    }

    /** What is asked, with its unit: every figure, the trim where there is a scale for the flaps. */
    List<List<String>> asked(CgMeasure measure) {
        List<List<String>> rows = new ArrayList<>();
        for (SheetItem item : SheetItem.ALL) {
            if (item != SheetItem.TRIM || hasScale()) {
                rows.add(List.of(SheetForm.label(item), unit(item, measure), hint(item)));
            }
        }
        return rows;
    }

    private boolean hasScale() {
        FlightSetting setting = made.given().setting();
        return type.trimScale(Phase.TAKEOFF, setting.flaps(), setting.thrustRating())
                .isPresent();
    }

    /** The aircraft's data, the same on every sheet of its type. */
    List<TypeTable> data() {
        return AircraftData.of(List.of(made.given()));
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
}
