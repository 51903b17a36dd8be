package org.steelyard.report.output.page;

import java.util.List;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageTable;
import org.steelyard.report.html.TrimPicture;
import org.steelyard.report.table.season.SpreadTable;
import org.steelyard.report.words.TypeNames;

/** How take-off trim and CG spread by type and flap setting, as pictures and figures. */
final class PageTrim {

    private PageTrim() {}

    static void write(Html html, SeasonSummary summary, TypeNames names) {
        if (summary.trim().isEmpty()) {
            return;
        }
        html.open("section", "id", "trim").element("h2", "Spread of take-off trim");
        pictures(html, summary, names);
        new PageTable(SpreadTable.trim(summary).without("marginal", "breached")).write(html);
        html.element("h3", "Take-off CG, % MAC");
        new PageTable(SpreadTable.cg(summary)).write(html);
        html.element("p", SpreadTable.METHOD, "class", "hint");
        html.closeBlock();
    }

    private static void pictures(Html html, SeasonSummary summary, TypeNames names) {
        html.open("div", "class", "pictures still");
        for (StatusCount type : summary.types()) {
            List<TrimGroup> groups = summary.trim().stream()
                    .filter(group -> group.typeId().equals(type.group()))
                    .filter(group -> group.trimUnits().isPresent())
                    .toList();
            if (!groups.isEmpty()) {
                html.open("figure");
                new TrimPicture(names.of(type.group()), groups).draw(html);
                html.open("figcaption").element("strong", names.of(type.group()));
                html.text(". Box: middle half, with the median; line: 5th to 95th percentile; dots: least and"
                        + " greatest.");
                html.close().closeBlock();
            }
        }
        html.closeBlock();
    }
}
