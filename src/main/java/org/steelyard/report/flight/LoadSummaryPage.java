package org.steelyard.report.flight;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.report.flight.LoadSummary.Fact;
import org.steelyard.report.flight.LoadSummary.State;
import org.steelyard.report.flight.LoadSummary.Trim;
import org.steelyard.report.html.EnvelopePicture;
import org.steelyard.report.html.Html;
import org.steelyard.report.html.PageShell;
import org.steelyard.report.html.ScrolledTables;
import org.steelyard.report.html.StatusSymbol;
import org.steelyard.report.text.Caution;
import org.steelyard.report.words.EnvelopeCloud;

/** The load summary of one flight as a page to print on one sheet. */
final class LoadSummaryPage {

    private final LoadSummary summary;
    private final Html html;

    private LoadSummaryPage(LoadSummary summary) {
        this.summary = summary;
        html = PageShell.begin("Load summary: " + summary.title(), "print.css");
    }

    static String of(LoadSummary summary, String version) {
        LoadSummaryPage page = new LoadSummaryPage(summary);
        page.content();
        page.html.element("footer", "Steelyard " + version + ". " + Caution.TEXT);
        return PageShell.end(page.html);
    }

    private void content() {
        html.open("header").element("p", "Load summary", "class", "kind");
        html.open("h1").data(summary.title()).close();
        html.open("p", "class", "facts");
        for (Fact fact : summary.facts()) {
            html.open("span").text(fact.name() + " ");
            html.open("strong").data(fact.value()).close().close().text(" ");
        }
        html.close().closeBlock();
        verdict();
        html.element("p", Caution.TEXT, "class", "caution");
        html.open("main").open("div", "class", "top");
        trim();
        picture();
        html.closeBlock();
        if (summary.massKnown()) {
            states();
            html.open("div", "class", "columns");
            html.open("div");
            facts("Limits", summary.limits());
            facts("How sure", summary.uncertainty());
            html.closeBlock();
            facts("Load and fuel", summary.places());
            facts("Room left", summary.room());
            html.closeBlock();
        }
        findings();
        html.closeBlock();
    }

    private void verdict() {
        if (summary.massKnown()) {
            html.open("p", "class", "verdict").text("Verdict: ");
            StatusSymbol.of(summary.status()).draw(html, summary.status().label());
            html.close().text("\n");
        }
    }

    private void trim() {
        html.open("section", "class", "trim").element("h2", "Take-off trim to set");
        Optional<Trim> trim = summary.takeoffTrim();
        if (trim.isEmpty()) {
            html.element("p", "none: see below", "class", "setting");
        } else {
            boolean out = !summary.warning().isEmpty();
            html.element("p", trim.get().setting(), "class", out ? "setting out" : "setting");
            if (out) {
                html.open("p", "class", "warning");
                StatusSymbol.BREACHED.draw(html, summary.warning());
                html.close();
            }
            if (trim.get().estimated()) {
                html.element("p", "An estimate only", "class", "estimate");
            }
            list(trim.get().facts());
        }
        summary.landingTrim().ifPresent(landing -> list(List.of(new Fact("landing trim", landing.setting()))));
        html.closeBlock();
    }

    private void picture() {
        if (summary.massKnown() && summary.type().envelope(Phase.TAKEOFF).isPresent()) {
            EnvelopeCloud cloud = new EnvelopeCloud(summary.type());
            cloud.add(summary.flight(), summary.status());
            html.open("figure");
            new EnvelopePicture(cloud).draw(html);
            html.closeBlock();
        }
    }

    private void list(List<Fact> facts) {
        html.open("dl");
        for (Fact fact : facts) {
            html.element("dt", fact.name());
            html.open("dd").data(fact.value()).close();
        }
        html.closeBlock();
    }

    private void states() {
        html.open("section").element("h2", "States");
        ScrolledTables.open(
                html,
                "States",
                "",
                "State",
                "#Mass, " + summary.massUnit(),
                "#CG, " + summary.cgUnit(),
                "#Index",
                "#Room forward, " + summary.cgUnit(),
                "#Room aft, " + summary.cgUnit());
        for (State state : summary.states()) {
            html.open("tr").element("th", state.name(), "scope", "row");
            ScrolledTables.numbers(html, state.mass(), state.cg(), state.index(), state.forwardRoom(), state.aftRoom());
            html.closeBlock();
        }
        ScrolledTables.close(html);
        html.closeBlock();
    }

    private void facts(String title, List<Fact> facts) {
        if (!facts.isEmpty()) {
            html.open("section").element("h2", title);
            list(facts);
            html.closeBlock();
        }
    }

    private void findings() {
        html.open("section").element("h2", "Findings");
        html.open("ul", "class", "findings");
        for (LoadSummary.Line line : summary.findings()) {
            html.open("li");
            StatusSymbol.of(line.severity()).draw(html, line.severity().label());
            html.text(" ").data(line.sentence()).closeBlock();
        }
        html.closeBlock();
        if (!summary.remedy().isEmpty()) {
            html.open("p")
                    .element("strong", "What would put it right: ")
                    .data(summary.remedy())
                    .closeBlock();
        }
        html.closeBlock();
    }
}
