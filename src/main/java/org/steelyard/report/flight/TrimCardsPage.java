package org.steelyard.report.flight;

import java.util.List;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageShell;
import org.steelyard.report.text.Caution;
import org.steelyard.trim.TrimCard;
import org.steelyard.trim.TrimCard.Cell;

/** Trim cards as a page that prints each card on a sheet of its own. */
final class TrimCardsPage {

    private TrimCardsPage() {}

    static String of(List<TrimCard> cards, String version) {
        Html html = PageShell.begin("Trim cards", "print.css");
        html.open("main");
        for (TrimCard card : cards) {
            card(html, card, version);
        }
        html.closeBlock();
        return PageShell.end(html);
    }

    private static void card(Html html, TrimCard card, String version) {
        TrimCardText text = new TrimCardText(card);
        html.open("section", "class", "card");
        html.open("p", "class", "kind").data(text.title()).close();
        html.open("h1").data(text.setting()).close();
        html.element("p", Caution.TEXT, "class", "caution");
        for (String note : text.notes()) {
            boolean estimate = text.estimated() && note.startsWith("ESTIMATE");
            html.element("p", note, "class", estimate ? "estimate" : "hint");
        }
        html.open("div", "class", "tables", "role", "region", "tabindex", "0", "aria-label", text.setting());
        table(html, card, text);
        text.settings().forEach(rows -> inverse(html, text, rows));
        html.closeBlock();
        key(html, card);
        html.element("footer", "Steelyard " + version);
        html.closeBlock();
    }

    private static void table(Html html, TrimCard card, TrimCardText text) {
        html.open("table").open("thead");
        if (card.byMass()) {
            html.open("tr").empty("td");
            html.element(
                    "th",
                    text.massHeading(),
                    "colspan",
                    String.valueOf(card.massBands().size()),
                    "scope",
                    "colgroup");
            html.close();
        }
        html.open("tr").element("th", text.cgHeading(), "scope", "col");
        text.massBands().forEach(band -> html.element("th", band, "scope", "col"));
        html.close().close().open("tbody").text("\n");
        for (int i = 0; i < card.rows().size(); i++) {
            html.open("tr").element("th", text.cg(card.cgBands().get(i)), "scope", "row");
            for (Cell cell : card.rows().get(i)) {
                html.element("td", text.cell(cell), "class", look(cell));
            }
            html.closeBlock();
        }
        html.close().closeBlock();
    }

    private static void inverse(Html html, TrimCardText text, List<List<String>> rows) {
        html.open("table").open("thead").open("tr");
        html.element("th", "setting", "scope", "col").element("th", "is right for " + text.cgHeading(), "scope", "col");
        html.close().close().open("tbody").text("\n");
        for (List<String> row : rows) {
            html.open("tr").element("th", row.get(0), "scope", "row", "class", "setting-cell");
            html.element("td", row.get(1)).closeBlock();
        }
        html.close().closeBlock();
    }

    private static String look(Cell cell) {
        return switch (cell.place()) {
            case USABLE -> "setting-cell";
            case OUTSIDE_BAND -> "forbidden";
            case OUTSIDE_ENVELOPE -> "outside";
            case OFF_SCALE -> "off";
        };
    }

    private static void key(Html html, TrimCard card) {
        html.open("ul", "class", "key");
        item(html, card, TrimCard.Place.OFF_SCALE, "off", "the scale gives no setting here");
        item(html, card, TrimCard.Place.OUTSIDE_ENVELOPE, "empty", "outside the envelope");
        item(
                html,
                card,
                TrimCard.Place.OUTSIDE_BAND,
                "in brackets, struck out",
                "outside the permitted band, not to be set");
        html.closeBlock();
    }

    private static void item(Html html, TrimCard card, TrimCard.Place place, String sign, String meaning) {
        if (card.rows().stream().flatMap(List::stream).anyMatch(cell -> cell.place() == place)) {
            html.open("li").element("b", sign).text(": " + meaning).close();
        }
    }
}
