package org.steelyard.balance;

import java.util.List;
import java.util.OptionalInt;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;

/**
 * Says what lies in each zone and hold: what is given by place, what is given in total shared out by the rule, each for
 * passengers and for holds on its own, and then what the last-minute change adds and takes away.
 */
final class LoadPlacer {

    private final AircraftType type;
    private final MassScheme scheme;
    private final SharingRule rule;
    private final Places zones;
    private final Places holds;
    private int persons;

    private LoadPlacer(AircraftType type, MassScheme scheme, SharingRule rule) {
        this.type = type;
        this.scheme = scheme;
        this.rule = rule;
        List<CabinZone> cabin = type.cabin().zones();
        List<Hold> below = type.holds();
        zones = new Places(
                cabin.size(), i -> cabin.get(i).armM(), i -> cabin.get(i).seats());
        holds = new Places(
                below.size(), i -> below.get(i).armM(), i -> below.get(i).maxKg());
    }

    /** Where the load of a loading lies. */
    static Distribution place(Loading loading, SharingRule rule) {
        LoadPlacer placer = new LoadPlacer(loading.type(), loading.scheme(), rule);
        placer.load(loading.load());
        placer.change(loading.change());
        return placer.distribution();
    }

    /** What a last-minute change adds to a state of which nothing more is known. */
    static MassMoment change(Loading loading, SharingRule rule) {
        LoadPlacer placer = new LoadPlacer(loading.type(), loading.scheme(), rule);
        double massKg = 0;
        double momentKgM = 0;
        for (LoadPart what : List.of(LoadPart.PASSENGERS, LoadPart.HOLDS)) {
            for (LastMinuteChange.Part part : loading.change().of(what)) {
                massKg += part.massKg();
                momentKgM += part.massKg() * placer.armM(what, part.place());
            }
        }
        return new MassMoment(massKg, momentKgM);
    }

    /** The arm of a place, or the mean arm of all by capacity. */
    private double armM(LoadPart what, int place) {
        Places places = what == LoadPart.PASSENGERS ? zones : holds;
        return place == LastMinuteChange.ANYWHERE ? places.meanArmM() : places.placeArmM(place);
    }

    private void load(Load load) {
        load.zonesIfGiven().ifPresent(this::byZone);
        load.passengersInTotal().ifPresent(this::inTotal);
        load.holdsIfGiven().ifPresent(this::byHold);
        load.holdsInTotal().ifPresent(all -> holds.shareMass(all.massKg(scheme), rule));
    }

    private void byZone(List<ZoneLoad> loads) {
        for (int i = 0; i < loads.size(); i++) {
            ZoneLoad zone = loads.get(i);
            Passengers passengers = zone.passengers();
            zones.add(
                    i,
                    passengers.seated(),
                    zone.massKg(scheme),
                    zone.momentKgM(scheme, type.cabin().zones().get(i)));
            persons += passengers.seated() + passengers.infant();
        }
    }

    private void inTotal(ZoneLoad all) {
        Passengers passengers = all.passengers();
        zones.sharePersons(passengers.seated(), all.massKg(scheme), rule);
        persons += passengers.seated() + passengers.infant();
    }

    private void byHold(List<HoldLoad> loads) {
        for (int i = 0; i < loads.size(); i++) {
            double massKg = loads.get(i).massKg(scheme);
            holds.add(i, 0, massKg, massKg * type.holds().get(i).armM());
        }
    }

    private void change(LastMinuteChange change) {
        for (LastMinuteChange.Part part : change.of(LoadPart.PASSENGERS)) {
            change(zones, part);
            persons += part.persons();
        }
        change.of(LoadPart.HOLDS).forEach(part -> change(holds, part));
    }

    private void change(Places places, LastMinuteChange.Part part) {
        if (part.place() != LastMinuteChange.ANYWHERE) {
            places.change(part.place(), part.seats(), part.massKg());
        } else if (part.massKg() < 0) {
            places.leave(part.seats(), part.massKg());
        } else {
            places.come(part.seats(), part.massKg(), rule);
        }
    }

    private Distribution distribution() {
        Amounts zoneKg = Amounts.of(zones.massKg());
        boolean onlyMass = persons == 0 && zoneKg.sum() > 0;
        return new Distribution(
                Amounts.of(zones.seated()),
                zoneKg,
                Amounts.of(zones.momentKgM()),
                Amounts.of(holds.massKg()),
                onlyMass ? OptionalInt.empty() : OptionalInt.of(persons),
                zones.assumed(),
                holds.assumed());
    }
}
