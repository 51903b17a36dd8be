package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Tolerance;

/**
 * How much mass may come on, or go off, at one arm before a state or any point of a fuel path leaves a limit line, in
 * closed form. Adding x at arm a shifts every point by (x, a x). A point meets a piece of the limit where a polynomial
 * of the second degree has a root. The stretch between two points meets it first at one of its ends, at a vertex of the
 * limit, or at the mass at which the piece runs parallel to the stretch; the last two are fixed points of the limit
 * that the moving stretch passes over, which is a linear equation.
 *
 * <p>Mass that goes off is the same with all masses mirrored.
 */
final class Crossing {

    /** A piece of a limit: its moment as a polynomial of mass from one mass to another. */
    private record Piece(double from, double to, double constant, double linear, double square) {

        double at(double mass) {
            return constant + mass * (linear + mass * square);
        }

        Piece mirrored() {
            return new Piece(-to, -from, constant, -linear, square);
        }
    }

    private record Point(double mass, double moment) {}

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private final double sign;
    private final double arm;
    private final double tolerance;
    private double first;

    private Crossing(
            LimitLine line, MeanChord chord, List<MassMoment> states, double armM, boolean off, double mostKg) {
        sign = line.side() == Side.AFT ? 1 : -1;
        arm = off ? -armM : armM;
        first = mostKg;
        List<LimitPoint> vertices = line.points();
        for (int i = 1; i < vertices.size(); i++) {
            LimitPoint low = vertices.get(i - 1);
            LimitPoint high = vertices.get(i);
            if (low.massKg() < high.massKg()) {
                Piece piece = piece(line.straight(), low, high);
                pieces.add(off ? piece.mirrored() : piece);
            }
        }
        states.forEach(state -> points.add(new Point(off ? -state.massKg() : state.massKg(), state.momentKgM())));
        tolerance = Tolerance.momentKgM(states.get(0).massKg(), chord.lengthM());
    }

    /**
     * The greatest mass that keeps all points inside.
     *
     * @param chord the type's chord
     * @param states a state, or the points of a fuel path in order
     * @param armM where mass comes on or goes off
     * @param off whether it goes off
     * @param mostKg no more is asked for
     * @return mass in kg, at most that
     */
    static double mostKg(
            LimitLine line, MeanChord chord, List<MassMoment> states, double armM, boolean off, double mostKg) {
        Crossing crossing = new Crossing(line, chord, states, armM, off, mostKg);
        crossing.points.forEach(crossing::meet);
        for (int i = 1; i < crossing.points.size(); i++) {
            crossing.pass(crossing.points.get(i - 1), crossing.points.get(i));
        }
        return Math.max(0, crossing.first);
    }

    private static Piece piece(Straightness straight, LimitPoint low, LimitPoint high) {
        double span = high.massKg() - low.massKg();
        if (straight == Straightness.ARM) {
            double bent = (high.armM() - low.armM()) / span;
            return new Piece(low.massKg(), high.massKg(), 0, low.armM() - bent * low.massKg(), bent);
        }
        double lowMoment = low.massKg() * low.armM();
        double slope = (high.massKg() * high.armM() - lowMoment) / span;
        return new Piece(low.massKg(), high.massKg(), lowMoment - slope * low.massKg(), slope, 0);
    }

    /** A point moves along its line until the room, {@code sign (limit - moment)}, is less than nothing. */
    private void meet(Point point) {
        for (Piece piece : pieces) {
            double from = Math.max(piece.from(), point.mass());
            double to = Math.min(piece.to(), point.mass() + first);
            if (Tolerance.isAboveKg(to, from)) {
                double start = point.moment() - arm * point.mass();
                double c = sign * (piece.constant() - start);
                double b = sign * (piece.linear() - arm);
                double a = sign * piece.square();
                first = Math.min(first, fall(a, b, c, from, to) - point.mass());
            }
        }
    }

    /** The first place from one to another at which a + b + c falls below zero; infinite if it does not. */
    private double fall(double a, double b, double c, double from, double to) {
        if (c + from * (b + from * a) < -tolerance) {
            return from;
        }
        double found = Double.POSITIVE_INFINITY;
        for (double root : roots(a, b, c)) {
            boolean falls = 2 * a * root + b < 0;
            if (falls && root >= from - Tolerance.MASS_KG && root <= to) {
                found = Math.min(found, Math.max(root, from));
            }
        }
        return found;
    }

    private static double[] roots(double a, double b, double c) {
        double discriminant = b * b - 4 * a * c;
        if (discriminant < 0) {
            return new double[0];
        }
        double q = -0.5 * (b + Math.copySign(Math.sqrt(discriminant), b));
        return new double[] {c / q, q / a};
    }

    /** The stretch between two points passes over the vertices, and over where a piece runs parallel to it. */
    private void pass(Point one, Point other) {
        Point low = one.mass() < other.mass() ? one : other;
        Point high = one.mass() < other.mass() ? other : one;
        if (low.mass() == high.mass()) {
            return;
        }
        double slope = (high.moment() - low.moment()) / (high.mass() - low.mass());
        for (Piece piece : pieces) {
            pass(low, high, slope, piece, piece.from());
            pass(low, high, slope, piece, piece.to());
            double parallel = (slope - piece.linear()) / (2 * piece.square());
            if (parallel > piece.from() && parallel < piece.to()) {
                pass(low, high, slope, piece, parallel);
            }
        }
    }

    private void pass(Point low, Point high, double slope, Piece piece, double mass) {
        double from = Math.max(0, mass - high.mass());
        double to = Math.min(first, mass - low.mass());
        if (Tolerance.isAboveKg(to, from)) {
            double c = sign * (piece.at(mass) - low.moment() - slope * (mass - low.mass()));
            double b = sign * (slope - arm);
            if (c + b * from < -tolerance) {
                first = Math.min(first, from);
            } else if (b < 0 && c + b * to < 0) {
                first = Math.min(first, Math.max(from, -c / b));
            }
        }
    }
}
