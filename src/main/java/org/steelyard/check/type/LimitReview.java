package org.steelyard.check.type;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.Quantity;
import org.steelyard.model.unit.Tolerance;

/** Looks over envelopes and trim scales: whether they reach as far as each other and as the limits of mass. */
final class LimitReview {

    /** Below this a difference is a matter of rounding. */
    private static final double SMALL_PERCENT_MAC = 0.05;

    private final AircraftType type;
    private final List<TypeRemark> remarks = new ArrayList<>();

    LimitReview(AircraftType type) {
        this.type = type;
    }

    List<TypeRemark> remarks() {
        NotChecked.of(type).ifPresent(some -> remark("envelopes", "%s", some.sentence()));
        type.envelopes().forEach(this::reach);
        type.envelope(Phase.FLIGHT).ifPresent(flight -> {
            type.envelope(Phase.TAKEOFF).ifPresent(takeoff -> within(takeoff, flight));
            type.envelope(Phase.LANDING).ifPresent(landing -> within(landing, flight));
        });
        for (TrimScale scale : type.trimScales()) {
            type.envelope(scale.phase())
                    .or(() -> type.envelope(Phase.TAKEOFF))
                    .ifPresent(envelope -> scale(scale, envelope));
        }
        return remarks;
    }

    private void remark(String about, String sentence, Object... values) {
        remarks.add(new TypeRemark(about, String.format(Locale.ROOT, sentence, values)));
    }

    private double percent(double armM) {
        return type.geometry().chord().percentAt(armM);
    }

    private void reach(Envelope envelope) {
        double leastKg = type.limits().minFlightKg();
        if (envelope.phase() != Phase.ZERO_FUEL && Tolerance.isAboveKg(envelope.minMassKg(), leastKg)) {
            remark(
                    name(envelope),
                    "begins at %s, above the minimum mass of %s: lighter flights have no limits of CG",
                    TypeReview.mass(type, envelope.minMassKg()),
                    TypeReview.mass(type, leastKg));
        }
    }

    private static String name(Envelope envelope) {
        return envelope.phase().label() + " envelope";
    }

    /** An envelope of one phase against that of the whole flight, at the vertices of both. */
    private void within(Envelope inner, Envelope outer) {
        double fromKg = Math.max(inner.minMassKg(), outer.minMassKg());
        double toKg = Math.min(inner.maxMassKg(), outer.maxMassKg());
        double forward = 0;
        double aft = 0;
        for (double massKg : masses(inner, outer)) {
            if (Tolerance.isWithinKg(massKg, fromKg, toKg)) {
                forward = Math.max(
                        forward,
                        percent(outer.forward().armAtM(massKg))
                                - percent(inner.forward().armAtM(massKg)));
                aft = Math.max(
                        aft,
                        percent(inner.aft().armAtM(massKg))
                                - percent(outer.aft().armAtM(massKg)));
            }
        }
        wider(inner, forward, "ahead of");
        wider(inner, aft, "behind");
    }

    private void wider(Envelope inner, double byPercentMac, String where) {
        if (byPercentMac > SMALL_PERCENT_MAC) {
            remark(
                    name(inner),
                    "reaches %.1f %% MAC %s the in-flight envelope: it permits what is not permitted in flight",
                    byPercentMac,
                    where);
        }
    }

    private static NavigableSet<Double> masses(Envelope... envelopes) {
        NavigableSet<Double> masses = new TreeSet<>();
        for (Envelope envelope : envelopes) {
            Stream.of(envelope.forward(), envelope.aft())
                    .flatMap(line -> line.points().stream())
                    .map(LimitPoint::massKg)
                    .forEach(masses::add);
        }
        return masses;
    }

    private void scale(TrimScale scale, Envelope envelope) {
        String about = scale.phase().label() + " trim, flaps " + scale.flaps();
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (double massKg : masses(envelope)) {
            from = Math.min(from, percent(envelope.forward().armAtM(massKg)));
            to = Math.max(to, percent(envelope.aft().armAtM(massKg)));
        }
        CgRange covered = scale.law().cgRange();
        if (covered.fromPercentMac() > from + SMALL_PERCENT_MAC || covered.toPercentMac() < to - SMALL_PERCENT_MAC) {
            remark(
                    about,
                    "covers %.1f to %.1f %% MAC, the %s envelope %.1f to %.1f: beyond the scale there is no setting",
                    covered.fromPercentMac(),
                    covered.toPercentMac(),
                    envelope.phase().label(),
                    from,
                    to);
        }
        if (scale.law() instanceof TrimTable table) {
            masses(about, table, envelope);
        }
        band(about, scale, envelope);
        steps(about, scale);
    }

    private void masses(String about, TrimTable table, Envelope envelope) {
        double fromKg = table.minMassKg();
        double toKg = table.maxMassKg();
        double leastKg = Math.max(envelope.minMassKg(), type.limits().minFlightKg());
        if (Tolerance.isAboveKg(fromKg, leastKg) || Tolerance.isBelowKg(toKg, envelope.maxMassKg())) {
            remark(
                    about,
                    "is for %s to %s, flights are from %s to %s: beyond the scale there is no setting",
                    TypeReview.mass(type, fromKg),
                    TypeReview.mass(type, toKg),
                    TypeReview.mass(type, leastKg),
                    TypeReview.mass(type, envelope.maxMassKg()));
        }
    }

    /** The settings that the scale asks for on the limits of the envelope, against what is permitted. */
    private void band(String about, TrimScale scale, Envelope envelope) {
        Optional<String> beyond = masses(envelope).stream()
                .map(massKg -> beyond(scale, envelope, massKg))
                .flatMap(Optional::stream)
                .findFirst();
        beyond.ifPresent(sentence -> remark(about, "%s", sentence));
    }

    private Optional<String> beyond(TrimScale scale, Envelope envelope, double massKg) {
        OptionalDouble most = scale.law().trimUnitsAt(percent(envelope.forward().armAtM(massKg)), massKg);
        OptionalDouble least = scale.law().trimUnitsAt(percent(envelope.aft().armAtM(massKg)), massKg);
        String at = " at " + TypeReview.mass(type, massKg);
        if (most.isPresent()
                && Tolerance.isOutside(scale.bandHighUnits() - scale.settingFor(most.getAsDouble()), Quantity.TRIM)) {
            return Optional.of("asks for " + shown(scale, most.getAsDouble()) + " on the forward limit" + at
                    + ", beyond its band up to " + shown(scale, scale.bandHighUnits()));
        }
        return least.isPresent()
                        && Tolerance.isOutside(
                                scale.settingFor(least.getAsDouble()) - scale.bandLowUnits(), Quantity.TRIM)
                ? Optional.of("asks for " + shown(scale, least.getAsDouble()) + " on the aft limit" + at
                        + ", beyond its band from " + shown(scale, scale.bandLowUnits()))
                : Optional.empty();
    }

    private static String shown(TrimScale scale, double units) {
        return FindingText.trim(units, scale.stepUnits(), scale.unit());
    }

    private void steps(String about, TrimScale scale) {
        for (double end : List.of(scale.bandLowUnits(), scale.bandHighUnits())) {
            if (Tolerance.isOutside(-Math.abs(scale.settingFor(end) - end), Quantity.TRIM)) {
                remark(
                        about,
                        "the end of its band at %s is no whole step of the indicator",
                        FindingText.trim(end, 0.01, scale.unit()));
            }
        }
    }
}
