package org.steelyard.report.output.page;

import java.util.List;
import java.util.Map;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.file.OutputFile;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageTable;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.output.SkippedRows;
import org.steelyard.report.table.season.InputTable;
import org.steelyard.report.words.Methods;

/** What was read and what was not, where the rest is, and how it was computed. */
final class PageInputs {

    private static final int SHOWN = 20;

    private PageInputs() {}

    static void write(Html html, SeasonResult result, Rejections rejections) {
        html.open("section", "id", "inputs").element("h2", "Inputs");
        remarks(html, result.facts().remarks());
        new PageTable(InputTable.of(result.facts())
                        .only("file", "rows", "accepted", "rejected", "blank", "skipped", "map", "notes"))
                .write(html);
        notRead(html, result);
        passedOver(html, result.facts().skippedRows(), nameOf(result, OutputFile.SKIPPED));
        html.closeBlock();
        rejected(html, result.facts().rejected(), rejections, nameOf(result, OutputFile.REJECTED));
        html.open("section", "id", "files").element("h2", "All outputs").open("ul", "class", "files");
        for (OutputFile file : result.files()) {
            html.open("li").element("a", file.fileName(), "href", file.fileName());
            html.text(": " + file.content() + ".").closeBlock();
        }
        html.close().closeBlock();
        methods(html);
    }

    private static void remarks(Html html, List<String> remarks) {
        for (String remark : remarks) {
            html.open("p", "class", "hint").data(remark).closeBlock();
        }
    }

    private static void notRead(Html html, SeasonResult result) {
        if (!result.fileProblems().isEmpty()) {
            html.element("h3", "Files with problems").open("ul");
            for (InputProblem problem : result.fileProblems()) {
                html.open("li").data(problem.message()).closeBlock();
            }
            html.closeBlock();
        }
        if (!result.facts().skipped().isEmpty()) {
            html.element("h3", "Files and sheets left out").open("ul");
            for (RunFacts.SkippedFile file : result.facts().skipped()) {
                html.open("li").data(file.name()).text(": ").data(file.reason()).closeBlock();
            }
            html.closeBlock();
        }
    }

    /** The name of an output, or of what holds its rows in parts. */
    private static String nameOf(SeasonResult result, OutputFile file) {
        return result.files().contains(file) ? file.fileName() : file.inParts().fileName();
    }

    private static void passedOver(Html html, SkippedRows rows, String all) {
        if (rows.total() == 0) {
            return;
        }
        html.element("h3", "Rows passed over").open("ul");
        List<SkippedRow> first =
                rows.first().subList(0, Math.min(SHOWN, rows.first().size()));
        for (SkippedRow row : first) {
            html.open("li").data(row.message()).closeBlock();
        }
        html.closeBlock();
        if (rows.total() > first.size()) {
            html.open("p", "class", "hint")
                    .text("The first " + first.size() + " of " + Counted.number(rows.total()) + ". All are in ")
                    .element("a", all, "href", all);
            html.text(".").closeBlock();
        }
    }

    private static void rejected(Html html, long all, Rejections rejections, String file) {
        html.open("section", "id", "rejected").element("h2", "Rejected rows");
        if (all == 0) {
            html.element("p", "Every row could be used.").closeBlock();
            return;
        }
        html.open("p").text("Reasons: ");
        String between = "";
        for (Map.Entry<ProblemCode, Long> reason : rejections.reasons().entrySet()) {
            html.text(between + Counted.number(reason.getValue()) + " ")
                    .element("code", reason.getKey().code());
            between = ", ";
        }
        html.text(". Cells and reasons of all are in ").element("a", file, "href", file);
        html.text(": put them right there and read that file again.").closeBlock();
        List<Rejections.Row> shown =
                rejections.first().subList(0, Math.min(SHOWN, rejections.first().size()));
        html.open("ul", "class", "rejected");
        for (Rejections.Row row : shown) {
            html.open("li").element("strong", row.origin()).text(" ").data(row.reasons());
            html.closeBlock();
        }
        html.closeBlock();
        if (all > shown.size()) {
            html.element("p", "The first " + shown.size() + " of " + Counted.number(all) + ".", "class", "hint");
        }
        html.closeBlock();
    }

    private static void methods(Html html) {
        html.open("section", "id", "methods")
                .element("h2", "How it was computed")
                .open("dl");
        for (Methods.Method method : Methods.ALL) {
            html.element("dt", method.title()).element("dd", method.text());
        }
        html.close().closeBlock();
    }
}
