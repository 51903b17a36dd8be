package org.steelyard.read.heading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.SourceForm;
import org.steelyard.read.table.SeasonFolder.Skipped;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;

/**
 * The tables of a file that are read: all whose headings fit a map.
 *
 * @param chosen tables with their heading rows and maps, at least one; those of flights before those of load items
 * @param skipped the others, and why
 * @param problems tables that are damaged
 */
public record TableChoice(List<Chosen> chosen, List<Skipped> skipped, List<InputProblem> problems) {

    /**
     * A table that is read.
     *
     * @param table the table
     * @param headings its heading row and map
     */
    public record Chosen(Table table, HeadingSearch headings) {

        public SourceForm form() {
            return headings.map().form();
        }
    }

    public TableChoice {
        chosen = List.copyOf(chosen);
        skipped = List.copyOf(skipped);
        problems = List.copyOf(problems);
    }

    public static TableChoice among(List<Table> tables, List<ColumnMap> candidates, TableName file) throws SourceFault {
        List<Chosen> chosen = new ArrayList<>();
        List<Chosen> failures = new ArrayList<>();
        List<Skipped> skipped = new ArrayList<>();
        List<InputProblem> problems = new ArrayList<>();
        for (Table table : tables) {
            try {
                Optional<HeadingSearch> search = HeadingSearch.in(table, candidates);
                if (search.isEmpty()) {
                    skipped.add(skipped(table, "the sheet is empty"));
                } else if (search.get().fits()) {
                    chosen.add(new Chosen(table, search.get()));
                } else {
                    failures.add(new Chosen(table, search.get()));
                    skipped.add(skipped(
                            table,
                            search.get()
                                    .problem(table.name(), candidates.size())
                                    .reason()));
                }
            } catch (SourceFault e) {
                problems.addAll(e.problems());
            }
        }
        if (chosen.isEmpty()) {
            throw problems.isEmpty() ? nothingFits(failures, candidates.size(), file) : new SourceFault(problems);
        }
        chosen.sort(Comparator.comparing(Chosen::form));
        return new TableChoice(chosen, skipped, problems);
    }

    private static Skipped skipped(Table table, String reason) {
        return new Skipped(table.name().row(0).toString(), reason);
    }

    private static SourceFault nothingFits(List<Chosen> failures, int candidates, TableName file) {
        Optional<HeadingSearch> nearest =
                HeadingSearch.best(failures.stream().map(Chosen::headings).toList());
        if (nearest.isEmpty()) {
            return new SourceFault(
                    file.unreadable(0, "the file is empty", "", "a heading row and rows of loadings below it"));
        }
        TableName name = failures.stream()
                .filter(failure -> failure.headings().equals(nearest.get()))
                .map(failure -> failure.table().name())
                .findFirst()
                .orElse(file);
        return new SourceFault(nearest.get().problem(name, candidates));
    }
}
