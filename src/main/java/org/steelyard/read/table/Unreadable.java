package org.steelyard.read.table;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/** Says in plain words why a file cannot be read. */
public final class Unreadable {

    private Unreadable() {}

    /**
     * Why reading failed.
     *
     * @param file the file
     * @param e what the system said
     * @return the reason, to stand behind "cannot be read: "
     */
    public static String why(Path file, IOException e) {
        if (e instanceof AccessDeniedException) {
            return "you may not read it";
        }
        if (Files.isSymbolicLink(file) && !Files.exists(file)) {
            return absence(file);
        }
        if (e instanceof NoSuchFileException) {
            return "it was removed meanwhile";
        }
        String kind = e.getClass().getSimpleName();
        return e.getMessage() == null ? kind : kind + ", " + e.getMessage();
    }

    /** What is to be said of a path where nothing is. */
    static String absence(Path path) {
        if (!Files.isSymbolicLink(path)) {
            return "there is no such file or folder";
        }
        return leadsInCircles(path) ? "the link leads in circles" : "the link leads to nothing";
    }

    private static boolean leadsInCircles(Path link) {
        Set<Path> seen = new HashSet<>();
        Path at = link.toAbsolutePath().normalize();
        while (Files.isSymbolicLink(at)) {
            if (!seen.add(at)) {
                return true;
            }
            try {
                at = at.resolveSibling(Files.readSymbolicLink(at)).normalize();
            } catch (IOException e) {
                return false;
            }
        }
        return false;
    }
}
