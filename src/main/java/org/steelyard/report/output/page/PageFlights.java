package org.steelyard.report.output.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.report.text.Utf8;
import org.steelyard.report.text.Work;

/**
 * The flights that the page holds one by one. While the season goes by, those that may be on the page in the end wait
 * in a file, so that memory is bounded whatever the season's size; at the end the chosen ones are copied into the page
 * in the order in which they came.
 */
final class PageFlights implements Closeable {

    private static final char AFTER_PLACE = '\t';

    private final Path waiting;
    private final Writer writer;
    private final PageSample sample;
    private final PageFlight record = new PageFlight();
    private long next;

    PageFlights(Path waiting, PageLimits limits) throws IOException {
        this.waiting = waiting;
        sample = new PageSample(limits);
        writer = Utf8.writer(waiting);
    }

    /** A flight that may be on the page in the end. */
    private record Offered(long place, Status status, AuditedFlight flight) {}

    /** Takes the next flights; their names are numbered here and now, as their numbers follow the order. */
    Work begin(List<AuditedFlight> flights) {
        List<Offered> offered = new ArrayList<>();
        for (AuditedFlight flight : flights) {
            offer(flight, next++, offered);
        }
        return () -> {
            String lines = lines(offered);
            return () -> writer.write(lines);
        };
    }

    /** Says how many flights of a status the season has, where only some of them come. */
    void seen(Status status, long flights) {
        sample.seen(status, flights);
    }

    /** Takes a flight by its place in the season. */
    void add(AuditedFlight flight, long place) throws IOException {
        List<Offered> offered = new ArrayList<>();
        offer(flight, place, offered);
        writer.write(lines(offered));
    }

    private void offer(AuditedFlight flight, long place, List<Offered> offered) {
        Status status = flight.assessment().status();
        if (sample.offer(status, place)) {
            record.meet(flight);
            offered.add(new Offered(place, status, flight));
        }
    }

    private String lines(List<Offered> offered) {
        try (StringWriter lines = new StringWriter()) {
            for (Offered one : offered) {
                lines.write(Long.toString(one.place()));
                lines.write(AFTER_PLACE);
                lines.write(Character.forDigit(PageNumbers.of(one.status()), 10));
                JsonGenerator json = PageJson.to(lines);
                record.write(json, one.flight());
                json.close();
                lines.write('\n');
            }
            return lines.toString();
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory is always written", e);
        }
    }

    /** No more flights come. */
    PageSample closed() throws IOException {
        writer.close();
        sample.close();
        return sample;
    }

    /** The names that the flights are written with. */
    PageFlight names() {
        return record;
    }

    /** Copies the chosen flights, once {@link #closed}, as the elements of an array, and removes the file. */
    void copy(Writer page) throws IOException {
        String between = "\n";
        try (BufferedReader lines = Files.newBufferedReader(waiting, StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                int tab = line.indexOf(AFTER_PLACE);
                Status status = PageNumbers.STATUSES.get(Character.digit(line.charAt(tab + 1), 10));
                if (sample.holds(status, Long.parseLong(line, 0, tab, 10))) {
                    page.write(between);
                    page.write(line, tab + 2, line.length() - tab - 2);
                    between = ",\n";
                }
            }
        }
        Files.delete(waiting);
    }

    @Override
    public void close() throws IOException {
        writer.close();
    }
}
