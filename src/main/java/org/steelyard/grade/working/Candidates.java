package org.steelyard.grade.working;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.balance.FuelBalance;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.grade.working.Line.Kind;
import org.steelyard.grade.working.Slip.Target;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.VolumeUnit;

/** Every slip that can befall an exercise. */
public final class Candidates {

    public static final int ROUND_MASS = 0;
    public static final int ROUND_ARM = 1;
    static final int ROUND_TRIM_CG = 2;
    /** The slip befell the states, and not what the limits allow. */
    static final int STATES_ONLY = 1;

    static final int OF_LEADING_EDGE = 0;
    static final int OF_LENGTH = 1;

    private static final int ROUND_TO = 100;
    private static final double MOST_OF_MASS = 0.25;
    private static final double LEAST_PERCENT_MAC = 0.08;
    private static final double MOST_PERCENT_MAC = 25;

    private final Exercise exercise;
    private final double massStepKg;
    private final List<Slip> slips = new ArrayList<>();

    private Candidates(Exercise exercise) {
        this.exercise = exercise;
        this.massStepKg = massStepKg(exercise.type().geometry().units());
    }

    /** What the last digit of a mass stands for. */
    public static double massStepKg(DisplayUnits units) {
        return units.mass() == MassUnit.LB ? MassUnit.LB.toKg(1) : 1;
    }

    public static List<Slip> of(Exercise exercise) {
        Candidates candidates = new Candidates(exercise);
        candidates.lines();
        if (!(exercise.loading().fuel() instanceof Fuel.NotGiven)) {
            candidates.fuel();
            candidates.sums();
        }
        candidates.reference();
        candidates.trim();
        candidates.limits();
        return List.copyOf(candidates.slips);
    }

    private void add(SlipKind kind, Target target, int index, double amount, String what) {
        slips.add(new Slip(kind, target, index, amount, what));
    }

    private void method(SlipKind kind, int index, double amount, String what) {
        slips.add(Slip.method(kind, index, amount, what));
    }

    // ------------------------------------------------------------ the lines

    private void lines() {
        List<Line> lines = exercise.lines();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            if (line.massKg() > 0 && line.kind() != Kind.STATE) {
                line(i, line);
            }
        }
        group(Target.ZONES, Kind.ZONE, "all passengers");
        group(Target.HOLDS, Kind.HOLD, "all holds");
        if (lines.stream().anyMatch(line -> line.childrenKg() > 0)) {
            add(SlipKind.CHILD_AS_ADULT, Target.ZONES, -1, 0, "");
        }
    }

    private void line(int index, Line line) {
        switch (line.kind()) {
            case CREW -> add(SlipKind.CREW_LEFT_OUT, Target.LINE, index, 0, line.name());
            case PANTRY -> add(SlipKind.PANTRY_LEFT_OUT, Target.LINE, index, 0, line.name());
            default -> {
                if (line.isTraffic()) {
                    add(SlipKind.PLACE_LEFT_OUT, Target.LINE, index, 0, line.name());
                    add(SlipKind.PLACE_TWICE, Target.LINE, index, 0, line.name());
                    neighbour(index, index - 1);
                    neighbour(index, index + 1);
                }
            }
        }
        if (line.kind() == Kind.HOLD || line.kind() == Kind.BASIC) {
            units(Target.LINE, index, line.name());
        }
        if (line.kind() != Kind.CREW) {
            digits(Target.LINE, index, line.massKg(), line.name());
        }
    }

    private void neighbour(int index, int other) {
        List<Line> lines = exercise.lines();
        boolean beside = other >= 0
                && other < lines.size()
                && lines.get(other).kind() == lines.get(index).kind();
        if (beside && lines.get(other).armM() != lines.get(index).armM()) {
            add(
                    SlipKind.NEIGHBOURS_ARM,
                    Target.LINE,
                    index,
                    lines.get(other).armM(),
                    lines.get(index).name() + " at the arm of "
                            + lines.get(other).name());
        }
    }

    private void group(Target target, Kind kind, String what) {
        long filled = exercise.lines().stream()
                .filter(line -> line.kind() == kind && line.massKg() > 0)
                .count();
        if (filled > 1 || (filled == 1 && kind == Kind.ZONE)) {
            units(target, -1, what);
        }
    }

    private void units(Target target, int index, String what) {
        add(SlipKind.POUNDS, target, index, 1 / MassUnit.LB.toKg(1), what);
        add(SlipKind.KILOGRAMS, target, index, MassUnit.LB.toKg(1), what);
    }

    private void digits(Target target, int index, double massKg, String what) {
        for (double swapped : Digits.swaps(massKg, massStepKg)) {
            add(SlipKind.DIGITS_SWAPPED, target, index, swapped - rounded(massKg), what);
        }
    }

    private double rounded(double massKg) {
        return Math.rint(massKg / massStepKg) * massStepKg;
    }

    // ------------------------------------------------------------ fuel

    private void fuel() {
        Fuel fuel = exercise.loading().fuel();
        double rampKg = exercise.balance()
                .fuel()
                .map(FuelBalance::rampKg)
                .map(tanks -> tanks.sum())
                .orElse(0.0);
        double densityKgPerL = exercise.loading().tanks().densityKgPerL();
        units(Target.FUEL, -1, "ramp fuel");
        units(Target.TRIP, -1, "trip fuel");
        volumes(Target.FUEL, "ramp fuel", densityKgPerL);
        volumes(Target.TRIP, "trip fuel", densityKgPerL);
        digits(Target.FUEL, -1, rampKg, "ramp fuel");
        digits(Target.TRIP, -1, fuel.tripKg(), "trip fuel");
        digits(Target.TAXI, -1, fuel.taxiKg(), "taxi fuel");
        if (fuel.taxiKg() > 0) {
            add(SlipKind.TAXI_NOT_OFF, Target.TAXI, -1, 0, "");
            add(SlipKind.TAXI_TWICE, Target.TAXI, -1, 0, "");
            add(SlipKind.TAXI_NOT_OFF, Target.TAXI, STATES_ONLY, 0, "the limits with the right fuel");
            add(SlipKind.TAXI_TWICE, Target.TAXI, STATES_ONLY, 0, "the limits with the right fuel");
            method(SlipKind.TRIP_OFF_RAMP, -1, 0, "");
            method(SlipKind.RAMP_FOR_TAKEOFF, -1, 0, "");
        }
    }

    private void volumes(Target target, String what, double densityKgPerL) {
        for (VolumeUnit unit : VolumeUnit.values()) {
            double kg = unit.toKg(1, densityKgPerL);
            add(SlipKind.VOLUME, target, -1, 1 / kg, what + " in " + unit.symbol() + " taken for kg");
            add(SlipKind.VOLUME, target, -1, kg, what + " taken for " + unit.symbol());
        }
    }

    // ------------------------------------------------------------ sums

    private void sums() {
        for (SheetItem item : SheetItem.ALL) {
            int index = SheetItem.ALL.indexOf(item);
            if (item.kind() == SheetItem.Kind.MASS) {
                mass(item, index);
                result(item, index);
                units(Target.ITEM, index, item.label());
            }
            item.phase()
                    .filter(phase -> item.kind() == SheetItem.Kind.CG)
                    .flatMap(phase -> exercise.balance().state(phase))
                    .ifPresent(state -> moment(state, index, item));
        }
        units(Target.ITEM, -1, "every mass");
        exercise.balance().zeroFuel().ifPresent(this::roundings);
    }

    /** The result written down with two digits swapped; what comes after goes on from the right one. */
    private void result(SheetItem item, int index) {
        if (exercise.right(item, CgMeasure.ARM).orElse(new Answer.Verdict(true)) instanceof Answer.Figure number) {
            digits(Target.ITEM, index, number.value(), item.label());
        }
    }

    private void mass(SheetItem item, int index) {
        boolean state = item.phase().isPresent();
        double sizeKg = item.phase()
                .flatMap(exercise.balance()::state)
                .map(MassMoment::massKg)
                .orElse(exercise.balance().takeoff().massKg());
        for (double amount = massStepKg; amount <= MOST_OF_MASS * sizeKg; amount *= 10) {
            if (amount > massStepKg || !state) {
                String what = item.label();
                add(SlipKind.ARITHMETIC, Target.ITEM, index, amount, what);
                add(SlipKind.ARITHMETIC, Target.ITEM, index, -amount, what);
            }
        }
    }

    private void moment(MassMoment state, int index, SheetItem item) {
        double stepKgM = massStepKg * lengthStepM(exercise.type().geometry().units());
        double percentMacKgM =
                state.massKg() * exercise.type().geometry().chord().lengthM() / 100;
        for (double amount = stepKgM; amount <= MOST_PERCENT_MAC * percentMacKgM; amount *= 10) {
            if (amount >= LEAST_PERCENT_MAC * percentMacKgM) {
                String what = "moment at " + item.phase().orElseThrow().label();
                add(SlipKind.ARITHMETIC, Target.ITEM, index, amount, what);
                add(SlipKind.ARITHMETIC, Target.ITEM, index, -amount, what);
            }
        }
    }

    private static double lengthStepM(DisplayUnits units) {
        return units.length() == LengthUnit.MM || units.length() == LengthUnit.CM
                ? 1
                : units.length().toM(1);
    }

    private void roundings(MassMoment zeroFuel) {
        double toKg = massStepKg * ROUND_TO;
        method(SlipKind.ROUNDED_EARLY, ROUND_MASS, toKg, "zero-fuel mass to hundreds");
        double toM = exercise.type().geometry().units().length() == LengthUnit.IN ? LengthUnit.IN.toM(1) : 0.1;
        method(SlipKind.ROUNDED_EARLY, ROUND_ARM, toM, "zero-fuel arm");
        method(SlipKind.ROUNDED_EARLY, ROUND_TRIM_CG, 1, "CG to whole % MAC for the trim");
    }

    // ------------------------------------------------------------ chord and index

    private void reference() {
        Geometry geometry = exercise.type().geometry();
        LengthUnit unit = geometry.units().length();
        double stepM = unit.toM(
                switch (unit) {
                    case M, FT -> 0.01;
                    case CM, IN -> 0.1;
                    case MM -> 1;
                });
        double leadingEdgeM = geometry.chord().leadingEdgeM();
        for (double swapped : Digits.swaps(leadingEdgeM, stepM)) {
            method(SlipKind.LEMAC_OR_MAC, OF_LEADING_EDGE, swapped, "LEMAC with two digits swapped");
        }
        for (double swapped : Digits.swaps(geometry.chord().lengthM(), stepM)) {
            if (swapped > 0.2 * geometry.chord().lengthM()) {
                method(SlipKind.LEMAC_OR_MAC, OF_LENGTH, swapped, "MAC with two digits swapped");
            }
        }
        double referenceM = geometry.index().referenceArmM();
        if (referenceM != leadingEdgeM && referenceM != 0) {
            method(SlipKind.LEMAC_OR_MAC, OF_LEADING_EDGE, referenceM, "the reference arm of the index for LEMAC");
        }
        if (leadingEdgeM > 0) {
            method(SlipKind.LEMAC_OR_MAC, OF_LENGTH, leadingEdgeM, "divided by LEMAC");
        }
        if (leadingEdgeM != 0) {
            method(SlipKind.DATUM_FOR_LEMAC, -1, 0, "");
        }
        if (geometry.index().constant() != 0) {
            method(SlipKind.INDEX_CONSTANT, -1, 0, "");
        }
    }

    private void trim() {
        String flaps = exercise.loading().setting().flaps();
        if (exercise.balance().takeoffTrim().isEmpty()) {
            return;
        }
        for (TrimScale scale : exercise.type().trimScales()) {
            if (scale.phase() == Phase.TAKEOFF && !scale.flaps().equals(flaps)) {
                method(SlipKind.WRONG_FLAP, -1, 0, scale.flaps());
            }
        }
        method(SlipKind.SCALE_WRONG_WAY, -1, 0, "");
        method(SlipKind.TRIM_SIGN, -1, 0, "");
        if (exercise.balance().zeroFuel().isPresent()) {
            method(SlipKind.ZERO_FUEL_CG_FOR_TRIM, -1, 0, "");
        }
    }

    // ------------------------------------------------------------ limits

    private void limits() {
        method(SlipKind.WRONG_PHASE, Limits.LANDING_WITHOUT_TRIP, 0, "landing limit without the trip fuel");
        method(SlipKind.WRONG_PHASE, Limits.ZERO_FUEL_WITHOUT_FUEL, 0, "zero-fuel limit without the fuel");
        method(SlipKind.WRONG_PHASE, Limits.RAMP_FOR_TAKEOFF, 0, "ramp limit for the take-off limit");
        method(SlipKind.WRONG_PHASE, Limits.LANDING_FOR_TAKEOFF, 0, "landing limit for the take-off limit");
        for (LimitingMass limit : LimitingMass.values()) {
            method(SlipKind.LIMIT_LEFT_OUT, Limits.at(limit), 0, limit.label());
        }
        String[] words = {
            "",
            "take-off held against the landing envelope",
            "take-off held against the zero-fuel envelope",
            "landing held against the take-off envelope",
            "landing held against the take-off limit"
        };
        for (Exercise.LimitReading reading : Exercise.LimitReading.values()) {
            if (reading != Exercise.LimitReading.RIGHT
                    && exercise.reading(reading).isPresent()) {
                method(SlipKind.WRONG_PHASE, Limits.VERDICTS + index(reading), 0, words[index(reading)]);
            }
        }
        method(SlipKind.ENVELOPE_MISREAD, -1, 0, "");
    }

    private static int index(Exercise.LimitReading reading) {
        return Exercise.LimitReading.ALL.indexOf(reading);
    }
}
