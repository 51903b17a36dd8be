package org.steelyard.report.type;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.steelyard.check.type.TypeRemark;
import org.steelyard.check.type.TypeReview;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.FileNames;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageShell;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.text.Caution;

/** An aircraft type as a page to print: envelopes, trim scales, tanks and places drawn, and all of it in tables. */
public final class TypePages {

    private static final int HALF_A_PAGE = 48;

    private final AircraftType type;
    private final List<Tail> tails;
    private final Html html;

    private TypePages(AircraftType type, List<Tail> tails) {
        this.type = type;
        this.tails = List.copyOf(tails);
        html = PageShell.begin("Aircraft type: " + type.name(), "print.css");
    }

    /**
     * Writes a page for each type, or nothing.
     *
     * @param types the types, each with its tails
     * @param to where to; made if it is not there
     * @param version version of the program
     * @return names of the files
     * @throws IOException if one cannot be written
     */
    public static List<String> write(Map<AircraftType, List<Tail>> types, Destination to, String version)
            throws IOException {
        FileNames names = new FileNames();
        List<String> written = new ArrayList<>();
        try (StagedFolder staged = StagedFolder.at(to)) {
            for (Map.Entry<AircraftType, List<Tail>> one : types.entrySet()) {
                String name =
                        names.unique("type-" + FileNames.plain(one.getKey().id()), ".html");
                Files.writeString(
                        staged.file(name), page(one.getKey(), one.getValue(), version), StandardCharsets.UTF_8);
                written.add(name);
            }
            staged.publish();
        }
        return written;
    }

    static String page(AircraftType type, List<Tail> tails, String version) {
        TypePages page = new TypePages(type, tails);
        page.content();
        page.html.element("footer", "Steelyard " + version + ". " + Caution.TEXT);
        return PageShell.end(page.html);
    }

    private void content() {
        html.open("header").element("p", "Aircraft type " + type.id(), "class", "kind");
        html.open("h1").data(type.name()).close().closeBlock();
        html.element("p", Caution.TEXT, "class", "caution");
        html.open("main");
        remarks();
        html.open("section").element("h2", "Envelopes");
        new TypeEnvelopes(type).draw(html);
        html.closeBlock();
        scales();
        html.open("section", "class", "together").element("h2", "Places");
        new TypeStations(type, tails).draw(html);
        html.element(
                "p",
                "Shaded: the mean aerodynamic chord, and within it the CGs of the take-off envelope. Dots under basic CG"
                        + " are the tails.",
                "class",
                "hint");
        html.closeBlock();
        html.open("div", "class", "columns tables-of-type");
        TypeTables.of(type, tails).forEach(this::table);
        html.closeBlock();
        html.closeBlock();
    }

    private void remarks() {
        List<TypeRemark> remarks = TypeReview.of(type, tails);
        if (remarks.isEmpty()) {
            return;
        }
        html.open("section").element("h2", "Worth a second look");
        html.open("ul", "class", "findings");
        for (TypeRemark remark : remarks) {
            html.open("li")
                    .open("strong")
                    .data(remark.about())
                    .close()
                    .text(": ")
                    .data(remark.sentence())
                    .closeBlock();
        }
        html.closeBlock();
        html.closeBlock();
    }

    private void scales() {
        boolean none = type.trimScales().isEmpty();
        html.open("section").element("h2", none ? "Tanks" : "Trim scales and tanks");
        html.open("div", "class", "figures");
        for (TrimScale scale : type.trimScales()) {
            new TypeScale(
                            type,
                            scale,
                            type.envelope(scale.phase())
                                    .orElseGet(() -> type.envelopes().get(0)))
                    .draw(html);
        }
        new TypeTanks(type).draw(html);
        html.closeBlock();
        if (!none) {
            html.element(
                    "p",
                    "Shaded: the permitted band of settings, and within it the CGs of the envelope.",
                    "class",
                    "hint");
        }
        html.closeBlock();
    }

    /** Whether a table needs the whole width of the page. */
    private static boolean isBroad(TypeTable table) {
        int signs = 0;
        for (int i = 0; i < table.headings().size(); i++) {
            int column = i;
            signs += table.rows().stream()
                    .mapToInt(row -> row.get(column).length())
                    .max()
                    .orElse(0);
        }
        return signs > HALF_A_PAGE && table.headings().size() > 2;
    }

    private void table(TypeTable table) {
        html.open("section", "class", isBroad(table) ? "together broad" : "together")
                .element("h2", table.title());
        ScrolledTables.open(html, table.title(), "", table.headings().toArray(String[]::new));
        for (List<String> row : table.rows()) {
            html.open("tr");
            for (int i = 0; i < row.size(); i++) {
                boolean number = table.headings().get(i).startsWith(ScrolledTables.NUMBERS);
                html.open("td", "class", number ? "number" : "")
                        .data(row.get(i))
                        .close();
            }
            html.closeBlock();
        }
        ScrolledTables.close(html);
        if (!table.note().isBlank()) {
            html.open("p", "class", "hint").data(table.note()).close();
        }
        html.closeBlock();
    }
}
