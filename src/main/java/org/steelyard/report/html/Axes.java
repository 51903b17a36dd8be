package org.steelyard.report.html;

import java.util.function.DoubleFunction;
import org.steelyard.report.text.NumberText;

/**
 * The frame of a drawing: grid, marks and titles of two axes.
 *
 * @param x values from left to right
 * @param y values from bottom to top
 * @param marksX about how many marks to the right
 * @param marksY about how many marks upwards
 */
public record Axes(Scale x, Scale y, int marksX, int marksY) {

    private static final double BELOW = 16;

    /** Draws grid and marks. */
    public void draw(Html html, DoubleFunction<String> nameX, DoubleFunction<String> nameY) {
        double left = Math.min(x.fromPx(), x.toPx());
        double right = Math.max(x.fromPx(), x.toPx());
        double top = Math.min(y.fromPx(), y.toPx());
        double bottom = Math.max(y.fromPx(), y.toPx());
        for (double mark : x.marks(marksX)) {
            Svg.line(html, "grid", x.px(mark), top, x.px(mark), bottom);
            Svg.text(html, x.px(mark), bottom + BELOW, "middle", nameX.apply(mark));
        }
        for (double mark : y.marks(marksY)) {
            Svg.line(html, mark == 0 ? "grid zero" : "grid", left, y.px(mark), right, y.px(mark));
            Svg.text(html, left - 6, y.px(mark) + 4, "end", nameY.apply(mark));
        }
    }

    /** Draws grid and marks of plain numbers. */
    public void draw(Html html) {
        draw(
                html,
                value -> NumberText.fixed(value, x.decimals(marksX)),
                value -> NumberText.fixed(value, y.decimals(marksY)));
    }

    /** The title below the lower axis and that above the upright one. */
    public void titles(Html html, String below, String above) {
        Svg.text(html, (x.fromPx() + x.toPx()) / 2, Math.max(y.fromPx(), y.toPx()) + 36, "middle", below);
        Svg.text(html, 2, 12, "start", above);
    }
}
