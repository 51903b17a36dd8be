package org.steelyard.remedy;

import java.util.List;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Tolerance;

/**
 * How far the moment of a state, or of every point of a fuel path, may change before it is outside a limit line, where
 * its mass changes by a given amount: exact for every shape of line. Between two points of the path the moment is
 * {@code p + q m}; between two vertices the limit's moment is {@code m (a + b m)} (straight in arm) or {@code c + d m}
 * (straight in moment), so their difference is a parabola or a straight line, least at an end of the stretch or where
 * the parabola turns.
 *
 * @param line the limit
 * @param points the state, or the fuel path with masses not rising
 * @param reserveM how far inside the line it must stay, in m of arm
 */
record MomentGuard(LimitLine line, List<MassMoment> points, double reserveM) {

    MomentGuard {
        points = List.copyOf(points);
    }

    /**
     * The greatest change of moment towards the line.
     *
     * @param deltaKg change of mass of every point in kg
     * @return for an aft line the greatest change of moment in kg·m, for a forward line the least (both may have either
     *     sign); infinite where no point is at a mass of the line
     */
    double boundKgM(double deltaKg) {
        double roomKgM = Double.POSITIVE_INFINITY;
        for (MassMoment point : points) {
            double massKg = point.massKg() + deltaKg;
            if (line.reaches(massKg)) {
                roomKgM = Math.min(
                        roomKgM, sign() * (massKg * line.armAtM(massKg) - point.momentKgM()) - reserveKgM(massKg));
            }
        }
        for (int i = 1; i < points.size(); i++) {
            roomKgM = Math.min(roomKgM, alongKgM(points.get(i), points.get(i - 1), deltaKg));
        }
        return sign() * roomKgM;
    }

    private double sign() {
        return line.side() == Side.AFT ? 1 : -1;
    }

    private double reserveKgM(double massKg) {
        return reserveM * massKg;
    }

    private double alongKgM(MassMoment low, MassMoment high, double deltaKg) {
        double roomKgM = Double.POSITIVE_INFINITY;
        if (high.massKg() <= low.massKg()) {
            return roomKgM;
        }
        double slopeM = (high.momentKgM() - low.momentKgM()) / (high.massKg() - low.massKg());
        List<LimitPoint> vertices = line.points();
        for (int i = 1; i < vertices.size(); i++) {
            LimitPoint below = vertices.get(i - 1);
            LimitPoint above = vertices.get(i);
            double fromKg = Math.max(low.massKg() + deltaKg, below.massKg());
            double toKg = Math.min(high.massKg() + deltaKg, above.massKg());
            if (Tolerance.isAboveKg(toKg, fromKg)) {
                double atZeroKgM = low.momentKgM() - slopeM * (low.massKg() + deltaKg);
                roomKgM = Math.min(roomKgM, new Piece(below, above, atZeroKgM, slopeM).leastRoomKgM(fromKg, toKg));
            }
        }
        return roomKgM;
    }

    /** A stretch of the path between two vertices, with the path's moment as {@code atZeroKgM + slopeM * mass}. */
    private final class Piece {

        private final double constantKgM;
        private final double linearM;
        private final double squareMPerKg;

        /** Room = sign (limit - path) - reserve, as a polynomial of mass. */
        Piece(LimitPoint below, LimitPoint above, double atZeroKgM, double slopeM) {
            double spanKg = above.massKg() - below.massKg();
            double bentM = line.straight() == Straightness.ARM ? (above.armM() - below.armM()) / spanKg : 0;
            double startM;
            double startKgM;
            if (line.straight() == Straightness.ARM) {
                startM = below.armM() - bentM * below.massKg();
                startKgM = 0;
            } else {
                startM = (above.massKg() * above.armM() - below.massKg() * below.armM()) / spanKg;
                startKgM = below.massKg() * below.armM() - startM * below.massKg();
            }
            constantKgM = sign() * (startKgM - atZeroKgM);
            linearM = sign() * (startM - slopeM) - reserveM;
            squareMPerKg = sign() * bentM;
        }

        double leastRoomKgM(double fromKg, double toKg) {
            double least = Math.min(roomKgM(fromKg), roomKgM(toKg));
            double turnKg = -linearM / (2 * squareMPerKg);
            return turnKg > fromKg && turnKg < toKg ? Math.min(least, roomKgM(turnKg)) : least;
        }

        private double roomKgM(double massKg) {
            return constantKgM + massKg * (linearM + massKg * squareMPerKg);
        }
    }
}
