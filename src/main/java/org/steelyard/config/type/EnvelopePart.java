package org.steelyard.config.type;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steelyard.config.value.Cg;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.Words;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.type.Geometry;

/**
 * Reads a type's envelopes: for each phase, or for all that have none of their own, a forward and an aft limit line.
 */
final class EnvelopePart {

    /** In what a line can be straight between its vertices. */
    private enum Straight {
        PERCENT_MAC("percent-mac", Straightness.ARM),
        ARM("arm", Straightness.ARM),
        MOMENT("moment", Straightness.MOMENT),
        INDEX("index", Straightness.MOMENT);

        private final String word;
        private final Straightness straightness;

        Straight(String word, Straightness straightness) {
            this.word = word;
            this.straightness = straightness;
        }

        private String word() {
            return word;
        }
    }

    private static final String ALL = "all";

    private final Optional<Geometry> geometry;
    private final Optional<MassLimits> limits;

    private EnvelopePart(Optional<Geometry> geometry, Optional<MassLimits> limits) {
        this.geometry = geometry;
        this.limits = limits;
    }

    static Optional<List<Envelope>> read(Keys keys, Optional<Geometry> geometry, Optional<MassLimits> limits) {
        EnvelopePart part = new EnvelopePart(geometry, limits);
        List<Envelope> envelopes = new ArrayList<>();
        for (Phase phase : Envelope.PHASES) {
            keys.partIfAny(key(phase), inner -> part.envelope(inner, phase)).ifPresent(envelopes::add);
        }
        List<Phase> left =
                Envelope.PHASES.stream().filter(phase -> !keys.has(key(phase))).toList();
        Optional<Envelope> all = keys.partIfAny(ALL, inner -> part.envelope(inner, Phase.TAKEOFF));
        all.ifPresent(any -> left.forEach(phase -> envelopes.add(new Envelope(phase, any.forward(), any.aft()))));
        if (all.isPresent() && left.isEmpty()) {
            keys.fault(ALL, "no phase is left for it", "no envelope for all where each phase has its own");
        }
        for (Envelope envelope : envelopes) {
            if (!left.contains(envelope.phase())) {
                part.reach(keys, key(envelope.phase()), envelope, List.of(envelope.phase()), "of its phase");
            }
        }
        all.ifPresent(any -> part.reach(keys, ALL, any, left, "of a phase that it is for"));
        envelopes.sort(Comparator.comparing(Envelope::phase));
        return keys.make(() -> envelopes);
    }

    private static String key(Phase phase) {
        return phase.label().replace(' ', '-');
    }

    private void reach(Keys keys, String key, Envelope envelope, List<Phase> phases, String what) {
        if (limits.isPresent()) {
            double highestKg = phases.stream()
                    .mapToDouble(phase -> highestKg(limits.get(), phase))
                    .max()
                    .orElse(0);
            if (envelope.maxMassKg() < highestKg) {
                keys.fault(
                        key,
                        "ends at " + plain(envelope.maxMassKg()) + " kg, below the maximum mass " + what,
                        "vertices up to " + plain(highestKg) + " kg or beyond");
            }
        }
    }

    private static String plain(double massKg) {
        return BigDecimal.valueOf(massKg).stripTrailingZeros().toPlainString();
    }

    private static double highestKg(MassLimits limits, Phase phase) {
        return switch (phase) {
            case ZERO_FUEL -> limits.maxZeroFuelKg();
            case LANDING -> limits.maxLandingKg();
            case DRY_OPERATING, RAMP, TAKEOFF, FLIGHT -> limits.maxTakeoffKg();
        };
    }

    private Optional<Envelope> envelope(Keys keys, Phase phase) {
        Optional<LimitLine> forward = keys.part("forward", inner -> line(inner, Side.FORWARD));
        Optional<LimitLine> aft = keys.part("aft", inner -> line(inner, Side.AFT));
        return keys.make(() -> new Envelope(phase, forward.orElseThrow(), aft.orElseThrow()));
    }

    private Optional<LimitLine> line(Keys keys, Side side) {
        Straight straight =
                keys.read("straight-in", Words.choice(Straight::word, List.of(Straight.values())), Straight.ARM);
        List<LimitPoint> points = keys.each("points", this::point);
        return keys.make(() -> new LimitLine(side, straight.straightness, points));
    }

    private Optional<LimitPoint> point(Keys keys) {
        keys.take(geometry);
        double massKg = keys.number("mass", WrittenNumber.MASS);
        Optional<Cg> cg = keys.require("cg", Cg::read);
        return keys.make(() -> new LimitPoint(massKg, cg.orElseThrow().armM(geometry.orElseThrow(), massKg)));
    }
}
