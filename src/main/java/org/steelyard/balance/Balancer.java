package org.steelyard.balance;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Hold;
import org.steelyard.model.unit.MassMoment;

/**
 * Computes the states of a loading: dry operating, zero fuel, ramp, take-off and landing, each the sum of the masses
 * and of the moments of what is aboard. Pure: the same loading and policy give the same balance, to the bit.
 */
public final class Balancer {

    private Balancer() {}

    /**
     * Computes all states that the loading allows.
     *
     * @param loading one flight
     * @param policy rule for sharing out totals
     * @return its states, fuel path and trim
     * @throws IllegalArgumentException if crew, passengers, baggage or a pantry code have no place in the type
     */
    public static Balance balance(Loading loading, Policy policy) {
        return switch (loading.load().level()) {
            case TAKEOFF_GIVEN -> fromTakeoff(loading, state(loading));
            case ZERO_FUEL_GIVEN ->
                fromZeroFuel(
                        loading,
                        Optional.empty(),
                        Optional.empty(),
                        state(loading).plus(LoadPlacer.change(loading, policy.sharing())));
            case DETAIL, ZONES, HOLDS, TOTALS -> fromLoad(loading, policy);
        };
    }

    private static MassMoment state(Loading loading) {
        return loading.load().state().orElseThrow();
    }

    private static Balance fromLoad(Loading loading, Policy policy) {
        MassMoment dryOperating = DryOperating.of(loading.tail(), loading.scheme(), loading.crew());
        Distribution distribution = LoadPlacer.place(loading, policy.sharing());
        MassMoment zeroFuel = dryOperating.plus(trafficLoad(loading.type(), distribution));
        return fromZeroFuel(loading, Optional.of(dryOperating), Optional.of(distribution), zeroFuel);
    }

    private static MassMoment trafficLoad(AircraftType type, Distribution distribution) {
        double massKg = 0;
        double momentKgM = 0;
        for (int i = 0; i < distribution.zoneKg().size(); i++) {
            massKg += distribution.zoneKg().at(i);
            momentKgM += distribution.zoneMomentKgM().at(i);
        }
        List<Hold> holds = type.holds();
        for (int i = 0; i < holds.size(); i++) {
            double holdKg = distribution.holdKg().at(i);
            massKg += holdKg;
            momentKgM += holdKg * holds.get(i).armM();
        }
        return new MassMoment(massKg, momentKgM);
    }

    private static Balance fromTakeoff(Loading loading, MassMoment takeoff) {
        return new Balance(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                takeoff,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TrimReader.takeoff(loading.type(), loading.setting(), takeoff),
                Optional.empty());
    }

    private static Balance fromZeroFuel(
            Loading loading,
            Optional<MassMoment> dryOperating,
            Optional<Distribution> distribution,
            MassMoment zeroFuel) {
        FuelSystem system = loading.tanks();
        FuelBalancer balancer = new FuelBalancer(system, zeroFuel);
        Fuel given = loading.fuel();
        FuelBalance fuel =
                balancer.follow(FuelBalancer.rampKg(system, given, loading.change()), given.taxiKg(), given.tripKg());
        List<MassMoment> path = fuel.path().points();
        MassMoment takeoff = path.get(0);
        MassMoment landing = path.get(path.size() - 1);
        return new Balance(
                dryOperating,
                Optional.of(zeroFuel),
                Optional.of(balancer.withFuel(fuel.rampKg().toArray())),
                takeoff,
                Optional.of(landing),
                distribution,
                Optional.of(fuel),
                TrimReader.takeoff(loading.type(), loading.setting(), takeoff),
                TrimReader.landing(loading.type(), loading.setting(), landing));
    }
}
