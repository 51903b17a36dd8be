package org.steelyard.model.loading;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.unit.OneLine;
import org.steelyard.model.unit.Require;

/**
 * Where an input row stands.
 *
 * @param file name of the file, without its folder
 * @param sheet name of the sheet; blank for a file without sheets
 * @param row number of the row's first line or of the sheet's row, from 1 as a person counts, headings included
 * @param former where the row stands that this one puts right, if it does
 */
public record Origin(String file, String sheet, long row, Optional<Origin> former) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the file is blank or the row below 0; row 0 stands for the file as a whole
     */
    public Origin {
        Require.text("file", file);
        Objects.requireNonNull(sheet);
        Objects.requireNonNull(former);
        Require.that(row >= 0, "rows count from 1");
    }

    /**
     * A row that puts no other right.
     *
     * @param file name of the file, without its folder
     * @param sheet name of the sheet; blank for a file without sheets
     * @param row number of the row, from 1; 0 for the file as a whole
     */
    public Origin(String file, String sheet, long row) {
        this(file, sheet, row, Optional.empty());
    }

    @Override
    public String toString() {
        String name = OneLine.value(file);
        String place = sheet.isBlank() ? name : name + "[" + OneLine.value(sheet) + "]";
        String numbered = row == 0 ? place : place + ":" + row;
        return former.isPresent() ? numbered + " (for " + former.get() + ")" : numbered;
    }
}
