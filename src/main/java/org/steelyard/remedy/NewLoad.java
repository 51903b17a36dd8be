package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.Tolerance;

/** The loading after a remedy. */
final class NewLoad {

    private final Manifest manifest;
    private final MassScheme scheme;
    private final List<Map<PassengerCategory, Integer>> counts = new ArrayList<>();
    private final double[] actualKg;
    private final boolean[] isActual;
    private final double[] holdKg;
    private final int[] bags;

    private NewLoad(Manifest manifest) {
        this.manifest = manifest;
        scheme = manifest.scheme();
        int zones = manifest.zones();
        actualKg = new double[zones];
        isActual = new boolean[zones];
        for (int i = 0; i < zones; i++) {
            ZoneLoad zone = manifest.load().zones().get(i);
            Map<PassengerCategory, Integer> here = new EnumMap<>(PassengerCategory.class);
            for (PassengerCategory category : PassengerCategory.values()) {
                here.put(category, zone.passengers().count(category));
            }
            counts.add(here);
            isActual[i] = zone.actualKg().isPresent();
            actualKg[i] = zone.massKg(scheme);
        }
        List<HoldLoad> holds = manifest.load().holds();
        holdKg = holds.stream().mapToDouble(HoldLoad::massKg).toArray();
        bags = holds.stream().mapToInt(HoldLoad::bags).toArray();
    }

    /** The load after some steps. */
    static Load.ByPlace after(Manifest manifest, List<RemedyStep> steps) {
        NewLoad load = new NewLoad(manifest);
        steps.forEach(load::take);
        return load.load();
    }

    private void take(RemedyStep step) {
        if (step.from() >= 0) {
            change(step, step.from(), -1);
        }
        if (step.to() >= 0) {
            change(step, step.to(), 1);
        }
    }

    private void change(RemedyStep step, int place, int sign) {
        if (place >= manifest.zones()) {
            int hold = place - manifest.zones();
            if (step.kind() == Cargo.Kind.BAG) {
                bags[hold] += sign * (int) Math.round(step.amount());
            } else {
                holdKg[hold] = nothingBelowZero(holdKg[hold] + sign * step.massKg());
            }
            return;
        }
        actualKg[place] = nothingBelowZero(actualKg[place] + sign * step.massKg());
        Optional<PassengerCategory> category = category(step.kind());
        isActual[place] |= category.isEmpty();
        if (step.kind() != Cargo.Kind.PASSENGER_MASS) {
            persons(place, category, sign * (int) Math.round(step.amount()));
        }
    }

    private static double nothingBelowZero(double massKg) {
        return Tolerance.isAboveKg(massKg, 0) ? massKg : Math.max(0, massKg);
    }

    /** Persons of a zone whose mass is given leave in the order of categories, and arrive as adults. */
    private void persons(int place, Optional<PassengerCategory> category, int change) {
        Map<PassengerCategory, Integer> here = counts.get(place);
        if (category.isPresent()) {
            here.merge(category.get(), change, Integer::sum);
            return;
        }
        int left = -change;
        for (PassengerCategory each : PassengerCategory.values()) {
            int taken = each == PassengerCategory.INFANT ? 0 : Math.min(Math.max(left, 0), here.get(each));
            here.merge(each, -taken, Integer::sum);
            left -= taken;
        }
        here.merge(PassengerCategory.ADULT, Math.max(-left, 0), Integer::sum);
    }

    private static Optional<PassengerCategory> category(Cargo.Kind kind) {
        return switch (kind) {
            case MALE -> Optional.of(PassengerCategory.MALE);
            case FEMALE -> Optional.of(PassengerCategory.FEMALE);
            case ADULT -> Optional.of(PassengerCategory.ADULT);
            case CHILD -> Optional.of(PassengerCategory.CHILD);
            case WEIGHED, PASSENGER_MASS, BAG, LOOSE -> Optional.empty();
        };
    }

    private Load.ByPlace load() {
        List<ZoneLoad> zones = IntStream.range(0, counts.size())
                .mapToObj(i -> manifest.load().zones().get(i).rows().isEmpty()
                        ? zone(i)
                        : manifest.load().zones().get(i))
                .toList();
        List<HoldLoad> holds = IntStream.range(0, holdKg.length)
                .mapToObj(i -> new HoldLoad(holdKg[i], bags[i]))
                .toList();
        return new Load.ByPlace(zones, holds);
    }

    private ZoneLoad zone(int i) {
        return new ZoneLoad(
                passengers(counts.get(i)), isActual[i] ? OptionalDouble.of(actualKg[i]) : OptionalDouble.empty());
    }

    private static Passengers passengers(Map<PassengerCategory, Integer> counts) {
        return new Passengers(
                counts.get(PassengerCategory.MALE),
                counts.get(PassengerCategory.FEMALE),
                counts.get(PassengerCategory.ADULT),
                counts.get(PassengerCategory.CHILD),
                counts.get(PassengerCategory.INFANT));
    }
}
