package org.steelyard.report.output.book;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.balance.Balance;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.Status;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.check.text.FindingText;
import org.steelyard.check.text.Rounded;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetColumn;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.text.Work;
import org.steelyard.report.words.FlightFigures;
import org.steelyard.report.words.WorkbookWords;

/** One row for each flight, in the order of the input. */
public final class SheetFlights {

    static final String NONE = "No flight was accepted.";
    public static final SheetLayout LAYOUT = new SheetLayout(
            "Flights",
            "Masses are in kg and CG in % MAC for all types, so that columns can be summed and sorted. Trim is nose-up"
                    + " positive. A coloured figure has a finding of its own.",
            List.of(
                    SheetColumn.text("Status", 13),
                    SheetColumn.text("Flight", 10),
                    SheetColumn.text("Date", 13),
                    SheetColumn.text("Tail", 11),
                    SheetColumn.text("Type", 14),
                    SheetColumn.text("From", 8),
                    SheetColumn.text("To", 8),
                    SheetColumn.text("Flaps", 8),
                    SheetColumn.number("Take-off trim setting", 10),
                    SheetColumn.number("Take-off trim, units", 10),
                    SheetColumn.number("Recorded trim, units", 10),
                    SheetColumn.number("Dry operating mass, kg", 11),
                    SheetColumn.number("Dry operating CG, % MAC", 11),
                    SheetColumn.number("Zero-fuel mass, kg", 11),
                    SheetColumn.number("Zero-fuel CG, % MAC", 11),
                    SheetColumn.number("Ramp mass, kg", 10),
                    SheetColumn.number("Ramp CG, % MAC", 10),
                    SheetColumn.number("Take-off mass, kg", 10),
                    SheetColumn.number("Take-off CG, % MAC", 10),
                    SheetColumn.number("Landing mass, kg", 10),
                    SheetColumn.number("Landing CG, % MAC", 10),
                    SheetColumn.number("Least room forward, % MAC", 12),
                    SheetColumn.text("Least forward at", 12),
                    SheetColumn.number("Least room aft, % MAC", 11),
                    SheetColumn.text("Least aft at", 12),
                    SheetColumn.number("Least mass room of envelope, kg", 13),
                    SheetColumn.text("Least mass at", 12),
                    SheetColumn.number("Traffic load aboard, kg", 11),
                    SheetColumn.number("Traffic load allowed, kg", 11),
                    SheetColumn.number("Underload, kg", 11),
                    SheetColumn.text("Limited by", 31),
                    SheetColumn.text("Landing flaps", 9),
                    SheetColumn.number("Landing trim setting", 10),
                    SheetColumn.number("Landing trim, units", 10),
                    SheetColumn.text("Assumed, not given", 16),
                    SheetColumn.text("Findings", 34),
                    SheetColumn.text("Other columns", 24),
                    SheetColumn.text("File", 22),
                    SheetColumn.text("Sheet", 10),
                    SheetColumn.number("Row", 9)),
            4,
            3,
            2);

    private static final Set<FindingCode> FORWARD = EnumSet.of(FindingCode.CG_FORWARD);
    private static final Set<FindingCode> AFT = EnumSet.of(FindingCode.CG_AFT);
    private static final Set<FindingCode> CG = EnumSet.of(FindingCode.CG_FORWARD, FindingCode.CG_AFT);
    private static final Set<FindingCode> MASS =
            EnumSet.of(FindingCode.MASS_HIGH, FindingCode.MASS_LOW, FindingCode.MASS_OFF_ENVELOPE);
    private static final Set<FindingCode> TRIM = EnumSet.of(FindingCode.TRIM_BAND, FindingCode.TRIM_OFF_SCALE);
    private static final List<Phase> STATES =
            List.of(Phase.DRY_OPERATING, Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.LANDING);

    /** What is permitted is rounded down to what is shown; the full figures are in flights.csv. */
    private static final int PERCENT_DECIMALS = 2;

    private final EndlessSheet roll;
    private final WorkbookStyles styles;

    SheetFlights(EndlessSheet roll, WorkbookStyles styles) {
        this.roll = roll;
        this.styles = styles;
    }

    /** Keeps a row for each flight. */
    Work begin(List<AuditedFlight> batch) {
        return roll.begin(batch, this::fill);
    }

    private void fill(SheetRow row, AuditedFlight flight) {
        Loading loading = flight.loading();
        Balance balance = flight.balance();
        Assessment assessment = flight.assessment();
        identity(row, loading, assessment.status());
        row.data(loading.setting().flaps(), styles.text);
        trim(row, balance.takeoffTrim(), worst(assessment, TRIM, Phase.TAKEOFF));
        row.number(loading.recordedTrimUnits(), styles.trim.plain());
        states(row, flight, loading.type().geometry().chord());
        margins(row, assessment);
        trafficLoad(row, assessment.trafficLoad());
        row.data(loading.setting().landingFlaps(), styles.text);
        trim(row, balance.landingTrim(), worst(assessment, TRIM, Phase.LANDING));
        row.label(FlightFigures.assumed(flight), styles.text.plain())
                .data(codes(assessment.findings()), styles.text)
                .data(extras(loading.extras()), styles.text)
                .data(loading.origin().file(), styles.text)
                .data(loading.origin().sheet(), styles.text)
                .number(loading.origin().row(), styles.rowNumber);
    }

    private void identity(SheetRow row, Loading loading, Status status) {
        FlightIdent ident = loading.flight();
        row.label(WorkbookWords.status(status), styles.status(status))
                .data(ident.flight(), styles.text)
                .date(ident.date(), styles)
                .data(loading.tail().registration(), styles.text)
                .data(loading.type().id(), styles.text)
                .data(ident.from(), styles.text)
                .data(ident.to(), styles.text);
    }

    private void trim(SheetRow row, Optional<TrimResult> trim, Severity worst) {
        if (trim.isEmpty() || trim.get().settingUnits().isEmpty()) {
            row.skip(2);
            return;
        }
        var scale = trim.get().scale();
        String setting = FindingText.trim(trim.get().settingUnits().getAsDouble(), scale.stepUnits(), scale.unit());
        row.label(setting, styles.settingBySeverity.styleFor(worst))
                .number(trim.get().trimUnits(), styles.trim.styleFor(worst));
    }

    private void states(SheetRow row, AuditedFlight flight, MeanChord chord) {
        for (Phase phase : STATES) {
            Optional<MassMoment> state = flight.balance().state(phase);
            if (state.isPresent()) {
                Severity mass = worst(flight.assessment(), MASS, phase);
                Severity cg = worst(flight.assessment(), CG, phase);
                row.number(state.get().massKg(), styles.whole.styleFor(mass))
                        .number(chord.percentAt(state.get().armM()), styles.twoDecimals.styleFor(cg));
            } else {
                row.skip(2);
            }
        }
    }

    private void margins(SheetRow row, Assessment assessment) {
        List<EnvelopeMargin> margins = assessment.margins();
        if (margins.isEmpty()) {
            row.skip(6);
            return;
        }
        EnvelopeMargin forward = margins.get(0);
        EnvelopeMargin aft = forward;
        EnvelopeMargin mass = forward;
        for (EnvelopeMargin margin : margins) {
            forward = margin.forwardPercentMac() < forward.forwardPercentMac() ? margin : forward;
            aft = margin.aftPercentMac() < aft.aftPercentMac() ? margin : aft;
            mass = margin.massKg() < mass.massKg() ? margin : mass;
        }
        margin(
                row,
                Rounded.down(forward.forwardPercentMac(), PERCENT_DECIMALS),
                forward.phase(),
                styles.twoDecimals.styleFor(worst(assessment, FORWARD)));
        margin(
                row,
                Rounded.down(aft.aftPercentMac(), PERCENT_DECIMALS),
                aft.phase(),
                styles.twoDecimals.styleFor(worst(assessment, AFT)));
        margin(row, Rounded.down(mass.massKg(), 0), mass.phase(), orBreach(mass.massKg()));
    }

    private void margin(SheetRow row, double room, Phase phase, CellStyle style) {
        row.number(room, style).label(phase.label(), styles.text.plain());
    }

    private CellStyle orBreach(double roomKg) {
        return Tolerance.isOutside(roomKg, Quantity.MASS) ? styles.whole.breach() : styles.whole.plain();
    }

    private static Severity worst(Assessment assessment, Set<FindingCode> codes) {
        Severity worst = Severity.NOTE;
        for (Finding finding : assessment.findings()) {
            worst = codes.contains(finding.code()) ? worse(finding, worst) : worst;
        }
        return worst;
    }

    private static Severity worst(Assessment assessment, Set<FindingCode> codes, Phase phase) {
        Severity worst = Severity.NOTE;
        for (Finding finding : assessment.findings()) {
            worst = finding.phase() == phase && codes.contains(finding.code()) ? worse(finding, worst) : worst;
        }
        return worst;
    }

    private static Severity worse(Finding finding, Severity other) {
        return finding.severity().compareTo(other) > 0 ? finding.severity() : other;
    }

    private void trafficLoad(SheetRow row, Optional<TrafficLoad> load) {
        if (load.isEmpty()) {
            row.skip(4);
            return;
        }
        row.number(load.get().actualKg(), styles.whole.plain())
                .number(Rounded.down(load.get().allowedKg(), 0), styles.whole.plain())
                .number(
                        Rounded.down(load.get().underloadKg(), 0),
                        orBreach(load.get().underloadKg()))
                .label(load.get().limitedBy().label(), styles.text.plain());
    }

    private static String codes(List<Finding> findings) {
        if (findings.isEmpty()) {
            return "";
        }
        Set<FindingCode> codes = new LinkedHashSet<>();
        findings.forEach(finding -> codes.add(finding.code()));
        StringJoiner joined = new StringJoiner(", ");
        codes.forEach(code -> joined.add(code.code()));
        return joined.toString();
    }

    private static String extras(List<Extra> extras) {
        StringJoiner joined = new StringJoiner("; ");
        for (Extra extra : extras) {
            if (!extra.value().isEmpty()) {
                joined.add(extra.name() + ": " + extra.value());
            }
        }
        return joined.toString();
    }
}
