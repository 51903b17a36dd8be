package org.steelyard.report.column;

import static org.steelyard.report.column.FlightMarks.CG;
import static org.steelyard.report.column.FlightMarks.MASS;
import static org.steelyard.report.column.FlightMarks.TRIM;
import static org.steelyard.report.column.FlightMarks.worst;
import static org.steelyard.report.column.ListColumn.number;
import static org.steelyard.report.column.ListColumn.text;
import static org.steelyard.report.column.ListColumn.whole;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.balance.Balance;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.report.column.ListColumn.Kind;
import org.steelyard.report.words.FlightFigures;
import org.steelyard.report.words.RemedyCell;

/**
 * The columns of the list of flights, one row for each with all its results; a cell is empty where the input does not
 * give enough to know. New columns come at the end, as scripts rely on names and people on places.
 */
public final class FlightList {

    /** A state, as columns are named by it. */
    private enum State {
        DRY_OPERATING("dow", "dry operating", Phase.DRY_OPERATING),
        ZERO_FUEL("zfw", "zero-fuel", Phase.ZERO_FUEL),
        RAMP("ramp", "ramp", Phase.RAMP),
        TAKEOFF("tow", "take-off", Phase.TAKEOFF),
        FLIGHT("flight", "in-flight", Phase.FLIGHT),
        LANDING("lw", "landing", Phase.LANDING);

        private final String prefix;
        private final String words;
        private final Phase phase;

        State(String prefix, String words, Phase phase) {
            this.prefix = prefix;
            this.words = words;
            this.phase = phase;
        }

        private String title(String figure) {
            return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + " " + figure;
        }

        ListColumn<AuditedFlight> mass() {
            return number(prefix + "_kg", ListUnit.KG, words + " mass", FlightFigures.massKg(phase))
                    .onSheet(title("mass"))
                    .coloured(worst(MASS, phase));
        }

        ListColumn<AuditedFlight> cg() {
            return number(
                            prefix + "_cg_pct_mac",
                            ListUnit.PERCENT_MAC,
                            words + " CG",
                            FlightFigures.cgPercentMac(phase))
                    .onSheet(title("CG"))
                    .coloured(worst(CG, phase));
        }

        ListColumn<AuditedFlight> index() {
            return number(prefix + "_index", ListUnit.INDEX, words + " index", FlightFigures.index(phase));
        }

        ListColumn<AuditedFlight> forwardMargin() {
            return margin("fwd", "forward", EnvelopeMargin::forwardPercentMac);
        }

        ListColumn<AuditedFlight> aftMargin() {
            return margin("aft", "aft", EnvelopeMargin::aftPercentMac);
        }

        private ListColumn<AuditedFlight> margin(String side, String limit, ToDoubleFunction<EnvelopeMargin> room) {
            return number(
                    prefix + "_" + side + "_margin_pct_mac",
                    ListUnit.PERCENT_MAC,
                    "room to the " + limit + " limit of the " + words + " envelope, negative outside"
                            + (this == FLIGHT ? "; the nearest approach between take-off and landing" : ""),
                    FlightFigures.margin(phase, room));
        }

        ListColumn<AuditedFlight> massSd() {
            return number(
                    prefix + "_sd_kg",
                    ListUnit.KG,
                    "standard deviation of " + words + " mass",
                    FlightFigures.massSdKg(phase));
        }

        ListColumn<AuditedFlight> cgSd() {
            return number(
                    prefix + "_cg_sd_pct_mac",
                    ListUnit.PERCENT_MAC,
                    "standard deviation of " + words + " CG",
                    FlightFigures.cgSdPercentMac(phase));
        }

        ListColumn<AuditedFlight> forwardChance() {
            return chance("fwd", "ahead of the " + words + " forward limit", FindingCode.CG_FORWARD);
        }

        ListColumn<AuditedFlight> aftChance() {
            return chance("aft", "behind the " + words + " aft limit", FindingCode.CG_AFT);
        }

        ListColumn<AuditedFlight> massChance() {
            return chance("mass", "above the greatest " + words + " mass", FindingCode.MASS_HIGH);
        }

        private ListColumn<AuditedFlight> chance(String limit, String where, FindingCode code) {
            return number(
                    prefix + "_" + limit + "_chance",
                    ListUnit.CHANCE,
                    "chance of being " + where,
                    FlightFigures.chance(code, phase));
        }
    }

    public static final ColumnList<AuditedFlight> COLUMNS = new ColumnList<>(
            Stream.of(identity(), results(), onSheetOnly())
                    .flatMap(part -> part)
                    .toList(),
            List.of(
                    "Status",
                    "Flight",
                    "Date",
                    "Tail",
                    "Type",
                    "From",
                    "To",
                    "Flaps",
                    "Take-off trim setting",
                    "Take-off trim, units",
                    "Recorded trim, units",
                    "Dry operating mass, kg",
                    "Dry operating CG, % MAC",
                    "Zero-fuel mass, kg",
                    "Zero-fuel CG, % MAC",
                    "Ramp mass, kg",
                    "Ramp CG, % MAC",
                    "Take-off mass, kg",
                    "Take-off CG, % MAC",
                    "Landing mass, kg",
                    "Landing CG, % MAC",
                    "Least room forward, % MAC",
                    "Least forward at",
                    "Least room aft, % MAC",
                    "Least aft at",
                    "Least mass room of envelope, kg",
                    "Least mass at",
                    "Traffic load aboard, kg",
                    "Traffic load allowed, kg",
                    "Underload, kg",
                    "Limited by",
                    "Landing flaps",
                    "Landing trim setting",
                    "Landing trim, units",
                    "Assumed, not given",
                    "Findings",
                    "Other columns",
                    "File",
                    "Sheet",
                    "Row"));

    private FlightList() {}

    private static Stream<ListColumn<AuditedFlight>> identity() {
        return Stream.concat(
                LoadingColumns.first(AuditedFlight::loading),
                Stream.of(
                        LoadingColumns.FROM.of(AuditedFlight::loading),
                        LoadingColumns.TO.of(AuditedFlight::loading),
                        ListColumn.<AuditedFlight>text(
                                        "flaps",
                                        "take-off flap setting",
                                        flight -> flight.loading().setting().flaps())
                                .onSheet("Flaps", 8)));
    }

    private static Stream<ListColumn<AuditedFlight>> results() {
        return Stream.of(
                State.ZERO_FUEL.mass(),
                State.ZERO_FUEL.cg(),
                State.RAMP.mass(),
                State.TAKEOFF.mass(),
                State.TAKEOFF.cg(),
                State.LANDING.mass(),
                State.LANDING.cg(),
                trim("trim_units", State.TAKEOFF, Balance::takeoffTrim),
                setting("trim_setting", State.TAKEOFF, Balance::takeoffTrim),
                ListColumn.<AuditedFlight>of(
                                "status",
                                ListUnit.NONE,
                                Kind.MARK,
                                "clean, marginal or breached",
                                (flight, cells) ->
                                        cells.status(flight.assessment().status()))
                        .onSheet("Status"),
                text(
                                "findings",
                                "kind and state of each finding, as `cg-aft take-off; mass-high landing`; the sheet has"
                                        + " the kinds alone",
                                FlightList::findings)
                        .onSheet("Findings", 34)
                        .saying(FlightList::kinds),
                LoadingColumns.SHEET.of(AuditedFlight::loading),
                State.DRY_OPERATING.mass(),
                State.DRY_OPERATING.cg(),
                State.RAMP.cg(),
                State.DRY_OPERATING.index(),
                State.ZERO_FUEL.index(),
                State.TAKEOFF.index(),
                State.LANDING.index(),
                number(
                                "traffic_load_kg",
                                ListUnit.KG,
                                "traffic load aboard",
                                FlightFigures.traffic(TrafficLoad::actualKg))
                        .onSheet("Traffic load aboard"),
                number(
                                "traffic_load_allowed_kg",
                                ListUnit.KG,
                                "greatest traffic load that the limits of mass leave",
                                FlightFigures.traffic(TrafficLoad::allowedKg))
                        .onSheet("Traffic load allowed")
                        .permitted(),
                number(
                                "underload_kg",
                                ListUnit.KG,
                                "traffic load that could still be taken, negative if too much is aboard",
                                FlightFigures.traffic(TrafficLoad::underloadKg))
                        .onSheet("Underload")
                        .permitted()
                        .coloured(FlightList::ofUnderload),
                text("limited_by", "which limit sets the traffic load allowed", FlightList::limitedBy)
                        .onSheet("Limited by", 31),
                State.ZERO_FUEL.forwardMargin(),
                State.ZERO_FUEL.aftMargin(),
                State.TAKEOFF.forwardMargin(),
                State.TAKEOFF.aftMargin(),
                State.FLIGHT.forwardMargin(),
                State.FLIGHT.aftMargin(),
                State.LANDING.forwardMargin(),
                State.LANDING.aftMargin(),
                number(
                        "tow_fwd_room_kgm",
                        ListUnit.KG_M,
                        "moment that take-off may still lose before the forward limit",
                        FlightFigures.margin(Phase.TAKEOFF, EnvelopeMargin::forwardMomentKgM)),
                number(
                        "tow_aft_room_kgm",
                        ListUnit.KG_M,
                        "moment that take-off may still gain before the aft limit",
                        FlightFigures.margin(Phase.TAKEOFF, EnvelopeMargin::aftMomentKgM)),
                number(
                        "tow_mass_room_kg",
                        ListUnit.KG,
                        "room to the highest mass of the take-off envelope, negative above it",
                        FlightFigures.margin(Phase.TAKEOFF, EnvelopeMargin::massKg)),
                ListColumn.<AuditedFlight>text(
                                "landing_flaps",
                                "landing flap setting",
                                flight -> flight.loading().setting().landingFlaps())
                        .onSheet("Landing flaps", 9),
                trim("landing_trim_units", State.LANDING, Balance::landingTrim),
                setting("landing_trim_setting", State.LANDING, Balance::landingTrim),
                number(
                        "takeoff_fuel_kg",
                        ListUnit.KG,
                        "fuel aboard at take-off",
                        flight -> FlightFigures.number(
                                flight.balance().fuel(),
                                fuel -> fuel.takeoffKg().sum())),
                text(
                        "input_level",
                        "how much the input gives of the load: the levels of the project's README",
                        flight -> flight.loading().load().level().label()),
                text(
                        "assumed",
                        "yes where load or fuel was shared out from a total by a rule",
                        flight -> flight.assumed().isEmpty() ? "no" : "yes"),
                ListColumn.<AuditedFlight>number(
                                "recorded_trim_units",
                                ListUnit.TRIM,
                                "trim that the input says was set, nose-up positive",
                                flight -> flight.loading().recordedTrimUnits())
                        .onSheet("Recorded trim"),
                text(
                                "extras",
                                "columns carried along, as `pilot=Ida; gate=7`, a backslash before `\\ ; =` of a name or"
                                        + " value; the sheet has `pilot: Ida; gate: 7`",
                                FlightList::extras)
                        .onSheet("Other columns", 24)
                        .saying(FlightList::extrasForPeople),
                number(
                        "recorded_less_right_units",
                        ListUnit.TRIM,
                        "recorded less right setting, positive where too much nose-up; where `assumed` says yes the right"
                                + " setting is an assumption",
                        FlightFigures::recordedLessRightUnits),
                text(
                        "trim_basis",
                        "where the take-off scale comes from: document, evidence or estimate",
                        flight -> FlightFigures.trimBasis(flight.balance().takeoffTrim())),
                text("assumed_parts", "which of passengers, holds and fuel were shared out", FlightFigures::assumed)
                        .onSheet("Assumed, not given", 16),
                whole(
                        "blanks_as_none",
                        "how many zones, holds, tanks or totals were blank and counted as none, though no heading map says"
                                + " that a blank means it",
                        flight -> flight.loading().blanksAsNone().size()),
                text(
                        "standard_masses",
                        "scheme by which passengers, bags and crew count where no actual mass is given",
                        flight -> flight.loading().scheme().id()),
                number(
                        "last_minute_load_kg",
                        ListUnit.KG,
                        "passengers and load that came less those that went at the last minute; all states are after it",
                        flight -> FlightFigures.lastMinuteKg(flight, LoadPart.PASSENGERS, LoadPart.HOLDS)),
                number(
                        "last_minute_fuel_kg",
                        ListUnit.KG,
                        "fuel that came less what went at the last minute",
                        flight -> FlightFigures.lastMinuteKg(flight, LoadPart.FUEL)),
                State.ZERO_FUEL.massSd(),
                State.ZERO_FUEL.cgSd(),
                State.TAKEOFF.massSd(),
                State.TAKEOFF.cgSd(),
                State.LANDING.massSd(),
                State.LANDING.cgSd(),
                State.ZERO_FUEL.forwardChance(),
                State.ZERO_FUEL.aftChance(),
                State.TAKEOFF.forwardChance(),
                State.TAKEOFF.aftChance(),
                State.FLIGHT.forwardChance(),
                State.FLIGHT.aftChance(),
                State.LANDING.forwardChance(),
                State.LANDING.aftChance(),
                State.ZERO_FUEL.massChance(),
                State.TAKEOFF.massChance(),
                State.LANDING.massChance(),
                number(
                        "greatest_chance",
                        ListUnit.CHANCE,
                        "the greatest of all chances of being outside a limit",
                        flight -> FlightFigures.number(FlightFigures.greatestChance(flight), FlightFigures::chance)),
                text("greatest_chance_of", "which limit that is, as `cg-aft take-off`", FlightList::greatestChanceOf),
                text(
                        "remedy_by",
                        "what would put a breached flight right: move, leave behind, ballast, fuel or none",
                        flight -> flight.remedy()
                                .map(remedy -> remedy.means().label())
                                .orElse("")),
                number(
                        "remedy_kg",
                        ListUnit.KG,
                        "how much of it",
                        flight -> FlightFigures.number(flight.remedy(), Remedy::massKg)),
                text("remedy", "the same in words", RemedyCell::of),
                text(
                        "trim_thrust",
                        "thrust rating of the take-off scale, where it is for one rating",
                        TrimSetting::thrust));
    }

    private static Stream<ListColumn<AuditedFlight>> onSheetOnly() {
        return Stream.of(
                least("forward", FindingCode.CG_FORWARD, EnvelopeMargin::forwardPercentMac),
                leastAt("forward", EnvelopeMargin::forwardPercentMac),
                least("aft", FindingCode.CG_AFT, EnvelopeMargin::aftPercentMac),
                leastAt("aft", EnvelopeMargin::aftPercentMac),
                ListColumn.<AuditedFlight>number(
                                "",
                                ListUnit.KG,
                                "least room to the highest mass of any envelope",
                                flight -> FlightFigures.number(
                                        FlightMarks.least(flight, EnvelopeMargin::massKg), EnvelopeMargin::massKg))
                        .onSheet("Least mass room of envelope", 13)
                        .permitted()
                        .coloured(FlightList::ofMassRoom),
                leastAt("mass", EnvelopeMargin::massKg));
    }

    private static ListColumn<AuditedFlight> trim(
            String name, State state, Function<Balance, Optional<TrimResult>> trim) {
        return ListColumn.<AuditedFlight>number(
                        name,
                        ListUnit.TRIM,
                        state.words + " trim in full, nose-up positive",
                        flight -> FlightFigures.trimUnits(trim.apply(flight.balance())))
                .onSheet(state.title("trim"))
                .coloured(worst(TRIM, state.phase));
    }

    private static ListColumn<AuditedFlight> setting(
            String name, State state, Function<Balance, Optional<TrimResult>> trim) {
        return ListColumn.<AuditedFlight>text(
                        name,
                        Kind.SETTING,
                        state.words + " trim in whole steps of the scale, as pilots say it",
                        flight -> FlightFigures.trimSetting(trim.apply(flight.balance())))
                .onSheet(state.title("trim setting"))
                .coloured(worst(TRIM, state.phase));
    }

    private static ListColumn<AuditedFlight> least(
            String side, FindingCode code, ToDoubleFunction<EnvelopeMargin> room) {
        return ListColumn.<AuditedFlight>number(
                        "",
                        ListUnit.PERCENT_MAC,
                        "least room to the " + side + " limit of any envelope",
                        flight -> FlightFigures.number(FlightMarks.least(flight, room), room))
                .onSheet("Least room " + side)
                .permitted()
                .coloured(worst(code));
    }

    private static ListColumn<AuditedFlight> leastAt(String what, ToDoubleFunction<EnvelopeMargin> room) {
        return ListColumn.<AuditedFlight>text(
                        "",
                        "the state of which that is",
                        flight -> FlightMarks.least(flight, room)
                                .map(least -> least.phase().label())
                                .orElse(""))
                .onSheet("Least " + what + " at", 12);
    }

    private static Severity ofUnderload(AuditedFlight flight) {
        return flight.assessment()
                .trafficLoad()
                .map(load -> FlightMarks.ofRoom(load.underloadKg()))
                .orElse(Severity.NOTE);
    }

    private static Severity ofMassRoom(AuditedFlight flight) {
        return FlightMarks.least(flight, EnvelopeMargin::massKg)
                .map(least -> FlightMarks.ofRoom(least.massKg()))
                .orElse(Severity.NOTE);
    }

    private static String limitedBy(AuditedFlight flight) {
        return flight.assessment()
                .trafficLoad()
                .map(load -> load.limitedBy().label())
                .orElse("");
    }

    private static String greatestChanceOf(AuditedFlight flight) {
        return FlightFigures.greatestChance(flight)
                .map(chance -> chance.code().code() + " " + chance.phase().label())
                .orElse("");
    }

    private static String findings(AuditedFlight flight) {
        StringBuilder all = new StringBuilder();
        for (Finding finding : flight.assessment().findings()) {
            all.append(all.isEmpty() ? "" : "; ")
                    .append(finding.code().code())
                    .append(' ')
                    .append(finding.phase().label());
        }
        return all.toString();
    }

    private static String kinds(AuditedFlight flight) {
        List<Finding> findings = flight.assessment().findings();
        return findings.isEmpty()
                ? ""
                : findings.stream()
                        .map(finding -> finding.code().code())
                        .distinct()
                        .collect(Collectors.joining(", "));
    }

    private static String extras(AuditedFlight flight) {
        StringJoiner all = new StringJoiner("; ");
        for (Extra extra : flight.loading().extras()) {
            all.add(escaped(extra.name()) + "=" + escaped(extra.value()));
        }
        return all.toString();
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace(";", "\\;").replace("=", "\\=");
    }

    private static String extrasForPeople(AuditedFlight flight) {
        StringJoiner all = new StringJoiner("; ");
        for (Extra extra : flight.loading().extras()) {
            if (!extra.value().isEmpty()) {
                all.add(extra.name() + ": " + extra.value());
            }
        }
        return all.toString();
    }
}
