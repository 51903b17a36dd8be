package org.steelyard.balance;

import java.util.Objects;
import java.util.OptionalInt;
import org.steelyard.model.Amounts;

/**
 * What lies in each zone and hold, given or shared out.
 *
 * @param seatedByZone seated passengers in each zone, whole numbers unless shared out by capacity
 * @param zoneKg mass of passengers in each zone in kg
 * @param holdKg mass in each hold in kg
 * @param passengers all passengers, infants included; empty where only masses were given
 * @param assumed whether totals were shared out by a rule
 */
public record Distribution(
        Amounts seatedByZone, Amounts zoneKg, Amounts holdKg, OptionalInt passengers, boolean assumed) {

    /** Checks that nothing is missing. */
    public Distribution {
        Objects.requireNonNull(seatedByZone);
        Objects.requireNonNull(zoneKg);
        Objects.requireNonNull(holdKg);
        Objects.requireNonNull(passengers);
    }
}
