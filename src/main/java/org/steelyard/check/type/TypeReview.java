package org.steelyard.check.type;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.steelyard.check.text.Rounded;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Tolerance;

/**
 * Looks over a sound description of a type for what is probably a slip: places, fuel, standard masses and the fleet.
 * Every threshold is common practice, not a rule of any authority.
 */
public final class TypeReview {

    /** Jet fuel and aviation gasoline lie between these at common temperatures (common practice). */
    private static final double LEAST_DENSITY_KG_PER_L = 0.68;

    private static final double MOST_DENSITY_KG_PER_L = 0.85;
    private static final double FAR_CG_PERCENT_MAC = 3;
    private static final double FAR_MASS_PERCENT = 5;
    private static final int FEWEST_TAILS = 3;
    private static final Pattern SEATS = Pattern.compile("(\\d+) (?:passenger )?seats");
    private static final Pattern NO_SOURCE =
            Pattern.compile("(?i)\\W*|\\W*(unknown|none|tbd|todo|to do|n/?a|xxx+|source|somewhere)\\W*");

    private final AircraftType type;
    private final List<Tail> tails;
    private final List<TypeRemark> remarks = new ArrayList<>();

    private TypeReview(AircraftType type, List<Tail> tails) {
        this.type = type;
        this.tails = List.copyOf(tails);
    }

    /**
     * Looks over a type.
     *
     * @param type the type
     * @param tails its tails
     * @return what is worth a look, in the order of the type's file; empty if nothing is
     */
    public static List<TypeRemark> of(AircraftType type, List<Tail> tails) {
        TypeReview review = new TypeReview(type, tails);
        review.cabin();
        review.holds();
        review.fuel();
        review.remarks.addAll(new LimitReview(type).remarks());
        review.fleet();
        return List.copyOf(review.remarks);
    }

    private void remark(String about, String sentence, Object... values) {
        remarks.add(new TypeRemark(about, String.format(Locale.ROOT, sentence, values)));
    }

    static String mass(AircraftType type, double massKg) {
        MassUnit unit = type.geometry().units().mass();
        return String.format(
                Locale.ROOT, unit == MassUnit.TONNE ? "%,.2f %s" : "%,.0f %s", unit.fromKg(massKg), unit.symbol());
    }

    /** A mass that may be put somewhere, so never rounded up. */
    private static String permitted(AircraftType type, double massKg) {
        MassUnit unit = type.geometry().units().mass();
        int decimals = unit == MassUnit.TONNE ? 2 : 0;
        return String.format(
                Locale.ROOT, "%,." + decimals + "f %s", Rounded.down(unit.fromKg(massKg), decimals), unit.symbol());
    }

    private String arm(double armM) {
        LengthUnit unit = type.geometry().units().length();
        return String.format(Locale.ROOT, "%,.2f %s", unit.fromM(armM), unit.symbol());
    }

    private void cabin() {
        Matcher said = SEATS.matcher(type.name());
        int seats = type.cabin().seats();
        if (said.find() && Integer.parseInt(said.group(1)) != seats) {
            remark("cabin", "the name says %s seats, the zones have %d", said.group(1), seats);
        }
        List<CabinZone> zones = type.cabin().zones();
        for (int i = 1; i < zones.size(); i++) {
            if (zones.get(i).armM() == zones.get(i - 1).armM()) {
                remark(
                        "cabin",
                        "zones %s and %s have the same arm, %s",
                        zones.get(i - 1).id(),
                        zones.get(i).id(),
                        arm(zones.get(i).armM()));
            }
        }
        if (NO_SOURCE.matcher(type.cabin().scheme().source()).matches()) {
            remark(
                    "standard masses",
                    "the scheme %s does not say where its figures come from",
                    type.cabin().scheme().id());
        }
    }

    private void holds() {
        for (Hold hold : type.holds()) {
            hold.floor()
                    .filter(floor -> Tolerance.isBelowKg(floor.maxKg(), hold.maxKg()))
                    .ifPresent(floor -> remark(
                            "hold " + hold.id(),
                            "its floor carries %s spread evenly, less than its maximum of %s",
                            permitted(type, floor.maxKg()),
                            mass(type, hold.maxKg())));
        }
        for (LoadGroup group : type.groups()) {
            double holdsKg = group.holds().stream()
                    .mapToDouble(hold -> type.holds().get(hold).maxKg())
                    .sum();
            if (group.zones().isEmpty() && !Tolerance.isBelowKg(group.maxKg(), holdsKg)) {
                remark(
                        "group " + group.id(),
                        "its maximum of %s is not below the sum of its holds, %s, and so limits" + " nothing",
                        mass(type, group.maxKg()),
                        mass(type, holdsKg));
            }
        }
    }

    private void fuel() {
        double densityKgPerL = type.fuel().densityKgPerL();
        if (densityKgPerL < LEAST_DENSITY_KG_PER_L || densityKgPerL > MOST_DENSITY_KG_PER_L) {
            remark(
                    "fuel",
                    "a density of %.3f kg/L is unusual: fuels lie between %.2f and %.2f",
                    densityKgPerL,
                    LEAST_DENSITY_KG_PER_L,
                    MOST_DENSITY_KG_PER_L);
        }
    }

    private void fleet() {
        if (tails.isEmpty()) {
            remark("fleet", "no tail is of this type");
        }
        for (Tail tail : tails) {
            if (type.geometry().index().indexOf(tail.basic()) < 0) {
                remark(
                        tail.registration(),
                        "its index is below zero; the constant of the index is meant to keep it" + " positive");
            }
            if (tails.size() >= FEWEST_TAILS) {
                far(tail);
            }
        }
    }

    /** A tail against the median of the others. */
    private void far(Tail tail) {
        Stream<Tail> others =
                tails.stream().filter(other -> !other.registration().equals(tail.registration()));
        List<Tail> rest = others.toList();
        double cg = percent(tail);
        double usualCg = median(rest.stream().mapToDouble(this::percent).toArray());
        if (Math.abs(cg - usualCg) > FAR_CG_PERCENT_MAC) {
            remark(
                    tail.registration(),
                    "its basic CG of %.1f %% MAC is far from the others' median of %.1f",
                    cg,
                    usualCg);
        }
        double massKg = tail.basic().massKg();
        double usualKg = median(
                rest.stream().mapToDouble(other -> other.basic().massKg()).toArray());
        if (Math.abs(massKg - usualKg) > FAR_MASS_PERCENT / 100 * usualKg) {
            remark(
                    tail.registration(),
                    "its basic mass of %s is far from the others' median of %s",
                    mass(type, massKg),
                    mass(type, usualKg));
        }
    }

    private double percent(Tail tail) {
        return type.geometry().chord().percentAt(tail.basic().armM());
    }

    private static double median(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
