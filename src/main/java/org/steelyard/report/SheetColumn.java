package org.steelyard.report;

/**
 * A column of a streamed sheet.
 *
 * @param heading what stands at its head
 * @param widthChars width in characters
 * @param numbers whether it holds numbers, which stand to the right
 */
record SheetColumn(String heading, int widthChars, boolean numbers) {

    static SheetColumn text(String heading, int widthChars) {
        return new SheetColumn(heading, widthChars, false);
    }

    static SheetColumn number(String heading, int widthChars) {
        return new SheetColumn(heading, widthChars, true);
    }
}
