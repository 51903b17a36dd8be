package org.steelyard.report.grade;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.grade.mark.MarkedItem;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;

/** {@code grades.csv}: a line for each sheet. */
final class GradeCsv {

    private GradeCsv() {}

    static void write(List<MarkedSheet> sheets, MarkingScheme scheme, Path file) throws IOException {
        try (CsvFile csv = new CsvFile(file, headings(scheme))) {
            for (MarkedSheet sheet : sheets) {
                csv.write(line(sheet, scheme));
            }
        }
    }

    private static List<String> headings(MarkingScheme scheme) {
        List<String> headings = new ArrayList<>(List.of(
                "student",
                "exercise",
                "source",
                "tail",
                "points",
                "out_of",
                "percent",
                "result",
                "cause",
                "certainty",
                "handed_in",
                "gave_way"));
        for (ItemRule rule : scheme.items()) {
            String item = rule.item().key().replace('-', '_');
            headings.addAll(List.of(item + "_claimed", item + "_right", item + "_outcome", item + "_points"));
        }
        headings.add("told");
        return headings;
    }

    private static CsvLine line(MarkedSheet sheet, MarkingScheme scheme) {
        CsvLine line = new CsvLine()
                .text(sheet.sheet().student())
                .text(sheet.exercise().loading().flight().flight())
                .text(sheet.sheet().origin().toString())
                .text(sheet.exercise().loading().tail().registration())
                .number(sheet.points())
                .number(sheet.outOf())
                .number(Math.round(sheet.percent() * 100) / 100.0)
                .text(GradeWords.verdict(sheet))
                .text(GradeWords.cause(sheet))
                .text(GradeWords.sure(sheet))
                .number(sheet.handedIn().times())
                .text(GradeWords.gaveWay(sheet.handedIn(), "; "));
        for (ItemRule rule : scheme.items()) {
            Optional<MarkedItem> item = item(sheet, rule.item());
            if (item.isPresent()) {
                line.text(item.get().claimed())
                        .text(item.get().right())
                        .text(item.get().outcome().label())
                        .number(item.get().points());
            } else {
                line.blank().blank().text("not asked").blank();
            }
        }
        return line.text(GradeWords.toldInOne(sheet));
    }

    static Optional<MarkedItem> item(MarkedSheet sheet, SheetItem item) {
        return sheet.items().stream().filter(one -> one.item() == item).findFirst();
    }
}
