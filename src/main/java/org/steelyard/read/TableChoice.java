package org.steelyard.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.ColumnMap;

/**
 * The table of a file that is read: the first whose headings fit a map.
 *
 * @param table the table
 * @param headings its heading row and map
 * @param notes which other tables are not read, and why
 */
record TableChoice(Table table, HeadingSearch headings, List<String> notes) {

    TableChoice {
        notes = List.copyOf(notes);
    }

    static TableChoice among(List<Table> tables, List<ColumnMap> candidates, TableName file) throws SourceFault {
        Optional<TableChoice> chosen = Optional.empty();
        List<Failure> failures = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Table table : tables) {
            Optional<HeadingSearch> search = HeadingSearch.in(table, candidates);
            String start = "sheet '" + table.name().sheet() + "' was not read: ";
            if (search.isEmpty()) {
                notes.add(start + "it is empty");
            } else if (!search.get().fits()) {
                failures.add(new Failure(table, search.get()));
                notes.add(start
                        + search.get().problem(table.name(), candidates.size()).reason());
            } else if (chosen.isPresent()) {
                notes.add(start + "only the first sheet with the headings of a map is read");
            } else {
                chosen = Optional.of(new TableChoice(table, search.get(), List.of()));
            }
        }
        return chosen.map(choice -> new TableChoice(choice.table(), choice.headings(), notes))
                .orElseThrow(() -> nothingFits(failures, candidates.size(), file));
    }

    private static SourceFault nothingFits(List<Failure> failures, int candidates, TableName file) {
        Optional<HeadingSearch> nearest =
                HeadingSearch.best(failures.stream().map(Failure::search).toList());
        if (nearest.isEmpty()) {
            return new SourceFault(
                    file.unreadable(0, "the file is empty", "", "a heading row and rows of loadings below it"));
        }
        TableName name = failures.stream()
                .filter(failure -> failure.search().equals(nearest.get()))
                .map(failure -> failure.table().name())
                .findFirst()
                .orElse(file);
        return new SourceFault(nearest.get().problem(name, candidates));
    }

    private record Failure(Table table, HeadingSearch search) {}
}
