package org.steelyard.report.book;

import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFColor;

/**
 * The colours of the workbook. The three verdicts differ in lightness as much as in hue (pale, light, dark), so that
 * they stay apart in print without colours and to the colour-blind; a word and a sign say them as well.
 */
public enum WorkbookPalette {
    INK(0x1D2B36),
    QUIET(0x55636E),
    PAPER(0xFFFFFF),
    TINT(0xECF0F3),
    RULE(0xB9C4CC),
    SLATE(0x2B4A5E),
    CLEAN_FILL(0xE6F2EE),
    CLEAN_INK(0x14463B),
    MARGINAL_FILL(0xFFDF94),
    MARGINAL_INK(0x3F2D00),
    BREACH_FILL(0x7A2442),
    BREACH_INK(0xFFFFFF);

    private final int rgb;

    WorkbookPalette(int rgb) {
        this.rgb = rgb;
    }

    public int rgb() {
        return rgb;
    }

    String hex() {
        return String.format(Locale.ROOT, "%06X", rgb);
    }

    /** With the byte of opacity, which the format asks for. */
    public XSSFColor color() {
        return new XSSFColor(new byte[] {(byte) 0xFF, (byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
    }
}
