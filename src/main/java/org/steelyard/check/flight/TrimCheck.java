package org.steelyard.check.flight;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.NoTrim;
import org.steelyard.check.text.FindingText;
import org.steelyard.check.text.FixedDecimals;
import org.steelyard.check.text.RecordedTrimText;
import org.steelyard.check.text.Rounded;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** Holds the trim against its scale and band. */
final class TrimCheck {

    private static final double SHOWN_UNITS = 0.01;

    private final AircraftType type;
    private final Findings findings;

    TrimCheck(AircraftType type, Findings findings) {
        this.type = type;
        this.findings = findings;
    }

    void takeoff(Optional<TrimResult> trim, FlightSetting setting, MassMoment state) {
        if (trim.isEmpty()) {
            NoTrim.takeoff(type, setting).ifPresent(why -> unknown(Phase.TAKEOFF, why));
        }
        trim.ifPresent(result -> hold(result, state));
    }

    void landing(Optional<TrimResult> trim, FlightSetting setting, Optional<MassMoment> state) {
        if (trim.isEmpty() && state.isPresent()) {
            NoTrim.landing(type, setting).ifPresent(why -> unknown(Phase.LANDING, why));
        }
        trim.ifPresent(result -> hold(result, state.orElseThrow()));
    }

    private void unknown(Phase phase, String why) {
        findings.add(Finding.plain(
                FindingCode.TRIM_UNKNOWN, Severity.NOTE, phase, "no " + phase.label() + " trim, because " + why));
    }

    private void hold(TrimResult trim, MassMoment state) {
        if (trim.scale().basis() == TrimBasis.ESTIMATE) {
            findings.add(Finding.plain(
                    FindingCode.TRIM_ESTIMATE,
                    Severity.NOTE,
                    trim.scale().phase(),
                    "the " + trim.scale().phase().label() + " trim for flaps "
                            + trim.scale().flaps()
                            + " is an estimate from the balance of moments, not a figure of the type's documents"));
        }
        if (trim.trimUnits().isPresent()) {
            band(trim.scale(), trim.trimUnits().getAsDouble());
        } else {
            offScale(trim.scale(), state);
        }
    }

    /** Holds the setting that was recorded for take-off against the right one. */
    void recorded(Optional<TrimResult> trim, OptionalDouble recordedUnits) {
        Optional<RecordedTrimRule> rule = findings.policy().recordedTrim();
        if (rule.isPresent() && trim.isPresent() && recordedUnits.isPresent()) {
            double setUnits = recordedUnits.getAsDouble();
            trim.get()
                    .differenceUnits(setUnits)
                    .ifPresent(difference -> recorded(trim.get(), setUnits, difference, rule.get()));
        }
    }

    private void recorded(TrimResult trim, double setUnits, double difference, RecordedTrimRule rule) {
        double rightUnits = trim.settingUnits().orElseThrow();
        findings.measure(
                FindingCode.TRIM_RECORDED,
                Phase.TAKEOFF,
                () -> RecordedTrimText.of(trim.scale(), setUnits, rightUnits, difference),
                trim.scale().unit().quantity(),
                setUnits,
                rightUnits + Math.signum(difference) * rule.breachUnits(),
                rule.breachUnits() - Math.abs(difference),
                rule.breachUnits() - rule.marginalUnits());
    }

    private void band(TrimScale scale, double exactUnits) {
        double trimUnits = scale.onBand(exactUnits);
        double toLow = trimUnits - scale.bandLowUnits();
        double toHigh = scale.bandHighUnits() - trimUnits;
        boolean low = toLow < toHigh;
        double limit = low ? scale.bandLowUnits() : scale.bandHighUnits();
        double margin = low ? toLow : toHigh;
        findings.measure(
                FindingCode.TRIM_BAND,
                scale.phase(),
                () -> bandText(scale, trimUnits, limit, margin),
                scale.unit().quantity(),
                trimUnits,
                limit,
                margin,
                findings.policy().marginalTrimUnits());
    }

    private static String bandText(TrimScale scale, double trimUnits, double limit, double margin) {
        boolean outside = Tolerance.isOutside(margin, scale.unit().quantity());
        return String.format(
                Locale.ROOT,
                "%s trim %s is %s %s %s the %s end of its band at %s",
                scale.phase().label(),
                FindingText.trim(trimUnits, SHOWN_UNITS, scale.unit()),
                outside ? Rounded.upTo(-margin, 2) : Rounded.downTo(Math.max(margin, 0), 2),
                scale.unit().measure().label(),
                outside ? "outside" : "inside",
                limit == scale.bandLowUnits() ? "nose-down" : "nose-up",
                FindingText.trim(limit, SHOWN_UNITS, scale.unit()));
    }

    /**
     * The scale is never extended: a CG or a mass beyond it has no setting. For take-off one is needed; that the
     * landing scale ends is no limit.
     */
    private void offScale(TrimScale scale, MassMoment state) {
        if (scale.law() instanceof TrimTable table && !table.reaches(state.massKg())) {
            offMasses(scale, table, state.massKg());
        }
        double cgPercentMac = type.geometry().chord().percentAt(state.armM());
        if (!scale.law().cgRange().contains(cgPercentMac)) {
            offCgs(scale, cgPercentMac);
        }
    }

    private void offMasses(TrimScale scale, TrimTable table, double massKg) {
        double limitKg = Tolerance.isBelowKg(massKg, table.minMassKg()) ? table.minMassKg() : table.maxMassKg();
        String subject = noSetting(scale) + "a mass of " + mass(massKg) + "; it is for masses from "
                + mass(table.minMassKg()) + " to " + mass(table.maxMassKg());
        offScale(scale, subject, Quantity.MASS, massKg, limitKg);
    }

    private String mass(double massKg) {
        MassUnit unit = type.geometry().units().mass();
        return FixedDecimals.of(unit.fromKg(massKg), FindingText.decimals(Quantity.MASS, type)) + " " + unit.symbol();
    }

    private void offCgs(TrimScale scale, double cgPercentMac) {
        CgRange range = scale.law().cgRange();
        String subject = String.format(
                Locale.ROOT,
                "%sa CG of %.2f %% MAC; it covers %s to %s %% MAC",
                noSetting(scale),
                cgPercentMac,
                Rounded.upTo(range.fromPercentMac(), 1),
                Rounded.downTo(range.toPercentMac(), 1));
        offScale(scale, subject, Quantity.CG, cgPercentMac, range.nearestPercentMac(cgPercentMac));
    }

    private static String noSetting(TrimScale scale) {
        return "the " + scale.phase().label() + " trim scale for flaps " + scale.flaps() + " gives no setting for ";
    }

    private void offScale(TrimScale scale, String subject, Quantity quantity, double value, double limit) {
        findings.add(new Finding(
                FindingCode.TRIM_OFF_SCALE,
                scale.phase() == Phase.TAKEOFF ? Severity.BREACH : Severity.NOTE,
                scale.phase(),
                subject,
                quantity,
                value,
                limit,
                -Math.abs(value - limit)));
    }
}
