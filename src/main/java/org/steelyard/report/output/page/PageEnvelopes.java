package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.check.result.Status;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.html.EnvelopePicture;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.StatusSymbol;
import org.steelyard.report.words.EnvelopeCloud;
import org.steelyard.report.words.Points;

/** Every flight in the take-off envelope of its type. */
final class PageEnvelopes {

    private PageEnvelopes() {}

    static void write(Html html, List<EnvelopeCloud> clouds) {
        if (clouds.isEmpty()) {
            return;
        }
        html.open("section", "id", "envelopes", "class", "still").element("h2", "Flights in the take-off envelope");
        html.open("p", "class", "hint");
        html.text("The mark is the verdict on the whole flight: one that is breached for another reason may lie inside."
                + " A point on the line is inside.");
        html.closeBlock();
        html.open("div", "class", "pictures");
        clouds.forEach(cloud -> figure(html, cloud));
        html.close().closeBlock();
    }

    private static void figure(Html html, EnvelopeCloud cloud) {
        EnvelopePicture picture = new EnvelopePicture(cloud);
        html.open("figure");
        picture.draw(html);
        html.open("figcaption").element("strong", cloud.type().name());
        html.open("p", "class", "legend");
        for (Status status : Status.values()) {
            StatusSymbol.of(status).draw(html, Counted.number(cloud.of(status).seen()) + " " + status.label());
            html.text(" ");
        }
        html.close();
        Points clean = cloud.of(Status.CLEAN);
        if (clean.every() > 1) {
            html.text("Thinned: of the clean flights one in " + clean.every() + " is drawn ("
                    + Counted.number(clean.size()) + " of " + Counted.number(clean.seen())
                    + "), of the others all. ");
        }
        if (picture.beyond() > 0) {
            html.text(Counted.of(picture.beyond(), "flight") + (picture.beyond() == 1 ? " lies" : " lie")
                    + " beyond the edge of the picture, drawn on it.");
        }
        html.close().closeBlock();
    }
}
