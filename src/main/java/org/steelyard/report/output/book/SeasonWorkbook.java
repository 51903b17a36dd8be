package org.steelyard.report.output.book;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.policy.Policy;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.StreamedSheets;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.book.WorkbookText;
import org.steelyard.report.file.DiskFault;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.table.season.RecordedTrimTable;
import org.steelyard.report.table.season.SpreadTable;
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.Work;

/**
 * The workbook of a season. Flights, findings and rejected rows are streamed to disk as they come; the sheets that sum
 * them up are made at the end and put before them. The same calls give the same bytes. The file appears under its name
 * when it is complete; closing without {@link #finish} leaves nothing.
 *
 * <p>Not safe for use by several threads at once.
 */
public final class SeasonWorkbook implements AutoCloseable {

    /** The format wants a time; one that never changes keeps the bytes the same. */
    private static final Date STAMP = Date.from(Instant.parse("2000-01-01T00:00:00Z"));

    private final Path file;
    private final Path part;
    private final Policy policy;
    private final WorkbookLimits limits;
    private final Optional<WorkbookPart> listing;
    private final XSSFWorkbook book = new XSSFWorkbook();
    private final StreamedSheets streamed;
    private final WorkbookStyles listStyles = WorkbookStyles.forLists(book);
    private final WorkbookStyles styles = WorkbookStyles.forPages(book);
    private final WorkbookText text;
    private final EndlessSheet findingRows;
    private final EndlessSheet noteRows;
    private final EndlessSheet flightRows;
    private final EndlessSheet rejectedRows;
    private final SheetFindings findings;
    private final SheetFlights flights;
    private final SheetRejected rejected;

    private SeasonWorkbook(Path file, Policy policy, WorkbookLimits limits, Optional<WorkbookPart> listing) {
        this.listing = listing;
        this.file = file;
        this.part = file.resolveSibling("." + file.getFileName() + ".part");
        this.policy = policy;
        this.limits = limits;
        this.streamed = new StreamedSheets(book, file);
        text = new WorkbookText(limits.cellChars());
        String part = listing.map(WorkbookPart::flightsNote).orElse("");
        findingRows = roll(SheetFindings.LAYOUT.noting(part));
        noteRows = roll(SheetFindings.NOTES.noting(part));
        flightRows = roll(SheetFlights.LAYOUT.noting(part));
        rejectedRows = roll(SheetRejected.LAYOUT.noting(
                listing.map(WorkbookPart::rejectedNote).orElse("")));
        findings = new SheetFindings(findingRows, noteRows, listStyles);
        flights = new SheetFlights(flightRows, listStyles);
        rejected = new SheetRejected(rejectedRows, listStyles, text, limits.columns());
    }

    private EndlessSheet roll(SheetLayout layout) {
        return new EndlessSheet(streamed, listStyles, text, layout, limits.rows());
    }

    /**
     * Begins a workbook.
     *
     * @param file where it will stand; its folder must exist
     * @param policy the rules by which the flights were judged
     * @return a workbook without rows
     * @throws IOException if the disk does not take it
     */
    public static SeasonWorkbook open(Path file, Policy policy) throws IOException {
        return open(file, policy, WorkbookLimits.FORMAT);
    }

    public static SeasonWorkbook open(Path file, Policy policy, WorkbookLimits limits) throws IOException {
        return DiskFault.checkedMaking(() -> new SeasonWorkbook(file, policy, limits, Optional.empty()));
    }

    /** A workbook that lists a part of the season only; what it sums up is of the whole. */
    public static SeasonWorkbook open(Path file, Policy policy, WorkbookPart listing) throws IOException {
        return DiskFault.checkedMaking(
                () -> new SeasonWorkbook(file, policy, WorkbookLimits.FORMAT, Optional.of(listing)));
    }

    /**
     * Adds a flight with its findings.
     *
     * @param flight the flight
     * @throws IOException if the disk does not take it
     */
    public void flight(AuditedFlight flight) throws IOException {
        begin(List.of(flight)).make().add();
    }

    /** Keeps a place for the next flights with their findings; what is begun first is to be added first. */
    Work begin(List<AuditedFlight> batch) throws IOException {
        return DiskFault.checkedMaking(() -> Work.all(List.of(flights.begin(batch), findings.begin(batch))));
    }

    /**
     * Adds a row that did not become a flight.
     *
     * @param row the row
     * @throws IOException if the disk does not take it
     */
    public void rejected(RejectedRow row) throws IOException {
        DiskFault.checked(() -> rejected.add(row));
    }

    /**
     * Adds what the season comes to and writes the file.
     *
     * @param summary figures of the flights added
     * @param facts what was read
     * @throws IOException if the file cannot be written
     * @throws IllegalStateException if the summary is of another number of flights
     */
    public void finish(SeasonSummary summary, RunFacts facts) throws IOException {
        if (listing.isEmpty() && summary.all().flights() != flightRows.rows()) {
            throw new IllegalStateException("the summary is of " + summary.all().flights() + " flights, but "
                    + flightRows.rows() + " were written");
        }
        DiskFault.checked(() -> fill(summary, facts));
        write();
    }

    private void fill(SeasonSummary summary, RunFacts facts) {
        WorkbookPage page = new WorkbookPage(text.cell(facts.season()));
        SheetsOfStatistics statistics = new SheetsOfStatistics(book, listStyles, styles, text, this::roll);
        statistics.write(summary, page);
        new SheetOverview(grid(SheetOverview.NAME), styles).write(summary, facts, policy, page);
        new SheetOfTables(grid(SheetOfTables.TRIM_SPREAD), styles)
                .write(
                        "Spread of take-off trim and CG by type and flap setting",
                        SpreadTable.METHOD,
                        List.of(SpreadTable.trim(summary), SpreadTable.cg(summary)),
                        page);
        boolean recordedTrim = !summary.recordedTrim().isEmpty();
        if (recordedTrim) {
            new SheetOfTables(grid(SheetOfTables.RECORDED_TRIM), styles)
                    .write(RecordedTrimTable.TITLE, RecordedTrimTable.NOTE, RecordedTrimTable.of(summary), page);
        }
        SheetRunFacts runFacts = new SheetRunFacts(grid(SheetRunFacts.NAME), styles);
        runFacts.write(facts, policy, List.of(findingRows, flightRows, noteRows, rejectedRows), text.cutCells());
        order(recordedTrim, statistics);
        runFacts.print(page);
        findingRows.finish(page, SheetFindings.NONE);
        noteRows.finish(page, SheetFindings.NO_NOTES);
        flightRows.finish(page, SheetFlights.NONE);
        rejectedRows.finish(page, SheetRejected.NONE);
        statistics.finish(page);
        properties(facts);
    }

    private SheetGrid grid(String name) {
        return new SheetGrid(book.createSheet(name), text);
    }

    private void order(boolean recordedTrim, SheetsOfStatistics statistics) {
        List<String> names = new ArrayList<>();
        names.add(SheetOverview.NAME);
        names.addAll(statistics.charts());
        names.addAll(findingRows.names());
        names.addAll(flightRows.names());
        names.add(SheetOfTables.TRIM_SPREAD);
        names.addAll(statistics.sheets());
        if (recordedTrim) {
            names.add(SheetOfTables.RECORDED_TRIM);
        }
        names.addAll(noteRows.names());
        names.addAll(rejectedRows.names());
        names.addAll(statistics.data());
        names.add(SheetRunFacts.NAME);
        for (int position = 0; position < names.size(); position++) {
            book.setSheetOrder(names.get(position), position);
        }
        book.setActiveSheet(0);
        book.setSelectedTab(0);
    }

    private void properties(RunFacts facts) {
        CoreProperties core = book.getProperties().getCoreProperties();
        core.setCreator("Steelyard");
        core.setTitle(text.cell("Season " + facts.season()));
        core.setDescription(Caution.TEXT);
        core.setCreated(Optional.of(STAMP));
        core.setModified(Optional.of(STAMP));
    }

    private void write() throws IOException {
        streamed.write(part);
        try {
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Removes everything temporary; the finished file stays. */
    @Override
    public void close() throws IOException {
        Files.deleteIfExists(part);
        streamed.close();
        book.close();
    }
}
