package org.steelyard.report;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A folder of outputs with sub-folders, written beside its place and moved there when all of it is complete. */
final class GradeFolder implements Closeable {

    private final Path folder;
    private final Path staging;
    private final List<Path> files = new ArrayList<>();

    private GradeFolder(Path folder, Path staging) {
        this.folder = folder;
        this.staging = staging;
    }

    static GradeFolder at(Path folder) throws IOException {
        Path parent = folder.toAbsolutePath().normalize().getParent();
        Path in = parent == null ? folder.toAbsolutePath() : parent;
        Files.createDirectories(in);
        return new GradeFolder(folder, Files.createTempDirectory(in, ".writing-"));
    }

    /** Where a file is written for now. */
    Path file(String name) throws IOException {
        Path relative = Path.of(name);
        Path file = staging.resolve(name);
        Path parent = file.getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        files.add(relative);
        return file;
    }

    /** Moves every file to its place, and removes from a sub-folder what an earlier run left there. */
    void publish(String subFolder) throws IOException {
        Path sub = folder.resolve(subFolder);
        if (Files.isDirectory(sub)) {
            try (Stream<Path> old = Files.list(sub)) {
                for (Path path : old.sorted().toList()) {
                    Path relative = Path.of(subFolder).resolve(path.getFileName());
                    boolean ours =
                            path.toString().endsWith(".html") || path.toString().endsWith(".xlsx");
                    if (ours && !files.contains(relative)) {
                        Files.delete(path);
                    }
                }
            }
        }
        for (Path file : files) {
            Path to = folder.resolve(file);
            Path parent = to.getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            Files.move(staging.resolve(file), to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void close() throws IOException {
        if (Files.exists(staging)) {
            Files.walkFileTree(staging, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path dir, IOException e) throws IOException {
                    Files.delete(dir);
                    return FileVisitResult.CONTINUE;
                }
            });
        }
    }
}
