package org.steelyard.read.loading;

import java.util.Optional;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.type.AircraftType;
import org.steelyard.read.row.FlightKey;

/**
 * A row that takes the load items of its flight.
 *
 * @param row the row
 * @param flight which flight it is; empty if its cells do not say it
 * @param type the type of the flight; empty if its tail is not known
 * @param ahead whether the row has been looked at before its turn; an earlier row may then still take the items
 */
record ItemClaim(Origin row, Optional<FlightKey> flight, Optional<AircraftType> type, boolean ahead) {

    /** Whether another row is of the same flight, and so has the same items. */
    boolean isOf(Optional<FlightKey> other) {
        return flight.isPresent() && other.isPresent() && flight.get().isSameFlight(other.get());
    }
}
