package org.steelyard.spark;

import java.io.IOException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.steelyard.spark.merge.FlightChoice;
import org.steelyard.spark.merge.MergeableTally;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.SkipKind;
import org.steelyard.read.table.RawRow;
import org.steelyard.report.file.FileSum;
import org.steelyard.spark.merge.MergedReports;

/** What some pieces of a season come to; parts are merged in any order. */
final class Part implements Serializable {

    private static final long serialVersionUID = 1;

    /** A flight that the outputs show one by one: its row, from which it is made anew. */
    record Shown(int file, String sheet, RawRow row) implements Serializable {}

    /** A file that a worker has written: its data set, its piece, where it lies, and by what it is known again. */
    record Written(String dataSet, int piece, String address, FileSum sum) implements Serializable {

        private static final int DIGITS = 6;

        /** Its name among the reports. */
        String name() {
            String digits = Integer.toString(piece);
            return dataSet + "/part-" + "0".repeat(Math.max(0, DIGITS - digits.length())) + digits
                    + (dataSet.endsWith(".parquet") ? ".parquet" : ".csv");
        }
    }

    /** The rows of one piece. */
    static final class Rows implements Serializable {

        private static final long serialVersionUID = 1;

        final int file;
        long accepted;
        long rejected;
        long blank;
        long skipped;
        long countedAgain;
        long countedToo;
        String firstCounted = "";

        Rows(int file) {
            this.file = file;
        }
    }

    private static final int SKIPPED = 200;

    final MergeableTally tally;
    final FlightChoice<Shown> choice = new FlightChoice<>(MergedReports.sizes());
    final Map<Integer, Rows> rows = new TreeMap<>();
    final Map<ProblemCode, Long> reasons = new EnumMap<>(ProblemCode.class);
    final Map<SkipKind, Long> skipKinds = new EnumMap<>(SkipKind.class);
    final List<Written> written = new ArrayList<>();
    private final Map<Integer, List<Sent.Rejected>> rejected = new TreeMap<>();
    private final Map<Integer, List<Sent.Skipped>> skipped = new TreeMap<>();

    Part(MergeableTally tally) {
        this.tally = tally;
    }

    static Part empty(Setup setup) {
        return new Part(new MergeableTally(setup.configuration().policy(), setup.by(), KllRanks::new));
    }

    void reject(int piece, Sent.Rejected row) {
        keep(rejected, piece, row, MergedReports.REJECTED);
        row.problems().forEach(problem -> reasons.merge(problem.code(), 1L, Long::sum));
    }

    void skip(int piece, Sent.Skipped row) {
        keep(skipped, piece, row, SKIPPED);
        skipKinds.merge(row.kind(), 1L, Long::sum);
    }

    private static <T> void keep(Map<Integer, List<T>> first, int piece, T row, int most) {
        List<T> ofPiece = first.computeIfAbsent(piece, absent -> new ArrayList<>());
        if (ofPiece.size() < most) {
            ofPiece.add(row);
        }
    }

    Part merge(Part other) {
        tally.merge(other.tally);
        choice.merge(other.choice);
        rows.putAll(other.rows);
        other.reasons.forEach((code, count) -> reasons.merge(code, count, Long::sum));
        other.skipKinds.forEach((kind, count) -> skipKinds.merge(kind, count, Long::sum));
        written.addAll(other.written);
        rejected.putAll(other.rejected);
        skipped.putAll(other.skipped);
        cut(rejected, MergedReports.REJECTED);
        cut(skipped, SKIPPED);
        return this;
    }

    /** Lets go of what stands behind so many rows. */
    private static <T> void cut(Map<Integer, List<T>> first, int most) {
        int sum = 0;
        for (List<T> ofPiece : first.values()) {
            int room = Math.max(0, most - sum);
            if (ofPiece.size() > room) {
                ofPiece.subList(room, ofPiece.size()).clear();
            }
            sum += ofPiece.size();
        }
        first.values().removeIf(List::isEmpty);
    }

    List<Sent.Rejected> firstRejected() {
        return rejected.values().stream().flatMap(List::stream).limit(MergedReports.REJECTED).toList();
    }

    List<Sent.Skipped> firstSkipped() {
        return skipped.values().stream().flatMap(List::stream).limit(SKIPPED).toList();
    }

    /** The rows of a file over all its pieces. */
    Rows ofFile(int file) {
        Rows all = new Rows(file);
        for (Map.Entry<Integer, Rows> piece : rows.entrySet()) {
            Rows one = piece.getValue();
            if (one.file == file) {
                all.accepted += one.accepted;
                all.rejected += one.rejected;
                all.blank += one.blank;
                all.skipped += one.skipped;
                all.countedAgain += one.countedAgain;
                all.countedToo += one.countedToo;
                all.firstCounted = all.firstCounted.isEmpty() ? one.firstCounted : all.firstCounted;
            }
        }
        return all;
    }

}
