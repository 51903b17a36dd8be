package org.steelyard.config.section;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.type.MeanChord;

/**
 * Writes envelopes as the {@code envelopes} section of a type's file, which the loader reads back: CGs in % MAC to
 * three decimals, rounded inwards.
 */
public final class EnvelopeYaml {

    private static final int DECIMALS = 3;

    private final StringBuilder text = new StringBuilder();
    private final MeanChord chord;

    private EnvelopeYaml(MeanChord chord) {
        this.chord = chord;
    }

    /**
     * An envelope with what is to be said of it.
     *
     * @param envelope the envelope
     * @param comments lines that stand above it
     */
    public record Entry(Envelope envelope, List<String> comments) {

        public Entry {
            comments = List.copyOf(comments);
        }
    }

    /**
     * The section.
     *
     * @param entries envelopes of one type, at least one
     * @param chord the type's chord
     * @return YAML, ended by a line feed
     */
    public static String section(List<Entry> entries, MeanChord chord) {
        EnvelopeYaml yaml = new EnvelopeYaml(chord);
        yaml.line("envelopes:");
        entries.forEach(yaml::entry);
        return yaml.text.toString();
    }

    private void entry(Entry entry) {
        entry.comments().forEach(comment -> line("  # " + comment));
        line("  " + key(entry.envelope().phase()) + ":");
        limit("forward", entry.envelope().forward());
        limit("aft", entry.envelope().aft());
    }

    private static String key(Phase phase) {
        return switch (phase) {
            case ZERO_FUEL -> "zero-fuel";
            case FLIGHT -> "in-flight";
            case LANDING -> "landing";
            case TAKEOFF, RAMP, DRY_OPERATING -> "take-off";
        };
    }

    private void limit(String name, LimitLine line) {
        line("    " + name + ":");
        line("      straight-in: " + (line.straight() == Straightness.ARM ? "percent-mac" : "moment"));
        line("      points:");
        RoundingMode inwards = line.side() == Side.FORWARD ? RoundingMode.CEILING : RoundingMode.FLOOR;
        for (LimitPoint point : line.points()) {
            BigDecimal cg = new BigDecimal(chord.percentAt(point.armM())).setScale(DECIMALS, inwards);
            line("        - {mass: "
                    + new BigDecimal(Double.toString(point.massKg()))
                            .stripTrailingZeros()
                            .toPlainString() + " kg, cg: "
                    + cg.toPlainString() + " % MAC}");
        }
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
