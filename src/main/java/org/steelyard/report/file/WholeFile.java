package org.steelyard.report.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.UUID;

/**
 * A single file that stands under its name only when it is complete. It is written beside its place under a hidden name
 * of its own and then moved in one step. What a killed run left there is removed by the next that writes the same file.
 */
public final class WholeFile {

    private static final String PART = ".part";
    private static final String LOCK = ".lock";

    private WholeFile() {}

    /** What writes the bytes. */
    @FunctionalInterface
    public interface Content {
        /**
         * Writes them.
         *
         * @param out where to
         * @throws IOException if that fails
         */
        void to(OutputStream out) throws IOException;
    }

    /**
     * Writes a page in HTML or a text in YAML with the mark by which it is known again ({@link OutputMark}).
     *
     * @param to where to; its folder is made if it is not there
     * @param text what
     * @throws IOException if it cannot or must not be written; what stood there is then as it was
     */
    public static void write(Destination to, String text) throws IOException {
        to.requireMayWrite();
        byte[] bytes = OutputMark.marked(text).getBytes(StandardCharsets.UTF_8);
        write(to.path(), out -> out.write(bytes));
    }

    /**
     * Writes a file.
     *
     * @param file where to; its folder is made if it is not there
     * @param content what
     * @throws IOException if it cannot be written; what stood there is then as it was
     */
    public static void write(Path file, Content content) throws IOException {
        Path whole = Files.isSymbolicLink(file) && Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        if (Files.exists(whole) && !Files.isRegularFile(whole) && !Files.isDirectory(whole)) {
            straight(whole, content); // a device or a pipe, as that of the output
            return;
        }
        OutputPlace.requireFree(whole);
        Path folder = whole.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        String hidden = "." + Optional.ofNullable(whole.getFileName()).orElse(whole) + ".";
        sweep(whole, hidden);
        String mine = hidden + UUID.randomUUID();
        Optional<WritingLock> lock = WritingLock.take(whole.resolveSibling(mine + LOCK));
        while (lock.isEmpty()) { // who sweeps may have been quicker
            mine = hidden + UUID.randomUUID();
            lock = WritingLock.take(whole.resolveSibling(mine + LOCK));
        }
        Path part = whole.resolveSibling(mine + PART);
        try {
            writeInPart(part, whole, content);
        } finally {
            lock.get().close();
        }
    }

    private static void writeInPart(Path part, Path whole, Content content) throws IOException {
        try {
            try (OutputStream out = new BufferedOutputStream(
                    Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), 1 << 16)) {
                content.to(out);
            }
            OutputPlace.settle(part);
            move(part, whole);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void straight(Path device, Content content) throws IOException {
        try (OutputStream out =
                new BufferedOutputStream(Files.newOutputStream(device, StandardOpenOption.WRITE), 1 << 16)) {
            content.to(out);
        }
    }

    /** Removes what was left for the same file by whoever does not hold its lock any more. */
    private static void sweep(Path whole, String hidden) throws IOException {
        Path folder = whole.getParent();
        if (folder == null) {
            return;
        }
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, path -> isLeft(path, hidden, LOCK))) {
            for (Path path : all) {
                sweepOne(path);
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
    }

    private static void sweepOne(Path left) throws IOException {
        Optional<WritingLock> lock = WritingLock.take(left);
        if (lock.isPresent()) {
            try {
                String name = String.valueOf(left.getFileName());
                Files.deleteIfExists(left.resolveSibling(name.substring(0, name.length() - LOCK.length()) + PART));
            } finally {
                lock.get().close();
            }
        }
    }

    private static boolean isLeft(Path path, String hidden, String ending) {
        String name = String.valueOf(path.getFileName());
        return name.startsWith(hidden)
                && name.endsWith(ending)
                && name.length()
                        == hidden.length() + UUID.randomUUID().toString().length() + ending.length();
    }

    static void move(Path part, Path whole) throws IOException {
        try {
            Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
