package org.steelyard.report.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.balance.Balance;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.chance.Uncertainty;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.Status;
import org.steelyard.check.text.FindingText;
import org.steelyard.check.text.RecordedTrimText;
import org.steelyard.check.text.Rounded;
import org.steelyard.check.type.NotChecked;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.Counted;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;
import org.steelyard.remedy.PlaceRoom;
import org.steelyard.remedy.Room;
import org.steelyard.remedy.RoomSearch;
import org.steelyard.report.text.PlainNumber;
import org.steelyard.report.words.FlightFigures;
import org.steelyard.report.words.RemedyCell;
import org.steelyard.trim.SettingRange;

/**
 * What is to be said of one flight, in words and in the units of the type's users: the same on the terminal, on a page
 * and in a workbook.
 *
 * @param flight the flight
 * @param massKnown false where only the CG was given, so that nothing but the trim says anything
 */
public record LoadSummary(AuditedFlight flight, boolean massKnown) {

    /**
     * A name with its value.
     *
     * @param name what it is
     * @param value what it is worth
     */
    public record Fact(String name, String value) {}

    /**
     * A state.
     *
     * @param name name of the state
     * @param mass its mass
     * @param cg its CG
     * @param index its index
     * @param forwardRoom room to the forward limit; blank where there is no envelope
     * @param aftRoom room to the aft limit; blank where there is no envelope
     */
    public record State(String name, String mass, String cg, String index, String forwardRoom, String aftRoom) {}

    /**
     * The trim.
     *
     * @param setting the setting to select, as {@code 0.2 UP}
     * @param facts exact trim, band, the CGs that the setting stands for, where the scale comes from
     * @param estimated whether it is only an estimate
     */
    public record Trim(String setting, List<Fact> facts, boolean estimated) {

        public Trim {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A finding.
     *
     * @param severity how serious
     * @param sentence in words
     */
    public record Line(Severity severity, String sentence) {}

    private static final String UNNAMED_DATE = "1970-01-01";

    /** Whose flight it is. */
    public String title() {
        Loading loading = flight.loading();
        String tail = loading.tail().registration();
        String name = type().name();
        return tail.equals(name) ? name : tail + ", " + name;
    }

    /** Flight, date, places, flaps and thrust, where they are given. */
    public List<Fact> facts() {
        Loading loading = flight.loading();
        FlightSetting setting = loading.setting();
        List<Fact> facts = new ArrayList<>();
        boolean named = !loading.flight().date().toString().equals(UNNAMED_DATE);
        add(facts, "flight", named ? loading.flight().flight() : "");
        add(facts, "date", named ? loading.flight().date().toString() : "");
        add(facts, "from", loading.flight().from());
        add(facts, "to", loading.flight().to());
        add(facts, "take-off flaps", setting.flaps());
        add(facts, "thrust rating", setting.thrustRating());
        add(facts, "landing flaps", setting.landingFlaps());
        add(facts, "ASSUMED", assumed());
        return facts;
    }

    private String assumed() {
        String parts = FlightFigures.assumed(flight);
        return parts.isEmpty() ? "" : parts + " (shared out from totals)";
    }

    private static void add(List<Fact> facts, String name, String value) {
        if (!value.isBlank()) {
            facts.add(new Fact(name, value));
        }
    }

    /** The verdict. */
    public Status status() {
        return flight.assessment().status();
    }

    /**
     * What stands beside a setting of a flight that is out of limits; blank where it is not. A recorded setting that is
     * off does not put the flight out of limits.
     */
    public String warning() {
        boolean out = flight.assessment().findings().stream()
                .anyMatch(finding -> finding.severity() == Severity.BREACH
                        && finding.code() != FindingCode.TRIM_RECORDED
                        && isSaid(finding));
        return out ? "out of limits – do not depart as loaded" : "";
    }

    /** Without a mass only what concerns the trim is said. */
    private boolean isSaid(Finding finding) {
        return massKnown || concernsTrim(finding);
    }

    /** The trim for take-off; empty where there is no scale for the setting, or it does not reach. */
    public Optional<Trim> takeoffTrim() {
        return flight.balance()
                .takeoffTrim()
                .flatMap(trim ->
                        trim(trim, flight.balance().takeoff(), flight.loading().recordedTrimUnits()));
    }

    /** The trim for landing, where the type has a scale. */
    public Optional<Trim> landingTrim() {
        Balance balance = flight.balance();
        return balance.landingTrim()
                .flatMap(trim -> trim(trim, balance.landing().orElseThrow(), OptionalDouble.empty()));
    }

    private Optional<Trim> trim(TrimResult trim, MassMoment state, OptionalDouble recordedUnits) {
        if (trim.settingUnits().isEmpty()) {
            return Optional.empty();
        }
        TrimScale scale = trim.scale();
        double setting = trim.settingUnits().getAsDouble();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("exact trim", shown(trim.trimUnits().getAsDouble(), scale, 0.01)));
        facts.add(new Fact("this setting is right for", range(scale, setting, state.massKg())));
        facts.add(new Fact(
                "permitted band",
                shown(scale.bandLowUnits(), scale, scale.stepUnits()) + " to "
                        + shown(scale.bandHighUnits(), scale, scale.stepUnits())));
        if (scale.basis() != TrimBasis.DOCUMENT) {
            facts.add(new Fact("scale", basis(scale.basis())));
        }
        recordedUnits.ifPresent(units -> recorded(facts, trim, units, state.massKg()));
        return Optional.of(
                new Trim(shown(setting, scale, scale.stepUnits()), facts, scale.basis() == TrimBasis.ESTIMATE));
    }

    private void recorded(List<Fact> facts, TrimResult trim, double units, double massKg) {
        TrimScale scale = trim.scale();
        facts.add(new Fact("recorded", shown(units, scale, 0.01)));
        facts.add(new Fact("recorded would be right for", range(scale, units, massKg)));
        double difference = trim.differenceUnits(units).orElse(0);
        if (difference != 0) {
            facts.add(new Fact(
                    "recorded is off by", shown(difference, scale, 0.01) + ": " + RecordedTrimText.risk(difference)));
        }
    }

    /** Where a scale comes from, in words. */
    static String basis(TrimBasis basis) {
        return switch (basis) {
            case DOCUMENT -> "from the type's documents";
            case EVIDENCE -> "fitted to recorded settings";
            case ESTIMATE -> "ESTIMATE from the balance of moments, not from the type's documents";
        };
    }

    private static String shown(double units, TrimScale scale, double step) {
        return FindingText.trim(units, step, scale.unit());
    }

    private String range(TrimScale scale, double setting, double massKg) {
        Optional<CgRange> range = SettingRange.of(scale, setting, massKg);
        return range.map(cgs -> cg(cgs.fromPercentMac()) + " to " + cg(cgs.toPercentMac()) + " " + cgUnit())
                .orElse("no CG of the scale");
    }

    /** The states that are known, in order. */
    public List<State> states() {
        List<State> states = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            flight.balance().state(phase).ifPresent(state -> states.add(state(phase, state)));
            if (phase == Phase.FLIGHT) {
                margin(phase)
                        .ifPresent(margin -> states.add(new State(
                                "in flight, nearest",
                                "",
                                "",
                                "",
                                room(margin.forwardPercentMac()),
                                room(margin.aftPercentMac()))));
            }
        }
        return states;
    }

    private State state(Phase phase, MassMoment state) {
        Optional<EnvelopeMargin> margin = margin(phase);
        return new State(
                phase.label(),
                mass(state.massKg()),
                cg(type().geometry().chord().percentAt(state.armM())),
                PlainNumber.grouped(type().geometry().index().indexOf(state), 2),
                margin.map(found -> room(found.forwardPercentMac())).orElse(""),
                margin.map(found -> room(found.aftPercentMac())).orElse(""));
    }

    private Optional<EnvelopeMargin> margin(Phase phase) {
        return flight.assessment().margins().stream()
                .filter(margin -> margin.phase() == phase)
                .findFirst();
    }

    /** Structural limits, and those of the day, against what is aboard, and the traffic load allowed. */
    public List<Fact> limits() {
        List<Fact> facts = new ArrayList<>();
        MassLimits limits = type().limits();
        limit(facts, Phase.ZERO_FUEL, OptionalDouble.of(limits.maxZeroFuelKg()), "maximum");
        limit(facts, Phase.RAMP, OptionalDouble.of(limits.maxRampKg()), "maximum");
        limit(facts, Phase.TAKEOFF, OptionalDouble.of(limits.maxTakeoffKg()), "maximum");
        limit(facts, Phase.TAKEOFF, flight.loading().performance().takeoffKg(), "performance");
        limit(facts, Phase.LANDING, OptionalDouble.of(limits.maxLandingKg()), "maximum");
        limit(facts, Phase.LANDING, flight.loading().performance().landingKg(), "performance");
        flight.assessment().trafficLoad().ifPresent(load -> {
            facts.add(new Fact("traffic load", mass(load.actualKg()) + " " + massUnit()));
            facts.add(new Fact(
                    "traffic load allowed",
                    permitted(load.allowedKg()) + ", by the " + load.limitedBy().label()));
            facts.add(new Fact("underload", permitted(load.underloadKg())));
        });
        return facts;
    }

    private void limit(List<Fact> facts, Phase phase, OptionalDouble limitKg, String kind) {
        Optional<MassMoment> state = flight.balance().state(phase);
        if (state.isPresent() && limitKg.isPresent()) {
            double roomKg = limitKg.getAsDouble() - state.get().massKg();
            facts.add(new Fact(
                    kind + " " + phase.label() + " mass",
                    mass(limitKg.getAsDouble()) + " " + massUnit() + ", "
                            + PlainNumber.grouped(Math.abs(permittedShown(roomKg)), massDecimals())
                            + (Tolerance.isOutside(roomKg, Quantity.MASS) ? " exceeded" : " left")));
        }
    }

    /** What is in each zone, hold and tank, where that is known. */
    public List<Fact> places() {
        List<Fact> facts = new ArrayList<>();
        flight.balance().distribution().ifPresent(shared -> {
            for (int i = 0; i < shared.zoneKg().size(); i++) {
                facts.add(new Fact(
                        type().cabin().zones().get(i).name(),
                        PlainNumber.grouped(shared.seatedByZone().at(i), 0) + " seated, "
                                + mass(shared.zoneKg().at(i)) + " " + massUnit() + mark(LoadPart.PASSENGERS)));
            }
            for (int i = 0; i < shared.holdKg().size(); i++) {
                facts.add(new Fact(
                        type().holds().get(i).name(),
                        mass(shared.holdKg().at(i)) + " " + massUnit() + mark(LoadPart.HOLDS)));
            }
        });
        flight.balance().fuel().ifPresent(fuel -> {
            Amounts ramp = fuel.rampKg();
            for (int i = 0; i < ramp.size(); i++) {
                facts.add(new Fact(
                        type().fuel().tanks().get(i).name(),
                        mass(ramp.at(i)) + " " + massUnit() + " at the ramp" + mark(LoadPart.FUEL)));
            }
            facts.add(new Fact("taxi fuel", mass(fuel.taxiKg()) + " " + massUnit()));
            facts.add(new Fact("trip fuel", mass(fuel.tripKg()) + " " + massUnit()));
        });
        return facts;
    }

    private String mark(LoadPart part) {
        return flight.assumed().contains(part) ? " (assumed)" : "";
    }

    /** What was found, most serious first; without a mass only what concerns the trim. */
    public List<Line> findings() {
        List<Line> lines = new ArrayList<>();
        for (Finding finding : flight.assessment().findings()) {
            if (isSaid(finding)) {
                lines.add(new Line(finding.severity(), FindingText.sentence(finding, type())));
            }
        }
        if (massKnown) {
            NotChecked.of(type()).ifPresent(some -> lines.add(new Line(Severity.NOTE, some.sentence())));
        } else {
            lines.add(new Line(Severity.NOTE, "no mass was given, so nothing but the trim is said or checked"));
        }
        return lines;
    }

    /** What would put the flight right; blank where nothing is to be put right. */
    public String remedy() {
        return massKnown ? RemedyCell.of(flight) : "";
    }

    /** How sure mass and CG are, and the chance of being outside; none where the spread is not known. */
    public List<Fact> uncertainty() {
        List<Fact> facts = new ArrayList<>();
        Optional<Uncertainty> uncertainty = massKnown ? flight.assessment().uncertainty() : Optional.empty();
        uncertainty.flatMap(sure -> sure.state(Phase.TAKEOFF)).ifPresent(state -> {
            facts.add(new Fact("take-off mass, sd", mass(state.massSdKg()) + " " + massUnit()));
            double sdPercentMac = state.cgSdPercentMac(type().geometry().chord());
            facts.add(new Fact("take-off CG, sd", room(sdPercentMac).substring(1) + " " + cgUnit()));
        });
        uncertainty
                .flatMap(Uncertainty::greatest)
                .ifPresent(chance -> facts.add(new Fact(
                        "greatest chance outside",
                        String.format(Locale.ROOT, "%.1f %%, of ", 100 * chance.chance())
                                + FindingText.kind(chance.code(), Severity.BREACH)
                                        .replaceFirst("^M", "m") + ", "
                                + chance.phase().label())));
        return facts;
    }

    /** What each place could still take, and the last-minute change that the flight stands; none for a breached one. */
    public List<Fact> room() {
        List<Fact> facts = new ArrayList<>();
        Optional<Room> room = massKnown ? RoomSearch.of(flight) : Optional.empty();
        room.ifPresent(found -> {
            facts.add(
                    new Fact("at any one place, on or off", permitted(found.lastMinuteKg()) + " by mass, CG and trim"));
            for (PlaceRoom place : found.places()) {
                String persons = place.cabin() ? ", " + Counted.of(place.persons(), "adult") : "";
                facts.add(new Fact(
                        place.name(),
                        permitted(place.roomKg()) + persons + ", by "
                                + place.limitedBy().label()));
            }
        });
        return facts;
    }

    /** A mass that may still come aboard, never rounded up. */
    private String permitted(double massKg) {
        return PlainNumber.grouped(permittedShown(massKg), massDecimals()) + " " + massUnit();
    }

    private double permittedShown(double massKg) {
        return Rounded.down(units().mass().fromKg(massKg), massDecimals());
    }

    private int massDecimals() {
        return FindingText.decimals(Quantity.MASS, type());
    }

    private static boolean concernsTrim(Finding finding) {
        return switch (finding.code()) {
            case TRIM_OFF_SCALE, TRIM_UNKNOWN, TRIM_ESTIMATE, TRIM_RECORDED, TRIM_BAND -> true;
            default -> false;
        };
    }

    /** The type of the flight. */
    public AircraftType type() {
        return flight.loading().type();
    }

    private DisplayUnits units() {
        return type().geometry().units();
    }

    /** Unit of all masses. */
    public String massUnit() {
        return units().mass().symbol();
    }

    /** Unit of all CGs and rooms. */
    public String cgUnit() {
        return FindingText.unit(Quantity.CG, type());
    }

    private String mass(double massKg) {
        return PlainNumber.grouped(units().mass().fromKg(massKg), massDecimals());
    }

    private String cg(double cgPercentMac) {
        double shown = units().cg() == CgForm.ARM
                ? units().length().fromM(type().geometry().chord().armAt(cgPercentMac))
                : cgPercentMac;
        return PlainNumber.grouped(shown, FindingText.decimals(Quantity.CG, type()));
    }

    private String room(double roomPercentMac) {
        double shown = units().cg() == CgForm.ARM
                ? units().length()
                        .fromM(roomPercentMac / 100 * type().geometry().chord().lengthM())
                : roomPercentMac;
        int decimals = FindingText.decimals(Quantity.CG, type());
        return String.format(Locale.ROOT, "%+." + decimals + "f", Rounded.down(shown, decimals));
    }
}
