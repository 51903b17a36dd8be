package org.steelyard.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.steelyard.analyse.SeasonSummary;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.AircraftType;
import org.steelyard.model.RejectedRow;

/**
 * {@code report.html}: one page that works from disk without a network. It runs no script and loads nothing: its policy
 * allows its own style sheet, known by checksum, and nothing else.
 */
final class ReportPage implements SeasonOutput {

    private final Path path;
    private final Map<String, EnvelopeCloud> clouds = new HashMap<>();
    private final Rejections rejections = new Rejections();

    ReportPage(Path path) {
        this.path = path;
    }

    @Override
    public void flight(AuditedFlight flight) {
        AircraftType type = flight.loading().type();
        clouds.computeIfAbsent(type.id(), id -> new EnvelopeCloud(type))
                .add(flight, flight.assessment().status());
    }

    @Override
    public void rejected(RejectedRow row) {
        rejections.add(row);
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        try (Writer writer = Utf8.writer(path)) {
            writer.write(page(result));
        }
    }

    private String page(SeasonResult result) {
        Html html = PageShell.begin("Season report: " + result.facts().season(), "page.css");
        SeasonSummary summary = result.summary();
        PageHead.write(html, result);
        html.open("main");
        PageFindings.kinds(html, summary);
        PageOffenders.write(html, summary);
        PageEnvelopes.write(html, cloudsInOrder(summary));
        PageTrim.write(html, summary, id -> clouds.get(id).type().name());
        PageRecordedTrim.write(html, summary);
        PageFindings.months(html, summary);
        PageInputs.write(html, result, rejections);
        html.closeBlock();
        html.element("footer", "Steelyard " + result.facts().version() + ". " + Caution.TEXT);
        return PageShell.end(html);
    }

    private List<EnvelopeCloud> cloudsInOrder(SeasonSummary summary) {
        return summary.types().stream().map(type -> clouds.get(type.group())).toList();
    }
}
