package org.steelyard.analyse.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.Set;
import org.steelyard.analyse.column.FlightColumns;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.Grouped;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.figure.Values;
import org.steelyard.analyse.part.LoadParts;
import org.steelyard.analyse.part.PartFigures;
import org.steelyard.analyse.part.PartPull;
import org.steelyard.analyse.part.PartTallies;
import org.steelyard.analyse.part.PartTally;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.MassUnit;

/**
 * Keeps the flights farthest forward and aft, and farthest nose-down and nose-up, of each scale; which of them are
 * unusual is only known at the end.
 */
public final class UnusualFlights {

    static final List<Measure> MEASURES = List.of(Measure.TAKEOFF_CG, Measure.TAKEOFF_TRIM);

    private static final double NORMAL_QUARTILE = 0.6745;

    private static final Comparator<Candidate> LEAST_FIRST =
            Comparator.comparingDouble(Candidate::value).thenComparingLong(Candidate::order);

    private record Candidate(
            double value, long order, FlightIdent flight, Origin origin, String tail, Optional<PartFigures> parts) {}

    private static final class Extremes {

        private final PriorityQueue<Candidate> low = new PriorityQueue<>(LEAST_FIRST.reversed());
        private final PriorityQueue<Candidate> high = new PriorityQueue<>(LEAST_FIRST);

        /** Most flights are neither, which is seen without making a candidate of them. */
        boolean mayKeep(double value) {
            return low.size() < UnusualFlight.KEPT_EACH_SIDE
                    || value < low.element().value()
                    || value >= high.element().value();
        }

        void add(Candidate candidate) {
            keep(low, candidate);
            keep(high, candidate);
        }

        private static void keep(PriorityQueue<Candidate> queue, Candidate candidate) {
            queue.add(candidate);
            if (queue.size() > UnusualFlight.KEPT_EACH_SIDE) {
                queue.poll();
            }
        }
    }

    private final FlightColumns columns;
    private final Map<Measure, List<Extremes>> kept = new EnumMap<>(Measure.class);

    public UnusualFlights(FlightColumns columns) {
        this.columns = columns;
        MEASURES.forEach(measure -> kept.put(measure, new ArrayList<>()));
    }

    /** Takes the flight that the columns took last. */
    public void add(AuditedFlight flight, Optional<PartFigures> parts) {
        int index = columns.flights() - 1;
        int setting = columns.column(GroupKind.SETTING).of(index);
        for (Measure measure : MEASURES) {
            List<Extremes> bySetting = kept.get(measure);
            while (bySetting.size() <= setting) {
                bySetting.add(new Extremes());
            }
            OptionalDouble value = columns.of(measure).at(index);
            if (value.isPresent() && bySetting.get(setting).mayKeep(value.getAsDouble())) {
                bySetting.get(setting).add(candidate(flight, parts, value.getAsDouble(), index));
            }
        }
    }

    private static Candidate candidate(AuditedFlight flight, Optional<PartFigures> parts, double value, int index) {
        return new Candidate(
                value,
                index,
                flight.loading().flight(),
                flight.loading().origin(),
                flight.loading().tail().registration(),
                parts);
    }

    /** The unusual ones by type and setting, the farthest first; a flight that is so by two measures stands once. */
    List<UnusualFlight> found(SeasonFigures figures, PartTallies tallies) {
        List<UnusualFlight> found = new ArrayList<>();
        Map<Measure, Grouped> all = new EnumMap<>(Measure.class);
        MEASURES.forEach(measure -> all.put(measure, figures.bySetting(measure)));
        for (int setting : figures.settings().inOrder()) {
            Map<Long, UnusualFlight> byFlight = new HashMap<>();
            for (Measure measure : MEASURES) {
                Values values = all.get(measure).values(setting);
                find(measure, figures.settings().key(setting), values, tallies)
                        .forEach((order, flight) -> byFlight.merge(order, flight, UnusualFlights::farther));
            }
            byFlight.values().stream()
                    .sorted(Comparator.comparingDouble((UnusualFlight flight) -> -Math.abs(flight.score()))
                            .thenComparing(flight -> flight.flight().date())
                            .thenComparing(flight -> flight.flight().flight()))
                    .forEach(found::add);
        }
        return found;
    }

    private static UnusualFlight farther(UnusualFlight one, UnusualFlight other) {
        return Math.abs(other.score()) > Math.abs(one.score()) ? other : one;
    }

    private Map<Long, UnusualFlight> find(Measure measure, TrimSetting setting, Values values, PartTallies tallies) {
        Map<Long, UnusualFlight> found = new HashMap<>();
        int position = columns.settings().find(setting);
        if (values.n() < Spread.FEW || position < 0) {
            return found;
        }
        double median = values.median();
        double spread = values.medianDistance(median);
        Extremes extremes = kept.get(measure).get(position);
        Set<Candidate> candidates = new HashSet<>(extremes.low);
        candidates.addAll(extremes.high);
        for (Candidate candidate : candidates) {
            double score = NORMAL_QUARTILE * (candidate.value() - median) / spread;
            if (spread > 0 && Math.abs(score) > UnusualFlight.SCORE) {
                found.put(candidate.order(), unusual(measure, setting, candidate, median, score, tallies));
            }
        }
        return found;
    }

    private UnusualFlight unusual(
            Measure measure, TrimSetting key, Candidate candidate, double median, double score, PartTallies tallies) {
        List<PartPull> reasons = new ArrayList<>();
        List<UnusualFlight.PartMass> masses = new ArrayList<>();
        candidate.parts().ifPresent(parts -> {
            LoadParts names = tallies.names(key.typeId());
            PartTally usual = tallies.ofSetting(key);
            double about = usual.meanAboutReference();
            reasons.addAll(PartPull.greatest(names, j -> parts.pull(j, about) - usual.meanPull(j, about)));
            int first = names.indexOf(reasons.get(0).part());
            MassUnit unit = names.type().geometry().units().mass();
            masses.add(new UnusualFlight.PartMass(parts.massKg(first), usual.meanMassKg(first), unit));
        });
        return new UnusualFlight(
                candidate.flight(),
                candidate.origin(),
                candidate.tail(),
                key.typeId(),
                key.flaps(),
                key.thrust(),
                measure,
                candidate.value(),
                median,
                score,
                reasons,
                masses);
    }
}
