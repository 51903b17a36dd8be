package org.steelyard.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.season.FindingKindTable;
import org.steelyard.report.text.Caution;
import org.steelyard.report.words.SeasonWords;
import org.steelyard.run.SeasonOutcome;

/** What a finished audit says on the terminal. */
public final class ClosingSummary {

    private static final int KINDS = 4;
    private static final int SKIPPED = 8;

    private final SeasonOutcome outcome;
    private final List<String> lines = new ArrayList<>();

    public ClosingSummary(SeasonOutcome outcome) {
        this.outcome = outcome;
    }

    public List<String> lines() {
        RunFacts facts = outcome.facts();
        StatusCount all = outcome.summary().all();
        add("");
        add("Season %s", facts.season());
        add("  flights    %,9d", all.flights());
        if (facts.accepted() > all.flights()) {
            add("  load items %,9d of flights", facts.accepted() - all.flights());
        }
        add("  clean      %,9d", all.clean());
        add("  marginal   %,9d", all.marginal());
        add("  breached   %,9d", all.breached());
        outcome.chance()
                .ifPresent(rule -> add(
                        "  likely out %,9d inside on paper, but outside with a chance of more than %.1f %%",
                        outcome.summary().likelyOutside(), rule.percent()));
        long blanks = outcome.summary().flightsWith(FindingCode.BLANK_LOAD);
        if (blanks > 0) {
            add(
                    "  blanks     %,9d with blank load cells, counted as none; the heading map can say what they mean",
                    blanks);
        }
        add(
                "  rows seen  %,9d = %,d accepted + %,d rejected + %,d blank + %,d skipped, from %s",
                facts.rowsSeen(),
                facts.accepted(),
                facts.rejected(),
                facts.blank(),
                facts.skippedRowCount(),
                files(facts));
        String notChecked = facts.notCheckedSentence(outcome.summary());
        if (!notChecked.isEmpty()) {
            add("  %s", notChecked);
        }
        skipped(facts);
        kinds();
        worst();
        add("");
        add("Reports are in %s: %s", outcome.folder(), String.join(", ", outcome.files()));
        add("%s", Caution.TEXT);
        return lines;
    }

    private void skipped(RunFacts facts) {
        List<String> all = new ArrayList<>();
        facts.skipped().forEach(file -> all.add(file.name() + ": " + file.reason()));
        facts.skippedRows().first().forEach(row -> all.add(row.message()));
        if (all.isEmpty()) {
            return;
        }
        add("");
        add("Not read or passed over");
        all.stream().limit(SKIPPED).forEach(one -> add("  %s", one));
        long more = facts.skipped().size() + facts.skippedRows().total() - Math.min(SKIPPED, all.size());
        if (more > 0) {
            add("  and %,d more; run.json and skipped.csv list them", more);
        }
    }

    private static String files(RunFacts facts) {
        int count = facts.inputs().size();
        return count == 1 ? "1 file" : count + " files";
    }

    private void kinds() {
        DataTable breaches = FindingKindTable.breaches(outcome.summary())
                .only("kind", "flights", "findings")
                .first(KINDS);
        if (!breaches.rows().isEmpty()) {
            add("");
            lines.addAll(new TerminalTable(breaches).lines());
        }
    }

    private void worst() {
        List<WorstFlight> worst = outcome.summary().worstBriefly();
        if (!worst.isEmpty()) {
            add("");
            add("Farthest outside");
            worst.forEach(this::worst);
        }
        List<String> groups = SeasonWords.worstGroups(outcome.summary());
        if (!groups.isEmpty()) {
            add("");
            groups.forEach(sentence -> add("%s", sentence));
        }
    }

    private void worst(WorstFlight worst) {
        FlightIdent flight = worst.flight().loading().flight();
        add(
                "  %-9s  %s %s %s: %s",
                worst.exceeded().label(),
                flight.date(),
                flight.flight(),
                worst.flight().loading().tail().registration(),
                FindingText.sentence(worst.finding(), worst.flight().loading().type()));
        worst.flight().remedy().ifPresent(remedy -> add("             → %s", remedy.sentence()));
    }

    private void add(String format, Object... values) {
        lines.add(String.format(Locale.ROOT, format, values));
    }
}
