package org.steelyard.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.Counted;
import org.steelyard.read.propose.MapProposal;
import org.steelyard.read.propose.ProposedColumn;
import org.steelyard.read.propose.ProposedColumn.Confidence;
import org.steelyard.run.MapTrial;

/** A drafted heading map as a person wants to look it over, and the comments of its file. */
public final class ProposalText {

    private static final int WIDTH = 118;
    private static final int LONGEST_SAMPLE = 12;

    private final MapProposal draft;
    private final MapTrial trial;

    public ProposalText(MapProposal draft, MapTrial trial) {
        this.draft = draft;
        this.trial = trial;
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        String sheet = draft.sheet().isEmpty() ? "" : ", sheet '" + draft.sheet() + "'";
        lines.add(draft.file() + sheet + ": " + Counted.of(draft.columns().size(), "column") + ", headings in row "
                + draft.headingRow());
        draft.notes().forEach(note -> lines.add("  " + note));
        understood("Understood", Confidence.SURE, "", lines);
        understood("Likely; please look", Confidence.LIKELY, "why", lines);
        left("Left out until a person decides", Confidence.DOUBTFUL, lines);
        left("Carried along as text", Confidence.CARRIED, lines);
        tried(lines);
        if (!draft.questions().isEmpty()) {
            lines.add("");
            lines.add("To decide:");
            draft.questions().forEach(question -> lines.addAll(TextTable.wrapped("- " + question, "  ", WIDTH)));
        }
        return lines;
    }

    private void understood(String title, Confidence confidence, String why, List<String> lines) {
        TextTable table = new TextTable(WIDTH, "heading", "means", "unit", "first five rows");
        for (ProposedColumn column : draft.columns()) {
            if (column.confidence() == confidence) {
                table.row(column.heading(), meaning(column.rule()), unit(column.rule()), samples(column));
            }
        }
        add(title, table, lines);
        if (!why.isEmpty() && !table.isEmpty()) {
            for (ProposedColumn column : draft.columns()) {
                if (column.confidence() == confidence) {
                    lines.addAll(TextTable.wrapped("'" + column.heading() + "': " + column.why(), "    ", WIDTH));
                }
            }
        }
    }

    private void left(String title, Confidence confidence, List<String> lines) {
        TextTable table = new TextTable(WIDTH, "heading", "why", "first five rows");
        for (ProposedColumn column : draft.columns()) {
            if (column.confidence() == confidence) {
                table.row(column.heading(), column.why(), samples(column));
            }
        }
        add(title, table, lines);
    }

    private static void add(String title, TextTable table, List<String> lines) {
        if (!table.isEmpty()) {
            lines.add("");
            lines.add(title + ":");
            lines.addAll(table.lines("  "));
        }
    }

    private static String meaning(ColumnRule rule) {
        String meaning = rule.field().key();
        if (rule.field() == Field.PASSENGERS && rule.category() != PassengerCategory.ADULT) {
            meaning += " (" + rule.category().label() + ")";
        }
        return rule.place().isBlank() ? meaning : meaning + " in " + rule.place();
    }

    private static String unit(ColumnRule rule) {
        if (!rule.dateFormats().isEmpty()) {
            return String.join(" or ", rule.dateFormats());
        }
        if (rule.field() == Field.DATE) {
            return "year-month-day";
        }
        return rule.unit() == ColumnUnit.IN_CELL ? "in the cell" : rule.unit().symbol();
    }

    private static String samples(ProposedColumn column) {
        List<String> samples = column.samples().stream()
                .map(text -> text.isEmpty() ? "·" : text)
                .map(text -> text.length() > LONGEST_SAMPLE ? text.substring(0, LONGEST_SAMPLE - 1) + "…" : text)
                .toList();
        return String.join(" | ", samples);
    }

    private void tried(List<String> lines) {
        lines.add("");
        lines.add("Read by this map: " + Counted.of(trial.accepted(), "row") + ", and " + trial.rejected()
                + " that cannot be used" + (trial.first().isEmpty() ? "." : ". The first:"));
        TextTable table = new TextTable(WIDTH, "flight", "date", "tail", "places", "load", "fuel");
        for (Loading loading : trial.first()) {
            table.row(LoadingLine.cells(loading));
        }
        if (!table.isEmpty()) {
            lines.addAll(table.lines("  "));
        }
        if (!trial.problems().isEmpty()) {
            lines.add("  Why not, first reasons:");
            for (InputProblem problem : trial.problems()) {
                lines.addAll(TextTable.wrapped(problem.message(), "    ", WIDTH));
            }
        }
    }

    /** What stands above the map in its file. */
    public static List<String> head(MapProposal draft) {
        List<String> head = new ArrayList<>();
        head.add("Drafted for " + draft.file() + ": look it over before it is used.");
        draft.questions().forEach(question -> head.add("To decide: " + question));
        return head;
    }

    /** What stands behind the columns that are not sure. */
    public static Map<String, String> comments(MapProposal draft) {
        Map<String, String> comments = new LinkedHashMap<>();
        for (ProposedColumn column : draft.columns()) {
            if (column.confidence() == Confidence.LIKELY || column.confidence() == Confidence.DOUBTFUL) {
                comments.put(column.heading(), column.confidence().label() + ": " + column.why());
            }
        }
        return comments;
    }
}
