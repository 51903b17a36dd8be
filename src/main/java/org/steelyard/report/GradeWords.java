package org.steelyard.report;

import java.util.List;
import org.steelyard.grade.Diagnosis;
import org.steelyard.grade.Explanation;
import org.steelyard.grade.FigureText;
import org.steelyard.grade.MarkedSheet;
import org.steelyard.grade.Outcome;
import org.steelyard.model.SheetItem;

/** Words of marks that workbook, page and table share. */
final class GradeWords {

    private GradeWords() {}

    static String student(MarkedSheet sheet) {
        return sheet.sheet().student().isBlank()
                ? "no name (" + sheet.sheet().origin() + ")"
                : sheet.sheet().student();
    }

    static String points(MarkedSheet sheet) {
        return FigureText.points(sheet.points()) + " of " + FigureText.points(sheet.outOf());
    }

    static String verdict(MarkedSheet sheet) {
        return sheet.passed() ? "pass" : "fail";
    }

    /** Whether nothing at all was entered. */
    static boolean isEmpty(MarkedSheet sheet) {
        return sheet.items().stream().allMatch(item -> item.outcome() == Outcome.MISSING);
    }

    /** The cause in a few words. */
    static String cause(MarkedSheet sheet) {
        if (sheet.diagnosis() instanceof Diagnosis.Found found) {
            List<String> labels =
                    found.explanations().stream().map(Explanation::label).toList();
            String rest = found.whole() ? "" : "first error: ";
            return rest + String.join(", or ", labels);
        }
        if (sheet.diagnosis() instanceof Diagnosis.CannotTell cannot) {
            return "cannot tell; first wrong: "
                    + String.join(", ", cannot.first().stream().map(SheetItem::label).toList());
        }
        return isEmpty(sheet) ? "nothing entered" : "";
    }

    static String sure(MarkedSheet sheet) {
        if (sheet.diagnosis() instanceof Diagnosis.Found found) {
            return found.certain().isPresent() && found.whole()
                    ? "one cause"
                    : found.whole() ? "cannot be told apart" : "in part";
        }
        return sheet.diagnosis() instanceof Diagnosis.CannotTell ? "cannot tell" : "";
    }

    /** What the student is told. */
    static List<String> sentences(MarkedSheet sheet) {
        return sheet.diagnosis() instanceof Diagnosis.Found found
                ? found.explanations().stream()
                        .map(one -> String.join(" ", one.sentences()))
                        .toList()
                : List.of();
    }
}
