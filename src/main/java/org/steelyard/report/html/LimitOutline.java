package org.steelyard.report.html;

import java.util.function.Function;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.report.words.EnvelopeOutline;

/**
 * The outline of an envelope as the path of a drawing; a limit that is straight in moment is the curve that it is.
 *
 * @param x place of a vertex from left to right
 * @param y place of a vertex from top to bottom
 */
public record LimitOutline(Function<LimitPoint, Double> x, Function<LimitPoint, Double> y) {

    /** Up the forward limit and down the aft one. */
    public String of(Envelope envelope) {
        StringBuilder d = new StringBuilder("M");
        for (LimitPoint point : EnvelopeOutline.of(envelope)) {
            d.append(d.length() > 1 ? "L" : "")
                    .append(Svg.px(x.apply(point)))
                    .append(' ')
                    .append(Svg.px(y.apply(point)));
        }
        return d.append('z').toString();
    }
}
