package org.steelyard.check.chance;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.Tolerance;

/**
 * The chance that a state lies outside a limit line. With mass m and moment M jointly normal and the limit's moment
 * L(m), the distance {@code M - L(m)} is normal where L is straight: its mean is that of the expected state, its
 * variance {@code Var M - 2 L' Cov + L'² Var m}, so heavier and farther aft go together as they do along the line
 * itself. A line that is straight in arm bends in moment so little over the spread of mass that its tangent stands for
 * it.
 *
 * <p>Where a vertex of the line lies within reach of the spread of mass, the chance is instead the integral over mass
 * of the chance given the mass, piece by piece between vertices, by Gauss and Legendre's rule; the first and the last
 * piece go on beyond the ends of the line for that.
 */
public final class LineChance {

    /** A vertex farther off than so many standard deviations of mass makes no difference. */
    private static final double REACH = 5;

    /** With the distance seven standard deviations off, a bend makes no difference that anybody would see. */
    private static final double CERTAIN = NormalChance.below(-7);

    private static final double WIDEST = 8;
    private static final double PANEL = 1;
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    /** Eight-point rule: abscissas and weights (Abramowitz and Stegun table 25.4). */
    private static final double[] AT = {0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363};

    private static final double[] WEIGHT = {
        0.362683783378362, 0.31370664587788727, 0.22238103445337448, 0.10122853629037626
    };

    private final LimitLine line;
    private final StateSpread state;
    private final double sign;
    private final double toleranceKgM;

    private final double roomSds;

    private LineChance(LimitLine line, StateSpread state, MeanChord chord) {
        this.line = line;
        this.state = state;
        this.toleranceKgM = Tolerance.momentKgM(state.expected().massKg(), chord.lengthM());
        this.sign = line.side() == Side.AFT ? 1 : -1;
        double massKg = state.expected().massKg();
        int piece = pieceAt(massKg);
        this.roomSds = roomSds(
                state.expected().momentKgM() - momentKgM(piece, massKg), state.distanceSdKgM(slopeM(piece, massKg)));
    }

    /**
     * The chance of a state beyond one line of an envelope.
     *
     * @param line the line
     * @param state the state and how uncertain it is
     * @param chord the chord that distances are measured by
     * @return the chance, worked out when it is asked for
     */
    public static LineChance of(LimitLine line, StateSpread state, MeanChord chord) {
        return new LineChance(line, state, chord);
    }

    /**
     * Room to the line, straight as at the expected mass.
     *
     * @return standard deviations, negative outside
     */
    public double roomSds() {
        return roomSds;
    }

    /**
     * The chance of being outside.
     *
     * @return from 0 to 1
     */
    public double chance() {
        double chance = NormalChance.outside(roomSds);
        return chance > CERTAIN && chance < 1 && bends() ? integrated() : chance;
    }

    /** Whether a vertex is within reach of the spread of mass. */
    private boolean bends() {
        double massKg = state.expected().massKg();
        double reachKg = REACH * state.massSdKg();
        boolean bends = false;
        for (int i = 1; i < line.points().size() - 1; i++) {
            bends |= Math.abs(line.points().get(i).massKg() - massKg) < reachKg;
        }
        return bends;
    }

    /** The piece from vertex i - 1 to vertex i, never one of no extent. */
    private int pieceAt(double massKg) {
        List<LimitPoint> points = line.points();
        int piece = 1;
        for (int i = 1; i < points.size(); i++) {
            boolean rises = points.get(i).massKg() > points.get(i - 1).massKg();
            if (rises && (!Tolerance.isAboveKg(points.get(i - 1).massKg(), massKg) || !reaches(piece))) {
                piece = i;
            }
        }
        return piece;
    }

    private boolean reaches(int piece) {
        return line.points().get(piece).massKg() > line.points().get(piece - 1).massKg();
    }

    private double roomSds(double aftKgM, double sdKgM) {
        if (sdKgM == 0) {
            boolean outside = sign * aftKgM > toleranceKgM;
            return outside ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return -sign * aftKgM / sdKgM;
    }

    private double momentKgM(int piece, double massKg) {
        LimitPoint low = line.points().get(piece - 1);
        LimitPoint high = line.points().get(piece);
        double t = (massKg - low.massKg()) / (high.massKg() - low.massKg());
        return line.straight() == Straightness.ARM
                ? massKg * (low.armM() + t * (high.armM() - low.armM()))
                : low.massKg() * low.armM() + t * (high.massKg() * high.armM() - low.massKg() * low.armM());
    }

    private double slopeM(int piece, double massKg) {
        LimitPoint low = line.points().get(piece - 1);
        LimitPoint high = line.points().get(piece);
        double spanKg = high.massKg() - low.massKg();
        if (line.straight() == Straightness.MOMENT) {
            return (high.massKg() * high.armM() - low.massKg() * low.armM()) / spanKg;
        }
        double bentM = (high.armM() - low.armM()) / spanKg;
        return low.armM() + bentM * (2 * massKg - low.massKg());
    }

    private double integrated() {
        double massKg = state.expected().massKg();
        double sdKg = state.massSdKg();
        double sdLeftKgM = sdLeftKgM();
        double chance = 0;
        List<Double> cuts = cuts();
        for (int i = 1; i < cuts.size(); i++) {
            double from = cuts.get(i - 1);
            double to = cuts.get(i);
            int piece = pieceAt(massKg + sdKg * (from + to) / 2);
            int panels = (int) Math.ceil((to - from) / PANEL);
            for (int k = 0; k < panels; k++) {
                double low = from + (to - from) * k / panels;
                chance += panel(piece, low, low + (to - from) / panels, sdLeftKgM);
            }
        }
        return Math.min(1, chance);
    }

    /** The vertices in standard deviations of mass about the expected mass, between the ends of what is looked at. */
    private List<Double> cuts() {
        List<Double> cuts = new ArrayList<>();
        cuts.add(-WIDEST);
        for (int i = 1; i < line.points().size() - 1; i++) {
            double at = (line.points().get(i).massKg() - state.expected().massKg()) / state.massSdKg();
            if (at > cuts.get(cuts.size() - 1) && at < WIDEST) {
                cuts.add(at);
            }
        }
        cuts.add(WIDEST);
        return cuts;
    }

    /** The standard deviation of moment once the mass is given. */
    private double sdLeftKgM() {
        double varianceLeft =
                state.momentVarianceKg2M2() - state.covarianceKg2M() * state.covarianceKg2M() / state.massVarianceKg2();
        return Math.sqrt(Math.max(0, varianceLeft));
    }

    private double panel(int piece, double from, double to, double sdLeftKgM) {
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        double sum = 0;
        for (int i = 0; i < AT.length; i++) {
            sum += WEIGHT[i]
                    * (given(piece, middle - half * AT[i], sdLeftKgM) + given(piece, middle + half * AT[i], sdLeftKgM));
        }
        return half * sum;
    }

    /** The density of a mass times the chance of being outside given that mass. */
    private double given(int piece, double z, double sdLeftKgM) {
        double sdKg = state.massSdKg();
        double massKg = state.expected().massKg() + z * sdKg;
        double momentKgM = state.expected().momentKgM() + z * state.covarianceKg2M() / sdKg;
        double density = StrictMath.exp(-z * z / 2) / ROOT_TWO_PI;
        return density * NormalChance.below(-roomSds(momentKgM - momentKgM(piece, massKg), sdLeftKgM));
    }
}
