package org.steelyard.analyse.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import org.steelyard.analyse.figure.HistogramCells;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.type.AircraftType;

/**
 * Every flight as a point, for pictures. Past a number of points a type's cloud is thinned: all breached flights stay;
 * of the others those stay whose place in the input gives the smallest numbers by a fixed scramble, so that the same
 * input always leaves the same points.
 */
public final class FlightCloud {

    /**
     * One flight.
     *
     * @param order place among the flights that are held, from 0
     * @param status status
     * @param setting take-off flaps, with the thrust of a scale for one rating
     * @param tail registration
     */
    public record Point(int order, Status status, String setting, String tail) {}

    /**
     * The points of one type.
     *
     * @param type the type
     * @param flights flights of it
     * @param points those kept, clean ones first, then marginal, then breached, each in order of the input
     */
    public record OfType(AircraftType type, long flights, List<Point> points) {

        public OfType {
            points = List.copyOf(points);
        }

        /** Whether there are flights that are not among the points. */
        public boolean thinned() {
            return points.size() < flights;
        }
    }

    private static final Comparator<Point> BY_STATUS =
            Comparator.comparing(Point::status).thenComparingInt(Point::order);

    private final FlightColumns columns;
    private final SeasonFigures figures;
    private final IntToLongFunction placeOf;
    private final int flights;

    /**
     * A cloud of the flights that are held.
     *
     * @param columns flights in order of the input
     * @param figures figures of the whole season
     * @param placeOf place of a held flight in the season
     */
    public FlightCloud(FlightColumns columns, SeasonFigures figures, IntToLongFunction placeOf) {
        this.columns = columns;
        this.figures = figures;
        this.placeOf = placeOf;
        flights = columns.flights();
    }

    /** A cloud of all flights. */
    public static FlightCloud of(FlightColumns columns) {
        return new FlightCloud(columns, columns, flight -> flight);
    }

    /**
     * The flights by type, in order of name.
     *
     * @param most how many points of a type are kept, if so many are not breached
     * @return one cloud for each type
     */
    public List<OfType> byType(int most) {
        List<PriorityQueue<Integer>> kept = new ArrayList<>();
        List<List<Integer>> breached = new ArrayList<>();
        GroupColumn<String> types = columns.column(GroupKind.TYPE);
        for (int type = 0; type < types.groups(); type++) {
            kept.add(new PriorityQueue<>(
                    Comparator.<Integer>comparingLong(this::rank).reversed()));
            breached.add(new ArrayList<>());
        }
        for (int flight = 0; flight < flights; flight++) {
            int type = types.of(flight);
            PriorityQueue<Integer> others = kept.get(type);
            if (columns.status(flight) == Status.BREACHED) {
                breached.get(type).add(flight);
            } else if (others.size() < most - breached.get(type).size() || comesBeforeLast(flight, others)) {
                others.add(flight);
            }
            if (others.size() > Math.max(0, most - breached.get(type).size())) {
                others.poll();
            }
        }
        Grouped all = figures.byType(Measure.TAKEOFF_CG);
        List<OfType> clouds = new ArrayList<>();
        for (int type : types.inOrder()) {
            List<Point> points = new ArrayList<>();
            breached.get(type).forEach(flight -> points.add(point(flight)));
            kept.get(type).forEach(flight -> points.add(point(flight)));
            points.sort(BY_STATUS);
            String id = types.key(type);
            clouds.add(new OfType(columns.type(id), all.n(figures.types().find(id)), points));
        }
        return Collections.unmodifiableList(clouds);
    }

    private boolean comesBeforeLast(int flight, PriorityQueue<Integer> kept) {
        return !kept.isEmpty() && rank(flight) < rank(kept.element());
    }

    private long rank(int flight) {
        return scrambled(placeOf.applyAsLong(flight));
    }

    private Point point(int flight) {
        GroupColumn<String> tails = columns.column(GroupKind.TAIL);
        TrimSetting setting =
                columns.settings().key(columns.column(GroupKind.SETTING).of(flight));
        return new Point(
                flight,
                columns.status(flight),
                TrimSetting.words(setting.flaps(), setting.thrust()),
                tails.label(tails.of(flight)));
    }

    /** The mixing function of SplitMix64 (Steele, Lea and Flood, 2014). */
    public static long scrambled(long place) {
        long z = (place + 1) * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /**
     * A figure of a flight.
     *
     * @param point the flight
     * @param measure which figure
     * @return its value; empty where it is not known
     */
    public OptionalDouble value(Point point, Measure measure) {
        return columns.of(measure).at(point.order());
    }

    /**
     * A mass of a flight, to seven digits.
     *
     * @param point the flight
     * @param phase zero fuel, take-off or landing
     * @return the mass in kg; empty where it is not known
     */
    public OptionalDouble massKg(Point point, Phase phase) {
        return columns.massKg(phase).at(point.order());
    }

    /**
     * How a trim or CG is spread over cells of one width, for histograms: of all flights, none left out.
     *
     * @param setting type, flaps and thrust
     * @param measure which figure
     * @param width width of a cell, more than zero
     * @return counts of cells from the first that is not empty to the last
     */
    public HistogramCells cells(TrimSetting setting, Measure measure, double width) {
        return figures.cells(setting, measure, width);
    }

    /** Whether the other holds the same flights. */
    @Override
    public boolean equals(Object other) {
        return other instanceof FlightCloud that
                && that.flights == flights
                && IntStream.range(0, flights).allMatch(flight -> same(that, flight));
    }

    private boolean same(FlightCloud that, int flight) {
        return columns.status(flight) == that.columns.status(flight)
                && point(flight).equals(that.point(flight))
                && Arrays.stream(Measure.values())
                        .allMatch(measure -> columns.of(measure)
                                .at(flight)
                                .equals(that.columns.of(measure).at(flight)));
    }

    @Override
    public int hashCode() {
        return flights;
    }
}
