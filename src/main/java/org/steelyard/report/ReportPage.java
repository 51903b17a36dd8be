package org.steelyard.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
        Html html = new Html();
        html.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
        head(html, result.facts().season());
        html.open("body");
        SeasonSummary summary = result.summary();
        PageHead.write(html, result);
        html.open("main");
        PageFindings.kinds(html, summary);
        PageOffenders.write(html, summary);
        PageEnvelopes.write(html, cloudsInOrder(summary));
        PageTrim.write(html, summary, id -> clouds.get(id).type().name());
        PageFindings.months(html, summary);
        PageInputs.write(html, result, rejections);
        html.closeBlock();
        html.element("footer", "Steelyard " + result.facts().version() + ". " + Caution.TEXT);
        return html.close().close().page();
    }

    private List<EnvelopeCloud> cloudsInOrder(SeasonSummary summary) {
        return summary.types().stream().map(type -> clouds.get(type.group())).toList();
    }

    private static void head(Html html, String season) {
        String css = css();
        html.open("head").empty("meta", "charset", "utf-8");
        html.empty(
                "meta",
                "http-equiv",
                "Content-Security-Policy",
                "content",
                "default-src 'none'; style-src 'sha256-" + sha256(css) + "'; base-uri 'none'; form-action 'none'");
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.empty("meta", "name", "color-scheme", "content", "light dark");
        html.element("title", "Season report: " + season);
        html.style(css).closeBlock();
    }

    private static String css() {
        try (InputStream sheet = Objects.requireNonNull(ReportPage.class.getResourceAsStream("page.css"))) {
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
