package org.steelyard.samples;

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
import java.util.stream.Stream;

/**
 * The table of edge cases, one line a case, written while the tests run: {@code target/edge-cases.md}. A test class
 * holds one of these, tells it each case by {@link #row} and writes it when all its tests have run.
 */
@SuppressWarnings("EnumOrdinal") // the order of the topics is the order of the table
public final class EdgeTable {

    private static final Path FILE = Path.of("target", "edge-cases.md");
    private static final Path KINDS = Path.of("target", "edge-cases");
    private static final String ENDING = ".txt";

    private final String owner;
    private final List<String> lines = new ArrayList<>();

    /**
     * A test class's part of the table.
     *
     * @param owner the test class
     */
    public EdgeTable(Class<?> owner) {
        this.owner = owner.getSimpleName();
    }

    /**
     * Holds a computed answer to the expected one, and notes both.
     *
     * @param topic what it is about
     * @param what the case, in a few words with its figures
     * @param expected the answer by hand or by a source outside the program
     * @param computed what the program says
     */
    public synchronized void row(EdgeTopic topic, String what, String expected, String computed) {
        lines.add(String.format(
                Locale.ROOT, "%02d\t| %s | %s | %s |", topic.ordinal(), cell(what), cell(expected), cell(computed)));
        assertThat(computed).as(what).isEqualTo(expected);
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace('\n', ' ').replace('\t', ' ');
    }

    /** Writes this part, and the table of all parts that have run so far, in this process or beside it. */
    public synchronized void write() {
        try {
            Files.createDirectories(KINDS);
            try (FileChannel lock = FileChannel.open(
                            KINDS.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock held = lock.lock()) {
                assertThat(held.isValid()).isTrue();
                Files.write(
                        KINDS.resolve(owner + ENDING), lines.stream().sorted().toList(), StandardCharsets.UTF_8);
                Files.write(FILE, text(all()), StandardCharsets.UTF_8);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> all() throws IOException {
        List<String> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(KINDS)) {
            for (Path file : files.filter(path -> path.toString().endsWith(ENDING))
                    .sorted()
                    .toList()) {
                all.addAll(Files.readAllLines(file));
            }
        }
        return all;
    }

    private static List<String> text(List<String> all) {
        List<String> text = new ArrayList<>();
        text.add("# Edge cases");
        text.add("");
        text.add("Written by the tests: each case with the answer that is expected, by hand or by a source that the");
        text.add("test names, and what the program computes. The loadings are invented.");
        text.add("");
        text.add(all.size() + " cases.");
        for (EdgeTopic topic : EdgeTopic.values()) {
            String sign = String.format(Locale.ROOT, "%02d\t", topic.ordinal());
            List<String> its = all.stream()
                    .filter(line -> line.startsWith(sign))
                    .map(line -> line.substring(sign.length()))
                    .toList();
            if (!its.isEmpty()) {
                text.add("");
                text.add("## " + topic.title());
                text.add("");
                text.add("| case | expected | computed |");
                text.add("|---|---|---|");
                text.addAll(its);
            }
        }
        return text;
    }
}
