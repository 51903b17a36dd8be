package org.steelyard.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.steelyard.samples.Draws;

/** The table of every published check, one line an answer, written while the cases run. */
final class PublishedTable {

    private static final Path FILE = Path.of("target", "published-checks.md");
    private static final Map<String, Map<String, List<String>>> LINES = new TreeMap<>();

    private PublishedTable() {}

    static synchronized void add(String kind, PublishedCase one, List<Answers.Compared> rows) {
        List<String> lines = new ArrayList<>();
        for (Answers.Compared row : rows) {
            lines.add(line(
                    one.id(),
                    one.what(),
                    row.name(),
                    row.printed() + (row.misprint() ? " (misprint)" : ""),
                    row.computed(),
                    row.misprint() ? "rejected" : row.difference(),
                    one.answer(),
                    one.confidence(),
                    one.source()));
        }
        LINES.computeIfAbsent(kind, k -> new TreeMap<>()).put(one.id(), lines);
    }

    static synchronized void addNotRun(String kind, PublishedCase one) {
        String line = line(
                one.id(),
                one.what(),
                "",
                "",
                "not run",
                one.reasonNotRun().orElseThrow(),
                one.answer(),
                one.confidence(),
                one.source());
        LINES.computeIfAbsent(kind, k -> new TreeMap<>()).put(one.id(), List.of(line));
    }

    private static String line(String... cells) {
        StringBuilder line = new StringBuilder("|");
        for (String cell : cells) {
            line.append(' ').append(cell.replace("|", "\\|").replace('\n', ' ')).append(" |");
        }
        return line.toString();
    }

    /** Writes what has run so far; not where the tests run many times over. */
    static synchronized void write() {
        if (Draws.of(100) < 100) {
            return;
        }
        List<String> text = new ArrayList<>();
        text.add("# Every published check");
        text.add("");
        text.add(
                "Written by the tests. Printed answers stand as printed; computed ones have two decimals more. Answer:");
        text.add(
                "printed by the source, or ours (own) from its printed inputs, or part of each (mixed). Confidence: the");
        text.add("figures were read in the source or a copy (READ), partly recalled (MIXED), recalled (MEMORY).");
        for (Map.Entry<String, Map<String, List<String>>> kind : LINES.entrySet()) {
            text.add("");
            text.add("## " + kind.getKey().replace('-', ' '));
            text.add("");
            text.add("| case | what | figure | printed | computed | difference | answer | confidence | source |");
            text.add("|---|---|---|---:|---:|---:|---|---|---|");
            kind.getValue().values().forEach(text::addAll);
        }
        try {
            Files.createDirectories(FILE.getParent());
            Files.writeString(FILE, String.join("\n", text) + "\n", StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
