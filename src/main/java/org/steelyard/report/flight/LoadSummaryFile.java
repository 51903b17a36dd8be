package org.steelyard.report.flight;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.WholeFile;

/** Writes the load summary of one flight as a page to print: HTML or XLSX, by the ending of the file's name. */
public final class LoadSummaryFile {

    private static final String PAGE = ".html";
    private static final String BOOK = ".xlsx";

    private LoadSummaryFile() {}

    /** Whether a file's name ends in one of the kinds that can be written. */
    public static boolean knows(Path file) {
        return isKind(file, PAGE) || isKind(file, BOOK);
    }

    private static boolean isKind(Path file, String ending) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(ending);
    }

    /**
     * Writes a summary.
     *
     * @param summary the flight
     * @param to where to
     * @param version version of the program
     * @throws IOException if it cannot be written; a file that stood there is then as it was
     */
    public static void write(LoadSummary summary, Destination to, String version) throws IOException {
        if (isKind(to.path(), BOOK)) {
            to.requireMayWrite();
            LoadSummaryBook.write(summary, to.path());
        } else {
            String page = LoadSummaryPage.of(summary, version);
            WholeFile.write(to, page);
        }
    }
}
