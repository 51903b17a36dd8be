package org.steelyard.report.book;

/**
 * A column of a streamed sheet.
 *
 * @param heading what stands at its head
 * @param widthChars width in characters
 * @param numbers whether it holds numbers, which stand to the right
 */
public record SheetColumn(String heading, int widthChars, boolean numbers) {

    public static SheetColumn text(String heading, int widthChars) {
        return new SheetColumn(heading, widthChars, false);
    }

    public static SheetColumn number(String heading, int widthChars) {
        return new SheetColumn(heading, widthChars, true);
    }
}
