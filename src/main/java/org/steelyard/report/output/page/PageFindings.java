package org.steelyard.report.output.page;

import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageTable;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.season.FindingKindTable;
import org.steelyard.report.table.season.StatusTable;

/** Which kinds of findings there are, how many, and when. */
final class PageFindings {

    private PageFindings() {}

    static void kinds(Html html, SeasonSummary summary) {
        html.open("section", "id", "findings", "class", "still").element("h2", "Kinds of findings");
        new PageTable(FindingKindTable.of(summary)).bar("flights").write(html);
        html.closeBlock();
    }

    static void months(Html html, SeasonSummary summary) {
        if (summary.months().isEmpty()) {
            return;
        }
        DataTable months = StatusTable.MONTHS.of(summary);
        html.open("section", "id", "months").element("h2", months.title());
        new PageTable(months.only("group", "flights", "breached", "share_breached", "marginal", "share_marginal"))
                .write(html);
        html.closeBlock();
    }
}
