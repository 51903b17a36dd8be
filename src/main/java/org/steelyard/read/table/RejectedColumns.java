package org.steelyard.read.table;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnMap.UnknownColumns;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.PassengerCategory;

/**
 * The columns by which a file of rejected rows is known, and which say of each row where it stood. Beside them are the
 * headings of all files that rows came from.
 */
public final class RejectedColumns {

    /** File that the row stood in. */
    public static final String FILE = "steelyard_file";

    /** Its sheet; blank for a text file. */
    public static final String SHEET = "steelyard_sheet";

    /** Its row there, from 1. */
    public static final String ROW = "steelyard_row";

    /** Heading map of that file. */
    public static final String MAP = "steelyard_map";

    /** How many times the row has been rejected. */
    public static final String ROUND = "steelyard_round";

    /** What its cells came to when it was first rejected. */
    public static final String CHECK = "steelyard_check";

    /** Every reason. */
    public static final String REASONS = "steelyard_reasons";

    /** Cells that stood under no heading of their own. */
    public static final String EXTRA_CELLS = "steelyard_extra_cells";

    /** The columns before the cells, in their order. */
    public static final List<String> PLACE = List.of(FILE, SHEET, ROW, MAP, ROUND, CHECK, REASONS);

    /** Those without which a file is none of rejected rows. */
    public static final List<String> REQUIRED = List.of(FILE, SHEET, ROW, MAP);

    /** A map that finds the heading row and means nothing by its columns. */
    public static final ColumnMap FINDER = new ColumnMap(
            "rejected rows",
            List.of(),
            "",
            Optional.empty(),
            false,
            DigitGrouping.NONE,
            UnknownColumns.KEEP,
            PLACE.stream()
                    .map(heading -> new ColumnRule(
                            heading, Field.IGNORED, "", PassengerCategory.ADULT, ColumnUnit.NONE, "", false))
                    .toList(),
            SourceForm.FLIGHTS,
            "",
            MergedCells.FIRST_ROW,
            BlankLoad.NOT_SAID);

    private RejectedColumns() {}

    /** Whether a heading is one of these columns. */
    public static boolean isOwn(String heading) {
        return PLACE.contains(heading) || heading.equals(EXTRA_CELLS);
    }
}
