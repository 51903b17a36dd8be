package org.steelyard.model.limit;

import java.util.List;
import java.util.Objects;
import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * The forward or aft limit of the centre of gravity against mass: vertices joined by lines that are straight in arm or
 * in moment. Two vertices at one mass make a step, at which the more generous of the two holds, since a point on the
 * line is inside. Where a line is straight in moment, the arm between vertices (m1, a1) and (m2, a2) is {@code (m1 a1 +
 * t (m2 a2 - m1 a1)) / m} with {@code t = (m - m1) / (m2 - m1)}.
 *
 * @param side which limit this is
 * @param straight in which quantity it is straight between vertices
 * @param points at least two vertices, mass never falling, not all at one mass
 */
public record LimitLine(Side side, Straightness straight, List<LimitPoint> points) {

    /**
     * Checks the order of the vertices.
     *
     * @throws IllegalArgumentException if there are fewer than two, masses fall, or more than two share a mass
     */
    public LimitLine {
        Objects.requireNonNull(side);
        Objects.requireNonNull(straight);
        points = List.copyOf(points);
        Require.that(points.size() >= 2, "a limit line needs at least two vertices");
        for (int i = 1; i < points.size(); i++) {
            double before = points.get(i - 1).massKg();
            double here = points.get(i).massKg();
            Require.that(here >= before, "masses of a limit line must not fall: " + here + " after " + before);
            Require.that(
                    i < 2 || here > points.get(i - 2).massKg(), "more than two vertices of a limit line at " + here);
        }
        Require.that(
                points.get(points.size() - 1).massKg() > points.get(0).massKg(), "a limit line must span some mass");
    }

    /**
     * The lowest mass of the line.
     *
     * @return mass of the first vertex in kg
     */
    public double minMassKg() {
        return points.get(0).massKg();
    }

    /**
     * The highest mass of the line.
     *
     * @return mass of the last vertex in kg
     */
    public double maxMassKg() {
        return points.get(points.size() - 1).massKg();
    }

    /**
     * Whether the line reaches a mass.
     *
     * @param massKg mass in kg
     * @return true from {@link #minMassKg} to {@link #maxMassKg}, both included
     */
    public boolean reaches(double massKg) {
        return Tolerance.isWithinKg(massKg, minMassKg(), maxMassKg());
    }

    /**
     * The limit at a mass.
     *
     * @param massKg mass in kg, from {@link #minMassKg} to {@link #maxMassKg}
     * @return the limit's arm in m from the datum, aft positive
     * @throws IllegalArgumentException if the line does not reach that mass: it is never extended
     */
    public double armAtM(double massKg) {
        Require.that(
                reaches(massKg),
                () -> "the line runs from " + minMassKg() + " to " + maxMassKg() + " kg, not to " + massKg);
        return exactArmAtM(ontoVertexKg(massKg));
    }

    /** A mass at a vertex but for rounding is at the vertex, where another limit may hold than beside it. */
    private double ontoVertexKg(double massKg) {
        for (int i = 0; i < points.size(); i++) {
            double vertexKg = points.get(i).massKg();
            if (Tolerance.isWithinKg(massKg, vertexKg, vertexKg)) {
                return vertexKg;
            }
        }
        return massKg;
    }

    private double exactArmAtM(double massKg) {
        int i = 1;
        while (points.get(i).massKg() < massKg) {
            i++;
        }
        LimitPoint high = points.get(i);
        double arm = between(points.get(i - 1), high, massKg);
        boolean step = massKg == high.massKg()
                && i + 1 < points.size()
                && points.get(i + 1).massKg() == massKg;
        return step ? generous(arm, points.get(i + 1).armM()) : arm;
    }

    private double between(LimitPoint low, LimitPoint high, double massKg) {
        if (massKg == high.massKg()) {
            return low.massKg() == massKg ? generous(low.armM(), high.armM()) : high.armM();
        }
        if (massKg == low.massKg()) {
            return low.armM();
        }
        double t = (massKg - low.massKg()) / (high.massKg() - low.massKg());
        if (straight == Straightness.ARM) {
            return low.armM() + t * (high.armM() - low.armM());
        }
        double lowMoment = low.massKg() * low.armM();
        return (lowMoment + t * (high.massKg() * high.armM() - lowMoment)) / massKg;
    }

    private double generous(double oneM, double otherM) {
        return side == Side.FORWARD ? Math.min(oneM, otherM) : Math.max(oneM, otherM);
    }

    /**
     * How far inside the limit a CG lies.
     *
     * @param massKg mass in kg, within the line's reach
     * @param armM arm of the CG in m from the datum
     * @return distance in m, positive inside, zero on the line, negative outside
     * @throws IllegalArgumentException if the line does not reach that mass
     */
    public double roomM(double massKg, double armM) {
        double limit = armAtM(massKg);
        return side == Side.FORWARD ? armM - limit : limit - armM;
    }
}
