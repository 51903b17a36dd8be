package org.steelyard.check.result;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Distribution;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;

/** Which parts of a load were given in total, so that where they lie follows from a rule and not from the input. */
public final class Assumed {

    private Assumed() {}

    /**
     * The parts of a load that were given in total.
     *
     * @param loading the flight
     * @param balance its states
     * @return those parts, in their order
     */
    public static List<LoadPart> parts(Loading loading, Balance balance) {
        List<LoadPart> parts = new ArrayList<>(0);
        if (balance.distribution().map(Distribution::passengersAssumed).orElse(false)
                || changesState(
                        loading,
                        LoadPart.PASSENGERS,
                        loading.type().cabin().zones().size())) {
            parts.add(LoadPart.PASSENGERS);
        }
        if (balance.distribution().map(Distribution::holdsAssumed).orElse(false)
                || changesState(loading, LoadPart.HOLDS, loading.type().holds().size())) {
            parts.add(LoadPart.HOLDS);
        }
        if (fuel(loading)) {
            parts.add(LoadPart.FUEL);
        }
        return parts;
    }

    /** A change that is not tied to a place, beside a state of which nothing more is known. */
    private static boolean changesState(Loading loading, LoadPart what, int places) {
        return loading.load().isState() && places > 1 && anywhere(loading.change(), what);
    }

    private static boolean fuel(Loading loading) {
        boolean total = loading.fuel() instanceof Fuel.Total fuel && fuel.totalKg() > 0;
        return loading.type().fuel().tanks().size() > 1 && (total || anywhere(loading.change(), LoadPart.FUEL));
    }

    private static boolean anywhere(LastMinuteChange change, LoadPart what) {
        return !change.isNone() && change.of(what).stream().anyMatch(part -> part.place() == LastMinuteChange.ANYWHERE);
    }
}
