package org.steelyard.report.book;

import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.Header;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.steelyard.report.text.Caution;

/** How sheets are printed: landscape A4, season and sheet above, the caution and the page number below. */
public final class WorkbookPage {

    private static final int SEASON_CHARS = 100;
    private static final String SMALL = "&8&\"Arial,Regular\"";

    private final String season;

    public WorkbookPage(String season) {
        String cut = season.length() <= SEASON_CHARS ? season : season.substring(0, SEASON_CHARS - 1) + "…";
        this.season = cut.replace("&", "&&");
    }

    /** On so many pages side by side, and so many below each other; 0 for as many as it takes. */
    public void setUp(Sheet sheet, int pagesWide, int pagesHigh) {
        sheet.setFitToPage(true);
        PrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        print.setLandscape(true);
        print.setFitWidth((short) pagesWide);
        print.setFitHeight((short) pagesHigh);
        margins(sheet);
        Header header = sheet.getHeader();
        header.setLeft(SMALL + season);
        header.setRight(SMALL + "&A");
        Footer footer = sheet.getFooter();
        footer.setLeft(SMALL + inTwoLines(Caution.TEXT));
        footer.setRight(SMALL + "Page &P of &N");
    }

    private static void margins(Sheet sheet) {
        sheet.setMargin(PageMargin.LEFT, 0.4);
        sheet.setMargin(PageMargin.RIGHT, 0.4);
        sheet.setMargin(PageMargin.TOP, 0.65);
        sheet.setMargin(PageMargin.BOTTOM, 0.75);
        sheet.setMargin(PageMargin.HEADER, 0.3);
        sheet.setMargin(PageMargin.FOOTER, 0.3);
    }

    private static String inTwoLines(String text) {
        int middle = text.indexOf(' ', text.length() / 2);
        return text.substring(0, middle) + "\n" + text.substring(middle + 1);
    }
}
