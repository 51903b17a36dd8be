package org.steelyard.read.propose;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;
import org.steelyard.read.table.UnitHeading;
import org.steelyard.read.table.text.CsvTable;
import org.steelyard.read.table.xlsx.XlsxFile;
import org.steelyard.read.table.xlsx.XlsxSheet;
import org.steelyard.read.text.Blanks;

/** The table of a file without a heading map: how its text is encoded and parted, its headings and its cells. */
final class ProposalSource implements Closeable {

    private static final List<String> CHARSETS = List.of("", "windows-1252");
    private static final List<Character> DELIMITERS = List.of(',', ';', '\t', '|');
    private static final int MOST_ROWS = 20_000;
    private static final int SAMPLES = 5;
    private static final int FEWEST_HEADINGS = 3;

    private final List<Closeable> open = new ArrayList<>();
    private Optional<Candidate> best = Optional.empty();
    private Optional<SourceFault> fault = Optional.empty();

    private ProposalSource() {}

    /** A table read in one way, and how many headings of its best row are understood. */
    private record Candidate(Table table, ColumnMap way, RawRow headings, int understood, int cells) {

        boolean isBetterThan(Candidate other) {
            return understood != other.understood ? understood > other.understood : cells > other.cells;
        }
    }

    /**
     * Opens a file and finds its headings.
     *
     * @throws SourceFault if it cannot be read, or no row looks like headings
     */
    static ProposalSource open(Path path, ProposalRequest request) throws SourceFault {
        ProposalSource source = new ProposalSource();
        try {
            source.look(path, request);
            return source;
        } catch (SourceFault e) {
            source.close();
            throw e;
        }
    }

    private void look(Path path, ProposalRequest request) throws SourceFault {
        TableName name = new TableName(SeasonFolder.nameOf(path), "");
        if (SeasonFolder.endingOf(name.file()).equals("xlsx")) {
            sheets(path, request.sheet());
        } else {
            text(CsvTable.open(path, ReadOptions.of(List.of(way("", Optional.empty())))));
        }
        if (best.filter(found -> found.understood() >= FEWEST_HEADINGS).isEmpty()) {
            throw fault.orElseGet(() -> new SourceFault(name.unreadable(
                    0, "no row looks like headings", "", "a row with headings for flight, date, tail and loads")));
        }
    }

    private void sheets(Path path, Optional<String> wanted) throws SourceFault {
        XlsxFile workbook = XlsxFile.open(path);
        open.add(workbook);
        List<String> names = new ArrayList<>();
        for (XlsxSheet sheet : workbook.sheets()) {
            names.add(sheet.name().sheet());
            if (wanted.map(sheet.name().sheet()::equals).orElse(!sheet.hidden())) {
                consider(sheet, way("", Optional.empty()));
            }
        }
        if (wanted.isPresent() && !names.contains(wanted.get())) {
            throw new SourceFault(
                    workbook.name().unreadable(0, "there is no such sheet", wanted.get(), String.join(", ", names)));
        }
    }

    /** The first encoding that the bytes allow, with the delimiter that shows the most headings. */
    private void text(Table table) {
        for (String charset : CHARSETS) {
            if (best.isEmpty()) {
                for (char delimiter : DELIMITERS) {
                    consider(table, way(charset, Optional.of(delimiter)));
                }
            }
            if (best.isPresent() && !readsThrough()) {
                best = Optional.empty();
            }
        }
    }

    private boolean readsThrough() {
        try (RowStream rows = rows()) {
            Optional<RawRow> row = rows.next();
            while (row.isPresent()) {
                row = rows.next();
            }
            return true;
        } catch (SourceFault e) {
            fault = Optional.of(e);
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void consider(Table table, ColumnMap way) {
        try {
            for (RawRow row : table.head(way)) {
                List<String> headings = HeadingRow.headings(row);
                Candidate one = new Candidate(table, way, row, understood(headings), headings.size());
                if (best.isEmpty() || one.isBetterThan(best.get())) {
                    best = Optional.of(one);
                }
            }
        } catch (SourceFault e) {
            fault = Optional.of(e);
        }
    }

    private static int understood(List<String> headings) {
        int understood = 0;
        for (String heading : headings) {
            UnitHeading parts = UnitHeading.of(heading);
            boolean known = FieldWords.field(HeadingTokens.of(parts.words()), ProposalMaker.measured(parts.unit()))
                    .isPresent();
            understood += known ? 1 : 0;
        }
        return understood;
    }

    /** A map that says nothing of the columns yet. */
    private static ColumnMap way(String charset, Optional<Character> delimiter) {
        ColumnRule none =
                new ColumnRule("?", Field.IGNORED, "", PassengerCategory.ADULT, ColumnUnit.NONE, List.of(), false);
        return new ColumnMap(
                "?",
                List.of(),
                charset,
                delimiter,
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.KEEP,
                List.of(none),
                SourceForm.FLIGHTS,
                "",
                MergedCells.FIRST_ROW,
                BlankLoad.NOT_SAID);
    }

    private Candidate best() {
        return best.orElseThrow();
    }

    private RowStream rows() throws SourceFault {
        return best().table().rows(best().way());
    }

    TableName name() {
        return best().table().name();
    }

    /** The encoding that was needed; blank for UTF-8 or what the byte order mark says, and in a workbook. */
    String charset() {
        return best().way().charset();
    }

    Optional<Character> delimiter() {
        return best().way().delimiter();
    }

    RawRow headingRow() {
        return best().headings();
    }

    /** The cells below the headings, column by column. */
    List<ColumnCells> cells() throws SourceFault {
        int width = HeadingRow.headings(headingRow()).size();
        List<ColumnCells> columns = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            columns.add(new ColumnCells());
        }
        try (RowStream rows = rows()) {
            Optional<RawRow> row = rows.next();
            for (int seen = 0; row.isPresent() && seen < MOST_ROWS; row = rows.next()) {
                if (row.get().number() > headingRow().number() && !row.get().isBlank()) {
                    seen++;
                    add(row.get(), columns);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return columns;
    }

    private static void add(RawRow row, List<ColumnCells> columns) {
        for (int i = 0; i < columns.size(); i++) {
            columns.get(i).add(Blanks.strip(row.cell(i)), row.kind(i), SAMPLES);
        }
    }

    @Override
    public void close() {
        try {
            for (Closeable one : open) {
                one.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
