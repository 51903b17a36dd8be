package org.steelyard.report;

/**
 * A column of a streamed sheet.
 *
 * @param heading what stands at its head
 * @param widthChars width in characters
 */
record SheetColumn(String heading, int widthChars) {}
