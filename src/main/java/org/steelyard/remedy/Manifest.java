package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.steelyard.balance.Distribution;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.Amounts;

/**
 * What lies where in one flight, in whole passengers and bags where the input has them. Infants stay with whom they
 * are.
 *
 * @param type the type
 * @param places zones, then holds, in the type's order
 * @param cargoes kinds of load that are aboard
 * @param load the load by place; a zone whose seat rows are known stays as it is
 * @param scheme standard masses
 * @param assumed whether a total was shared out
 */
record Manifest(
        AircraftType type,
        List<Place> places,
        List<Cargo> cargoes,
        Load.ByPlace load,
        MassScheme scheme,
        boolean assumed) {

    Manifest {
        places = List.copyOf(places);
        cargoes = List.copyOf(cargoes);
    }

    /** The manifest of a flight whose load is known by place or in total; empty for one that gives a state. */
    static Optional<Manifest> of(Loading loading, Optional<Distribution> distribution) {
        if (distribution.isEmpty()) {
            return Optional.empty();
        }
        Distribution shared = distribution.get();
        Load.ByPlace load = new Load.ByPlace(
                loading.load().zonesIfGiven().orElseGet(() -> Closed.zones(shared)),
                loading.load().holdsIfGiven().orElseGet(() -> Closed.holds(shared)));
        Builder builder = new Builder(loading.type(), loading.scheme(), load, shared);
        return Optional.of(new Manifest(
                loading.type(), builder.places(), builder.cargoes(), load, loading.scheme(), shared.assumed()));
    }

    int zones() {
        return load.zones().size();
    }

    private record Builder(AircraftType type, MassScheme scheme, Load.ByPlace load, Distribution distribution) {

        List<Place> places() {
            List<Place> places = new ArrayList<>();
            List<CabinZone> zones = type.cabin().zones();
            for (int i = 0; i < zones.size(); i++) {
                places.add(new Place(
                        true,
                        i,
                        zones.get(i).name(),
                        zones.get(i).armM(),
                        distribution.zoneKg().at(i),
                        Double.POSITIVE_INFINITY,
                        isFixed(i) ? zones.get(i).seats() : seated(i),
                        zones.get(i).seats()));
            }
            for (int i = 0; i < type.holds().size(); i++) {
                Hold hold = type.holds().get(i);
                double mostKg = Math.min(
                        hold.maxKg(), hold.floor().map(FloorLimit::maxKg).orElse(Double.POSITIVE_INFINITY));
                places.add(new Place(
                        false,
                        i,
                        hold.name(),
                        hold.armM(),
                        distribution.holdKg().at(i),
                        mostKg,
                        0,
                        0));
            }
            return places;
        }

        /** Who sits in which row is known, so nobody is moved to or from there. */
        private boolean isFixed(int zone) {
            return !load.zones().get(zone).rows().isEmpty();
        }

        /** Where only mass is known, a person for each adult's mass, so that a zone is not filled without end. */
        private double seated(int zone) {
            double seated = distribution.seatedByZone().at(zone);
            return seated > 0 ? seated : distribution.zoneKg().at(zone) / scheme().adultKg();
        }

        List<Cargo> cargoes() {
            List<Cargo> cargoes = new ArrayList<>();
            standard(cargoes, Cargo.Kind.MALE, PassengerCategory.MALE);
            standard(cargoes, Cargo.Kind.FEMALE, PassengerCategory.FEMALE);
            standard(cargoes, Cargo.Kind.ADULT, PassengerCategory.ADULT);
            standard(cargoes, Cargo.Kind.CHILD, PassengerCategory.CHILD);
            weighed(cargoes);
            hold(cargoes, Cargo.Kind.BAG, scheme().bagKg(), HoldLoad::bags);
            double[] loose = none();
            for (int i = 0; i < load.holds().size(); i++) {
                loose[load.zones().size() + i] = load.holds().get(i).massKg();
            }
            add(cargoes, Cargo.Kind.LOOSE, 1, 0, loose);
            return cargoes;
        }

        private double[] none() {
            return new double[load.zones().size() + load.holds().size()];
        }

        private void standard(List<Cargo> cargoes, Cargo.Kind kind, PassengerCategory category) {
            double[] amounts = none();
            for (int i = 0; i < load.zones().size(); i++) {
                ZoneLoad zone = load.zones().get(i);
                amounts[i] = zone.actualKg().isPresent() || isFixed(i)
                        ? 0
                        : zone.passengers().count(category);
            }
            add(cargoes, kind, scheme().massKg(category), 1, amounts);
        }

        /** Passengers of a zone whose mass is given each weigh the mean of it; without a number only mass can move. */
        private void weighed(List<Cargo> cargoes) {
            double[] masses = none();
            for (int i = 0; i < load.zones().size(); i++) {
                ZoneLoad zone = load.zones().get(i);
                double massKg = isFixed(i) ? 0 : zone.actualKg().orElse(0);
                int seated = zone.passengers().seated();
                if (massKg > 0 && seated > 0) {
                    double[] amounts = none();
                    amounts[i] = seated;
                    add(cargoes, Cargo.Kind.WEIGHED, massKg / seated, 1, amounts);
                } else {
                    masses[i] = massKg;
                }
            }
            double seatedAll = distribution.seatedByZone().sum();
            double personsPerKg = seatedAll > 0 && distribution.assumed()
                    ? seatedAll / distribution.zoneKg().sum()
                    : 1 / scheme().adultKg();
            add(cargoes, Cargo.Kind.PASSENGER_MASS, 1, personsPerKg, masses);
        }

        private void hold(List<Cargo> cargoes, Cargo.Kind kind, double unitKg, ToIntFunction<HoldLoad> count) {
            double[] amounts = none();
            for (int i = 0; i < load.holds().size(); i++) {
                amounts[load.zones().size() + i] = count.applyAsInt(load.holds().get(i));
            }
            add(cargoes, kind, unitKg, 0, amounts);
        }

        private static void add(List<Cargo> cargoes, Cargo.Kind kind, double unitKg, double persons, double[] amounts) {
            Amounts all = Amounts.of(amounts);
            if (all.sum() > 0) {
                cargoes.add(new Cargo(kind, unitKg, persons, all));
            }
        }
    }
}
