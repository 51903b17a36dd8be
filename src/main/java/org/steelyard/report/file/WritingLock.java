package org.steelyard.report.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Says that somebody is writing. A file is locked while they do, and the system lets go of the lock when their process
 * ends, however it ends: so a lock that can be taken was left by nobody or by a run that was killed. Where a file
 * system knows no locks, everybody is let in.
 *
 * <p>A system may let go of a lock as soon as its process closes any channel of the file, not only the locked one. So
 * every channel that is opened here stays open until the end, and no file is locked twice in one process.
 */
final class WritingLock implements Closeable {

    /** Far beyond what the file holds, for where a locked part of a file cannot be read. */
    private static final long PLACE = Long.MAX_VALUE - 1;

    private static final int TRIES = 50;

    private static final Set<Path> HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final byte[] mark = UUID.randomUUID().toString().getBytes(StandardCharsets.US_ASCII);
    private final List<FileChannel> channels = new ArrayList<>();

    private WritingLock(Path file) {
        this.file = file;
    }

    /**
     * Takes a lock.
     *
     * @param lock its file, which is made if it is not there; what stands there and is no file of its own, as a link,
     *     is removed
     * @return the lock; empty if somebody else has it
     */
    static Optional<WritingLock> take(Path lock) throws IOException {
        Path whole = lock.toAbsolutePath();
        Path folder = Optional.ofNullable(whole.getParent()).orElse(whole).toRealPath();
        Path file = folder.resolve(String.valueOf(whole.getFileName()));
        if (!HERE.add(file)) {
            return Optional.empty();
        }
        Optional<WritingLock> taken = Optional.empty();
        try {
            taken = tryTake(file);
        } finally {
            if (taken.isEmpty()) {
                HERE.remove(file);
            }
        }
        return taken;
    }

    /** Who had the file before removes it at the end: then it is locked, but stands there no more. */
    private static Optional<WritingLock> tryTake(Path file) throws IOException {
        for (int i = 0; i < TRIES; i++) {
            removeIfNoLock(file);
            WritingLock lock = new WritingLock(file);
            FileChannel channel = lock.open(StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!isLocked(channel)) {
                lock.closeChannels();
                return Optional.empty();
            }
            if (lock.isMarked(channel)) {
                return Optional.of(lock);
            }
            lock.closeChannels();
        }
        return Optional.empty();
    }

    private FileChannel open(StandardOpenOption... options) throws IOException {
        Set<java.nio.file.OpenOption> all = new java.util.HashSet<>(List.of(options));
        all.add(LinkOption.NOFOLLOW_LINKS);
        FileChannel channel = FileChannel.open(file, all);
        channels.add(channel);
        return channel;
    }

    private static boolean isLocked(FileChannel channel) {
        try {
            FileLock lock = channel.tryLock(PLACE, 1, false);
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (IOException e) {
            return true; // a file system without locks
        }
    }

    private boolean isMarked(FileChannel channel) throws IOException {
        try {
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(mark), 0);
            return isHeld();
        } catch (IOException e) { // as on a full disk
            try {
                Files.deleteIfExists(file);
            } finally {
                closeChannels();
            }
            throw e;
        }
    }

    /** Whether the file that is locked still stands under its name. */
    boolean isHeld() throws IOException {
        try {
            FileChannel look = open(StandardOpenOption.READ);
            ByteBuffer found = ByteBuffer.allocate(mark.length + 1);
            while (found.hasRemaining() && look.read(found) >= 0) {
                // a file may be read in pieces
            }
            return found.flip().equals(ByteBuffer.wrap(mark));
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    /** A link, or a file that has another name elsewhere, would be written through. */
    private static void removeIfNoLock(Path file) throws IOException {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isAlone(file)) {
            Files.deleteIfExists(file);
        }
    }

    private static boolean isAlone(Path file) throws IOException {
        boolean regular = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
        if (!regular || !file.getFileSystem().supportedFileAttributeViews().contains("unix")) {
            return regular || !Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        }
        try {
            return (int) Files.getAttribute(file, "unix:nlink", LinkOption.NOFOLLOW_LINKS) <= 1;
        } catch (NoSuchFileException e) { // its owner removed it meanwhile
            return true;
        }
    }

    private void closeChannels() throws IOException {
        IOException failed = null;
        for (FileChannel channel : channels) {
            try {
                channel.close();
            } catch (IOException e) {
                failed = e;
            }
        }
        if (failed != null) {
            throw failed;
        }
    }

    /** Removes the file and lets go. */
    @Override
    public void close() throws IOException {
        try {
            if (isHeld()) {
                Files.deleteIfExists(file);
            }
        } finally {
            try {
                closeChannels();
            } finally {
                HERE.remove(file);
            }
        }
    }
}
