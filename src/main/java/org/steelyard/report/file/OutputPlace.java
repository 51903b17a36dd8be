package org.steelyard.report.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.DosFileAttributeView;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Optional;

/** The place where a file is to stand: whether it can be put there is looked at before anything is moved. */
final class OutputPlace {

    private OutputPlace() {}

    /**
     * Refuses a place that is taken.
     *
     * @throws FileSystemException if a folder stands there, a file that is read-only or held open elsewhere, or a file
     *     where a folder is needed; its reason says what to do
     */
    static void requireFree(Path file) throws IOException {
        Path parent = file.getParent();
        if (parent != null && Files.exists(parent) && !Files.isDirectory(parent)) {
            throw new FileSystemException(
                    parent.toString(), null, "a file stands where a folder is needed; move it away");
        }
        if (Files.isDirectory(file)) {
            throw new FileSystemException(
                    file.toString(), null, "a folder stands where the file is to be; move it away");
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (isReadOnly(file)) {
            throw new FileSystemException(
                    file.toString(), null, "the file there is read-only; make it writable or move it away");
        }
        try (FileChannel held = FileChannel.open(file, StandardOpenOption.WRITE)) {
            held.position();
        } catch (IOException e) {
            FileSystemException said = new FileSystemException(
                    file.toString(),
                    null,
                    "the file there cannot be replaced; close it where it is open, or move it away");
            said.initCause(e);
            throw said;
        }
    }

    /** The link that stands where a file's sub-folder is to be, if one does: what goes there would go elsewhere. */
    static Optional<Path> link(Path folder, String name) {
        return Optional.ofNullable(folder.resolve(name).getParent())
                .filter(parent -> !parent.equals(folder))
                .filter(Files::isSymbolicLink);
    }

    /**
     * Refuses a sub-folder that is a link.
     *
     * @throws FileSystemException if it is one
     */
    static void requireNoLink(Path folder, String name) throws IOException {
        Optional<Path> link = link(folder, name);
        if (link.isPresent()) {
            throw linked(link.get());
        }
    }

    static FileSystemException linked(Path link) {
        return new FileSystemException(link.toString(), null, "a link stands where a folder is needed; move it away");
    }

    /** Whether its owner marked it as not to be written, whatever the system would let this user do. */
    private static boolean isReadOnly(Path file) throws IOException {
        PosixFileAttributeView posix = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (posix != null) {
            return !posix.readAttributes().permissions().contains(PosixFilePermission.OWNER_WRITE);
        }
        DosFileAttributeView dos = Files.getFileAttributeView(file, DosFileAttributeView.class);
        return dos != null && dos.readAttributes().isReadOnly();
    }

    /** Sees to it that a file's bytes are on the disk, not only on their way, before it gets its name. */
    static void settle(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }
}
