package org.steelyard.report.html;

import org.steelyard.report.text.PlainNumber;

/** Small helps for drawing: numbers, lines, texts. Looks are set by classes, as the page allows no style in place. */
public final class Svg {

    private Svg() {}

    /** A place to a tenth of a unit. */
    public static String px(double place) {
        return PlainNumber.of(Math.round(place * 10) / 10.0);
    }

    /** Opens a picture that screen readers name by its title. */
    public static Html open(Html html, String look, double width, double height, String title) {
        html.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                look,
                "viewBox",
                "0 0 " + px(width) + " " + px(height),
                "role",
                "img");
        return html.element("title", title);
    }

    /** Opens a picture that fills its frame, whatever that does to its shape. */
    public static Html stretched(Html html, String look, double width, double height, String title) {
        html.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                look,
                "viewBox",
                "0 0 " + px(width) + " " + px(height),
                "preserveAspectRatio",
                "none",
                "role",
                "img");
        return html.element("title", title);
    }

    public static void line(Html html, String look, double x1, double y1, double x2, double y2) {
        html.empty("line", "class", look, "x1", px(x1), "y1", px(y1), "x2", px(x2), "y2", px(y2));
    }

    public static void rect(Html html, String look, double x, double y, double width, double height) {
        html.empty("rect", "class", look, "x", px(x), "y", px(y), "width", px(width), "height", px(height));
    }

    /**
     * A text.
     *
     * @param anchor start, middle or end
     */
    public static void text(Html html, double x, double y, String anchor, String text) {
        html.element("text", text, "x", px(x), "y", px(y), "text-anchor", anchor);
    }

    public static void path(Html html, String look, CharSequence d) {
        html.empty("path", "class", look, "d", d.toString());
    }
}
