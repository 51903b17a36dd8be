package org.steelyard.check;

import java.util.Locale;
import java.util.Optional;
import org.steelyard.balance.TrimResult;
import org.steelyard.model.AircraftType;
import org.steelyard.model.CgRange;
import org.steelyard.model.Finding;
import org.steelyard.model.FindingCode;
import org.steelyard.model.FlightSetting;
import org.steelyard.model.MassMoment;
import org.steelyard.model.Phase;
import org.steelyard.model.Quantity;
import org.steelyard.model.Severity;
import org.steelyard.model.TrimScale;

/** Holds the trim against its scale and band. */
final class TrimCheck {

    private final AircraftType type;
    private final Findings findings;

    TrimCheck(AircraftType type, Findings findings) {
        this.type = type;
        this.findings = findings;
    }

    void takeoff(Optional<TrimResult> trim, FlightSetting setting, MassMoment state) {
        boolean hasScales = type.trimScales().stream().anyMatch(scale -> scale.phase() == Phase.TAKEOFF);
        if (trim.isEmpty() && hasScales) {
            String missing = setting.flaps().isBlank() ? "flap setting" : "thrust rating";
            findings.add(Finding.plain(
                    FindingCode.TRIM_UNKNOWN,
                    Severity.NOTE,
                    Phase.TAKEOFF,
                    "no take-off trim, because the " + missing + " is not given"));
        }
        trim.ifPresent(result -> hold(result, state));
    }

    void hold(TrimResult trim, MassMoment state) {
        if (trim.trimUnits().isPresent()) {
            band(trim.scale(), trim.trimUnits().getAsDouble());
        } else {
            offScale(trim.scale(), state);
        }
    }

    private void band(TrimScale scale, double trimUnits) {
        double toLow = trimUnits - scale.bandLowUnits();
        double toHigh = scale.bandHighUnits() - trimUnits;
        boolean low = toLow < toHigh;
        double limit = low ? scale.bandLowUnits() : scale.bandHighUnits();
        findings.measure(
                FindingCode.TRIM_BAND,
                scale.phase(),
                low ? "nose-down" : "nose-up",
                Quantity.TRIM,
                trimUnits,
                limit,
                low ? toLow : toHigh,
                findings.policy().marginalTrimUnits());
    }

    /** The scale is never extended: a CG or a mass beyond it has no setting. */
    private void offScale(TrimScale scale, MassMoment state) {
        double cgPercentMac = type.geometry().chord().percentAt(state.armM());
        CgRange range = scale.law().cgRange();
        boolean byCg = !range.contains(cgPercentMac);
        double limit = cgPercentMac < range.fromPercentMac() ? range.fromPercentMac() : range.toPercentMac();
        String subject = String.format(
                Locale.ROOT,
                "the %s trim scale for flaps %s gives no setting for %s; it covers %.1f to %.1f %% MAC",
                scale.phase().label(),
                scale.flaps(),
                byCg
                        ? String.format(Locale.ROOT, "a CG of %.2f %% MAC", cgPercentMac)
                        : String.format(Locale.ROOT, "a mass of %.0f kg", state.massKg()),
                range.fromPercentMac(),
                range.toPercentMac());
        findings.add(
                byCg
                        ? new Finding(
                                FindingCode.TRIM_OFF_SCALE,
                                Severity.BREACH,
                                scale.phase(),
                                subject,
                                Quantity.CG,
                                cgPercentMac,
                                limit,
                                -Math.abs(cgPercentMac - limit))
                        : Finding.plain(FindingCode.TRIM_OFF_SCALE, Severity.BREACH, scale.phase(), subject));
    }
}
