package org.steelyard.read.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * By what a file is known to be as it was.
 *
 * @param path the file
 * @param bytes its size
 * @param written when it was last written to
 */
public record FileStamp(Path path, long bytes, FileTime written) {

    /** A file as it is now; empty where it cannot be asked, which its reading then tells. */
    public static Optional<FileStamp> of(Path path) {
        try {
            return Optional.of(new FileStamp(path, Files.size(path), Files.getLastModifiedTime(path)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Whether the file is another by now, or gone. */
    public boolean isOutdated() {
        return !of(path).equals(Optional.of(this));
    }
}
