package org.steelyard.read.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.loading.Origin;

/**
 * The files of a season: one file, or the files of one folder.
 *
 * @param files files to read, by name in the order of their characters; at least one
 * @param skipped what else lies in the folder, by name
 */
public record SeasonFolder(List<Path> files, List<Skipped> skipped) {

    private static final Set<String> TEXT = Set.of("csv", "tsv", "txt");
    private static final String WORKBOOK = "xlsx";
    /** Why something is not read that is neither a file nor a folder. */
    public static final String NO_FILE = "a pipe or a device, not a file";

    /** Why a file is not read that this program wrote. */
    public static final String OUTPUT = "an output of this program";

    private static final String KINDS = ".csv, .tsv, .txt or .xlsx";

    /**
     * Something in the folder that is not read.
     *
     * @param name its name
     * @param reason why not
     */
    public record Skipped(String name, String reason) {}

    public SeasonFolder {
        files = List.copyOf(files);
        skipped = List.copyOf(skipped);
    }

    /**
     * Lists the files of a season.
     *
     * @param path a file or a folder
     * @return its files
     * @throws SeasonUnreadableException if it is not there, cannot be listed, or holds nothing to read
     */
    public static SeasonFolder list(Path path) throws SeasonUnreadableException {
        return list(path, file -> false);
    }

    /**
     * Lists the files of a season without those that this program wrote there.
     *
     * @param path a file or a folder
     * @param isOutput whether a file of the folder is an output
     * @return its files; a file that is named itself is read, whatever it is
     * @throws SeasonUnreadableException if it is not there, cannot be listed, or holds nothing to read
     */
    public static SeasonFolder list(Path path, Predicate<Path> isOutput) throws SeasonUnreadableException {
        if (!Files.exists(path)) {
            throw unreadable(path, Unreadable.absence(path), "a file (" + KINDS + ") or a folder of them");
        }
        if (Files.isDirectory(path)) {
            return folder(path, isOutput);
        }
        Optional<String> reason = reasonToSkip(path);
        if (reason.isPresent()) {
            throw unreadable(path, reason.get(), "a file (" + KINDS + ") or a folder of them");
        }
        return new SeasonFolder(List.of(path), List.of());
    }

    private static SeasonFolder folder(Path folder, Predicate<Path> isOutput) throws SeasonUnreadableException {
        List<Path> files = new ArrayList<>();
        List<Skipped> skipped = new ArrayList<>();
        for (Path path : children(folder)) {
            Optional<String> reason =
                    reasonToSkip(path).or(() -> Optional.of(OUTPUT).filter(words -> isOutput.test(path)));
            if (reason.isPresent()) {
                skipped.add(new Skipped(nameOf(path), reason.get()));
            } else {
                files.add(path);
            }
        }
        if (files.isEmpty()) {
            String passed = skipped.isEmpty()
                    ? ""
                    : "; " + skipped.size()
                            + (skipped.size() == 1
                                    ? " other entry was passed over"
                                    : " other entries were passed over");
            throw unreadable(folder, "the folder holds no file to read" + passed, "at least one file " + KINDS);
        }
        return new SeasonFolder(files, skipped);
    }

    private static List<Path> children(Path folder) throws SeasonUnreadableException {
        try (Stream<Path> children = Files.list(folder)) {
            return children.sorted(Comparator.comparing(SeasonFolder::nameOf)).toList();
        } catch (IOException e) {
            throw unreadable(folder, "the folder cannot be listed", "a folder that may be read");
        }
    }

    private static Optional<String> reasonToSkip(Path path) {
        Optional<String> reason = reasonToSkip(nameOf(path), Files.isDirectory(path));
        boolean isNoFile = Files.exists(path) && !Files.isRegularFile(path);
        return reason.isEmpty() && isNoFile ? Optional.of(NO_FILE) : reason;
    }

    /**
     * Why something in the folder of a season is not read.
     *
     * @param name its name
     * @param isFolder whether it is a folder
     * @return the reason; empty if it is read
     */
    public static Optional<String> reasonToSkip(String name, boolean isFolder) {
        if (name.startsWith("~$")) {
            return Optional.of("it only marks a workbook that is open elsewhere");
        }
        if (name.startsWith(".")) {
            return Optional.of("hidden");
        }
        if (isFolder) {
            return Optional.of("sub-folders are not read");
        }
        String ending = endingOf(name);
        if (TEXT.contains(ending) || ending.equals(WORKBOOK)) {
            return Optional.empty();
        }
        return Optional.of(
                ending.equals("xls") || ending.equals("ods") || ending.equals("xlsm") || ending.equals("xlsb")
                        ? "workbooks are read as .xlsx only; save it as .xlsx or .csv"
                        : "not a kind of file that is read");
    }

    private static SeasonUnreadableException unreadable(Path path, String reason, String expected) {
        return new SeasonUnreadableException(new InputProblem(
                new Origin(nameOf(path), "", 0), "", ProblemCode.UNREADABLE, reason, path.toString(), expected));
    }

    /**
     * Refuses what is not there, or is no file: a pipe that nobody writes to would never end.
     *
     * @throws SourceFault if it is none
     */
    public static void requireFile(Path path) throws SourceFault {
        if (!Files.isRegularFile(path)) {
            boolean there = Files.exists(path) && !Files.isDirectory(path);
            throw new SourceFault(new TableName(nameOf(path), "")
                    .unreadable(
                            0,
                            there
                                    ? NO_FILE
                                    : Files.isSymbolicLink(path)
                                            ? Unreadable.absence(path)
                                            : "the file cannot be opened",
                            "",
                            "a file that is there and may be read"));
        }
    }

    public static String nameOf(Path path) {
        Path name = path.toAbsolutePath().normalize().getFileName();
        return name == null ? path.toString() : name.toString();
    }

    /** The part of a name behind its last dot, in lower case. */
    public static String endingOf(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    /** What is to be said of the files that were passed over because this program wrote them. */
    public List<InputProblem> outputsPassedOver() {
        return skipped.stream()
                .filter(one -> one.reason().equals(OUTPUT))
                .map(one -> new InputProblem(
                        new Origin(one.name(), "", 0),
                        "",
                        ProblemCode.MISSING,
                        "the file is passed over: it is " + OUTPUT,
                        "",
                        "a file of the inputs"))
                .toList();
    }
}
