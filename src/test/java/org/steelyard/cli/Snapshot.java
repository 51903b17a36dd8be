package org.steelyard.cli;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The files below a folder, each with the checksum of its bytes. */
final class Snapshot {

    private Snapshot() {}

    /** What a user sees: all files that are not hidden, and not in a hidden folder. */
    static Map<String, String> seen(Path folder) throws IOException {
        return of(folder, name -> !isHidden(name));
    }

    /** What a user does not see. */
    static Map<String, String> hidden(Path folder) throws IOException {
        return of(folder, Snapshot::isHidden);
    }

    private static boolean isHidden(String name) {
        return name.startsWith(".") || name.contains("/.");
    }

    private static Map<String, String> of(Path folder, Predicate<String> wanted) throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (!Files.exists(folder)) {
            return files;
        }
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(path).toString().replace('\\', '/');
                if (wanted.test(name)) {
                    files.put(name, checksum(path));
                }
            }
        }
        return files;
    }

    private static String checksum(Path file) throws IOException {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
            return new BigInteger(1, digest).toString(16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
