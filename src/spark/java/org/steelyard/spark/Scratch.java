package org.steelyard.spark;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder on this machine that is gone when the work is done. */
final class Scratch implements Closeable {

    private final Path folder;

    Scratch() throws IOException {
        folder = Files.createTempDirectory("steelyard-");
    }

    Path folder() {
        return folder;
    }

    @Override
    public void close() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) {
                Files.deleteIfExists(path);
            }
        }
    }
}
