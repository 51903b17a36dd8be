package org.steelyard.model.loading;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.unit.Require;

/**
 * What sits in one cabin zone.
 *
 * @param passengers counts by category of everybody in the zone
 * @param actualKg actual mass of all of them together in kg, in place of the scheme's
 * @param rows whose seat row is known and who so count at its arm; part of the above; empty where rows are not known
 */
public record ZoneLoad(Passengers passengers, OptionalDouble actualKg, List<SeatRowLoad> rows) {

    /** An empty zone. */
    public static final ZoneLoad EMPTY = new ZoneLoad(Passengers.NONE, OptionalDouble.empty());

    /**
     * Checks the mass.
     *
     * @throws IllegalArgumentException if it is negative
     */
    public ZoneLoad {
        Objects.requireNonNull(passengers);
        actualKg.ifPresent(mass -> Require.notNegative("actualKg", mass));
        rows = List.copyOf(rows);
    }

    /**
     * A zone whose passengers all count at its one arm.
     *
     * @param passengers counts by category
     * @param actualKg actual mass of all of them together in kg, in place of the scheme's
     */
    public ZoneLoad(Passengers passengers, OptionalDouble actualKg) {
        this(passengers, actualKg, List.of());
    }

    /**
     * The mass of the zone's passengers.
     *
     * @param scheme standard masses, used where no actual mass is given
     * @return mass in kg
     */
    public double massKg(MassScheme scheme) {
        return actualKg.isPresent() ? actualKg.getAsDouble() : passengers.massKg(scheme);
    }

    /**
     * Their moment: each known seat row at its own arm, the rest at the zone's.
     *
     * @param scheme standard masses, used where no actual mass is given
     * @param zone the zone
     * @return moment in kg·m about the datum, aft positive
     */
    public double momentKgM(MassScheme scheme, CabinZone zone) {
        double restKg = massKg(scheme);
        double momentKgM = 0;
        for (SeatRowLoad load : rows) {
            restKg -= load.massKg();
            momentKgM += load.massKg() * zone.rows().get(load.row()).armM();
        }
        return momentKgM + restKg * zone.armM();
    }
}
