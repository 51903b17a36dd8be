package org.steelyard.grade.text;

import org.steelyard.grade.working.Answer;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;

/** Answers in words. */
public final class AnswerText {

    private AnswerText() {}

    /**
     * An answer as a sheet shows it.
     *
     * @param text units of the type
     * @param item which item
     * @param answer the answer
     * @param measure in what a CG is given
     * @return with its unit
     */
    public static String of(FigureText text, SheetItem item, Answer answer, CgMeasure measure) {
        if (answer instanceof Answer.Verdict verdict) {
            return verdict.inLimits() ? "in limits" : "out of limits";
        }
        if (answer instanceof Answer.Limit limit) {
            return limit.limit().label();
        }
        Answer.Figure number = (Answer.Figure) answer;
        return switch (item.kind()) {
            case CG -> text.cg(number.value(), measure);
            case TRIM -> text.trim(number.setting(), number.step() == 0 ? 1 : number.step());
            default -> text.mass(number.value());
        };
    }
}
