package org.steelyard.report.book;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Sets up one style. */
final class WorkbookStyleMaker {

    static final String FONT = "Arial";
    private static final short STANDARD_POINTS = 10;

    private final XSSFWorkbook book;
    private final XSSFCellStyle style;
    private final XSSFFont font;

    WorkbookStyleMaker(XSSFWorkbook book) {
        this.book = book;
        style = book.createCellStyle();
        font = book.createFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints(STANDARD_POINTS);
        font.setColor(WorkbookPalette.INK.color());
    }

    WorkbookStyleMaker bold() {
        font.setBold(true);
        return this;
    }

    WorkbookStyleMaker italic() {
        font.setItalic(true);
        return this;
    }

    WorkbookStyleMaker size(int points) {
        font.setFontHeightInPoints((short) points);
        return this;
    }

    WorkbookStyleMaker ink(WorkbookPalette color) {
        font.setColor(color.color());
        return this;
    }

    WorkbookStyleMaker fill(WorkbookPalette color) {
        style.setFillForegroundColor(color.color());
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        return this;
    }

    WorkbookStyleMaker format(String format) {
        style.setDataFormat(book.createDataFormat().getFormat(format));
        return this;
    }

    WorkbookStyleMaker wrap() {
        style.setWrapText(true);
        return this;
    }

    WorkbookStyleMaker fitted() {
        style.setShrinkToFit(true);
        return this;
    }

    WorkbookStyleMaker indented() {
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setIndention((short) 1);
        return this;
    }

    WorkbookStyleMaker right() {
        style.setAlignment(HorizontalAlignment.RIGHT);
        return this;
    }

    WorkbookStyleMaker centre() {
        style.setAlignment(HorizontalAlignment.CENTER);
        return this;
    }

    WorkbookStyleMaker top() {
        style.setVerticalAlignment(VerticalAlignment.TOP);
        return this;
    }

    WorkbookStyleMaker middle() {
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        return this;
    }

    WorkbookStyleMaker bottom() {
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        return this;
    }

    WorkbookStyleMaker rule(WorkbookPalette color) {
        style.setBorderRight(BorderStyle.THIN);
        style.setRightBorderColor(color.color());
        return this;
    }

    WorkbookStyleMaker ruleAbove() {
        style.setBorderTop(BorderStyle.THIN);
        style.setTopBorderColor(WorkbookPalette.RULE.color());
        return this;
    }

    WorkbookStyleMaker ruleBelow(WorkbookPalette color, BorderStyle width) {
        style.setBorderBottom(width);
        style.setBottomBorderColor(color.color());
        return this;
    }

    WorkbookStyleMaker gapAtSides() {
        style.setBorderLeft(BorderStyle.THICK);
        style.setLeftBorderColor(WorkbookPalette.PAPER.color());
        style.setBorderRight(BorderStyle.THICK);
        style.setRightBorderColor(WorkbookPalette.PAPER.color());
        return this;
    }

    XSSFCellStyle made() {
        style.setFont(font);
        return style;
    }
}
