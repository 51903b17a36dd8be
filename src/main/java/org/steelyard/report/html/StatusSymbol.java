package org.steelyard.report.html;

import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;

/** Marks that tell verdicts apart by shape as well as by colour, always beside the word or a legend. */
public enum StatusSymbol {
    /** A full disc. */
    CLEAN("clean", "M6 2a4 4 0 1 0 0 8a4 4 0 1 0 0-8z"),
    /** An open diamond. */
    MARGINAL("marginal", "M6 1.4L10.6 6L6 10.6L1.4 6z"),
    /** A cross. */
    BREACHED("breached", "M2 2L10 10M10 2L2 10"),
    /** A bar. */
    NOTE("note", "M2 6H10"),
    /** An open square with a bar. */
    REJECTED("rejected", "M2 2H10V10H2zM2 10L10 2");

    private final String look;
    private final String path;

    StatusSymbol(String look, String path) {
        this.look = look;
        this.path = path;
    }

    public static StatusSymbol of(Status status) {
        return switch (status) {
            case CLEAN -> CLEAN;
            case MARGINAL -> MARGINAL;
            case BREACHED -> BREACHED;
        };
    }

    public static StatusSymbol of(Severity severity) {
        return switch (severity) {
            case NOTE -> NOTE;
            case MARGINAL -> MARGINAL;
            case BREACH -> BREACHED;
        };
    }

    /** Name of the class that gives the colour. */
    public String look() {
        return look;
    }

    /** The mark with a word beside it. */
    public void draw(Html html, String word) {
        html.open("span", "class", "mark " + look);
        html.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "sign",
                "viewBox",
                "0 0 12 12",
                "aria-hidden",
                "true");
        Svg.path(html, "shape", path);
        html.close().text(word).close();
    }

    /** Appends the mark around a point of a picture. */
    void at(StringBuilder d, double x, double y) {
        String move = "M" + Svg.px(x);
        switch (this) {
            case MARGINAL -> d.append(move).append(' ').append(Svg.px(y - 3.4)).append("l3.4 3.4l-3.4 3.4l-3.4-3.4z");
            case BREACHED ->
                d.append("M")
                        .append(Svg.px(x - 3))
                        .append(' ')
                        .append(Svg.px(y - 3))
                        .append("l6 6m0-6l-6 6");
            default -> d.append(move).append(' ').append(Svg.px(y)).append("h0");
        }
    }
}
