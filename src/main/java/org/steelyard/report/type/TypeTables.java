package org.steelyard.report.type;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.report.text.NumberText;
import org.steelyard.report.text.PlainNumber;

/** What an aircraft type is, as tables: limits, places, fuel, envelopes, trim scales, fleet. */
public final class TypeTables {

    private final AircraftType type;
    private final List<Tail> tails;
    private final TypeUnits units;
    private final List<TypeTable> tables = new ArrayList<>();

    private TypeTables(AircraftType type, List<Tail> tails) {
        this.type = type;
        this.tails = List.copyOf(tails);
        this.units = new TypeUnits(type);
    }

    /**
     * The tables of a type.
     *
     * @param type the type
     * @param tails its tails
     * @return tables with at least one row, in the order of the type's file
     */
    public static List<TypeTable> of(AircraftType type, List<Tail> tails) {
        TypeTables all = new TypeTables(type, tails);
        all.masses();
        all.rulers();
        all.crew();
        all.standardMasses();
        all.zones();
        all.holds();
        all.groups();
        all.tables.addAll(new FuelTables(type).tables());
        all.tables.addAll(new LimitTables(type).tables());
        all.fleet();
        return all.tables.stream().filter(table -> !table.rows().isEmpty()).toList();
    }

    private void add(String title, List<String> headings, List<List<String>> rows, String note) {
        tables.add(new TypeTable(title, headings, rows, note));
    }

    private void masses() {
        MassLimits limits = type.limits();
        add(
                "Limits of mass",
                List.of("limit", "#" + units.massUnit()),
                List.of(
                        List.of("maximum ramp", units.mass(limits.maxRampKg())),
                        List.of("maximum take-off", units.mass(limits.maxTakeoffKg())),
                        List.of("maximum landing", units.mass(limits.maxLandingKg())),
                        List.of("maximum zero-fuel", units.mass(limits.maxZeroFuelKg())),
                        List.of("minimum in flight", units.mass(limits.minFlightKg()))),
                "");
    }

    private void rulers() {
        double lemacM = type.geometry().chord().leadingEdgeM();
        add(
                "Chord and index",
                List.of("what", "value"),
                List.of(
                        List.of("leading edge of the MAC", units.armWithUnit(lemacM)),
                        List.of(
                                "length of the MAC",
                                units.armWithUnit(type.geometry().chord().lengthM())),
                        List.of("index", formula())),
                "");
    }

    private String formula() {
        boolean pounds = type.geometry().units().mass() == MassUnit.LB;
        double divisorKgM = type.geometry().index().divisorKgM();
        double divisor = pounds ? LengthUnit.IN.fromM(MassUnit.LB.fromKg(divisorKgM)) : divisorKgM;
        return "mass × (arm − " + units.armWithUnit(type.geometry().index().referenceArmM()) + ") / "
                + PlainNumber.of(Math.round(divisor * 1e6) / 1e6) + (pounds ? " lb in" : " kg m") + " + "
                + PlainNumber.of(type.geometry().index().constant());
    }

    private void crew() {
        List<List<String>> rows = new ArrayList<>();
        for (CrewStation station : type.cabin().crewStations()) {
            boolean flight = station.role() == CrewRole.FLIGHT;
            rows.add(List.of(
                    station.id(),
                    flight ? "flight crew" : "cabin crew",
                    String.valueOf(station.seats()),
                    "",
                    units.arm(station.armM())));
        }
        for (Pantry pantry : type.cabin().pantries()) {
            double massKg = pantry.load().massKg();
            rows.add(List.of(
                    pantry.code(),
                    "pantry",
                    "",
                    units.mass(massKg),
                    massKg > 0 ? units.arm(pantry.load().armM()) : ""));
        }
        add(
                "Crew and pantry",
                List.of("id", "for", "#seats", "#mass, " + units.massUnit(), "#arm, " + units.lengthUnit()),
                rows,
                "Standard crew: " + type.cabin().flightCrew() + " and "
                        + type.cabin().cabinCrew() + ". The first pantry is the standard one.");
    }

    private void standardMasses() {
        MassScheme scheme = type.cabin().scheme();
        add(
                "Standard masses",
                List.of("#male", "#female", "#adult", "#child", "#infant", "#bag", "#flight crew", "#cabin crew"),
                List.of(List.of(
                        kg(scheme.maleKg()),
                        kg(scheme.femaleKg()),
                        kg(scheme.adultKg()),
                        kg(scheme.childKg()),
                        kg(scheme.infantKg()),
                        kg(scheme.bagKg()),
                        kg(scheme.flightCrewKg()),
                        kg(scheme.cabinCrewKg()))),
                "Scheme " + scheme.id() + ", in " + units.massUnit() + ". Source: " + scheme.source());
    }

    private String kg(double massKg) {
        double shown = units.massIn(massKg);
        return NumberText.fixed(shown, Math.abs(shown - Math.rint(shown)) < 0.005 ? 0 : 1);
    }

    private void zones() {
        List<List<String>> rows = new ArrayList<>();
        for (CabinZone zone : type.cabin().zones()) {
            rows.add(List.of(
                    zone.id(),
                    zone.name(),
                    String.valueOf(zone.seats()),
                    units.arm(zone.armM()),
                    units.percentText(zone.armM())));
        }
        add(
                "Cabin zones",
                List.of("id", "name", "#seats", "#arm, " + units.lengthUnit(), "#% MAC"),
                rows,
                type.cabin().seats() + " seats in all.");
    }

    private void holds() {
        List<List<String>> rows = new ArrayList<>();
        for (Hold hold : type.holds()) {
            rows.add(List.of(
                    hold.id(),
                    hold.name(),
                    units.mass(hold.maxKg()),
                    units.arm(hold.armM()),
                    units.percentText(hold.armM()),
                    hold.floor().map(this::floor).orElse("")));
        }
        add(
                "Holds",
                List.of(
                        "id",
                        "name",
                        "#maximum, " + units.massUnit(),
                        "#arm, " + units.lengthUnit(),
                        "#% MAC",
                        "floor"),
                rows,
                "");
    }

    private String floor(FloorLimit floor) {
        boolean pounds = type.geometry().units().mass() == MassUnit.LB;
        double lengthM = pounds ? LengthUnit.FT.toM(1) : 1;
        MassUnit unit = pounds ? MassUnit.LB : MassUnit.KG;
        Optional<String> running = floor.maxRunningKgPerM().isPresent()
                ? Optional.of(
                        NumberText.fixed(unit.fromKg(floor.maxRunningKgPerM().getAsDouble() * lengthM), 0)
                                + (pounds ? " lb/ft" : " kg/m"))
                : Optional.empty();
        Optional<String> area = floor.maxAreaKgPerM2().isPresent()
                ? Optional.of(
                        NumberText.fixed(unit.fromKg(floor.maxAreaKgPerM2().getAsDouble() * lengthM * lengthM), 0)
                                + (pounds ? " lb/ft²" : " kg/m²"))
                : Optional.empty();
        String limits = running.map(one -> area.map(two -> one + ", " + two).orElse(one))
                .or(() -> area)
                .orElse("");
        return String.format(
                Locale.ROOT,
                "%.1f × %.1f %s, %s",
                floor.lengthM() / lengthM,
                floor.widthM() / lengthM,
                pounds ? "ft" : "m",
                limits);
    }

    private void groups() {
        List<List<String>> rows = new ArrayList<>();
        for (LoadGroup group : type.groups()) {
            List<String> places = new ArrayList<>();
            group.holds().forEach(hold -> places.add(type.holds().get(hold).name()));
            group.zones()
                    .forEach(zone -> places.add(type.cabin().zones().get(zone).name()));
            rows.add(List.of(group.id(), group.name(), units.mass(group.maxKg()), String.join(", ", places)));
        }
        add("Groups", List.of("id", "name", "#maximum, " + units.massUnit(), "places"), rows, "");
    }

    private void fleet() {
        List<List<String>> rows = new ArrayList<>();
        for (Tail tail : tails) {
            double massKg = tail.basic().massKg();
            double armM = tail.basic().armM();
            rows.add(List.of(
                    tail.registration(),
                    units.mass(massKg),
                    units.arm(armM),
                    units.percentText(armM),
                    units.index(massKg, armM)));
        }
        add(
                "Fleet",
                List.of("tail", "#basic mass, " + units.massUnit(), "#arm, " + units.lengthUnit(), "#% MAC", "#index"),
                rows,
                "Basic: without crew, pantry and usable fuel.");
    }
}
