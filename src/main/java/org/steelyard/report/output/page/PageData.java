package org.steelyard.report.output.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.report.output.SeasonResult;

/** What the page's script reads: names, units and envelopes of types, counts, rejected rows and the flights. */
final class PageData {

    private static final int TAILS = 2000;
    private static final int PRECISE = 4;

    private PageData() {}

    static void write(Writer page, SeasonResult result, PageFlights flights, Rejections rejections) throws IOException {
        PageSample sample = flights.closed();
        StringWriter head = new StringWriter();
        JsonGenerator json = PageJson.to(head);
        json.writeStartObject();
        json.writeStringField("season", result.facts().season());
        sample(json, sample);
        phases(json);
        PageTypes.write(json, flights.names().types());
        tails(json, flights.names().tails(), result.summary().tails());
        kinds(json, flights.names().kinds());
        typical(json, result.summary().trim());
        rejected(json, result.facts().rejected(), rejections.first());
        json.writeArrayFieldStart("flights");
        json.writeEndArray();
        json.writeEndObject();
        json.close();
        String text = head.toString();
        int inFlights = text.lastIndexOf(']');
        page.write(text, 0, inFlights);
        flights.copy(page);
        page.write(text, inFlights, text.length() - inFlights);
    }

    private static void sample(JsonGenerator json, PageSample sample) throws IOException {
        json.writeObjectFieldStart("sample");
        json.writeNumberField("seed", PageSample.SEED);
        json.writeArrayFieldStart("seen");
        for (Status status : PageNumbers.STATUSES) {
            json.writeNumber(sample.seen(status));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("kept");
        for (Status status : PageNumbers.STATUSES) {
            json.writeNumber(sample.kept(status));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void phases(JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("phases");
        for (Phase phase : PageNumbers.PHASES) {
            json.writeString(phase.label());
        }
        json.writeEndArray();
    }

    /** Names of all tails that flights are written with, and the counts of those with most breaches. */
    private static void tails(JsonGenerator json, List<String> names, List<StatusCount> counts) throws IOException {
        json.writeArrayFieldStart("tails");
        for (String name : names) {
            json.writeString(name);
        }
        json.writeEndArray();
        json.writeNumberField("tailsSeen", counts.size());
        json.writeArrayFieldStart("tailCounts");
        for (StatusCount count : counts.subList(0, Math.min(TAILS, counts.size()))) {
            json.writeStartArray();
            json.writeString(count.group());
            json.writeNumber(count.breached());
            json.writeNumber(count.marginal());
            json.writeNumber(count.flights());
            json.writeEndArray();
        }
        json.writeEndArray();
    }

    private static void kinds(JsonGenerator json, List<PageFlight.Kind> kinds) throws IOException {
        json.writeArrayFieldStart("kinds");
        for (PageFlight.Kind kind : kinds) {
            json.writeStartArray();
            json.writeString(kind.code());
            json.writeNumber(PageNumbers.of(kind.severity()));
            json.writeString(kind.label());
            json.writeEndArray();
        }
        json.writeEndArray();
    }

    /** Typical trim over all flights of the season, as (type, flaps and thrust, n, p5, median, p95). */
    private static void typical(JsonGenerator json, List<TrimGroup> groups) throws IOException {
        json.writeArrayFieldStart("typical");
        for (TrimGroup group : groups) {
            Optional<Spread> spread = group.trimUnits();
            if (spread.isPresent()) {
                json.writeStartArray();
                json.writeString(group.typeId());
                json.writeString(TrimSetting.words(group.flaps(), group.thrust()));
                json.writeNumber(spread.get().n());
                PageJson.number(json, spread.get().p5(), PRECISE);
                PageJson.number(json, spread.get().median(), PRECISE);
                PageJson.number(json, spread.get().p95(), PRECISE);
                json.writeEndArray();
            }
        }
        json.writeEndArray();
    }

    private static void rejected(JsonGenerator json, long all, List<Rejections.Row> first) throws IOException {
        json.writeNumberField("rejectedSeen", all);
        json.writeArrayFieldStart("rejected");
        for (Rejections.Row row : first) {
            json.writeStartArray();
            json.writeString(row.origin());
            json.writeString(row.reasons());
            json.writeEndArray();
        }
        json.writeEndArray();
    }
}
