package org.steelyard.check.flight;

import java.util.Optional;
import org.steelyard.balance.FuelPath;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.Side;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Tolerance;

/** Measures the room between a state or a fuel path and an envelope. */
final class EnvelopeCheck {

    private EnvelopeCheck() {}

    /** The room of one state, above the envelope's masses that to the ends of its lines; empty below its masses. */
    static Optional<EnvelopeMargin> margin(Envelope envelope, MassMoment state, MeanChord chord) {
        if (Tolerance.isBelowKg(state.massKg(), envelope.minMassKg())) {
            return Optional.empty();
        }
        double massKg = Math.min(state.massKg(), envelope.maxMassKg());
        double armM = state.armM();
        Approach forward = new Approach(state, envelope.forward().roomM(massKg, armM));
        Approach aft = new Approach(state, envelope.aft().roomM(massKg, armM));
        return Optional.of(margin(envelope, forward, aft, chord));
    }

    /**
     * The least room along a path, above the envelope's masses that to the ends of its lines; empty if the path lies
     * wholly below them.
     */
    static Optional<EnvelopeMargin> margin(Envelope envelope, FuelPath path, MeanChord chord) {
        Optional<Approach> forward = PathApproach.find(path, envelope.forward());
        Optional<Approach> aft = PathApproach.find(path, envelope.aft());
        return forward.isPresent() && aft.isPresent()
                ? Optional.of(margin(envelope, forward.get(), aft.get(), chord))
                : Optional.empty();
    }

    private static EnvelopeMargin margin(Envelope envelope, Approach forward, Approach aft, MeanChord chord) {
        double heaviestKg = Math.max(forward.at().massKg(), aft.at().massKg());
        return new EnvelopeMargin(
                envelope.phase(),
                forward.at(),
                100 * forward.roomM() / chord.lengthM(),
                forward.roomM() * forward.at().massKg(),
                aft.at(),
                100 * aft.roomM() / chord.lengthM(),
                aft.roomM() * aft.at().massKg(),
                envelope.maxMassKg() - heaviestKg);
    }

    /** Whether a state lies above the masses of a line, and so was held against its end. */
    static boolean isAbove(LimitLine line, MassMoment at) {
        return Tolerance.isAboveKg(at.massKg(), line.maxMassKg());
    }

    static double limitPercentMac(LimitLine line, MassMoment at, double roomPercentMac, MeanChord chord) {
        double cgPercentMac = chord.percentAt(at.armM());
        return line.side() == Side.FORWARD ? cgPercentMac - roomPercentMac : cgPercentMac + roomPercentMac;
    }
}
