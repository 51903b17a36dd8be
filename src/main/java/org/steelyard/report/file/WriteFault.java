package org.steelyard.report.file;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Says in plain words why a file could not be written, and what to do. */
public final class WriteFault {

    private static final String FULL = "the disk is full; free some space there";

    /** A disk with so much room is not full. */
    private static final long ROOM_BYTES = 1 << 20;

    private static final List<Words> SYSTEM = List.of(
            new Words("no space left|not enough space|disk full", FULL),
            new Words("quota exceeded", "your quota on this disk is used up; free some space there"),
            new Words("file too large", "a file grew larger than this disk or your account may have"),
            new Words("read-only file system", "the disk is read-only"),
            new Words("permission denied|access is denied|operation not permitted", "you may not write there"),
            new Words("not a directory", "a file stands where a folder is needed; move it away"),
            new Words("is a directory", "a folder stands where the file is to be; move it away"),
            new Words("name too long", "the name is too long for this disk; give a shorter one"),
            new Words("being used by another process", "it is open in another program; close it there"),
            new Words("input/output error", "the disk fails; have it looked at"));

    private WriteFault() {}

    /** What a system says, as alternatives between bars, and what that means. */
    private record Words(String system, String plain) {
        boolean fit(String said) {
            return List.of(system.split("\\|")).stream().anyMatch(said::contains);
        }
    }

    /**
     * The reason.
     *
     * @param e why it was not written
     * @return a clause without a full stop, with the place where it is known
     */
    public static String of(IOException e) {
        String plain = plain(e);
        String place = e instanceof FileSystemException system && system.getFile() != null
                ? " (" + (system.getOtherFile() == null ? system.getFile() : system.getOtherFile()) + ")"
                : "";
        return plain + place;
    }

    /** The reason, and that what stood there before is as it was, where that is so. */
    public static String sentences(IOException e) {
        return of(e) + (e instanceof HalfMovedException ? "." : ". What stood there before is as it was.");
    }

    /** A system says of a disk without room for another file what it says of a full one. */
    private static boolean isOutOfFiles(FileSystemException e) {
        Path folder = e.getFile() == null
                ? null
                : Path.of(e.getFile()).toAbsolutePath().getParent();
        if (folder != null && folder.endsWith(StagedFolder.STAGING) && !Files.exists(folder)) {
            folder = folder.getParent(); // what was begun is removed before this is asked
        }
        if (folder == null || !Files.isDirectory(folder)) {
            return false;
        }
        try {
            return Files.getFileStore(folder).getUsableSpace() > ROOM_BYTES;
        } catch (IOException unknown) {
            return false;
        }
    }

    private static String plain(IOException e) {
        String plain = words(e);
        return plain.equals(FULL) && e instanceof FileSystemException system && isOutOfFiles(system)
                ? "the disk has room for no more files; remove some there"
                : plain;
    }

    private static String words(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "you may not write there";
        }
        if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
            return "a file stands where a folder is needed; move it away";
        }
        if (e instanceof NoSuchFileException) {
            return "there is no such place, or it was removed meanwhile";
        }
        if (e instanceof DirectoryNotEmptyException) {
            return "a folder stands where the file is to be; move it away";
        }
        String said = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
        String kind = e.getClass().getSimpleName().replace("Exception", "");
        if (said == null) {
            return kind;
        }
        String lower = said.toLowerCase(Locale.ROOT);
        return SYSTEM.stream()
                .filter(words -> words.fit(lower))
                .findFirst()
                .map(Words::plain)
                .orElse(
                        e instanceof FileSystemException || e instanceof FileNotFoundException || isOwn(e)
                                ? said
                                : kind + ", " + said);
    }

    private static boolean isOwn(IOException e) {
        return e.getClass() == IOException.class || e instanceof HalfMovedException;
    }
}
