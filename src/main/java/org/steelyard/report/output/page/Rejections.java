package org.steelyard.report.output.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;

/** Counts the reasons of rejected rows and keeps the first rows, as texts. */
public final class Rejections {

    public static final int KEPT = 2000;
    private static final int TEXT = 400;

    /**
     * A row that could not be used.
     *
     * @param origin where it stands
     * @param reasons why
     */
    record Row(String origin, String reasons) {}

    private final List<Row> first = new ArrayList<>();
    private final Map<ProblemCode, Long> reasons = new EnumMap<>(ProblemCode.class);

    void add(RejectedRow row) {
        if (first.size() < KEPT) {
            String why = row.problems().stream().map(InputProblem::detail).collect(Collectors.joining("; "));
            first.add(new Row(PageJson.cut(row.origin().toString(), TEXT), PageJson.cut(why, TEXT)));
        }
        for (InputProblem problem : row.problems()) {
            reasons.merge(problem.code(), 1L, Long::sum);
        }
    }

    /** Says how often each reason was given, where only the first rows came. */
    void seen(Map<ProblemCode, Long> all) {
        reasons.clear();
        reasons.putAll(all);
    }

    List<Row> first() {
        return Collections.unmodifiableList(first);
    }

    Map<ProblemCode, Long> reasons() {
        return Collections.unmodifiableMap(reasons);
    }
}
