package org.steelyard.balance;

import java.util.Objects;
import java.util.OptionalInt;
import org.steelyard.model.unit.Amounts;

/**
 * What lies in each zone and hold, given or shared out, after any last-minute change.
 *
 * @param seatedByZone seated passengers in each zone, whole numbers unless shared out by capacity
 * @param zoneKg mass of passengers in each zone in kg
 * @param zoneMomentKgM their moment in kg·m about the datum: at the arm of the zone, or of each seat row that is known
 * @param holdKg mass in each hold in kg
 * @param passengers all passengers, infants included; empty where only masses were given
 * @param passengersAssumed whether a total of passengers was shared out among zones by a rule
 * @param holdsAssumed whether a total of baggage and cargo was shared out among holds by a rule
 */
public record Distribution(
        Amounts seatedByZone,
        Amounts zoneKg,
        Amounts zoneMomentKgM,
        Amounts holdKg,
        OptionalInt passengers,
        boolean passengersAssumed,
        boolean holdsAssumed) {

    public Distribution {
        Objects.requireNonNull(seatedByZone);
        Objects.requireNonNull(zoneKg);
        Objects.requireNonNull(zoneMomentKgM);
        Objects.requireNonNull(holdKg);
        Objects.requireNonNull(passengers);
    }

    /**
     * Whether any total was shared out by a rule.
     *
     * @return true where passengers or holds are assumed
     */
    public boolean assumed() {
        return passengersAssumed || holdsAssumed;
    }
}
