package org.steelyard.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.model.finding.Phase;
import org.steelyard.report.flight.LoadSummary;
import org.steelyard.report.flight.LoadSummary.Fact;
import org.steelyard.report.flight.LoadSummary.State;
import org.steelyard.report.flight.LoadSummary.Trim;
import org.steelyard.report.text.Caution;

/** The answer for one flight as lines of a terminal, at most 80 columns wide. */
public final class FlightAnswer {

    private static final int WIDTH = 80;
    private static final String STATE_ROW = "  %-19s %12s %11s %9s %11s %11s";

    private final LoadSummary summary;
    private final boolean plain;
    private final List<String> lines = new ArrayList<>();

    public FlightAnswer(LoadSummary summary, boolean plain) {
        this.summary = summary;
        this.plain = plain;
    }

    public List<String> lines() {
        heading();
        trim();
        if (summary.massKnown()) {
            states();
        }
        findings();
        if (summary.massKnown() && summary.type().envelope(Phase.TAKEOFF).isPresent()) {
            add("");
            lines.addAll(new EnvelopeSketch(summary.type(), summary.flight().balance(), plain).lines());
        }
        add("");
        wrap("", Caution.TEXT);
        return lines;
    }

    private void heading() {
        StringBuilder facts = new StringBuilder(summary.title());
        for (Fact fact : summary.facts()) {
            facts.append("; ").append(fact.name()).append(' ').append(fact.value());
        }
        wrap("", facts.toString());
        if (summary.massKnown()) {
            add("Verdict: " + summary.status().label().toUpperCase(Locale.ROOT));
        }
    }

    private void trim() {
        add("");
        Optional<Trim> trim = summary.takeoffTrim();
        if (trim.isEmpty()) {
            boolean hasScale = summary.type().trimScales().stream().anyMatch(scale -> scale.phase() == Phase.TAKEOFF);
            add(hasScale ? "  No take-off trim: see what was found." : "  The type has no take-off trim scale.");
        } else {
            add("  Take-off trim to set" + (trim.get().estimated() ? ", an ESTIMATE" : "") + ": "
                    + trim.get().setting() + verdict());
            if (!summary.warning().isEmpty()) {
                add("  " + summary.warning().toUpperCase(Locale.ROOT));
            }
            add("");
            BigLetters.draw(trim.get().setting(), plain).forEach(line -> add("    " + line));
            add("");
            trim.get().facts().forEach(this::fact);
        }
        summary.landingTrim().ifPresent(landing -> fact(new Fact("landing trim", landing.setting())));
    }

    private String verdict() {
        return summary.massKnown() ? " (" + summary.status().label() + ")" : "";
    }

    private void fact(Fact fact) {
        wrap(String.format(Locale.ROOT, "  %-27s ", fact.name()), fact.value());
    }

    private void states() {
        add("");
        add(String.format(
                Locale.ROOT,
                STATE_ROW,
                "state",
                "mass " + summary.massUnit(),
                "CG " + summary.cgUnit(),
                "index",
                "fwd room",
                "aft room"));
        for (State state : summary.states()) {
            add(String.format(
                            Locale.ROOT,
                            STATE_ROW,
                            state.name(),
                            state.mass(),
                            state.cg(),
                            state.index(),
                            state.forwardRoom(),
                            state.aftRoom())
                    .stripTrailing());
        }
        add("");
        summary.limits().forEach(this::fact);
        group("how sure", summary.uncertainty());
        group("room left", summary.room());
    }

    private void group(String title, List<Fact> facts) {
        if (!facts.isEmpty()) {
            add("");
            add("  " + title);
            facts.forEach(this::fact);
        }
    }

    private void findings() {
        if (summary.findings().isEmpty()) {
            return;
        }
        add("");
        for (LoadSummary.Line line : summary.findings()) {
            wrap(
                    String.format(
                            Locale.ROOT, "  %-9s ", line.severity().label().toUpperCase(Locale.ROOT)),
                    line.sentence());
        }
        if (!summary.remedy().isEmpty()) {
            add("");
            wrap("  REMEDY    ", summary.remedy());
        }
    }

    /** A text behind a lead, broken at blanks, with what follows set in as far as the lead. */
    private void wrap(String lead, String text) {
        String indent = " ".repeat(lead.length());
        StringBuilder line = new StringBuilder(lead);
        boolean empty = true;
        for (String word : text.split(" ", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                add(line.toString());
                line = new StringBuilder(indent);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        add(line.toString());
    }

    private void add(String line) {
        lines.add(plain ? line.replace("→", "to").replace("–", "-") : line);
    }
}
