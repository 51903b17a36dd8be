package org.steelyard.report.output.page;

import org.steelyard.report.html.ChartLibrary;
import org.steelyard.report.html.Html;
import org.steelyard.report.text.Caution;

/** The end of the page: who made it, the caution, and the licence of what it carries. */
final class PageFoot {

    private PageFoot() {}

    static void write(Html html, String version) {
        html.open("footer").element("p", "Steelyard " + version + ". " + Caution.TEXT);
        html.open("details");
        html.element(
                "summary",
                "The live pictures are drawn with " + ChartLibrary.NAME + " " + ChartLibrary.version()
                        + ", under the MIT licence.");
        html.element("pre", ChartLibrary.licence(), "class", "licence");
        html.close().closeBlock();
    }
}
