package org.steelyard.check.flight;

import java.util.List;
import java.util.Optional;
import org.steelyard.balance.FuelPath;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Tolerance;

/**
 * Finds exactly, not by sampling, where a fuel path comes nearest to a limit line.
 *
 * <p>Between two points of the path the moment is {@code M(m) = p + q m}, the arm {@code p / m + q}. Between two
 * vertices the limit's arm is {@code a + b m} (straight in arm) or {@code c / m + d} (straight in moment). The room is
 * their difference: in the second case a hyperbola without a turning point, in the first one that turns at {@code m =
 * sqrt(-p / b)}. So the nearest approach lies at an end of a piece or at that mass. At a step of the line each side of
 * the step is looked at, as the path crosses both. Above the line its end stands: there the arm of the path moves one
 * way only between two points.
 */
final class PathApproach {

    private final LimitLine line;
    private double nearestKg;
    private double nearestKgM;
    private double leastRoomM = Double.POSITIVE_INFINITY;

    private PathApproach(LimitLine line) {
        this.line = line;
    }

    /**
     * The nearest approach.
     *
     * @param path the fuel path
     * @param line the limit
     * @return where the room is least; empty if the path lies wholly below the masses of the line
     */
    static Optional<Approach> find(FuelPath path, LimitLine line) {
        PathApproach search = new PathApproach(line);
        List<MassMoment> points = path.points();
        for (int i = 0; i < points.size(); i++) {
            search.visit(points.get(i));
        }
        for (int i = 1; i < points.size(); i++) {
            search.visit(points.get(i), points.get(i - 1));
        }
        return Double.isInfinite(search.leastRoomM)
                ? Optional.empty()
                : Optional.of(new Approach(new MassMoment(search.nearestKg, search.nearestKgM), search.leastRoomM));
    }

    private void visit(MassMoment point) {
        if (!Tolerance.isBelowKg(point.massKg(), line.minMassKg())) {
            double heldKg = Math.min(point.massKg(), line.maxMassKg());
            keep(point.massKg(), point.momentKgM(), line.roomM(heldKg, point.armM()));
        }
    }

    private void visit(MassMoment low, MassMoment high) {
        List<LimitPoint> vertices = line.points();
        for (int i = 1; i < vertices.size(); i++) {
            double fromKg = Math.max(low.massKg(), vertices.get(i - 1).massKg());
            double toKg = Math.min(high.massKg(), vertices.get(i).massKg());
            if (Tolerance.isAboveKg(toKg, fromKg)) {
                visit(new Piece(low, high, vertices.get(i - 1), vertices.get(i)), fromKg, toKg);
            }
        }
    }

    private void visit(Piece piece, double fromKg, double toKg) {
        keep(piece, fromKg);
        keep(piece, toKg);
        double turnKg = piece.turnKg(line.straight());
        if (turnKg > fromKg && turnKg < toKg) {
            keep(piece, turnKg);
        }
    }

    private void keep(Piece piece, double massKg) {
        double momentKgM = piece.momentKgM(massKg);
        double armM = momentKgM / massKg;
        double limitM = piece.limitM(line.straight(), massKg);
        keep(massKg, momentKgM, line.side() == Side.FORWARD ? armM - limitM : limitM - armM);
    }

    private void keep(double massKg, double momentKgM, double roomM) {
        if (roomM < leastRoomM) {
            leastRoomM = roomM;
            nearestKg = massKg;
            nearestKgM = momentKgM;
        }
    }

    /** A stretch of the path that lies between two neighbouring vertices of the line. */
    private record Piece(MassMoment low, MassMoment high, LimitPoint below, LimitPoint above) {

        double slopeM() {
            return (high.momentKgM() - low.momentKgM()) / (high.massKg() - low.massKg());
        }

        double momentKgM(double massKg) {
            if (massKg == low.massKg()) {
                return low.momentKgM();
            }
            return massKg == high.massKg() ? high.momentKgM() : low.momentKgM() + slopeM() * (massKg - low.massKg());
        }

        double limitM(Straightness straight, double massKg) {
            double t = (massKg - below.massKg()) / (above.massKg() - below.massKg());
            if (straight == Straightness.ARM) {
                return below.armM() + t * (above.armM() - below.armM());
            }
            double belowKgM = below.massKg() * below.armM();
            return (belowKgM + t * (above.massKg() * above.armM() - belowKgM)) / massKg;
        }

        /** The mass at which the room turns, or not a number. */
        double turnKg(Straightness straight) {
            if (straight == Straightness.MOMENT) {
                return Double.NaN;
            }
            double p = low.momentKgM() - slopeM() * low.massKg();
            double b = (above.armM() - below.armM()) / (above.massKg() - below.massKg());
            return Math.sqrt(-p / b);
        }
    }
}
