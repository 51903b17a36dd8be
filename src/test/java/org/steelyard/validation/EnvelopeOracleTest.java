package org.steelyard.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Draws;
import org.steelyard.samples.Plain;

/**
 * Envelopes against polygons of a general geometry library. A line straight in arm is an edge in the plane of arm and
 * mass, one straight in moment an edge in the plane of moment and mass. Outlines are drawn at random, seldom convex,
 * with steps; thousands of them, each from a seed.
 */
@Tag("validation")
class EnvelopeOracleTest {

    private static final int POLYGONS = Draws.of(3000);
    private static final int POINTS = 4;
    private static final GeometryFactory JTS = new GeometryFactory();

    @ParameterizedTest
    @EnumSource
    void insideAndDistanceAgreeWithPolygons(Straightness straight) {
        for (long seed = 0; seed < POLYGONS; seed++) {
            new Outline(new SplittableRandom(seed), straight).check("seed " + seed + ", straight in " + straight);
        }
    }

    private static final class Outline {

        private final SplittableRandom random;
        private final Straightness straight;
        private final List<LimitPoint> forward = new ArrayList<>();
        private final List<LimitPoint> aft = new ArrayList<>();
        private final Polygon polygon;
        private final PlainAircraft aircraft;
        private final Loading frame;
        private final Policy policy;

        Outline(SplittableRandom random, Straightness straight) {
            this.random = random;
            this.straight = straight;
            drawLine(forward, 10, 15);
            drawLine(aft, 15.5, 20);
            this.polygon = polygon();
            this.aircraft = new PlainAircraft()
                    .envelope(new org.steelyard.model.limit.Envelope(
                            Phase.TAKEOFF,
                            new LimitLine(Side.FORWARD, straight, forward),
                            new LimitLine(Side.AFT, straight, aft)))
                    .state(new Load.TakeoffGiven(MassMoment.at(50_000, 15)));
            this.frame = aircraft.loading();
            this.policy = aircraft.policy();
        }

        private void drawLine(List<LimitPoint> line, double fromM, double toM) {
            line.add(new LimitPoint(40_000, random.nextDouble(fromM, toM)));
            int between = random.nextInt(0, 6);
            for (int i = 1; i <= between; i++) {
                double massKg = 40_000 + 30_000.0 * i / (between + 1);
                line.add(new LimitPoint(massKg, random.nextDouble(fromM, toM)));
                if (random.nextInt(4) == 0) {
                    line.add(new LimitPoint(massKg, random.nextDouble(fromM, toM)));
                }
            }
            line.add(new LimitPoint(70_000, random.nextDouble(fromM, toM)));
        }

        private double across(double massKg, double armM) {
            return straight == Straightness.ARM ? armM : massKg * armM;
        }

        private Coordinate coordinate(double massKg, double armM) {
            return new Coordinate(across(massKg, armM), massKg);
        }

        private Polygon polygon() {
            List<Coordinate> ring = new ArrayList<>();
            forward.forEach(point -> ring.add(coordinate(point.massKg(), point.armM())));
            for (int i = aft.size() - 1; i >= 0; i--) {
                ring.add(coordinate(aft.get(i).massKg(), aft.get(i).armM()));
            }
            ring.add(ring.get(0));
            return JTS.createPolygon(ring.toArray(new Coordinate[0]));
        }

        void check(String seed) {
            require(polygon.isValid(), () -> seed + ": the outline crosses itself");
            for (int i = 0; i < POINTS; i++) {
                point(random.nextDouble(40_000, 70_000), random.nextDouble(9, 21), seed);
            }
            edges(forward, -1, seed);
            edges(aft, 1, seed);
        }

        private void point(double massKg, double armM, String seed) {
            Envelope cut = cut(massKg);
            double aftM = straight == Straightness.ARM ? cut.getMaxX() : cut.getMaxX() / massKg;
            double frontM = straight == Straightness.ARM ? cut.getMinX() : cut.getMinX() / massKg;
            EnvelopeMargin margin = margin(massKg, armM);
            near(
                    margin.forwardPercentMac() / 100,
                    armM - frontM,
                    () -> seed + ": room to the forward limit at " + massKg);
            near(margin.aftPercentMac() / 100, aftM - armM, () -> seed + ": room to the aft limit at " + massKg);
            boolean covered = polygon.covers(JTS.createPoint(coordinate(massKg, armM)));
            double nearestM = Math.min(Math.abs(armM - frontM), Math.abs(aftM - armM));
            require(
                    nearestM < 1e-9 || covered == (status(massKg, armM) != Status.BREACHED),
                    () -> seed + ": inside or not at " + massKg + " kg, " + armM + " m");
        }

        /** The outline at one mass, from its foremost to its rearmost point. */
        private Envelope cut(double massKg) {
            Envelope cut = new Envelope();
            LineIntersector intersector = new RobustLineIntersector();
            Coordinate left = coordinate(massKg, 5);
            Coordinate right = coordinate(massKg, 25);
            Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
            for (int i = 1; i < ring.length; i++) {
                intersector.computeIntersection(ring[i - 1], ring[i], left, right);
                for (int k = 0; k < intersector.getIntersectionNum(); k++) {
                    cut.expandToInclude(intersector.getIntersection(k));
                }
            }
            return cut;
        }

        /** Every vertex and points on every edge are inside, what lies a hair outward is not. */
        private void edges(List<LimitPoint> line, int outward, String seed) {
            for (int i = 0; i < line.size(); i++) {
                LimitPoint here = line.get(i);
                require(
                        status(here.massKg(), here.armM()) != Status.BREACHED,
                        () -> seed + ": the vertex at " + here + " is inside");
                if (i > 0) {
                    edge(line.get(i - 1), here, outward, seed);
                }
            }
        }

        private void edge(LimitPoint one, LimitPoint other, int outward, String seed) {
            double t = random.nextDouble(0.01, 0.99);
            double massKg = one.massKg() + t * (other.massKg() - one.massKg());
            double from = across(one.massKg(), one.armM());
            double on = from + t * (across(other.massKg(), other.armM()) - from);
            double armM = straight == Straightness.ARM ? on : on / massKg;
            require(status(massKg, armM) != Status.BREACHED, () -> seed + ": on the edge at " + massKg + " is inside");
            if (one.massKg() < other.massKg()) {
                require(
                        status(massKg, armM + outward * 1e-6) == Status.BREACHED,
                        () -> seed + ": outward of the edge at " + massKg + " is outside");
            }
        }

        private Status status(double massKg, double armM) {
            Loading loading = at(massKg, armM);
            return Checker.check(loading, balance(loading), policy).status();
        }

        private EnvelopeMargin margin(double massKg, double armM) {
            Loading loading = at(massKg, armM);
            return Checker.check(loading, balance(loading), policy).margins().get(0);
        }

        private Balance balance(Loading loading) {
            return Balancer.balance(loading, policy);
        }

        private Loading at(double massKg, double armM) {
            return Plain.loading(
                    frame.origin(),
                    frame.flight(),
                    frame.tail(),
                    frame.setting(),
                    frame.crew(),
                    new Load.TakeoffGiven(MassMoment.at(massKg, armM)),
                    frame.fuel(),
                    frame.performance(),
                    frame.recordedTrimUnits(),
                    frame.extras());
        }
    }

    private static void near(double value, double expected, Supplier<String> what) {
        require(Math.abs(value - expected) <= 1e-9, () -> what.get() + ": " + value + " for " + expected);
    }

    private static void require(boolean holds, Supplier<String> what) {
        if (!holds) {
            throw new AssertionError(what.get());
        }
    }
}
