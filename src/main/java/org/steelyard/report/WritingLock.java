package org.steelyard.report;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Says that somebody is writing. A file is locked while they do, and the system lets go of the lock when their process
 * ends, however it ends: so a lock that can be taken was left by nobody or by a run that was killed. Where a file
 * system knows no locks, everybody is let in.
 */
final class WritingLock implements Closeable {

    /** Far beyond what the file holds, for where a locked part of a file cannot be read. */
    private static final long PLACE = Long.MAX_VALUE - 1;

    private static final int TRIES = 20;

    /** Closing any channel of a file gives up all locks that the process has on it, so none is opened twice. */
    private static final Set<Path> HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private WritingLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes a lock.
     *
     * @param lock its file, which is made if it is not there
     * @return the lock; empty if somebody else has it
     */
    static Optional<WritingLock> take(Path lock) throws IOException {
        Path file = lock.toAbsolutePath().normalize();
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

    private static Optional<WritingLock> tryTake(Path file) throws IOException {
        for (int i = 0; i < TRIES; i++) {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!isLocked(channel)) {
                channel.close();
                return Optional.empty();
            }
            WritingLock lock = new WritingLock(file, channel);
            try {
                if (isStill(file, channel)) {
                    return Optional.of(lock);
                }
            } catch (IOException e) { // as on a full disk
                try (lock) {
                    throw e;
                }
            }
            channel.close();
        }
        return Optional.empty();
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

    /** Whether the file that was locked still stands under its name: who had it before removes it at the end. */
    private static boolean isStill(Path file, FileChannel channel) throws IOException {
        byte[] mark = UUID.randomUUID().toString().getBytes(StandardCharsets.US_ASCII);
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(mark), 0);
        try {
            return java.util.Arrays.equals(Files.readAllBytes(file), mark);
        } catch (NoSuchFileException e) {
            return false;
        }
    }

    /** Removes the file and lets go. */
    @Override
    public void close() throws IOException {
        try (channel) {
            Files.deleteIfExists(file);
        } finally {
            HERE.remove(file);
        }
    }
}
