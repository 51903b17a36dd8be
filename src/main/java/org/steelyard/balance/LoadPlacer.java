package org.steelyard.balance;

import java.util.List;
import java.util.OptionalInt;
import org.steelyard.model.AircraftType;
import org.steelyard.model.Amounts;
import org.steelyard.model.CabinZone;
import org.steelyard.model.Hold;
import org.steelyard.model.HoldLoad;
import org.steelyard.model.Load;
import org.steelyard.model.MassScheme;
import org.steelyard.model.Passengers;
import org.steelyard.model.SharingRule;
import org.steelyard.model.ZoneLoad;

/** Says what lies in each zone and hold. */
final class LoadPlacer {

    private final AircraftType type;
    private final MassScheme scheme;

    LoadPlacer(AircraftType type) {
        this.type = type;
        this.scheme = type.cabin().scheme();
    }

    Distribution place(Load.ByPlace load) {
        int zones = load.zones().size();
        double[] seated = new double[zones];
        double[] zoneKg = new double[zones];
        int persons = 0;
        for (int i = 0; i < zones; i++) {
            ZoneLoad zone = load.zones().get(i);
            seated[i] = zone.passengers().seated();
            zoneKg[i] = zone.massKg(scheme);
            persons += zone.passengers().seated() + zone.passengers().infant();
        }
        boolean onlyMass = persons == 0 && Amounts.of(zoneKg).sum() > 0;
        return new Distribution(
                Amounts.of(seated),
                Amounts.of(zoneKg),
                holdsKg(load.holds()),
                onlyMass ? OptionalInt.empty() : OptionalInt.of(persons),
                false);
    }

    private Amounts holdsKg(List<HoldLoad> holds) {
        double[] holdKg = new double[holds.size()];
        for (int i = 0; i < holdKg.length; i++) {
            holdKg[i] = holds.get(i).massKg(scheme);
        }
        return Amounts.of(holdKg);
    }

    /** Shares seats by the rule; each zone then carries its part of the passengers' mass, at the mean mass of all. */
    Distribution place(Load.Totals load, SharingRule rule) {
        Passengers passengers = load.passengers();
        double[] seats =
                type.cabin().zones().stream().mapToDouble(CabinZone::seats).toArray();
        double[] rooms = type.holds().stream().mapToDouble(Hold::maxKg).toArray();
        double passengersKg = load.passengersKg().orElseGet(() -> passengers.massKg(scheme));
        double[] seated = Sharing.share(passengers.seated(), seats, rule);
        double[] zoneKg = passengers.seated() == 0
                ? Sharing.share(passengersKg, seats, SharingRule.BY_CAPACITY)
                : scaled(seated, passengersKg / passengers.seated());
        double[] holdKg = Sharing.share(load.hold().massKg(scheme), rooms, rule);
        boolean onlyMass = passengers.seated() == 0 && passengersKg > 0;
        return new Distribution(
                Amounts.of(seated),
                Amounts.of(zoneKg),
                Amounts.of(holdKg),
                onlyMass ? OptionalInt.empty() : OptionalInt.of(passengers.seated() + passengers.infant()),
                true);
    }

    private static double[] scaled(double[] values, double factor) {
        double[] scaled = values.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return scaled;
    }
}
