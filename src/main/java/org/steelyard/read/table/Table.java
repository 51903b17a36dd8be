package org.steelyard.read.table;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;

/** A text file, or a sheet of a workbook. */
public interface Table {

    /** How many filled rows are looked at to find the headings. */
    int HEAD_ROWS = 30;

    TableName name();

    /** Whether a row may have fewer cells than there are headings. */
    boolean rowsMayEndEarly();

    /**
     * The first filled rows, as they read under a map, at most {@link #HEAD_ROWS}.
     *
     * @throws SourceFault if not even one can be read
     */
    List<RawRow> head(ColumnMap map) throws SourceFault;

    /** How a text is cut into cells under a map; empty for anything else. */
    default Optional<TextForm> form(ColumnMap map) throws SourceFault {
        return Optional.empty();
    }

    /** The merged areas of the table, by their first row. */
    default List<MergedArea> merged() {
        return List.of();
    }

    /**
     * All rows, as they read under a map.
     *
     * @throws SourceFault if the table cannot be opened
     */
    RowStream rows(ColumnMap map) throws SourceFault;
}
