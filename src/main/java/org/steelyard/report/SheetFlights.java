package org.steelyard.report;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.balance.Balance;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.Assessment;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.EnvelopeMargin;
import org.steelyard.check.FindingText;
import org.steelyard.check.Status;
import org.steelyard.check.TrafficLoad;
import org.steelyard.model.Extra;
import org.steelyard.model.Finding;
import org.steelyard.model.FindingCode;
import org.steelyard.model.FlightIdent;
import org.steelyard.model.Loading;
import org.steelyard.model.MassMoment;
import org.steelyard.model.MeanChord;
import org.steelyard.model.Phase;
import org.steelyard.model.Severity;

/** One row for each flight, in the order of the input. */
final class SheetFlights {

    static final String NONE = "No flight was accepted.";
    static final SheetLayout LAYOUT = new SheetLayout(
            "Flights",
            "Masses are in kg and CG in % MAC for all types, so that columns can be summed and sorted. Trim is nose-up"
                    + " positive. A coloured figure has a finding of its own.",
            List.of(
                    new SheetColumn("Status", 13),
                    new SheetColumn("Flight", 10),
                    new SheetColumn("Date", 11),
                    new SheetColumn("Tail", 10),
                    new SheetColumn("Type", 11),
                    new SheetColumn("From", 7),
                    new SheetColumn("To", 7),
                    new SheetColumn("Flaps", 8),
                    new SheetColumn("Take-off trim setting", 10),
                    new SheetColumn("Take-off trim, units", 10),
                    new SheetColumn("Recorded trim, units", 10),
                    new SheetColumn("Dry operating mass, kg", 11),
                    new SheetColumn("Dry operating CG, % MAC", 11),
                    new SheetColumn("Zero-fuel mass, kg", 11),
                    new SheetColumn("Zero-fuel CG, % MAC", 11),
                    new SheetColumn("Ramp mass, kg", 10),
                    new SheetColumn("Ramp CG, % MAC", 10),
                    new SheetColumn("Take-off mass, kg", 10),
                    new SheetColumn("Take-off CG, % MAC", 10),
                    new SheetColumn("Landing mass, kg", 10),
                    new SheetColumn("Landing CG, % MAC", 10),
                    new SheetColumn("Least room forward, % MAC", 12),
                    new SheetColumn("Least forward at", 12),
                    new SheetColumn("Least room aft, % MAC", 11),
                    new SheetColumn("Least aft at", 12),
                    new SheetColumn("Least mass room of envelope, kg", 13),
                    new SheetColumn("Least mass at", 12),
                    new SheetColumn("Traffic load aboard, kg", 11),
                    new SheetColumn("Traffic load allowed, kg", 11),
                    new SheetColumn("Underload, kg", 11),
                    new SheetColumn("Limited by", 31),
                    new SheetColumn("Landing flaps", 9),
                    new SheetColumn("Landing trim setting", 10),
                    new SheetColumn("Landing trim, units", 10),
                    new SheetColumn("Findings", 34),
                    new SheetColumn("Other columns", 24),
                    new SheetColumn("File", 22),
                    new SheetColumn("Sheet", 10),
                    new SheetColumn("Row", 9)),
            4,
            2);

    private static final Set<FindingCode> FORWARD = EnumSet.of(FindingCode.CG_FORWARD);
    private static final Set<FindingCode> AFT = EnumSet.of(FindingCode.CG_AFT);
    private static final Set<FindingCode> MASS = EnumSet.of(FindingCode.MASS_HIGH, FindingCode.MASS_OFF_ENVELOPE);
    private static final Set<FindingCode> TRIM = EnumSet.of(FindingCode.TRIM_BAND, FindingCode.TRIM_OFF_SCALE);
    private static final List<Phase> STATES =
            List.of(Phase.DRY_OPERATING, Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.LANDING);

    private final SheetRoll roll;
    private final WorkbookStyles styles;

    SheetFlights(SheetRoll roll, WorkbookStyles styles) {
        this.roll = roll;
        this.styles = styles;
    }

    void add(AuditedFlight flight) {
        SheetRow row = roll.next();
        Loading loading = flight.loading();
        Balance balance = flight.balance();
        Assessment assessment = flight.assessment();
        identity(row, loading, assessment.status());
        row.data(loading.setting().flaps(), styles.text);
        trim(row, balance.takeoffTrim(), worst(assessment, TRIM, Phase.TAKEOFF));
        row.number(loading.recordedTrimUnits(), styles.signed.plain());
        states(row, balance, loading.type().geometry().chord());
        margins(row, assessment);
        trafficLoad(row, assessment.trafficLoad());
        row.data(loading.setting().landingFlaps(), styles.text);
        trim(row, balance.landingTrim(), worst(assessment, TRIM, Phase.LANDING));
        row.data(codes(assessment.findings()), styles.text)
                .data(extras(loading.extras()), styles.text)
                .data(loading.origin().file(), styles.text)
                .data(loading.origin().sheet(), styles.text)
                .number(loading.origin().row(), styles.whole.plain());
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
                .number(trim.get().trimUnits(), styles.signed.styleFor(worst));
    }

    private void states(SheetRow row, Balance balance, MeanChord chord) {
        for (Phase phase : STATES) {
            Optional<MassMoment> state = balance.state(phase);
            if (state.isPresent()) {
                row.number(state.get().massKg(), styles.whole.plain())
                        .number(chord.percentAt(state.get().armM()), styles.twoDecimals.plain());
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
        margin(row, forward.forwardPercentMac(), forward.phase(), room(styles.twoDecimals, assessment, FORWARD));
        margin(row, aft.aftPercentMac(), aft.phase(), room(styles.twoDecimals, assessment, AFT));
        margin(row, mass.massKg(), mass.phase(), room(styles.whole, assessment, MASS));
    }

    private void margin(SheetRow row, double room, Phase phase, CellStyle style) {
        row.number(room, style).label(phase.label(), styles.text.plain());
    }

    private static CellStyle room(WorkbookStyles.NumberStyle style, Assessment assessment, Set<FindingCode> codes) {
        return style.styleFor(worst(assessment, codes, Phase.values()));
    }

    private static Severity worst(Assessment assessment, Set<FindingCode> codes, Phase... phases) {
        Severity worst = Severity.NOTE;
        for (Finding finding : assessment.findings()) {
            boolean concerned =
                    codes.contains(finding.code()) && List.of(phases).contains(finding.phase());
            if (concerned && finding.severity().compareTo(worst) > 0) {
                worst = finding.severity();
            }
        }
        return worst;
    }

    private void trafficLoad(SheetRow row, Optional<TrafficLoad> load) {
        if (load.isEmpty()) {
            row.skip(4);
            return;
        }
        boolean over = load.get().underloadKg() < 0;
        row.number(load.get().actualKg(), styles.whole.plain())
                .number(load.get().allowedKg(), styles.whole.plain())
                .number(load.get().underloadKg(), over ? styles.whole.breach() : styles.whole.plain())
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
