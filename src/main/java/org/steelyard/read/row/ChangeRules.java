package org.steelyard.read.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.LastMinuteChange.Part;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;

/** Builds the last-minute change of a row, and sees to it that no more goes than is there. */
public final class ChangeRules {

    private static final double NOTHING_KG = 1e-6;
    private static final long ALL =
            Slot.bits(Field.PASSENGERS_CHANGE, Field.HOLD_MASS_CHANGE, Field.HOLD_BAGS_CHANGE, Field.FUEL_CHANGE);

    private final RowDraft row;
    private final MassScheme scheme;
    private final AircraftType type;

    private ChangeRules(RowDraft row, MassScheme scheme, AircraftType type) {
        this.row = row;
        this.scheme = scheme;
        this.type = type;
    }

    /** The change; what is wrong is in the draft. */
    public static LastMinuteChange change(RowDraft row, MassScheme scheme, Optional<Load> load, Optional<Fuel> fuel) {
        Optional<AircraftType> type = row.plan().type();
        if (!row.loaded(ALL) || type.isEmpty() || load.isEmpty() || fuel.isEmpty() || row.bad(ALL)) {
            return LastMinuteChange.NONE;
        }
        ChangeRules rules = new ChangeRules(row, scheme, type.get());
        LastMinuteChange change = rules.read();
        rules.require(change, load.get(), fuel.get());
        return change;
    }

    private LastMinuteChange read() {
        List<Part> parts = new ArrayList<>();
        for (RowDraft.Change change : row.changes()) {
            parts.add(part(change));
        }
        return new LastMinuteChange(parts);
    }

    private Part part(RowDraft.Change change) {
        int place = change.place() < 0 ? LastMinuteChange.ANYWHERE : change.place();
        double value = change.value();
        return switch (change.column().rule().field()) {
            case PASSENGERS_CHANGE -> passengers(change.column().rule().category(), place, (int) value);
            case HOLD_BAGS_CHANGE -> new Part(LoadPart.HOLDS, place, 0, 0, value * scheme.bagKg());
            case FUEL_CHANGE -> new Part(LoadPart.FUEL, place, 0, 0, value);
            default -> new Part(LoadPart.HOLDS, place, 0, 0, value);
        };
    }

    private Part passengers(PassengerCategory category, int place, int persons) {
        int seats = category == PassengerCategory.INFANT ? 0 : persons;
        return new Part(LoadPart.PASSENGERS, place, persons, seats, persons * scheme.massKg(category));
    }

    private void require(LastMinuteChange change, Load load, Fuel fuel) {
        if (load instanceof Load.TakeoffGiven) {
            DetailLevels.contradiction(row, row.firstOf(ALL), row.firstOf(LoadRules.TAKEOFF));
            return;
        }
        requirePlaces(
                change,
                LoadPart.PASSENGERS,
                Field.PASSENGERS_CHANGE,
                type.cabin().zones().size(),
                "passengers");
        Slot holdSlot = row.given(Field.HOLD_MASS_CHANGE) ? Field.HOLD_MASS_CHANGE : Field.HOLD_BAGS_CHANGE;
        requirePlaces(change, LoadPart.HOLDS, holdSlot, type.holds().size(), "holds");
        if (!load.isState()) {
            requireLeft(change, LoadPart.PASSENGERS, Field.PASSENGERS_CHANGE, zonesKg(load), "passengers");
            requireLeft(change, LoadPart.HOLDS, holdSlot, holdsKg(load), "load in the hold");
        }
        requireLeft(change, LoadPart.FUEL, Field.FUEL_CHANGE, tanksKg(fuel), "fuel");
    }

    private void requirePlaces(LastMinuteChange change, LoadPart what, Slot slot, int places, String name) {
        if (places == 0 && !change.of(what).isEmpty()) {
            row.fault(
                    slot,
                    ProblemCode.OUT_OF_RANGE,
                    "type " + type.id() + " has no place for " + name,
                    row.valueOf(slot),
                    "a blank cell or 0");
        }
    }

    /** What goes must be there before: of each place where the load is by place, and in all. */
    private void requireLeft(LastMinuteChange change, LoadPart what, Slot slot, double[] beforeKg, String name) {
        boolean byPlace = beforeKg.length != 1;
        double allKg = 0;
        double goneKg = 0;
        double[] leftKg = beforeKg.clone();
        for (double kg : beforeKg) {
            allKg += kg;
        }
        for (Part part : change.of(what)) {
            goneKg += part.massKg();
            if (byPlace && part.place() >= 0) {
                leftKg[part.place()] += part.massKg();
            }
        }
        boolean tooMuch = allKg + goneKg < -NOTHING_KG;
        for (double kg : leftKg) {
            tooMuch |= kg < -NOTHING_KG;
        }
        if (tooMuch) {
            row.fault(
                    slot,
                    ProblemCode.CONTRADICTION,
                    "more " + name + " would go than is aboard there",
                    row.valueOf(slot),
                    "at most what is aboard; passengers and bags count at standard mass");
        }
    }

    private double[] zonesKg(Load load) {
        Optional<List<ZoneLoad>> zones = load.zonesIfGiven();
        if (zones.isPresent()) {
            return several(zones.get().stream()
                    .mapToDouble(zone -> zone.massKg(scheme))
                    .toArray());
        }
        if (load instanceof Load.Totals totals) {
            return new double[] {
                totals.passengersKg().orElse(totals.passengers().massKg(scheme))
            };
        }
        return load instanceof Load.ByHold byHold
                ? new double[] {byHold.passengersKg().orElse(byHold.passengers().massKg(scheme))}
                : new double[] {0};
    }

    private double[] holdsKg(Load load) {
        Optional<List<HoldLoad>> holds = load.holdsIfGiven();
        if (holds.isPresent()) {
            return several(holds.get().stream()
                    .mapToDouble(hold -> hold.massKg(scheme))
                    .toArray());
        }
        if (load instanceof Load.Totals totals) {
            return new double[] {totals.hold().massKg(scheme)};
        }
        return load instanceof Load.ByZone byZone ? new double[] {byZone.hold().massKg(scheme)} : new double[] {0};
    }

    private static double[] tanksKg(Fuel fuel) {
        if (fuel instanceof Fuel.ByTank byTank) {
            return several(byTank.tanksKg().toArray());
        }
        return fuel instanceof Fuel.Total total ? new double[] {total.totalKg()} : new double[] {0};
    }

    /** One place is like a total. */
    private static double[] several(double[] kg) {
        return kg.length == 0 ? new double[] {0} : kg;
    }
}
