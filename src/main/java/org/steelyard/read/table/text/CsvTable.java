package org.steelyard.read.table.text;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;
import org.steelyard.read.table.TextForm;

/**
 * A delimited text file. The delimiter is the option's, else that of a first line {@code sep=;}, else the one by which
 * the head of the file shows the most headings of the map, of equals the map's own, then the one with the most cells.
 */
public final class CsvTable implements Table {

    private static final int HEAD_BYTES = 1 << 16;
    private static final char[] DELIMITERS = {',', ';', '\t', '|'};
    private static final String SEPARATOR_LINE = "sep=";

    private final Path path;
    private final TableName name;
    private final ReadOptions options;
    private final byte[] head;
    private final boolean whole;

    private CsvTable(Path path, TableName name, ReadOptions options, byte[] head, boolean whole) {
        this.path = path;
        this.name = name;
        this.options = options;
        this.head = head;
        this.whole = whole;
    }

    public static CsvTable open(Path path, ReadOptions options) throws SourceFault {
        TableName name = new TableName(SeasonFolder.nameOf(path), "");
        SeasonFolder.requireFile(path);
        try (InputStream in = Files.newInputStream(path)) {
            byte[] head = in.readNBytes(HEAD_BYTES);
            if (head.length > 3 && head[0] == 'P' && head[1] == 'K' && head[2] == 3 && head[3] == 4) {
                throw new SourceFault(
                        name.unreadable(0, "a workbook or archive under the name of a text file", "", "a text file"));
            }
            return new CsvTable(path, name, options, head, in.read() < 0);
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    private static SourceFault unreadable(TableName name, IOException cause) {
        return new SourceFault(
                name.unreadable(0, "the file cannot be opened", "", "a file that is there and may be read"), cause);
    }

    /** Whether the beginning of the file holds a word of plain letters, in whatever encoding. */
    public boolean mentions(String word) {
        return new String(head, StandardCharsets.ISO_8859_1).replace("\0", "").contains(word);
    }

    @Override
    public TableName name() {
        return name;
    }

    @Override
    public boolean rowsMayEndEarly() {
        return false;
    }

    @Override
    public List<RawRow> head(ColumnMap map) throws SourceFault {
        TextEncoding encoding = TextEncoding.of(head, options, map, name);
        return head(encoding, delimiter(encoding, map));
    }

    @Override
    public RowStream rows(ColumnMap map) throws SourceFault {
        TextEncoding encoding = TextEncoding.of(head, options, map, name);
        char delimiter = delimiter(encoding, map);
        try {
            InputStream in = Files.newInputStream(path);
            in.skipNBytes(encoding.markBytes());
            return new CsvRows(new StrictReader(in, encoding.charset(), head.length), delimiter, name);
        } catch (IOException e) {
            throw unreadable(name, e);
        }
    }

    @Override
    public Optional<TextForm> form(ColumnMap map) throws SourceFault {
        TextEncoding encoding = TextEncoding.of(head, options, map, name);
        return Optional.of(new TextForm(encoding.charset(), encoding.markBytes(), delimiter(encoding, map)));
    }

    private char delimiter(TextEncoding encoding, ColumnMap map) {
        Optional<Character> said = options.delimiter().or(() -> separatorLine(encoding));
        return said.orElseGet(() -> bestDelimiter(encoding, map));
    }

    private Optional<Character> separatorLine(TextEncoding encoding) {
        String text = new String(head, encoding.markBytes(), head.length - encoding.markBytes(), encoding.charset());
        String line = text.lines().findFirst().orElse("").replace("\"", "");
        return isSeparatorLine(line) && line.length() > SEPARATOR_LINE.length()
                ? Optional.of(line.charAt(SEPARATOR_LINE.length()))
                : Optional.empty();
    }

    private static boolean isSeparatorLine(String line) {
        return line.length() <= SEPARATOR_LINE.length() + 1
                && line.toLowerCase(Locale.ROOT).startsWith(SEPARATOR_LINE);
    }

    private char bestDelimiter(TextEncoding encoding, ColumnMap map) {
        Map<String, ColumnRule> rules = HeadingRow.rules(map);
        char best = map.delimiter().orElse(DELIMITERS[0]);
        long bestScore = map.delimiter().isPresent() ? leastToBeat(score(encoding, best, rules)) : -1;
        for (char delimiter : DELIMITERS) {
            long score = score(encoding, delimiter, rules);
            if (score > bestScore) {
                best = delimiter;
                bestScore = score;
            }
        }
        return best;
    }

    /** Another delimiter than the map's must show more of its headings; more cells are not enough. */
    private static long leastToBeat(long score) {
        return score == Long.MAX_VALUE ? score : (score / HEAD_BYTES + 1) * HEAD_BYTES - 1;
    }

    /** How well a delimiter serves; best of all where it leaves nothing but blanks. */
    private long score(TextEncoding encoding, char delimiter, Map<String, ColumnRule> rules) {
        try {
            List<RawRow> rows = head(encoding, delimiter);
            int known = rows.stream()
                    .mapToInt(row -> HeadingRow.known(rules, row).size())
                    .max()
                    .orElse(0);
            return rows.isEmpty()
                    ? Long.MAX_VALUE
                    : known * (long) HEAD_BYTES + rows.get(0).size();
        } catch (SourceFault e) {
            return 0;
        }
    }

    private List<RawRow> head(TextEncoding encoding, char delimiter) throws SourceFault {
        List<RawRow> rows = new ArrayList<>();
        boolean cut = !whole;
        InputStream in = new ByteArrayInputStream(head, encoding.markBytes(), head.length - encoding.markBytes());
        try (CsvRows all = new CsvRows(new StrictReader(in, encoding.charset(), head.length), delimiter, name)) {
            Optional<RawRow> row = all.next();
            while (row.isPresent() && rows.size() < HEAD_ROWS) {
                row.filter(Predicate.not(RawRow::isBlank)).ifPresent(rows::add);
                row = all.next();
            }
            cut &= row.isEmpty();
        } catch (SourceFault e) {
            cut = false;
            if (rows.isEmpty()) {
                throw e;
            }
        } catch (IOException e) {
            throw unreadable(name, e);
        }
        if (cut && !rows.isEmpty()) {
            rows.remove(rows.size() - 1);
        }
        rows.removeIf(CsvTable::isSeparatorLine);
        if (rows.isEmpty() && !whole) {
            throw new SourceFault(name.unreadable(1, "there is no heading row", "", "headings in the first 64 KB"));
        }
        return rows;
    }

    private static boolean isSeparatorLine(RawRow row) {
        return row.number() == 1 && row.isBlankFrom(1) && isSeparatorLine(row.cell(0));
    }
}
