package org.steelyard.report.flight;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.trim.TrimCard;

/** Writes trim cards: a page to print on one sheet for each, and a workbook with a sheet for each. */
public final class TrimCardFiles {

    /** Name of the page. */
    public static final String PAGE = "trim-cards.html";

    /** Name of the workbook. */
    public static final String BOOK = "trim-cards.xlsx";

    private TrimCardFiles() {}

    /**
     * Writes both files, or none.
     *
     * @param cards at least one
     * @param to where to; made if it is not there
     * @param version version of the program
     * @throws IOException if one cannot be written
     */
    public static void write(List<TrimCard> cards, Destination to, String version) throws IOException {
        try (StagedFolder staged = StagedFolder.at(to)) {
            Files.writeString(staged.file(PAGE), TrimCardsPage.of(cards, version), StandardCharsets.UTF_8);
            TrimCardsBook.write(cards, staged.file(BOOK));
            staged.publish();
        }
    }
}
