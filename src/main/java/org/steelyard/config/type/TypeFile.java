package org.steelyard.config.type;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.config.value.EntryNames;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.KnownValues;
import org.steelyard.config.value.Words;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Movement;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;

/** Reads {@code types/*.yaml}: one aircraft type each. */
public final class TypeFile {

    private TypeFile() {}

    public static Optional<AircraftType> read(Keys keys, KnownValues<MassScheme> schemes) {
        String id = keys.text("type");
        String name = keys.text("name");
        Optional<Geometry> geometry = geometry(keys);
        Optional<MassLimits> limits = keys.part("masses", TypeFile::limits);
        Optional<Cabin> cabin = keys.part("cabin", inner -> CabinPart.read(inner, schemes));
        List<Hold> holds = keys.eachIfAny("holds", HoldPart::hold);
        keys.requireAftward("holds", holds.stream().map(Hold::armM).toList());
        EntryNames holdNames = keys.names("hold", "holds", "id");
        EntryNames zoneNames = EntryNames.in("zone", keys.peek("cabin", "zones"), "id");
        keys.names("group", "groups", "id");
        List<LoadGroup> groups = keys.eachIfAny("groups", inner -> HoldPart.group(inner, holdNames, zoneNames));
        Optional<FuelSystem> fuel = keys.part("fuel", FuelPart::read);
        List<Envelope> envelopes = keys.part("envelopes", inner -> EnvelopePart.read(inner, geometry, limits))
                .orElse(List.of());
        List<TrimScale> scales = keys.eachIfAny("trim", inner -> TrimPart.read(inner, geometry));
        requireOneScaleEach(keys, scales);
        List<Movement> movements = keys.eachIfAny("movements", TypeFile::movement);
        return keys.make(() -> new AircraftType(
                id,
                name,
                geometry.orElseThrow(),
                limits.orElseThrow(),
                cabin.orElseThrow(),
                holds,
                groups,
                fuel.orElseThrow(),
                envelopes,
                scales,
                movements));
    }

    private static Optional<Movement> movement(Keys keys) {
        String name = keys.text("what");
        double forwardKgM = keys.number("forward", WrittenNumber.MOMENT_OR_NONE);
        double aftKgM = keys.number("aft", WrittenNumber.MOMENT_OR_NONE);
        String when = keys.read("when", Words.choice("always", "in flight"), "always");
        boolean needsPassengers = keys.find("with-passengers", Words::yes).orElse(false);
        return keys.make(() -> new Movement(name, forwardKgM, aftKgM, when.equals("in flight"), needsPassengers));
    }

    private static void requireOneScaleEach(Keys keys, List<TrimScale> scales) {
        for (int i = 1; i < scales.size(); i++) {
            TrimScale scale = scales.get(i);
            boolean twice = scales.subList(0, i).stream()
                    .anyMatch(before -> before.phase() == scale.phase()
                            && before.flaps().equals(scale.flaps())
                            && before.thrustRating().equals(scale.thrustRating()));
            if (twice) {
                keys.fault(
                        "trim",
                        i + 1,
                        "flaps",
                        "a second scale for the same setting",
                        "one for each phase, flap setting and thrust rating");
            }
        }
    }

    private static Optional<Geometry> geometry(Keys keys) {
        Optional<DisplayUnits> units = keys.part("display", TypeFile::display);
        Optional<MeanChord> chord = keys.part("chord", TypeFile::chord);
        Optional<IndexFormula> index = keys.part("index", TypeFile::index);
        return units.flatMap(u -> chord.flatMap(c -> index.map(i -> new Geometry(c, i, u))));
    }

    private static Optional<DisplayUnits> display(Keys keys) {
        MassUnit mass = keys.read("mass", Words.choice(MassUnit::symbol, List.of(MassUnit.values())), MassUnit.KG);
        LengthUnit length =
                keys.read("length", Words.choice(LengthUnit::symbol, List.of(LengthUnit.values())), LengthUnit.M);
        Map<CgForm, String> words = Map.of(CgForm.PERCENT_MAC, "percent-mac", CgForm.ARM, "arm");
        CgForm cg = keys.read("cg", Words.choice(words::get, List.of(CgForm.values())), CgForm.ARM);
        return keys.make(() -> new DisplayUnits(mass, length, cg));
    }

    private static Optional<MeanChord> chord(Keys keys) {
        double leadingEdgeM = keys.number("leading-edge", WrittenNumber.ARM);
        double lengthM = keys.number("length", WrittenNumber.LENGTH);
        return keys.make(() -> new MeanChord(leadingEdgeM, lengthM));
    }

    private static Optional<IndexFormula> index(Keys keys) {
        double referenceArmM = keys.number("reference-arm", WrittenNumber.ARM);
        double divisorKgM = keys.number("divisor", WrittenNumber.MOMENT);
        double constant = keys.number("constant", WrittenNumber::number);
        return keys.make(() -> new IndexFormula(referenceArmM, divisorKgM, constant));
    }

    private static Optional<MassLimits> limits(Keys keys) {
        double rampKg = keys.number("max-ramp", WrittenNumber.MASS);
        double takeoffKg = keys.number("max-take-off", WrittenNumber.MASS);
        double landingKg = keys.number("max-landing", WrittenNumber.MASS);
        double zeroFuelKg = keys.number("max-zero-fuel", WrittenNumber.MASS);
        double minimumKg = keys.number("minimum", WrittenNumber.MASS);
        return keys.make(() -> new MassLimits(rampKg, takeoffKg, landingKg, zeroFuelKg, minimumKg));
    }
}
