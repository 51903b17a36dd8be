package org.steelyard.spark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.spark.merge.PlacedFlight;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.RowReader;
import org.steelyard.report.column.FindingList;
import org.steelyard.report.column.FlightList;
import org.steelyard.report.file.FileSum;
import org.steelyard.spark.merge.MergedReports;
import org.steelyard.report.season.PartReports;
import org.steelyard.run.DuplicateText;
import org.steelyard.run.RowAuditor;

/** The second pass over a piece: every flight computed, judged, written and counted. */
final class PieceAudit {

    private final Setup setup;
    private final Policy policy;
    private final Store store;
    private final String staging;
    private final Part part;
    private final Piece piece;
    private final Map<Integer, Twice> twice = new HashMap<>();
    private final Part.Rows rows;
    private long place;
    private int index;

    private PieceAudit(Setup setup, Store store, String staging, Part part, Piece piece, long place) {
        this.setup = setup;
        this.policy = setup.configuration().policy();
        this.store = store;
        this.staging = staging;
        this.part = part;
        this.piece = piece;
        this.place = place;
        rows = new Part.Rows(piece.file());
    }

    /**
     * Audits a piece.
     *
     * @param setup what the run is set up with
     * @param store where files are
     * @param staging address of a folder that takes the files of all attempts
     * @param attempt tells this attempt from others
     * @param part what the flights are added to
     * @param piece the piece
     * @param twice its flights that may stand in other rows, too
     * @param place place of its first flight in the season
     */
    static void run(
            Setup setup,
            Store store,
            String staging,
            String attempt,
            Part part,
            Piece piece,
            Iterable<Twice> twice,
            long place)
            throws IOException {
        PieceAudit audit = new PieceAudit(setup, store, staging, part, piece, place);
        twice.forEach(one -> audit.twice.put(one.index(), one));
        audit.run(attempt);
    }

    private void run(String attempt) throws IOException {
        try (Scratch scratch = new Scratch()) {
            Path flights = scratch.folder().resolve("flights.parquet");
            Path findings = scratch.folder().resolve("findings.parquet");
            PartReports others = new PartReports(scratch.folder());
            try (OpenPiece open = OpenPiece.open(piece, setup, store);
                    others;
                    ParquetOutput<AuditedFlight> flightRows =
                            new ParquetOutput<>(flights, "flight", FlightList.COLUMNS);
                    ParquetOutput<FindingList.Found> findingRows =
                            new ParquetOutput<>(findings, "finding", FindingList.COLUMNS)) {
                for (Optional<RawRows> batch = open.next(); batch.isPresent(); batch = open.next()) {
                    audit(batch.get(), others, flightRows, findingRows);
                }
            }
            part.rows.put(piece.number(), rows);
            put("flights.parquet", flights, attempt, ".parquet");
            put("findings.parquet", findings, attempt, ".parquet");
            for (Path file : others.rejectedFile().stream().toList()) {
                put("rejected", file, attempt, ".csv");
            }
            for (Path file : others.skippedFile().stream().toList()) {
                put("skipped", file, attempt, ".csv");
            }
        }
    }

    private void put(String dataSet, Path file, String attempt, String ending) throws IOException {
        String address = staging + "/attempts/" + dataSet + "-" + piece.number() + "-" + attempt + ending;
        store.put(file, address);
        part.written.add(new Part.Written(dataSet, piece.number(), address, FileSum.of(file)));
    }

    private void audit(RawRows batch, PartReports others, ParquetOutput<AuditedFlight> flights, ParquetOutput<FindingList.Found> findings)
            throws IOException {
        List<ParsedRow> parsed = batch.parse();
        for (int i = 0; i < parsed.size(); i++) {
            RawRow row = batch.rows().get(i);
            parsed.get(i).match(new ParsedRow.Cases<Void, IOException>() {
                @Override
                public Void accepted(Loading loading) throws IOException {
                    flight(loading, batch.reader(), row, others, flights, findings);
                    return null;
                }

                @Override
                public Void item() {
                    throw new IllegalStateException("a season with load items in files of their own is refused");
                }

                @Override
                public Void rejected(RejectedRow rejected) throws IOException {
                    reject(rejected, others);
                    return null;
                }

                @Override
                public Void blank() {
                    rows.blank++;
                    return null;
                }

                @Override
                public Void skipped(SkippedRow skipped) throws IOException {
                    skip(skipped, others);
                    return null;
                }
            });
        }
    }

    private void flight(
            Loading loading,
            RowReader reader,
            RawRow row,
            PartReports others,
            ParquetOutput<AuditedFlight> flights,
            ParquetOutput<FindingList.Found> findings)
            throws IOException {
        Twice judged = twice.get(index++);
        if (judged != null && !stands(judged, loading, reader, row, others)) {
            return;
        }
        AuditedFlight flight = RowAuditor.audit(loading, policy);
        rows.accepted++;
        part.tally.add(flight);
        String sheet = loading.origin().sheet();
        part.choice.offer(
                new PlacedFlight(place, flight),
                MergedReports.pageRank(place),
                () -> new Part.Shown(piece.file(), sheet, row));
        place++;
        flights.write(flight);
        for (FindingList.Found finding : FindingList.of(flight)) {
            findings.write(finding);
        }
    }

    /** Whether a flight that stands twice counts here; a row that does not goes where it is listed. */
    private boolean stands(Twice judged, Loading loading, RowReader reader, RawRow row, PartReports others)
            throws IOException {
        Origin other = judged.other().origin();
        switch (judged.kind()) {
            case REPEATS -> skip(DuplicateText.repeats(loading, other), others);
            case DIFFERS -> {
                InputProblem differs = DuplicateText.differs(loading, other, policy.duplicates());
                reject(reader.reject(row, differs), others);
            }
            case COUNTS_AGAIN -> {
                rows.countedAgain++;
                told(loading, other);
            }
            case COUNTS_TOO -> {
                rows.countedToo++;
                told(loading, other);
            }
            case STANDS -> {}
        }
        return judged.counts();
    }

    private void told(Loading loading, Origin other) {
        if (rows.firstCounted.isEmpty()) {
            rows.firstCounted = DuplicateText.counts(loading, other);
        }
    }

    private void reject(RejectedRow row, PartReports others) throws IOException {
        rows.rejected++;
        part.reject(piece.number(), Sent.Rejected.of(row));
        others.rejected(row);
    }

    private void skip(SkippedRow row, PartReports others) throws IOException {
        rows.skipped++;
        part.skip(piece.number(), Sent.Skipped.of(row));
        others.skipped(row);
    }
}
