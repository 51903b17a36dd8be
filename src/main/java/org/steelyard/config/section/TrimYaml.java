package org.steelyard.config.section;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Amounts;

/**
 * Writes trim scales as the {@code trim} section of a type's file, which the loader reads back: CGs in % MAC to three
 * decimals, rounded outwards at the ends, trims to three decimals, nose-up positive where the scale is not one of plain
 * numbers that count nose-down.
 */
public final class TrimYaml {

    private static final int DECIMALS = 3;

    private final StringBuilder text = new StringBuilder();
    private TrimUnit.Numbering numbering = TrimUnit.Numbering.UP_DN;

    private TrimYaml() {}

    /**
     * A scale with what is to be said of it.
     *
     * @param scale the scale
     * @param comments lines that stand above it
     */
    public record Entry(TrimScale scale, List<String> comments) {

        public Entry {
            comments = List.copyOf(comments);
        }
    }

    /**
     * The section.
     *
     * @param entries scales of one type, at least one
     * @return YAML, ended by a line feed
     */
    public static String section(List<Entry> entries) {
        TrimYaml yaml = new TrimYaml();
        yaml.line("trim:");
        entries.forEach(yaml::entry);
        return yaml.text.toString();
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    private void entry(Entry entry) {
        TrimScale scale = entry.scale();
        entry.comments().forEach(comment -> line("  # " + comment.replaceAll("\\p{Cntrl}", " ")));
        line("  - phase: " + scale.phase().label());
        line("    flaps: " + quoted(scale.flaps()));
        if (!scale.thrustRating().isBlank()) {
            line("    thrust: " + quoted(scale.thrustRating()));
        }
        line("    unit: " + scale.unit().measure().label());
        if (scale.unit().numbering().isPlain()) {
            line("    numbers: plain");
        }
        numbering = scale.unit().numbering();
        line("    positive: " + (numbering == TrimUnit.Numbering.PLAIN_NOSE_DOWN ? "nose-down" : "nose-up"));
        line("    basis: " + scale.basis().label());
        line("    step: " + plain(new BigDecimal(Double.toString(scale.stepUnits()))));
        if (scale.rounding() != SettingRounding.NEAREST_HALFWAY_UP) {
            line("    rounding: " + scale.rounding().label());
        }
        line("    band: {most-nose-down: " + trim(scale.bandLowUnits()) + ", most-nose-up: "
                + trim(scale.bandHighUnits()) + "}");
        line("    law:");
        law(scale.law());
    }

    private void law(TrimLaw law) {
        law.match(new TrimLaw.Cases<Void>() {
            @Override
            public Void points(TrimPoints points) {
                TrimYaml.this.points(points.points());
                return null;
            }

            @Override
            public Void table(TrimTable table) {
                TrimYaml.this.table(table);
                return null;
            }

            @Override
            public Void slope(TrimSlope slope) {
                TrimYaml.this.slope(slope);
                return null;
            }
        });
    }

    private void points(List<TrimPoint> points) {
        line("      points:");
        for (int i = 0; i < points.size(); i++) {
            line("        - {cg: " + cg(points.get(i).cgPercentMac(), i, points.size()) + " % MAC, trim: "
                    + trim(points.get(i).trimUnits()) + "}");
        }
    }

    private void slope(TrimSlope slope) {
        line("      slope:");
        line("        anchor: {cg: " + plain(rounded(slope.anchor().cgPercentMac(), RoundingMode.HALF_EVEN))
                + " % MAC, trim: " + trim(slope.anchor().trimUnits()) + "}");
        line("        per-percent-mac: "
                + BigDecimal.valueOf(numbering.turned(slope.unitsPerPercentMac()))
                        .toPlainString());
        line("        from: " + cg(slope.cgRange().fromPercentMac(), 0, 2) + " % MAC");
        line("        to: " + cg(slope.cgRange().toPercentMac(), 1, 2) + " % MAC");
    }

    private void table(TrimTable table) {
        Amounts cgs = table.cgsPercentMac();
        List<String> heads = new ArrayList<>();
        for (int i = 0; i < cgs.size(); i++) {
            heads.add(cg(cgs.at(i), i, cgs.size()) + " % MAC");
        }
        line("      table:");
        line("        cg: [" + String.join(", ", heads) + "]");
        line("        rows:");
        int last = table.massesKg().size() - 1;
        for (int i = 0; i <= last; i++) {
            List<String> trims = new ArrayList<>();
            for (int j = 0; j < cgs.size(); j++) {
                trims.add(trim(table.trimUnits().get(i).at(j)));
            }
            RoundingMode outwards =
                    i == 0 ? RoundingMode.FLOOR : i == last ? RoundingMode.CEILING : RoundingMode.HALF_EVEN;
            String massKg = plain(new BigDecimal(table.massesKg().at(i)).setScale(0, outwards));
            line("          - {mass: " + massKg + " kg, trim: [" + String.join(", ", trims) + "]}");
        }
    }

    /** Rounded outwards at the ends, so that no pair that made the scale falls off it. */
    private static String cg(double cgPercentMac, int index, int size) {
        RoundingMode mode =
                index == 0 ? RoundingMode.FLOOR : index == size - 1 ? RoundingMode.CEILING : RoundingMode.HALF_EVEN;
        return plain(rounded(cgPercentMac, mode));
    }

    private String trim(double units) {
        return plain(rounded(numbering.turned(units), RoundingMode.HALF_EVEN));
    }

    private static BigDecimal rounded(double value, RoundingMode mode) {
        return new BigDecimal(Double.toString(value)).setScale(DECIMALS, mode);
    }

    /** Without zeros at the end and without an exponent. */
    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static String quoted(String name) {
        return "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
