package org.steelyard.model.limit;

import java.util.List;
import java.util.Objects;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * The permitted region of mass and centre of gravity in one phase: between a forward and an aft limit line that span
 * the same masses. A point on a line is inside.
 *
 * @param phase where it applies: zero fuel, take-off, in flight or landing
 * @param forward the forward limit
 * @param aft the aft limit
 */
public record Envelope(Phase phase, LimitLine forward, LimitLine aft) {

    /** The phases that an envelope can be for, in order. */
    public static final List<Phase> PHASES = List.of(Phase.ZERO_FUEL, Phase.TAKEOFF, Phase.FLIGHT, Phase.LANDING);

    /**
     * Checks that the two lines belong together.
     *
     * @throws IllegalArgumentException if the lines are exchanged, do not span the same masses, or cross
     */
    public Envelope {
        Objects.requireNonNull(phase);
        Require.that(
                forward.side() == Side.FORWARD && aft.side() == Side.AFT,
                "an envelope needs a forward and an aft line");
        Require.that(
                Tolerance.isWithinKg(forward.minMassKg(), aft.minMassKg(), aft.minMassKg())
                        && Tolerance.isWithinKg(forward.maxMassKg(), aft.maxMassKg(), aft.maxMassKg()),
                "the forward line runs from " + forward.minMassKg() + " to " + forward.maxMassKg()
                        + " kg, the aft line from " + aft.minMassKg() + " to " + aft.maxMassKg()
                        + " kg; both must span the same masses");
        requireApart(forward, aft);
        requireApart(aft, forward);
    }

    private static void requireApart(LimitLine line, LimitLine other) {
        for (LimitPoint point : line.points()) {
            double room = other.roomM(point.massKg(), point.armM());
            Require.that(
                    room > 0,
                    "the forward limit must lie ahead of the aft limit at every mass; at " + point.massKg()
                            + " kg it does not");
        }
    }

    /**
     * The lowest mass of the region.
     *
     * @return mass in kg
     */
    public double minMassKg() {
        return forward.minMassKg();
    }

    /**
     * The highest mass of the region.
     *
     * @return mass in kg
     */
    public double maxMassKg() {
        return forward.maxMassKg();
    }

    /**
     * One of the two lines.
     *
     * @param side which
     * @return the line of that side
     */
    public LimitLine line(Side side) {
        return side == Side.FORWARD ? forward : aft;
    }

    /**
     * Whether a mass is within the region's span, whatever the CG.
     *
     * @param massKg mass in kg
     * @return true from the lowest to the highest mass, both included
     */
    public boolean reaches(double massKg) {
        return forward.reaches(massKg);
    }
}
