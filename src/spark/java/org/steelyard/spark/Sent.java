package org.steelyard.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.FormerRow;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkipKind;
import org.steelyard.model.input.SkippedRow;

/** Values of the model as they go from machine to machine; these know nothing of it themselves. */
final class Sent {

    private Sent() {}

    /** Where a row stands. */
    record Place(String file, String sheet, long row, Place former) implements Serializable {

        static Place of(Origin origin) {
            return new Place(
                    origin.file(),
                    origin.sheet(),
                    origin.row(),
                    origin.former().map(Place::of).orElse(null));
        }

        Origin origin() {
            return new Origin(file, sheet, row, Optional.ofNullable(former).map(Place::origin));
        }
    }

    /** What is wrong with an input. */
    record Problem(Place place, String column, ProblemCode code, String reason, String value, String expected)
            implements Serializable {

        static Problem of(InputProblem problem) {
            return new Problem(
                    Place.of(problem.origin()),
                    problem.column(),
                    problem.code(),
                    problem.reason(),
                    problem.value(),
                    problem.expected());
        }

        InputProblem problem() {
            return new InputProblem(place.origin(), column, code, reason, value, expected);
        }
    }

    /** A row that cannot be used. */
    record Rejected(
            Place place,
            String mapName,
            List<String> headings,
            List<String> cells,
            List<Problem> problems,
            Place former,
            int round,
            String check)
            implements Serializable {

        static Rejected of(RejectedRow row) {
            Optional<FormerRow> former = row.former();
            return new Rejected(
                    Place.of(row.origin()),
                    row.mapName(),
                    new ArrayList<>(row.headings()),
                    new ArrayList<>(row.cells()),
                    Sent.problems(row.problems()),
                    former.map(one -> Place.of(one.origin())).orElse(null),
                    former.map(FormerRow::round).orElse(0),
                    former.map(FormerRow::check).orElse(""));
        }

        RejectedRow row() {
            return new RejectedRow(
                    place.origin(),
                    mapName,
                    headings,
                    cells,
                    problems.stream().map(Problem::problem).toList(),
                    Optional.ofNullable(former).map(one -> new FormerRow(one.origin(), round, check)));
        }
    }

    /** A row that is passed over. */
    record Skipped(Place place, SkipKind kind, String reason) implements Serializable {

        static Skipped of(SkippedRow row) {
            return new Skipped(Place.of(row.origin()), row.kind(), row.reason());
        }

        SkippedRow row() {
            return new SkippedRow(place.origin(), kind, reason);
        }
    }

    static List<Problem> problems(List<InputProblem> problems) {
        List<Problem> sent = new ArrayList<>();
        problems.forEach(problem -> sent.add(Problem.of(problem)));
        return sent;
    }
}
