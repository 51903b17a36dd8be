package org.steelyard.spark;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FSDataInputStream;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.LocalFileSystem;
import org.apache.hadoop.fs.Path;
import org.steelyard.report.file.FileSum;

/** Files that all machines reach, by way of Hadoop's file systems. */
final class Store {

    private static final int CHUNK_BYTES = 1 << 18;

    private final Configuration settings;

    Store(Configuration settings) {
        this.settings = settings;
    }

    /** An address as Hadoop has it; a path with a colon is one of this machine. */
    private static Path path(String address) {
        try {
            return new Path(address);
        } catch (IllegalArgumentException e) {
            return new Path(java.nio.file.Path.of(address).toUri());
        }
    }

    /** The address of something in a folder. */
    static String child(String folder, String name) {
        String whole = path(folder).toString();
        return whole.endsWith("/") ? whole + name : whole + "/" + name;
    }

    /** The address of a file or folder of this machine. */
    static String address(java.nio.file.Path here) {
        return "file:" + new Path(here.toAbsolutePath().normalize().toUri()).toUri().getPath();
    }

    /** The path of an address in its file system. */
    static java.nio.file.Path inItsSystem(String address) {
        return java.nio.file.Path.of(path(address).toUri().getPath()).normalize();
    }

    /** The file system of an address, without the checksum files that Hadoop keeps on this machine. */
    FileSystem of(String address) throws IOException {
        FileSystem system = path(address).getFileSystem(settings);
        return system instanceof LocalFileSystem here ? here.getRawFileSystem() : system;
    }

    /** The file or folder itself, where this machine has it. */
    Optional<java.nio.file.Path> local(String address) throws IOException {
        return path(address).getFileSystem(settings) instanceof LocalFileSystem here
                ? Optional.of(here.pathToFile(path(address)).toPath())
                : Optional.empty();
    }

    /** Whether two addresses are in one file system. */
    boolean areTogether(String one, String other) throws IOException {
        return of(one).getUri().equals(of(other).getUri());
    }

    /** Whether two addresses lead to the same, links apart. */
    boolean areTheSame(String one, String other) throws IOException {
        return of(one).makeQualified(path(one)).equals(of(other).makeQualified(path(other)));
    }

    boolean isFolder(String address) throws IOException {
        return exists(address) && of(address).getFileStatus(path(address)).isDirectory();
    }

    boolean isFile(String address) throws IOException {
        return exists(address) && of(address).getFileStatus(path(address)).isFile();
    }

    long bytes(String address) throws IOException {
        return of(address).getFileStatus(path(address)).getLen();
    }

    /** The last name of an address, whatever points at it. */
    String name(String address) throws IOException {
        Optional<java.nio.file.Path> here = local(address);
        return here.isPresent()
                ? String.valueOf(here.get().toAbsolutePath().normalize().getFileName())
                : path(address).getName();
    }

    /** Names of all files in a folder and below it, if there is one. */
    List<String> filesIn(String folder) throws IOException {
        List<String> names = new ArrayList<>();
        if (isFolder(folder)) {
            for (FileStatus entry : list(folder)) {
                String name = entry.getPath().getName();
                if (entry.isDirectory()) {
                    filesIn(child(folder, name)).forEach(below -> names.add(name + "/" + below));
                } else {
                    names.add(name);
                }
            }
        }
        return names;
    }

    /** Whether a file is one of some, byte for byte. */
    boolean isOneOf(String address, List<FileSum> sums) throws IOException {
        if (sums.isEmpty() || !isFile(address)) {
            return false;
        }
        long bytes = bytes(address);
        if (sums.stream().noneMatch(sum -> sum.bytes() == bytes)) {
            return false;
        }
        try (InputStream in = open(address)) {
            return sums.contains(FileSum.of(in));
        }
    }

    /** A folder's entries by name, or the file itself. */
    List<FileStatus> list(String address) throws IOException {
        List<FileStatus> all = new ArrayList<>(List.of(of(address).listStatus(path(address))));
        all.sort(Comparator.comparing(entry -> entry.getPath().getName()));
        return all;
    }

    InputStream open(String address) throws IOException {
        return openAnywhere(address);
    }

    /** Opens a file of which any place can be read. */
    FSDataInputStream openAnywhere(String address) throws IOException {
        return of(address).open(path(address));
    }

    /** Copies a stretch of a file behind what a local file holds. */
    void fetch(String address, long from, long to, OutputStream into) throws IOException {
        try (FSDataInputStream in = openAnywhere(address)) {
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
        Path path = path(address);
        system.mkdirs(path.getParent());
        try (OutputStream out = system.create(path, true)) {
            Files.copy(file, out);
        }
    }

    void move(String from, String to) throws IOException {
        Path target = path(to);
        FileSystem system = of(to);
        system.mkdirs(target.getParent());
        if (!system.rename(path(from), target)) {
            throw new IOException("cannot move " + from + " to " + to);
        }
    }

    void delete(String address) throws IOException {
        of(address).delete(path(address), true);
    }

    /** Moves a file or folder to where another may be. */
    void replace(String from, String to) throws IOException {
        delete(to);
        move(from, to);
    }

    boolean exists(String address) throws IOException {
        return of(address).exists(path(address));
    }
}
