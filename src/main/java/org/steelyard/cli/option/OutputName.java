package org.steelyard.cli.option;

import java.nio.file.Files;
import java.nio.file.Path;
import org.steelyard.report.file.StagedFolder;

/** Names of folders of outputs. */
public final class OutputName {

    private OutputName() {}

    /** The name of an input's outputs: its folder's, or its file's without the ending. */
    public static String of(Path input) {
        String file = String.valueOf(input.toAbsolutePath().normalize().getFileName());
        int dot = file.lastIndexOf('.');
        return dot > 0 && !Files.isDirectory(input) ? file.substring(0, dot) : file;
    }

    /** The name, if a folder may have it on every system. */
    public static String checked(String name) throws CannotException {
        try {
            StagedFolder.requireName(name);
            return name;
        } catch (IllegalArgumentException e) {
            throw new CannotException("--name: " + e.getMessage() + ".");
        }
    }
}
