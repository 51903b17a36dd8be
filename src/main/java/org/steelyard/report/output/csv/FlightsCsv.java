package org.steelyard.report.output.csv;

import static org.steelyard.report.words.FlightFigures.cgPercentMac;
import static org.steelyard.report.words.FlightFigures.cgSdPercentMac;
import static org.steelyard.report.words.FlightFigures.chance;
import static org.steelyard.report.words.FlightFigures.index;
import static org.steelyard.report.words.FlightFigures.margin;
import static org.steelyard.report.words.FlightFigures.massKg;
import static org.steelyard.report.words.FlightFigures.massSdKg;
import static org.steelyard.report.words.FlightFigures.traffic;
import static org.steelyard.report.words.FlightFigures.trimSetting;
import static org.steelyard.report.words.FlightFigures.trimUnits;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;
import org.steelyard.report.text.OutputColumn;
import org.steelyard.report.text.TypedRow;
import org.steelyard.report.text.Work;
import org.steelyard.report.words.FlightFigures;
import org.steelyard.report.words.RemedyCell;

/**
 * {@code flights.csv}: one line for each flight with all its results, in kg, % MAC, kg·m, index units and trim units
 * (nose-up positive) at full precision. A cell is empty where the input does not give enough to know.
 *
 * <ul>
 *   <li>{@code findings}: kind and phase of each, as {@code cg-aft take-off; mass-high landing}.
 *   <li>{@code …_fwd_margin_pct_mac}, {@code …_aft_margin_pct_mac}: room to the limits of that phase's envelope,
 *       negative outside; {@code flight_…} is the nearest approach between take-off and landing.
 *   <li>{@code assumed}: yes where load or fuel was shared out by a rule.
 *   <li>{@code extras}: columns carried along, as {@code pilot=Ida; gate=7}. Which there are is not known before the
 *       last flight, so they share one cell; a backslash stands before {@code \ ; =} that belong to a name or value.
 *   <li>{@code recorded_less_right_units}: recorded less right take-off setting, positive where it is too much nose-up;
 *       where {@code assumed} says yes the right setting is only an assumption.
 *   <li>{@code trim_basis}: document, evidence or estimate: where the scale comes from.
 *   <li>{@code assumed_parts}: which of passengers, holds and fuel were shared out.
 *   <li>{@code blanks_as_none}: how many zones, holds, tanks or totals were blank and counted as nothing, though the
 *       heading map does not say that a blank means it.
 *   <li>{@code standard_masses}: the scheme by which passengers, bags and crew count where no actual mass is given.
 *   <li>{@code last_minute_load_kg}, {@code last_minute_fuel_kg}: what came less what went at the last minute; all
 *       states are those after it.
 *   <li>{@code …_sd_kg}, {@code …_sd_pct_mac}: standard deviation of mass and CG; {@code …_chance}: chance from 0 to 1
 *       of being outside that limit; empty where the policy gives no spread or the input a state alone.
 *   <li>{@code trim_thrust}: thrust rating of the take-off scale that was read, where it is for one rating.
 *   <li>{@code remedy_by}, {@code remedy_kg}, {@code remedy}: what would put a breached flight right.
 * </ul>
 */
public final class FlightsCsv implements SeasonOutput {

    private static final int LINE_BYTES = 1 << 10;

    private record Column(String name, OutputColumn.Kind kind, Cell cell) {}

    @FunctionalInterface
    private interface Cell {
        void add(AuditedFlight flight, CsvLine line);
    }

    private static final List<Column> COLUMNS = List.of(
            text("file", flight -> flight.loading().origin().file()),
            whole("row", flight -> flight.loading().origin().row()),
            text("flight", flight -> flight.loading().flight().flight()),
            text("date", flight -> flight.loading().flight().date().toString()),
            text("tail", flight -> flight.loading().tail().registration()),
            text("type", flight -> flight.loading().type().id()),
            text("from", flight -> flight.loading().flight().from()),
            text("to", flight -> flight.loading().flight().to()),
            text("flaps", flight -> flight.loading().setting().flaps()),
            number("zfw_kg", massKg(Phase.ZERO_FUEL)),
            number("zfw_cg_pct_mac", cgPercentMac(Phase.ZERO_FUEL)),
            number("ramp_kg", massKg(Phase.RAMP)),
            number("tow_kg", massKg(Phase.TAKEOFF)),
            number("tow_cg_pct_mac", cgPercentMac(Phase.TAKEOFF)),
            number("lw_kg", massKg(Phase.LANDING)),
            number("lw_cg_pct_mac", cgPercentMac(Phase.LANDING)),
            number("trim_units", flight -> trimUnits(flight.balance().takeoffTrim())),
            text("trim_setting", flight -> trimSetting(flight.balance().takeoffTrim())),
            text("status", flight -> flight.assessment().status().label()),
            text("findings", FlightsCsv::findings),
            text("sheet", flight -> flight.loading().origin().sheet()),
            number("dow_kg", massKg(Phase.DRY_OPERATING)),
            number("dow_cg_pct_mac", cgPercentMac(Phase.DRY_OPERATING)),
            number("ramp_cg_pct_mac", cgPercentMac(Phase.RAMP)),
            number("dow_index", index(Phase.DRY_OPERATING)),
            number("zfw_index", index(Phase.ZERO_FUEL)),
            number("tow_index", index(Phase.TAKEOFF)),
            number("lw_index", index(Phase.LANDING)),
            number("traffic_load_kg", traffic(TrafficLoad::actualKg)),
            number("traffic_load_allowed_kg", traffic(TrafficLoad::allowedKg)),
            number("underload_kg", traffic(TrafficLoad::underloadKg)),
            text(
                    "limited_by",
                    flight -> flight.assessment()
                            .trafficLoad()
                            .map(load -> load.limitedBy().label())
                            .orElse("")),
            number("zfw_fwd_margin_pct_mac", margin(Phase.ZERO_FUEL, EnvelopeMargin::forwardPercentMac)),
            number("zfw_aft_margin_pct_mac", margin(Phase.ZERO_FUEL, EnvelopeMargin::aftPercentMac)),
            number("tow_fwd_margin_pct_mac", margin(Phase.TAKEOFF, EnvelopeMargin::forwardPercentMac)),
            number("tow_aft_margin_pct_mac", margin(Phase.TAKEOFF, EnvelopeMargin::aftPercentMac)),
            number("flight_fwd_margin_pct_mac", margin(Phase.FLIGHT, EnvelopeMargin::forwardPercentMac)),
            number("flight_aft_margin_pct_mac", margin(Phase.FLIGHT, EnvelopeMargin::aftPercentMac)),
            number("lw_fwd_margin_pct_mac", margin(Phase.LANDING, EnvelopeMargin::forwardPercentMac)),
            number("lw_aft_margin_pct_mac", margin(Phase.LANDING, EnvelopeMargin::aftPercentMac)),
            number("tow_fwd_room_kgm", margin(Phase.TAKEOFF, EnvelopeMargin::forwardMomentKgM)),
            number("tow_aft_room_kgm", margin(Phase.TAKEOFF, EnvelopeMargin::aftMomentKgM)),
            number("tow_mass_room_kg", margin(Phase.TAKEOFF, EnvelopeMargin::massKg)),
            text("landing_flaps", flight -> flight.loading().setting().landingFlaps()),
            number("landing_trim_units", flight -> trimUnits(flight.balance().landingTrim())),
            text("landing_trim_setting", flight -> trimSetting(flight.balance().landingTrim())),
            number(
                    "takeoff_fuel_kg",
                    flight -> FlightFigures.number(
                            flight.balance().fuel(), fuel -> fuel.takeoffKg().sum())),
            text("input_level", flight -> flight.loading().load().level().label()),
            text("assumed", flight -> flight.assumed().isEmpty() ? "no" : "yes"),
            number("recorded_trim_units", flight -> flight.loading().recordedTrimUnits()),
            text("extras", FlightsCsv::extras),
            number("recorded_less_right_units", FlightFigures::recordedLessRightUnits),
            text(
                    "trim_basis",
                    flight -> FlightFigures.trimBasis(flight.balance().takeoffTrim())),
            text("assumed_parts", FlightFigures::assumed),
            whole("blanks_as_none", flight -> flight.loading().blanksAsNone().size()),
            text("standard_masses", flight -> flight.loading().scheme().id()),
            number(
                    "last_minute_load_kg",
                    flight -> FlightFigures.lastMinuteKg(flight, LoadPart.PASSENGERS, LoadPart.HOLDS)),
            number("last_minute_fuel_kg", flight -> FlightFigures.lastMinuteKg(flight, LoadPart.FUEL)),
            number("zfw_sd_kg", massSdKg(Phase.ZERO_FUEL)),
            number("zfw_cg_sd_pct_mac", cgSdPercentMac(Phase.ZERO_FUEL)),
            number("tow_sd_kg", massSdKg(Phase.TAKEOFF)),
            number("tow_cg_sd_pct_mac", cgSdPercentMac(Phase.TAKEOFF)),
            number("lw_sd_kg", massSdKg(Phase.LANDING)),
            number("lw_cg_sd_pct_mac", cgSdPercentMac(Phase.LANDING)),
            number("zfw_fwd_chance", chance(FindingCode.CG_FORWARD, Phase.ZERO_FUEL)),
            number("zfw_aft_chance", chance(FindingCode.CG_AFT, Phase.ZERO_FUEL)),
            number("tow_fwd_chance", chance(FindingCode.CG_FORWARD, Phase.TAKEOFF)),
            number("tow_aft_chance", chance(FindingCode.CG_AFT, Phase.TAKEOFF)),
            number("flight_fwd_chance", chance(FindingCode.CG_FORWARD, Phase.FLIGHT)),
            number("flight_aft_chance", chance(FindingCode.CG_AFT, Phase.FLIGHT)),
            number("lw_fwd_chance", chance(FindingCode.CG_FORWARD, Phase.LANDING)),
            number("lw_aft_chance", chance(FindingCode.CG_AFT, Phase.LANDING)),
            number("zfw_mass_chance", chance(FindingCode.MASS_HIGH, Phase.ZERO_FUEL)),
            number("tow_mass_chance", chance(FindingCode.MASS_HIGH, Phase.TAKEOFF)),
            number("lw_mass_chance", chance(FindingCode.MASS_HIGH, Phase.LANDING)),
            number(
                    "greatest_chance",
                    flight -> FlightFigures.number(FlightFigures.greatestChance(flight), FlightFigures::chance)),
            text(
                    "greatest_chance_of",
                    flight -> FlightFigures.greatestChance(flight)
                            .map(chance ->
                                    chance.code().code() + " " + chance.phase().label())
                            .orElse("")),
            text(
                    "remedy_by",
                    flight -> flight.remedy()
                            .map(remedy -> remedy.means().label())
                            .orElse("")),
            number("remedy_kg", flight -> FlightFigures.number(flight.remedy(), Remedy::massKg)),
            text("remedy", RemedyCell::of),
            text("trim_thrust", TrimSetting::thrust));

    /** The columns, as other formats need them. */
    static List<OutputColumn> columns() {
        return COLUMNS.stream()
                .map(column -> new OutputColumn(column.name(), column.kind()))
                .toList();
    }

    /** The cells of one flight. */
    static List<Object> cells(AuditedFlight flight) {
        TypedRow row = new TypedRow();
        COLUMNS.forEach(column -> column.cell().add(flight, row));
        return row.cells();
    }

    private final CsvFile file;

    public FlightsCsv(Path path) throws IOException {
        file = new CsvFile(path, COLUMNS.stream().map(Column::name).toList());
    }

    @Override
    public Work begin(List<AuditedFlight> flights) {
        return () -> {
            byte[] lines = lines(flights);
            return () -> file.write(lines);
        };
    }

    private static byte[] lines(List<AuditedFlight> flights) {
        CsvLine line = new CsvLine(flights.size() * LINE_BYTES);
        for (AuditedFlight flight : flights) {
            for (Column column : COLUMNS) {
                column.cell().add(flight, line);
            }
            line.next();
        }
        return line.take();
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        file.close();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    private static Column text(String name, Function<AuditedFlight, String> text) {
        return new Column(name, OutputColumn.Kind.TEXT, (flight, line) -> line.text(text.apply(flight)));
    }

    private static Column whole(String name, ToLongFunction<AuditedFlight> number) {
        return new Column(name, OutputColumn.Kind.WHOLE, (flight, line) -> line.whole(number.applyAsLong(flight)));
    }

    private static Column number(String name, Function<AuditedFlight, OptionalDouble> number) {
        return new Column(name, OutputColumn.Kind.NUMBER, (flight, line) -> line.number(number.apply(flight)));
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
}
