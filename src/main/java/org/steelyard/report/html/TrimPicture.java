package org.steelyard.report.html;

import java.util.List;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Counted;

/**
 * How the take-off trim of one type spreads, a row for each flap setting: a box from the 25th to the 75th percentile
 * with a bar at the median, a line from the 5th to the 95th, dots at the least and the greatest. Nose-up to the right.
 */
public final class TrimPicture {

    private static final double WIDTH = 420;
    private static final double LEAST_LEFT = 92;
    private static final double LETTER = 6.2;
    private static final double RIGHT = 404;
    private static final double TOP = 6;
    private static final double ROW = 30;

    private final String typeName;
    private final List<TrimGroup> groups;
    private final double left;
    private final Scale trim;
    private final double bottom;

    /** The groups must have a trim. */
    public TrimPicture(String typeName, List<TrimGroup> groups) {
        this.typeName = typeName;
        this.groups = List.copyOf(groups);
        left = groups.stream()
                .mapToDouble(group -> 14 + LETTER * label(group).length())
                .reduce(LEAST_LEFT, Math::max);
        Range range = new Range();
        for (TrimGroup group : groups) {
            Spread spread = group.trimUnits().orElseThrow();
            range.add(spread.min());
            range.add(spread.max());
        }
        trim = range.grown(0.08).scale(left, RIGHT);
        bottom = TOP + ROW * groups.size();
    }

    public void draw(Html html) {
        Svg.open(html, "picture", WIDTH, bottom + 40, "Spread of take-off trim of " + typeName + " by flap setting");
        TrimUnit unit = commonUnit();
        for (double mark : trim.marks(4)) {
            Svg.line(html, mark == 0 ? "grid zero" : "grid", trim.px(mark), TOP, trim.px(mark), bottom);
            String label = FindingText.trim(mark, Math.pow(10, -trim.decimals(4)), unit);
            Svg.text(html, trim.px(mark), bottom + 16, "middle", label);
        }
        Svg.text(html, (left + RIGHT) / 2, bottom + 34, "middle", "take-off trim" + unitText(unit));
        for (int i = 0; i < groups.size(); i++) {
            row(html, groups.get(i), TOP + ROW * (i + 0.5));
        }
        html.closeBlock();
    }

    /** The groups' unit; where their scales differ, numbers alone with UP and DN. */
    private TrimUnit commonUnit() {
        TrimUnit first = groups.get(0).unit();
        return groups.stream().allMatch(group -> group.unit().equals(first)) ? first : TrimUnit.UNITS;
    }

    private static String unitText(TrimUnit unit) {
        return unit.symbol().isEmpty() ? ", units" : "";
    }

    private static String label(TrimGroup group) {
        return "flaps " + group.flapsShown();
    }

    private void row(Html html, TrimGroup group, double y) {
        Spread spread = group.trimUnits().orElseThrow();
        Svg.text(html, left - 8, y - 1, "end", label(group));
        html.element(
                "text",
                Counted.of(spread.n(), "flight"),
                "class",
                "small",
                "x",
                Svg.px(left - 8),
                "y",
                Svg.px(y + 10),
                "text-anchor",
                "end");
        Svg.line(html, "whisker", trim.px(spread.p5()), y, trim.px(spread.p95()), y);
        double from = trim.px(spread.p25());
        double to = trim.px(spread.p75());
        Svg.rect(html, "box", from, y - 7, Math.max(1, to - from), 14);
        Svg.line(html, "median", trim.px(spread.median()), y - 9, trim.px(spread.median()), y + 9);
        StringBuilder ends = new StringBuilder();
        StatusSymbol.CLEAN.at(ends, trim.px(spread.min()), y);
        StatusSymbol.CLEAN.at(ends, trim.px(spread.max()), y);
        Svg.path(html, "ends", ends);
    }
}
