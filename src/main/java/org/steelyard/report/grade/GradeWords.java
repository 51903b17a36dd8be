package org.steelyard.report.grade;

import java.util.List;
import org.steelyard.grade.mark.Diagnosis;
import org.steelyard.grade.mark.Explanation;
import org.steelyard.grade.mark.HandedIn;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.grade.mark.Outcome;
import org.steelyard.grade.text.FigureText;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.Origin;

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

    /** That a student handed in an exercise more than once, for the student; blank otherwise. */
    static String handedIn(HandedIn handed) {
        if (!handed.isRepeated()) {
            return "";
        }
        String often = "Handed in " + HandedIn.times(handed.times()) + ": ";
        return handed.gaveWay().isEmpty()
                ? often + "each sheet counts."
                : often + "this sheet counts, and that of " + gaveWay(handed, " and ") + " does not, as the "
                        + handed.rule().label() + ".";
    }

    static String gaveWay(HandedIn handed, String between) {
        return String.join(
                between, handed.gaveWay().stream().map(Origin::toString).toList());
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
                    + String.join(
                            ", ", cannot.first().stream().map(SheetItem::label).toList());
        }
        if (sheet.diagnosis() instanceof Diagnosis.Rounding) {
            return "rounding";
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

    /**
     * What the student is told.
     *
     * @param sure sentences that hold whichever explanation is true
     * @param either what differs between the explanations; empty where there is only one
     */
    record Feedback(List<String> sure, List<String> either) {

        Feedback {
            sure = List.copyOf(sure);
            either = List.copyOf(either);
        }
    }

    static Feedback feedback(Diagnosis.Found found) {
        List<Explanation> all = found.explanations();
        List<String> sure = all.get(0).sentences().stream()
                .filter(sentence -> all.stream().allMatch(one -> one.sentences().contains(sentence)))
                .distinct()
                .toList();
        List<String> either = all.stream()
                .map(one -> String.join(
                        " ",
                        one.sentences().stream()
                                .filter(sentence -> !sure.contains(sentence))
                                .toList()))
                .filter(words -> !words.isEmpty())
                .distinct()
                .toList();
        return new Feedback(sure, either);
    }

    /** What the student is told, in one text. */
    static String toldInOne(MarkedSheet sheet) {
        if (!(sheet.diagnosis() instanceof Diagnosis.Found found)) {
            return "";
        }
        Feedback feedback = feedback(found);
        String sure = String.join(" ", feedback.sure());
        return sure
                + (sure.isEmpty() || feedback.either().isEmpty() ? "" : " ")
                + String.join(" Or: ", feedback.either());
    }
}
