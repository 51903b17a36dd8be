package org.steelyard.config.type;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.steelyard.config.value.Cg;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.NotAcceptedException;
import org.steelyard.config.value.Words;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.Amounts;

/** Reads one of a type's trim scales. Inside, nose-up is positive, whichever sign the scale has. */
final class TrimPart {

    private static final String UP = "nose-up";
    private static final String DOWN = "nose-down";
    private static final String UP_AND_DOWN = "up-and-down";
    private static final String PLAIN = "plain";
    private static final MeanChord NO_CHORD = new MeanChord(0, 1);

    private final Optional<MeanChord> chord;
    private final Optional<String> positive;

    private TrimPart(Optional<MeanChord> chord, Optional<String> positive) {
        this.chord = chord;
        this.positive = positive;
    }

    static Optional<TrimScale> read(Keys keys, Optional<Geometry> geometry) {
        Phase phase =
                keys.read("phase", Words.choice(Phase::label, List.of(Phase.TAKEOFF, Phase.LANDING)), Phase.TAKEOFF);
        String flaps = keys.text("flaps");
        String thrust = keys.find("thrust", Keys::notBlank).orElse("");
        TrimUnit.Measure measure = measure(keys);
        boolean plain = keys.find("numbers", Words.choice(UP_AND_DOWN, PLAIN))
                .map(PLAIN::equals)
                .orElse(false);
        TrimBasis basis = keys.find("basis", Words.choice(TrimBasis::label, List.of(TrimBasis.values())))
                .orElse(TrimBasis.DOCUMENT);
        SettingRounding rounding = keys.find(
                        "rounding", Words.choice(SettingRounding::label, List.of(SettingRounding.values())))
                .orElse(SettingRounding.NEAREST_HALFWAY_UP);
        Optional<String> positive = keys.require("positive", Words.choice(UP, DOWN));
        double stepUnits = keys.number("step", WrittenNumber::positiveNumber);
        TrimPart part = new TrimPart(geometry.map(Geometry::chord), positive);
        Optional<Band> band = keys.part("band", part::band);
        Optional<TrimLaw> law = keys.part("law", part::law);
        return keys.make(() -> new TrimScale(
                phase,
                flaps,
                thrust,
                new TrimUnit(measure, part.numbering(plain)),
                law.orElseThrow(),
                stepUnits,
                band.orElseThrow().lowUnits(),
                band.orElseThrow().highUnits(),
                rounding,
                basis));
    }

    /** What the numbers of a scale or indicator measure. */
    static TrimUnit.Measure measure(Keys keys) {
        return keys.read(
                "unit",
                Words.choice(TrimUnit.Measure::label, List.of(TrimUnit.Measure.values())),
                TrimUnit.Measure.UNITS);
    }

    private TrimUnit.Numbering numbering(boolean plain) {
        if (!plain) {
            return TrimUnit.Numbering.UP_DN;
        }
        return positive.equals(Optional.of(DOWN)) ? TrimUnit.Numbering.PLAIN_NOSE_DOWN : TrimUnit.Numbering.PLAIN;
    }

    private record Band(double lowUnits, double highUnits) {}

    private Optional<Band> band(Keys keys) {
        double lowUnits = keys.number("most-nose-down", this::trimUnits);
        double highUnits = keys.number("most-nose-up", this::trimUnits);
        return keys.make(() -> new Band(lowUnits, highUnits));
    }

    private Optional<TrimLaw> law(Keys keys) {
        keys.take(positive);
        keys.take(chord);
        List<TrimPoint> points = keys.eachIfAny("points", this::point);
        Optional<TrimTable> table = keys.partIfAny("table", this::table);
        Optional<TrimSlope> slope = keys.partIfAny("slope", this::slope);
        if (Stream.of("points", "table", "slope").filter(keys::has).count() != 1) {
            keys.faultHere("a law is one of points, table and slope", "just one of them");
        }
        return keys.make(
                () -> table.isPresent() ? table.get() : slope.isPresent() ? slope.get() : new TrimPoints(points));
    }

    private Optional<TrimPoint> point(Keys keys) {
        keys.take(chord);
        double cgPercentMac = keys.number("cg", this::cgPercentMac);
        double trimUnits = keys.number("trim", this::trimUnits);
        return keys.make(() -> new TrimPoint(cgPercentMac, trimUnits));
    }

    private Optional<TrimTable> table(Keys keys) {
        keys.take(positive);
        keys.take(chord);
        List<Double> cgs = keys.values("cg", this::cgPercentMac);
        List<Row> rows = keys.each("rows", this::row);
        return keys.make(() -> new TrimTable(
                amounts(rows.stream().map(Row::massKg).toList()),
                amounts(cgs),
                rows.stream().map(Row::trimUnits).toList()));
    }

    private record Row(double massKg, Amounts trimUnits) {}

    private Optional<Row> row(Keys keys) {
        double massKg = keys.number("mass", WrittenNumber.MASS);
        List<Double> trims = keys.values("trim", this::trimUnits);
        return keys.make(() -> new Row(massKg, amounts(trims)));
    }

    private static Amounts amounts(List<Double> values) {
        return Amounts.of(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private Optional<TrimSlope> slope(Keys keys) {
        keys.take(positive);
        keys.take(chord);
        Optional<TrimPoint> anchor = keys.part("anchor", this::point);
        double perPercentMac = keys.number("per-percent-mac", this::trimUnits);
        double fromPercentMac = keys.number("from", this::cgPercentMac);
        double toPercentMac = keys.number("to", this::cgPercentMac);
        return keys.make(
                () -> new TrimSlope(anchor.orElseThrow(), perPercentMac, new CgRange(fromPercentMac, toPercentMac)));
    }

    /** Zero has no sign on any scale. */
    private double trimUnits(String text) throws NotAcceptedException {
        double number = WrittenNumber.number(text);
        return positive.equals(Optional.of(DOWN)) ? 0.0 - number : number;
    }

    private double cgPercentMac(String text) throws NotAcceptedException {
        return Cg.readPercentMac(text, chord.orElse(NO_CHORD));
    }
}
