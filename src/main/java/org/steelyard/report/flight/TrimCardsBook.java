package org.steelyard.report.flight;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetRow;
import org.steelyard.report.book.SmallBook;
import org.steelyard.report.book.WorkbookPalette;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.text.Caution;
import org.steelyard.trim.TrimCard;
import org.steelyard.trim.TrimCard.Cell;

/** Trim cards as a workbook, a sheet for each, each printing on one page. */
final class TrimCardsBook {

    private static final int CG_WIDTH = 16;
    private static final int BAND_WIDTH = 15;
    private static final int COLUMNS = 7;
    private static final int MOST_UPRIGHT = 8;
    private static final int INVERSE_COLUMN = 3;
    private static final int CHARS_OF_A_LINE = 110;

    private final WorkbookStyles styles;
    private final SheetGrid grid;
    private final TrimCard card;
    private final TrimCardText text;
    private final CardStyles cardStyles;

    /** Styles of cells that only cards have. */
    private record CardStyles(CellStyle usable, CellStyle forbidden, CellStyle outside, CellStyle off, CellStyle band) {

        CellStyle of(Cell cell) {
            return switch (cell.place()) {
                case USABLE -> usable;
                case OUTSIDE_BAND -> forbidden;
                case OUTSIDE_ENVELOPE -> outside;
                case OFF_SCALE -> off;
            };
        }
    }

    private TrimCardsBook(SmallBook book, CardStyles cardStyles, TrimCard card) {
        this.card = card;
        this.cardStyles = cardStyles;
        styles = book.styles();
        text = new TrimCardText(card);
        grid = book.sheet(text.sheet());
    }

    static void write(List<TrimCard> cards, Path file) throws IOException {
        try (SmallBook book = new SmallBook("Trim cards")) {
            CardStyles cardStyles = cardStyles(book);
            for (TrimCard card : cards) {
                TrimCardsBook sheet = new TrimCardsBook(book, cardStyles, card);
                sheet.content();
                book.page().setUp(sheet.grid.sheet(), 1, 1);
                sheet.grid.sheet().getPrintSetup().setLandscape(card.massBands().size() > MOST_UPRIGHT);
            }
            book.write(file);
        }
    }

    private static CardStyles cardStyles(SmallBook book) {
        WorkbookStyles styles = book.styles();
        XSSFCellStyle usable = bordered(styles.decimals(0));
        XSSFCellStyle forbidden = bordered(styles.quietRight);
        XSSFCellStyle outside = bordered(styles.quietRight);
        outside.setFillForegroundColor(WorkbookPalette.TINT.color());
        outside.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        XSSFCellStyle off = bordered(styles.quietRight);
        off.setFillForegroundColor(WorkbookPalette.RULE.color());
        off.setFillPattern(FillPatternType.THIN_FORWARD_DIAG);
        XSSFCellStyle band = bordered(styles.total);
        return new CardStyles(usable, forbidden, outside, off, band);
    }

    private static XSSFCellStyle bordered(CellStyle like) {
        XSSFCellStyle style = ((XSSFCellStyle) like).copy();
        style.setAlignment(HorizontalAlignment.CENTER);
        style.setIndention((short) 0);
        style.setBorderTop(BorderStyle.THIN);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBorderLeft(BorderStyle.THIN);
        style.setBorderRight(BorderStyle.THIN);
        style.setTopBorderColor(WorkbookPalette.RULE.color());
        style.setBottomBorderColor(WorkbookPalette.RULE.color());
        style.setLeftBorderColor(WorkbookPalette.RULE.color());
        style.setRightBorderColor(WorkbookPalette.RULE.color());
        return style;
    }

    private void content() {
        int columns = Math.max(COLUMNS, card.massBands().size());
        int[] widths = new int[columns + 1];
        Arrays.fill(widths, BAND_WIDTH);
        widths[0] = CG_WIDTH;
        if (!card.byMass()) {
            widths[2] = 4;
            widths[5] = 4;
            widths[4] = 24;
            widths[7] = 24;
        }
        grid.widths(widths);
        grid.row(26).data(text.title(), new WorkbookStyles.TextStyle(styles.title, styles.title));
        grid.row(20).data(text.setting(), new WorkbookStyles.TextStyle(styles.section, styles.section));
        grid.join(0, columns);
        line(Caution.TEXT, styles.caution, columns);
        text.notes().forEach(note -> line(note, styles.remark, columns));
        line(key(), styles.remark, columns);
        grid.gap(6);
        int top = grid.position();
        head();
        for (int i = 0; i < card.rows().size(); i++) {
            SheetRow row = grid.row(16).label(text.cg(card.cgBands().get(i)), cardStyles.band());
            for (Cell cell : card.rows().get(i)) {
                row.label(text.cell(cell), cardStyles.of(cell));
            }
        }
        int column = INVERSE_COLUMN;
        for (List<List<String>> rows : text.settings()) {
            inverse(top, column, rows);
            column += 3;
        }
    }

    /** Setting and CGs beside the table, in rows that are there already or come to be. */
    private void inverse(int top, int column, List<List<String>> rows) {
        grid.moveTo(top);
        grid.row()
                .at(column)
                .label("setting", cardStyles.band())
                .label("right for " + text.cgHeading(), cardStyles.band());
        for (List<String> row : rows) {
            grid.row().at(column).label(row.get(0), cardStyles.band()).label(row.get(1), cardStyles.usable());
        }
    }

    private void head() {
        if (card.byMass()) {
            grid.row(18).skip(1).label(text.massHeading(), cardStyles.band());
            grid.join(1, card.massBands().size());
        }
        SheetRow head = grid.row(18).label(text.cgHeading(), cardStyles.band());
        text.massBands().forEach(band -> head.label(band, cardStyles.band()));
    }

    private void line(String words, CellStyle style, int columns) {
        int lines = 1 + words.length() / CHARS_OF_A_LINE;
        grid.row(3 + 13f * lines).label(words, style);
        grid.join(0, columns);
    }

    private static String key() {
        return "“off” and hatched: the scale gives no setting there. Empty and shaded: outside the envelope. In brackets and pale:"
                + " outside the permitted band, not to be set.";
    }
}
