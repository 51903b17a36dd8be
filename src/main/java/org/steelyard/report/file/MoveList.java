package org.steelyard.report.file;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.steelyard.model.unit.OneLine;

/**
 * The files of a run that are complete and wait to be moved to their place, in order, and those of an earlier run that
 * go. It is written as a file beside them, which appears whole: from then on the run counts, and moving can be taken up
 * again at any time.
 *
 * @param files names of files to move
 * @param gone names of files to remove
 */
record MoveList(List<String> files, List<String> gone) {

    private static final String NAME = "complete";
    private static final String BEGIN = "complete files of a run, by Steelyard";
    private static final String MOVE = "move ";
    private static final String REMOVE = "remove ";
    private static final String END = "end";
    private static final long MOST_BYTES = 1 << 26;
    private static final Pattern GIVEN =
            Pattern.compile("(?:[a-z]+/)?[A-Za-z0-9][A-Za-z0-9._-]*\\.(?:csv|xlsx|html|json)");
    private static final Pattern PART =
            Pattern.compile("(?:flights|findings)\\.parquet/part-\\d+\\.parquet|(?:rejected|skipped)/part-\\d+\\.csv");

    MoveList {
        files = List.copyOf(files);
        gone = List.copyOf(gone);
        files.forEach(MoveList::requireGiven);
        gone.forEach(MoveList::requireFormer);
    }

    static void requireGiven(String name) {
        if (!GIVEN.matcher(name).matches()) {
            throw new IllegalArgumentException("'" + OneLine.value(name) + "' is not a name that this program gives to"
                    + " a file inside the folder");
        }
    }

    private static void requireFormer(String name) {
        boolean former = OutputFile.fileNames().contains(name) || NumberedPages.isOne(name) || isPart(name);
        if (!former) {
            throw new IllegalArgumentException(
                    "'" + OneLine.value(name) + "' is not the name of a file that this program removes");
        }
    }

    /** Whether a name is that of a part of an output. */
    static boolean isPart(String name) {
        return PART.matcher(name).matches();
    }

    static boolean isAt(Path staging) {
        return Files.isRegularFile(staging.resolve(NAME), LinkOption.NOFOLLOW_LINKS);
    }

    void write(Path staging) throws IOException {
        List<String> lines = new ArrayList<>(List.of(BEGIN));
        files.forEach(name -> lines.add(MOVE + name));
        gone.forEach(name -> lines.add(REMOVE + name));
        lines.add(END);
        Path part = staging.resolve(NAME + ".part");
        Files.write(part, lines, StandardCharsets.UTF_8);
        OutputPlace.settle(part);
        WholeFile.move(part, staging.resolve(NAME));
    }

    /**
     * The list that a run left.
     *
     * @throws ForeignListException if no run of this program wrote it, or it leads out of the folder
     */
    static MoveList read(Path staging, Path folder) throws IOException {
        Path file = staging.resolve(NAME);
        if (Files.size(file) > MOST_BYTES) {
            throw new ForeignListException(file, "it is too long");
        }
        try {
            MoveList list = of(Files.readAllLines(file, StandardCharsets.UTF_8));
            list.requireInside(staging, folder);
            return list;
        } catch (CharacterCodingException e) {
            throw new ForeignListException(file, "it is no text");
        } catch (IllegalArgumentException e) {
            throw new ForeignListException(file, e.getMessage());
        }
    }

    private void requireInside(Path staging, Path folder) {
        for (String name : files) {
            Path from = staging.resolve(name);
            boolean odd = Files.exists(from, LinkOption.NOFOLLOW_LINKS)
                    && !Files.isRegularFile(from, LinkOption.NOFOLLOW_LINKS);
            if (odd
                    || OutputPlace.link(staging, name).isPresent()
                    || OutputPlace.link(folder, name).isPresent()) {
                throw new IllegalArgumentException("'" + name + "' leads elsewhere");
            }
        }
        for (String name : gone) {
            if (OutputPlace.link(folder, name).isPresent()) {
                throw new IllegalArgumentException("'" + name + "' leads elsewhere");
            }
        }
    }

    private static MoveList of(List<String> lines) {
        int last = lines.size() - 1;
        if (last < 1 || !lines.get(0).equals(BEGIN) || !lines.get(last).equals(END)) {
            throw new IllegalArgumentException("it does not begin and end as such a list does");
        }
        List<String> files = new ArrayList<>();
        List<String> gone = new ArrayList<>();
        for (String line : lines.subList(1, last)) {
            if (line.startsWith(MOVE)) {
                files.add(line.substring(MOVE.length()));
            } else if (line.startsWith(REMOVE)) {
                gone.add(line.substring(REMOVE.length()));
            } else {
                throw new IllegalArgumentException("'" + OneLine.value(line) + "' says neither move nor remove");
            }
        }
        return new MoveList(files, gone);
    }

    /** Moves what is not moved yet, removes what is to go, and then the list itself. */
    void moveAll(Path staging, Path folder) throws IOException {
        for (String name : gone) {
            OutputPlace.requireNoLink(folder, name);
            Files.deleteIfExists(folder.resolve(name));
        }
        for (String name : gone) {
            if (isPart(name)) {
                removeIfEmpty(folder.resolve(name.substring(0, name.indexOf('/'))));
            }
        }
        for (String name : files) {
            Path from = staging.resolve(name);
            if (Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
                Path to = folder.resolve(name);
                Path parent = to.getParent();
                OutputPlace.requireNoLink(folder, name);
                if (parent != null) {
                    Files.createDirectories(parent);
                }
                OutputPlace.requireFree(to);
                WholeFile.move(from, to);
            }
        }
        Files.delete(staging.resolve(NAME));
    }

    private static void removeIfEmpty(Path folder) throws IOException {
        try {
            Files.deleteIfExists(folder);
        } catch (DirectoryNotEmptyException e) {
            return; // somebody put something there meanwhile
        }
    }
}
