package org.steelyard.read.sheet;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.heading.PlainHeadings;
import org.steelyard.read.loading.RowParser;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.season.TableReader;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.read.text.Blanks;

/**
 * Reads students' sheets and exercises.
 *
 * <ul>
 *   <li>A table (CSV or XLSX) holds a sheet in each row, the student's figures in columns of the fields
 *       {@code claimed-…}. The loading stands in the same row, or the row names an exercise in the column of
 *       {@code flight}. A column without the unit in a heading map has plain headings, as {@code claimed-takeoff-mass
 *       (kg)}.
 *   <li>A workbook that holds the blank sheet, filled in, is one sheet ({@link SheetReader}).
 *   <li>Exercises are a table of loadings; their names are in the column of {@code flight}.
 * </ul>
 */
public final class GradeReader {

    private static final int BATCH = 500;
    private static final int LONGEST_HEADINGS = 1 << 16;

    private final Tails tails;
    private final ReadOptions options;
    private final List<GradeInput.GivenSheet> sheets = new ArrayList<>();
    private final List<InputProblem> problems = new ArrayList<>();

    private GradeReader(Tails tails, ReadOptions options) {
        this.tails = tails;
        this.options = options;
    }

    /**
     * Reads a file of sheets, or every file of a folder.
     *
     * @param path file or folder
     * @param tails the fleet
     * @param options heading maps and text encoding
     * @param leaveOut a file that is not a sheet, as that of the exercises
     * @param isOutput whether a file of the folder is an output of this program
     * @return sheets and problems
     * @throws SeasonUnreadableException if there is nothing to read
     */
    public static GradeInput sheets(
            Path path, Tails tails, ReadOptions options, Path leaveOut, Predicate<Path> isOutput)
            throws SeasonUnreadableException {
        GradeReader reader = new GradeReader(tails, options);
        SeasonFolder folder = SeasonFolder.list(path, isOutput);
        Path out = leaveOut.toAbsolutePath().normalize();
        folder.outputsPassedOver().stream()
                .filter(problem -> !problem.origin().file().equals(SeasonFolder.nameOf(out)))
                .forEach(reader.problems::add);
        for (Path file : folder.files()) {
            if (!file.toAbsolutePath().normalize().equals(out)) {
                reader.file(file);
            }
        }
        return new GradeInput(reader.sheets, reader.problems);
    }

    /**
     * Reads exercises.
     *
     * @param file a table of loadings
     * @param tails the fleet
     * @param options heading maps and text encoding
     * @return the loadings, each as a sheet without figures, and the problems
     */
    public static GradeInput exercises(Path file, Tails tails, ReadOptions options) {
        GradeReader reader = new GradeReader(tails, options);
        reader.table(file);
        return new GradeInput(reader.sheets, reader.problems);
    }

    private void file(Path file) {
        boolean workbook = SeasonFolder.endingOf(SeasonFolder.nameOf(file)).equals("xlsx");
        Optional<StudentSheet> sheet = workbook ? SheetReader.read(file, problems) : Optional.empty();
        if (sheet.isPresent()) {
            add(sheet.get(), Optional.empty());
        } else {
            table(file);
        }
    }

    private void add(StudentSheet sheet, Optional<Loading> loading) {
        sheets.add(new GradeInput.GivenSheet(sheet, loading));
        sheet.claims().forEach((item, claim) -> {
            if (claim instanceof Claim.Unreadable unreadable) {
                problems.add(new InputProblem(
                        sheet.origin(),
                        item.label(),
                        ProblemCode.NOT_A_NUMBER,
                        "the figure of " + sheet.student() + " cannot be read",
                        unreadable.shown(),
                        unreadable.expected()));
            }
        });
    }

    private void table(Path file) {
        try (SourceFile source = SourceFile.open(file, options(file), tails)) {
            source.forEachBatch(BATCH, this::rows);
            problems.addAll(source.problems());
        }
    }

    private void rows(RawRows batch) {
        for (RawRow row : batch.rows()) {
            if (row.isBlank()) {
                continue;
            }
            if (row.leftOut().isPresent()) {
                problems.add(new InputProblem(
                        batch.reader().origin(row),
                        "",
                        ProblemCode.MISSING,
                        "the row is passed over: " + row.leftOut().get().reason(),
                        "",
                        "a row with a student's figures"));
            } else if (batch.reader() instanceof TableReader reader && reader.parser() instanceof RowParser parser) {
                row(parser, row, reader.origin(row));
            } else {
                problems.add(new InputProblem(
                        batch.reader().origin(row),
                        "",
                        ProblemCode.CONTRADICTION,
                        "a load item stands here",
                        "",
                        "a row with a student's figures, and the loading in columns"));
            }
        }
    }

    private ReadOptions options(Path file) {
        return plain(file)
                .map(map -> new ReadOptions(List.of(map), Optional.empty(), options.charset(), options.delimiter()))
                .orElse(options);
    }

    private static Optional<ColumnMap> plain(Path file) {
        if (!SeasonFolder.endingOf(SeasonFolder.nameOf(file)).equals("csv")) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try (BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            char[] head = new char[LONGEST_HEADINGS];
            int length = Math.max(0, reader.read(head));
            String text = new String(head, 0, length)
                    .replace("\uFEFF", "")
                    .lines()
                    .findFirst()
                    .orElse("");
            return text.isBlank() ? Optional.empty() : PlainHeadings.map(text);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private void row(RowParser parser, RawRow row, Origin origin) {
        Binding binding = parser.binding();
        StudentSheet sheet = new StudentSheet(
                origin,
                text(binding, row, Field.STUDENT),
                text(binding, row, Field.FLIGHT),
                asked(binding),
                ClaimCells.of(binding, row));
        if (!binding.columns().has(Field.TAIL)) {
            add(sheet, Optional.empty());
            return;
        }
        ParsedRow parsed = parser.parse(row);
        if (parsed instanceof ParsedRow.Accepted accepted) {
            add(sheet, Optional.of(accepted.loading()));
        } else if (parsed instanceof ParsedRow.Rejected rejected) {
            problems.addAll(rejected.row().problems());
        }
    }

    private static Set<SheetItem> asked(Binding binding) {
        return binding.columns().all().stream()
                .flatMap(column -> column.rule().field().claim().stream())
                .collect(Collectors.toSet());
    }

    private static String text(Binding binding, RawRow row, Field field) {
        for (BoundColumn column : binding.columns().all()) {
            if (column.rule().field() == field) {
                return Blanks.strip(row.cell(column.index()));
            }
        }
        return "";
    }
}
