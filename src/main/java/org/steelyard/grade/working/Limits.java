package org.steelyard.grade.working;

import java.util.List;
import org.steelyard.check.flight.LimitingMasses;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.model.limit.MassLimits;

/** The take-off masses that the limits allow, with the slips that befall them. */
public final class Limits {

    /** Landing limit without the trip fuel. */
    public static final int LANDING_WITHOUT_TRIP = 0;
    /** Zero-fuel limit without the fuel. */
    public static final int ZERO_FUEL_WITHOUT_FUEL = 1;
    /** Ramp limit in the place of the take-off limit. */
    public static final int RAMP_FOR_TAKEOFF = 2;
    /** Maximum landing mass in the place of the maximum take-off mass; the landing limit not looked at. */
    public static final int LANDING_FOR_TAKEOFF = 3;
    /** From here on the limits of the verdict are misread. */
    static final int VERDICTS = 10;

    private static final double SAME_KG = 0.5;
    private static final List<LimitingMass> ALL = List.of(LimitingMass.values());

    private Limits() {}

    /** The limit at a place of {@link #takeoffKg}. */
    static LimitingMass limit(int index) {
        return ALL.get(index);
    }

    /** Whether two limits allow the same take-off mass, so that either is the right answer. */
    public static boolean allowTheSame(Exercise exercise, LimitingMass one, LimitingMass other) {
        if (one == other) {
            return true;
        }
        double[] takeoffKg = takeoffKg(exercise, exercise.right());
        return Math.abs(takeoffKg[at(one)] - takeoffKg[at(other)]) < SAME_KG;
    }

    /** One mass for each limit, in the order of {@link LimitingMass}; the zero-fuel limit first. */
    public static double[] takeoffKg(Exercise exercise, Working working) {
        Working.FuelStates states = working.fuelStates();
        var fuel = states.balance().fuel().orElseThrow();
        LimitingMasses masses = LimitingMasses.of(
                exercise.type().limits(),
                exercise.loading().performance(),
                fuel.rampKg().sum(),
                fuel.takeoffKg().sum(),
                fuel.landingKg().sum());
        LimitingMass[] all = LimitingMass.values();
        double[] takeoffKg = new double[all.length];
        for (int i = 0; i < all.length; i++) {
            takeoffKg[i] = masses.takeoffKg(all[i]);
        }
        return takeoffKg;
    }

    static void slip(Slip slip, double[] takeoffKg, MassLimits limits) {
        if (slip.kind() == SlipKind.LIMIT_LEFT_OUT) {
            takeoffKg[slip.index()] = Double.POSITIVE_INFINITY;
        } else if (slip.kind() == SlipKind.WRONG_PHASE) {
            switch (slip.index()) {
                case LANDING_WITHOUT_TRIP -> takeoffKg[at(LimitingMass.LANDING)] = limits.maxLandingKg();
                case ZERO_FUEL_WITHOUT_FUEL -> takeoffKg[at(LimitingMass.ZERO_FUEL)] = limits.maxZeroFuelKg();
                case RAMP_FOR_TAKEOFF -> {
                    takeoffKg[at(LimitingMass.TAKEOFF)] = limits.maxRampKg();
                    takeoffKg[at(LimitingMass.RAMP)] = Double.POSITIVE_INFINITY;
                }
                case LANDING_FOR_TAKEOFF -> {
                    takeoffKg[at(LimitingMass.TAKEOFF)] = limits.maxLandingKg();
                    takeoffKg[at(LimitingMass.LANDING)] = Double.POSITIVE_INFINITY;
                }
                default -> {
                    // a misreading of the verdict leaves the masses alone
                }
            }
        }
    }

    public static int at(LimitingMass limit) {
        return ALL.indexOf(limit);
    }
}
