package org.steelyard.spark;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FSDataInputStream;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.LocalFileSystem;
import org.apache.hadoop.fs.Path;

/** Files that all machines reach, by way of Hadoop's file systems. */
final class Store {

    private static final int CHUNK_BYTES = 1 << 18;

    private final Configuration settings;

    Store(Configuration settings) {
        this.settings = settings;
    }

    /** The file system of an address; it keeps no checksum files beside what it writes. */
    FileSystem of(String address) throws IOException {
        FileSystem system = new Path(address).getFileSystem(settings);
        if (system instanceof LocalFileSystem) {
            system.setWriteChecksum(false);
        }
        return system;
    }

    /** A folder's entries by name, or the file itself. */
    List<FileStatus> list(String address) throws IOException {
        List<FileStatus> all = new ArrayList<>(List.of(of(address).listStatus(new Path(address))));
        all.sort(Comparator.comparing(entry -> entry.getPath().getName()));
        return all;
    }

    InputStream open(String address) throws IOException {
        return of(address).open(new Path(address));
    }

    /** Copies a stretch of a file behind what a local file holds. */
    void fetch(String address, long from, long to, OutputStream into) throws IOException {
        try (FSDataInputStream in = of(address).open(new Path(address))) {
            in.seek(from);
            byte[] chunk = new byte[CHUNK_BYTES];
            long left = to - from;
            while (left > 0) {
                int n = in.read(chunk, 0, (int) Math.min(chunk.length, left));
                if (n < 0) {
                    throw new IOException(address + " ends before the place " + to + " that its size promises");
                }
                into.write(chunk, 0, n);
                left -= n;
            }
        }
    }

    /** Fetches the beginning of a file, or all of it. */
    void fetch(String address, long bytes, java.nio.file.Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            fetch(address, 0, bytes, out);
        }
    }

    /** Puts a local file where all machines reach it. */
    void put(java.nio.file.Path file, String address) throws IOException {
        FileSystem system = of(address);
        Path path = new Path(address);
        system.mkdirs(path.getParent());
        try (OutputStream out = system.create(path, true)) {
            Files.copy(file, out);
        }
    }

    void move(String from, String to) throws IOException {
        Path target = new Path(to);
        FileSystem system = of(to);
        system.mkdirs(target.getParent());
        if (!system.rename(new Path(from), target)) {
            throw new IOException("cannot move " + from + " to " + to);
        }
    }

    void delete(String address) throws IOException {
        of(address).delete(new Path(address), true);
    }

    boolean exists(String address) throws IOException {
        return of(address).exists(new Path(address));
    }
}
