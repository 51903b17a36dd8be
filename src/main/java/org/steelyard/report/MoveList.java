package org.steelyard.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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
    private static final String MOVE = "move ";
    private static final String REMOVE = "remove ";

    MoveList {
        files = List.copyOf(files);
        gone = List.copyOf(gone);
        files.forEach(MoveList::requireInside);
        gone.forEach(MoveList::requireInside);
    }

    static void requireInside(String name) {
        Path path = Path.of(name);
        boolean bad = name.isBlank()
                || name.chars().anyMatch(Character::isISOControl)
                || path.isAbsolute()
                || path.getNameCount() > 2
                || !path.equals(path.normalize())
                || path.startsWith("..");
        if (bad) {
            throw new IllegalArgumentException("'" + name + "' is not the name of a file inside the folder");
        }
    }

    static boolean isAt(Path staging) {
        return Files.isRegularFile(staging.resolve(NAME), LinkOption.NOFOLLOW_LINKS);
    }

    void write(Path staging) throws IOException {
        List<String> lines = new ArrayList<>();
        files.forEach(name -> lines.add(MOVE + name));
        gone.forEach(name -> lines.add(REMOVE + name));
        Path part = staging.resolve(NAME + ".part");
        Files.write(part, lines, StandardCharsets.UTF_8);
        OutputPlace.settle(part);
        WholeFile.move(part, staging.resolve(NAME));
    }

    static MoveList read(Path staging) throws IOException {
        List<String> files = new ArrayList<>();
        List<String> gone = new ArrayList<>();
        for (String line : Files.readAllLines(staging.resolve(NAME), StandardCharsets.UTF_8)) {
            if (line.startsWith(MOVE)) {
                files.add(line.substring(MOVE.length()));
            } else if (line.startsWith(REMOVE)) {
                gone.add(line.substring(REMOVE.length()));
            }
        }
        try {
            return new MoveList(files, gone);
        } catch (IllegalArgumentException e) {
            throw new IOException(staging.resolve(NAME) + " was not written by this program: " + e.getMessage(), e);
        }
    }

    /** Moves what is not moved yet, removes what is to go, and then the list itself. */
    void moveAll(Path staging, Path folder) throws IOException {
        for (String name : gone) {
            Files.deleteIfExists(folder.resolve(name));
        }
        for (String name : files) {
            Path from = staging.resolve(name);
            if (Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
                Path to = folder.resolve(name);
                Path parent = to.getParent();
                if (parent != null) {
                    Files.createDirectories(parent);
                }
                OutputPlace.requireFree(to);
                WholeFile.move(from, to);
            }
        }
        Files.delete(staging.resolve(NAME));
    }
}
