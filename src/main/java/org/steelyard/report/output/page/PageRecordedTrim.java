package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageTable;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.season.RecordedTrimTable;

/** Recorded trim settings against the right ones: those most often off, by tail and by the policy's column. */
final class PageRecordedTrim {

    private static final int ROWS = 10;

    private PageRecordedTrim() {}

    static void write(Html html, SeasonSummary summary) {
        List<DataTable> tables = RecordedTrimTable.of(summary);
        if (tables.isEmpty()) {
            return;
        }
        html.open("section", "id", "recorded-trim").element("h2", RecordedTrimTable.TITLE);
        html.element("p", RecordedTrimTable.NOTE, "class", "hint");
        tables.forEach(table -> {
            html.open("h3").data(table.title()).close();
            new PageTable(table.first(ROWS)).write(html);
        });
        html.closeBlock();
    }
}
