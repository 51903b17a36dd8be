package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Distribution;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.unit.Tolerance;

/** A flight as it stands after its last-minute change, with nothing left to change: what a remedy starts from. */
final class Closed {

    private Closed() {}

    /**
     * The same masses at the same places without a change; empty where seat rows are known, which mass does not say.
     */
    static Optional<Loading> of(Loading loading, Balance balance) {
        if (loading.change().isNone()) {
            return Optional.of(loading);
        }
        if (balance.distribution().isEmpty()) {
            return balance.zeroFuel()
                    .map(zeroFuel -> closed(loading, new Load.ZeroFuelGiven(zeroFuel), fuel(loading, balance)));
        }
        Distribution distribution = balance.distribution().get();
        return sitAtTheirZones(loading, distribution)
                ? Optional.of(closed(loading, asMasses(distribution), fuel(loading, balance)))
                : Optional.empty();
    }

    private static boolean sitAtTheirZones(Loading loading, Distribution distribution) {
        List<CabinZone> zones = loading.type().cabin().zones();
        for (int i = 0; i < zones.size(); i++) {
            double atZoneKgM = distribution.zoneKg().at(i) * zones.get(i).armM();
            double toleranceKgM = Tolerance.momentKgM(
                    distribution.zoneKg().at(i),
                    loading.type().geometry().chord().lengthM());
            if (Math.abs(distribution.zoneMomentKgM().at(i) - atZoneKgM) > toleranceKgM) {
                return false;
            }
        }
        return true;
    }

    private static Fuel fuel(Loading loading, Balance balance) {
        return loading.fuel().inTanks(balance.fuel().orElseThrow().rampKg());
    }

    private static Loading closed(Loading loading, Load load, Fuel fuel) {
        return loading.beforeChange().with(load, fuel);
    }

    /** Every place with its mass, no pieces. */
    static Load.ByPlace asMasses(Distribution distribution) {
        return new Load.ByPlace(zones(distribution), holds(distribution));
    }

    static List<ZoneLoad> zones(Distribution distribution) {
        List<ZoneLoad> zones = new ArrayList<>();
        for (int i = 0; i < distribution.zoneKg().size(); i++) {
            zones.add(new ZoneLoad(
                    Passengers.NONE, OptionalDouble.of(distribution.zoneKg().at(i))));
        }
        return zones;
    }

    static List<HoldLoad> holds(Distribution distribution) {
        List<HoldLoad> holds = new ArrayList<>();
        for (int i = 0; i < distribution.holdKg().size(); i++) {
            holds.add(new HoldLoad(distribution.holdKg().at(i), 0));
        }
        return holds;
    }
}
