package org.steelyard.report.output.page;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.type.AircraftType;
import org.steelyard.report.html.ChartLibrary;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageShell;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.Utf8;
import org.steelyard.report.text.Work;
import org.steelyard.report.words.EnvelopeCloud;

/**
 * {@code report.html}: one page that works from disk without a network. Without a script it shows and prints the
 * overview, still pictures and tables; its script makes the pictures live and lets every flight be found and looked at.
 * Its policy allows its own scripts and style sheets, known by checksum, and nothing else. Its size is bounded
 * ({@link PageLimits}).
 */
public final class ReportPage implements SeasonOutput {

    private static final List<String> SCRIPTS = List.of(
            "page-base.js",
            "page-season.js",
            "page-plot.js",
            "page-pictures.js",
            "page-tables.js",
            "page-flight.js",
            "page-start.js");

    private final Path path;
    private final PageFlights flights;
    private final Map<String, EnvelopeCloud> clouds = new HashMap<>();
    private final Rejections rejections = new Rejections();

    public ReportPage(Path path, Path waiting) throws IOException {
        this(path, waiting, PageLimits.USUAL);
    }

    ReportPage(Path path, Path waiting, PageLimits limits) throws IOException {
        this.path = path;
        flights = new PageFlights(waiting, limits);
    }

    @Override
    public Work begin(List<AuditedFlight> batch) {
        batch.forEach(this::draw);
        return flights.begin(batch);
    }

    /** Takes a flight by its place in the season, of which not all flights come. */
    public void flight(AuditedFlight flight, long place) throws IOException {
        draw(flight);
        flights.add(flight, place);
    }

    /** Says how many flights and reasons the season has, where only some of them came. */
    public void seen(Map<Status, Long> ofStatus, Map<ProblemCode, Long> reasons) {
        ofStatus.forEach(flights::seen);
        rejections.seen(reasons);
    }

    private void draw(AuditedFlight flight) {
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
        String library = Html.scriptBody(ChartLibrary.script());
        String own = Html.scriptBody(SCRIPTS.stream().map(ChartLibrary::text).collect(Collectors.joining("\n")));
        Html html = PageShell.begin(
                "Season report: " + result.facts().season(),
                List.of(ChartLibrary.style(), ChartLibrary.text("page.css")),
                List.of(library, own));
        body(html, result);
        try (Writer writer = Utf8.writer(path)) {
            html.open("script", "type", "application/json", "id", "season-data").drain(writer);
            PageData.write(writer, result, flights, rejections);
            html.closeBlock();
            html.script(library).script(own);
            writer.write(PageShell.end(html));
        }
    }

    private void body(Html html, SeasonResult result) {
        SeasonSummary summary = result.summary();
        html.element("a", "Skip to the report", "class", "skip", "href", "#report");
        PageHead.write(html, result);
        html.open("main", "id", "report");
        PageOverview.write(html, summary);
        html.open("div", "id", "live").closeBlock();
        PageFindings.kinds(html, summary);
        PageOffenders.write(html, summary);
        PageEnvelopes.write(html, cloudsInOrder(summary));
        PageTrim.write(html, summary, id -> clouds.get(id).type().name());
        PageRecordedTrim.write(html, summary);
        PageFindings.months(html, summary);
        PageInputs.write(html, result, rejections);
        html.closeBlock();
        PageFoot.write(html, result.facts().version());
    }

    private List<EnvelopeCloud> cloudsInOrder(SeasonSummary summary) {
        return summary.types().stream().map(type -> clouds.get(type.group())).toList();
    }

    @Override
    public void close() throws IOException {
        flights.close();
    }
}
