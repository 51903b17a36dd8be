package org.steelyard.report.grade;

import java.util.List;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.grade.text.AnswerText;
import org.steelyard.grade.text.KeyWorking;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.policy.Policy;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageShell;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.text.Caution;
import org.steelyard.report.type.TypeTable;

/** Exercises to print, with room for each figure, and the key with the working. */
final class ExercisePages {

    private final List<MadeExercise> exercises;
    private final Policy policy;
    private final CgMeasure measure;
    private final String version;

    ExercisePages(List<MadeExercise> exercises, Policy policy, CgMeasure measure, String version) {
        this.exercises = exercises;
        this.policy = policy;
        this.measure = measure;
        this.version = version;
    }

    String blanks() {
        Html html = PageShell.begin("Load sheet exercises", "print.css");
        for (MadeExercise made : exercises) {
            blank(html, new ExerciseText(made, policy));
        }
        html.open("article", "class", "sheet").element("h1", "Aircraft data");
        html.element("p", Caution.TEXT, "class", "caution");
        AircraftData.of(exercises.stream().map(MadeExercise::given).toList()).forEach(table -> table(html, table));
        html.closeBlock();
        return end(html);
    }

    private String end(Html html) {
        html.element("footer", "Steelyard " + version + ". " + Caution.TEXT);
        return PageShell.end(html);
    }

    private void blank(Html html, ExerciseText text) {
        html.open("article", "class", "sheet").element("p", "Load sheet", "class", "kind");
        html.open("h1").text("Exercise ").data(text.name()).close();
        html.element("p", text.facts());
        html.element("p", "Name: ______________________________   Date: ______________");
        html.element("p", Caution.TEXT, "class", "caution");
        table(html, text.load());
        table(html, text.fuel());
        if (!text.task().isEmpty()) {
            html.element("p", text.task(), "class", "change");
        }
        html.element("h2", "Your figures");
        ScrolledTables.open(html, "Your figures", "", SheetForm.ASKED, SheetForm.FIGURE, SheetForm.UNIT, "");
        for (List<String> row : text.asked(measure)) {
            html.open("tr").element("th", row.get(0), "scope", "row");
            html.element("td", "", "class", "blank");
            html.element("td", row.get(1)).element("td", row.get(2), "class", "chain");
            html.closeBlock();
        }
        ScrolledTables.close(html);
        html.closeBlock();
    }

    private static void table(Html html, TypeTable table) {
        html.open("section", "class", "together").element("h2", table.title());
        ScrolledTables.open(html, table.title(), "", table.headings().toArray(String[]::new));
        for (List<String> row : table.rows()) {
            html.open("tr");
            html.element("th", row.get(0), "scope", "row", "class", isNumber(table, 0) ? "number" : "");
            for (int i = 1; i < row.size(); i++) {
                String look = (isNumber(table, i) ? "number" : "") + (row.get(i).isEmpty() ? " blank" : "");
                html.element("td", row.get(i), "class", look.strip());
            }
            html.closeBlock();
        }
        ScrolledTables.close(html);
        if (!table.note().isEmpty()) {
            html.element("p", table.note(), "class", "chain");
        }
        html.closeBlock();
    }

    private static boolean isNumber(TypeTable table, int column) {
        return table.headings().get(column).startsWith(ScrolledTables.NUMBERS);
    }

    String key() {
        Html html = PageShell.begin("Key to the load sheet exercises", "print.css");
        for (MadeExercise made : exercises) {
            key(html, made);
        }
        return end(html);
    }

    private void key(Html html, MadeExercise made) {
        Exercise asked = Exercise.of(made.asked(), policy);
        ExerciseText text = new ExerciseText(made, policy);
        html.open("article", "class", "sheet").element("p", "Key, with the working", "class", "kind");
        html.open("h1").text("Exercise ").data(text.name()).close();
        html.element("p", text.facts() + "; " + made.difficulty().key().replace('-', ' '));
        html.element("p", Caution.TEXT, "class", "caution");
        if (!text.task().isEmpty()) {
            html.element("p", text.task(), "class", "change");
        }
        made.shift()
                .ifPresent(shift -> html.open("p")
                        .text("Least load to move: ")
                        .element("strong", shift.words(made.given()))
                        .text(".")
                        .close());
        answers(html, asked, text);
        for (KeyWorking.Step step : KeyWorking.of(asked)) {
            html.element("h2", step.title());
            html.element("p", String.join("\n", step.lines()), "class", "working");
        }
        html.closeBlock();
    }

    private void answers(Html html, Exercise asked, ExerciseText text) {
        ScrolledTables.open(html, "Answers", "", SheetForm.ASKED, "#Right");
        for (SheetItem item : SheetItem.ALL) {
            asked.right(item, measure).ifPresent(answer -> {
                html.open("tr").element("th", SheetForm.label(item), "scope", "row");
                ScrolledTables.numbers(html, AnswerText.of(text.figures(), item, answer, measure));
                html.closeBlock();
            });
        }
        ScrolledTables.close(html);
    }
}
