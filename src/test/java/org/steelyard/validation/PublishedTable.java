package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.steelyard.samples.Draws;

/** The table of every published check, one line an answer, written while the cases run. */
final class PublishedTable {

    private static final Path FILE = Path.of("target", "published-checks.md");
    private static final Path KINDS = Path.of("target", "published-checks");
    private static final String ENDING = ".md";
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
                    row.misprint() ? "printed" : one.answer(),
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

    /**
     * Writes the lines of a kind, and the table of all kinds that have run so far, in this process or beside it; not
     * where the tests run many times over.
     */
    static synchronized void write(String kind) {
        if (Draws.of(100) < 100) {
            return;
        }
        try {
            Files.createDirectories(KINDS);
            try (FileChannel lock = FileChannel.open(
                            KINDS.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock held = lock.lock()) {
                assertThat(held.isValid()).isTrue();
                List<String> lines =
                        LINES.get(kind).values().stream().flatMap(List::stream).toList();
                Files.write(KINDS.resolve(kind + ENDING), lines, StandardCharsets.UTF_8);
                Files.write(FILE, text(kinds()), StandardCharsets.UTF_8);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, List<String>> kinds() throws IOException {
        Map<String, List<String>> kinds = new TreeMap<>();
        try (Stream<Path> files = Files.list(KINDS)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(ENDING)).toList()) {
                String name = file.getFileName().toString();
                kinds.put(name.substring(0, name.length() - ENDING.length()), Files.readAllLines(file));
            }
        }
        return kinds;
    }

    private static List<String> text(Map<String, List<String>> kinds) {
        List<String> lines = kinds.values().stream().flatMap(List::stream).toList();
        long notRun = count(lines, "| not run |");
        long cases = lines.stream()
                .map(line -> line.substring(0, line.indexOf('|', 1)))
                .distinct()
                .count();
        List<String> text = new ArrayList<>();
        text.add("# Every published check");
        text.add("");
        text.add(
                "Written by the tests. Printed answers stand as printed; computed ones have two decimals more. Answer:");
        text.add(
                "printed by the source, or ours (own) from its printed inputs, or part of each (mixed). Confidence: the");
        text.add("figures were read in the source or a copy (READ), partly recalled (MIXED), recalled (MEMORY).");
        text.add("");
        text.add(String.format(
                Locale.ROOT,
                "%d answers of %d cases; %d of them are misprints that the same checks reject; %d cases are not run, each"
                        + " with its reason.",
                lines.size() - notRun,
                cases - notRun,
                count(lines, "| rejected |"),
                notRun));
        kinds.forEach((kind, its) -> {
            text.add("");
            text.add("## " + kind.replace('-', ' '));
            text.add("");
            text.add("| case | what | figure | printed | computed | difference | answer | confidence | source |");
            text.add("|---|---|---|---:|---:|---:|---|---|---|");
            text.addAll(its);
        });
        return text;
    }

    private static long count(List<String> lines, String part) {
        return lines.stream().filter(line -> line.contains(part)).count();
    }
}
