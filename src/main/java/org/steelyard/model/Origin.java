package org.steelyard.model;

import java.util.Objects;

/**
 * Where an input row stands.
 *
 * @param file name of the file, without its folder
 * @param sheet name of the sheet; blank for a file without sheets
 * @param row number of the row's first line or of the sheet's row, from 1 as a person counts, headings included
 */
public record Origin(String file, String sheet, long row) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the file is blank or the row below 0; row 0 stands for the file as a whole
     */
    public Origin {
        Require.text("file", file);
        Objects.requireNonNull(sheet);
        Require.that(row >= 0, "rows count from 1");
    }

    @Override
    public String toString() {
        String place = sheet.isBlank() ? file : file + "[" + sheet + "]";
        return row == 0 ? place : place + ":" + row;
    }
}
