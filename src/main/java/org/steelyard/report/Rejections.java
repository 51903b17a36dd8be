package org.steelyard.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steelyard.model.InputProblem;
import org.steelyard.model.ProblemCode;
import org.steelyard.model.RejectedRow;

/** Counts the reasons of rejected rows and keeps the first rows. */
final class Rejections {

    private static final int KEPT = 20;

    private final List<RejectedRow> first = new ArrayList<>();
    private final Map<ProblemCode, Long> reasons = new EnumMap<>(ProblemCode.class);

    void add(RejectedRow row) {
        if (first.size() < KEPT) {
            first.add(row);
        }
        for (InputProblem problem : row.problems()) {
            reasons.merge(problem.code(), 1L, Long::sum);
        }
    }

    List<RejectedRow> first() {
        return Collections.unmodifiableList(first);
    }

    Map<ProblemCode, Long> reasons() {
        return Collections.unmodifiableMap(reasons);
    }
}
