package org.steelyard.report.book;

import java.util.Locale;
import org.apache.poi.util.LocaleUtil;

/**
 * The library marks the words of a chart with the language of the machine; the same inputs are to give the same bytes.
 */
public final class ChartWords {

    private ChartWords() {}

    /** Runs what puts words into a chart, which are English wherever it runs. */
    public static void inEnglish(Runnable writing) {
        Locale before = LocaleUtil.getUserLocale();
        LocaleUtil.setUserLocale(Locale.ENGLISH);
        try {
            writing.run();
        } finally {
            LocaleUtil.setUserLocale(before);
        }
    }
}
