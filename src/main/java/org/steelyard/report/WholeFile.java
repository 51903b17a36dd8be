package org.steelyard.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A single file that stands under its name only when it is complete. */
final class WholeFile {

    private WholeFile() {}

    /** What writes the bytes. */
    @FunctionalInterface
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    static void write(Path file, Content content) throws IOException {
        Path whole = file.toAbsolutePath();
        Path folder = whole.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Path part = whole.resolveSibling("." + whole.getFileName() + ".part");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part), 1 << 16)) {
                content.to(out);
            }
            move(part, whole);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void move(Path part, Path whole) throws IOException {
        try {
            Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
