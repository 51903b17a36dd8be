package org.steelyard.check.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.FuelPath;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.Side;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** Holds the CG of each state, and of the whole fuel path, against the type's envelopes. */
final class CgCheck {

    private static final Phase[] PHASES = Phase.values();

    private final AircraftType type;
    private final Findings findings;
    private final List<EnvelopeMargin> margins = new ArrayList<>(4);

    private CgCheck(AircraftType type, Findings findings) {
        this.type = type;
        this.findings = findings;
    }

    static List<EnvelopeMargin> run(Balance balance, AircraftType type, Findings findings) {
        CgCheck check = new CgCheck(type, findings);
        for (Phase phase : PHASES) {
            Optional<Envelope> envelope = type.envelope(phase);
            if (envelope.isPresent()) {
                check.hold(envelope.get(), balance);
            }
        }
        return check.margins;
    }

    private void hold(Envelope envelope, Balance balance) {
        MeanChord chord = type.geometry().chord();
        if (envelope.phase() == Phase.FLIGHT) {
            if (balance.fuel().isPresent()) {
                FuelPath path = balance.fuel().get().path();
                report(envelope, EnvelopeCheck.margin(envelope, path, chord));
                MassMoment first = path.points().get(0);
                MassMoment last = path.points().get(path.points().size() - 1);
                offEnvelope(envelope, first, Phase.TAKEOFF);
                if (Tolerance.isBelowKg(last.massKg(), first.massKg())) {
                    offEnvelope(envelope, last, Phase.LANDING);
                }
            }
            return;
        }
        Optional<MassMoment> state = balance.state(envelope.phase());
        if (state.isPresent()) {
            report(envelope, EnvelopeCheck.margin(envelope, state.get(), chord));
            offEnvelope(envelope, state.get(), envelope.phase());
        }
    }

    private void report(Envelope envelope, Optional<EnvelopeMargin> measured) {
        if (measured.isPresent()) {
            EnvelopeMargin margin = measured.get();
            margins.add(margin);
            side(envelope.forward(), margin.phase(), margin.forwardAt(), margin.forwardPercentMac());
            side(envelope.aft(), margin.phase(), margin.aftAt(), margin.aftPercentMac());
        }
    }

    private void side(LimitLine line, Phase phase, MassMoment at, double roomPercentMac) {
        double nearby = findings.byChance() ? 0 : findings.policy().marginalCgPercentMac();
        boolean outside = Tolerance.isOutside(roomPercentMac, Quantity.CG);
        if (outside || Tolerance.isOutside(Math.max(roomPercentMac, 0) - nearby, Quantity.CG)) {
            MeanChord chord = type.geometry().chord();
            findings.add(new Finding(
                    line.side() == Side.FORWARD ? FindingCode.CG_FORWARD : FindingCode.CG_AFT,
                    outside ? Severity.BREACH : Severity.MARGINAL,
                    phase,
                    (EnvelopeCheck.isAbove(line, at) ? "envelope's topmost " : "")
                            + line.side().label() + " limit",
                    Quantity.CG,
                    chord.percentAt(at.armM()),
                    EnvelopeCheck.limitPercentMac(line, at, roomPercentMac, chord),
                    roomPercentMac));
        }
    }

    /**
     * A mass that the envelope does not reach: there the limits of CG are not known. Where a mass limit is breached
     * already, that is only noted.
     */
    private void offEnvelope(Envelope envelope, MassMoment state, Phase statePhase) {
        if (envelope.reaches(state.massKg())) {
            return;
        }
        boolean above = Tolerance.isAboveKg(state.massKg(), envelope.maxMassKg());
        double limitKg = above ? envelope.maxMassKg() : envelope.minMassKg();
        boolean known = findings.hasBreach(above ? FindingCode.MASS_HIGH : FindingCode.MASS_LOW, statePhase);
        findings.add(new Finding(
                FindingCode.MASS_OFF_ENVELOPE,
                known ? Severity.NOTE : Severity.BREACH,
                envelope.phase(),
                envelope.phase().label() + " envelope",
                Quantity.MASS,
                state.massKg(),
                limitKg,
                -Math.abs(state.massKg() - limitKg)));
    }
}
