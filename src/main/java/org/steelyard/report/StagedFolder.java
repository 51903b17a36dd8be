package org.steelyard.report;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * A folder whose files appear only when all of them are complete. They are written into a hidden folder beside it and
 * then moved, each in one step that replaces an older file whole. What was there before stays untouched until then.
 */
final class StagedFolder implements Closeable {

    private static final String NOT_IN_NAMES = "/\\<>:\"|?*";

    private final Path folder;
    private final Path staging;
    private final List<OutputFile> files = new ArrayList<>();

    private StagedFolder(Path folder, Path staging) {
        this.folder = folder;
        this.staging = staging;
    }

    /**
     * Prepares the writing of a folder.
     *
     * @throws IllegalArgumentException if the name cannot be that of a folder inside the parent on every system
     */
    static StagedFolder in(Path parent, String name) throws IOException {
        requireName(name);
        Files.createDirectories(parent);
        return new StagedFolder(parent.resolve(name), Files.createTempDirectory(parent, ".writing-"));
    }

    private static void requireName(String name) {
        boolean bad = name.isBlank()
                || name.startsWith(".")
                || name.endsWith(".")
                || name.endsWith(" ")
                || name.chars().anyMatch(c -> Character.isISOControl(c) || NOT_IN_NAMES.indexOf(c) >= 0);
        if (bad) {
            throw new IllegalArgumentException("the season's name '" + name
                    + "' cannot be that of a folder (expected a name without " + NOT_IN_NAMES
                    + " that neither begins nor ends with a full stop)");
        }
    }

    /** Where a file is to be written; files are moved in the order in which they are asked for. */
    Path file(OutputFile file) {
        files.add(file);
        return staging.resolve(file.fileName());
    }

    /** All files asked for. */
    List<OutputFile> files() {
        return List.copyOf(files);
    }

    /** Where something may wait that is not to stay. */
    Path scratch(String name) {
        return staging.resolve(name);
    }

    /** Moves all files to their place. */
    void publish() throws IOException {
        Files.createDirectories(folder);
        for (OutputFile file : files) {
            String name = file.fileName();
            Files.move(staging.resolve(name), folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
        }
    }

    /** Removes what is left of the hidden folder. */
    @Override
    public void close() throws IOException {
        if (!Files.exists(staging)) {
            return;
        }
        try (DirectoryStream<Path> left = Files.newDirectoryStream(staging)) {
            for (Path path : left) {
                Files.delete(path);
            }
        }
        Files.delete(staging);
    }
}
