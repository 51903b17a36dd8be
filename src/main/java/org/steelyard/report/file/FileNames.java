package org.steelyard.report.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Names of files made of data. No two of one object are the same on a system that takes upper and lower case for one.
 */
public final class FileNames {

    private static final int MOST = 40;

    private final Set<String> given = new HashSet<>();

    /** No names yet. */
    public FileNames() {
        // nothing to set
    }

    /**
     * A part of a name: a to z, digits and hyphens, at most {@value #MOST} of them.
     *
     * @param data any text
     * @return what is left of it, perhaps nothing
     */
    public static String plain(String data) {
        String plain = Normalizer.normalize(data, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-");
        return plain.substring(0, Math.min(MOST, plain.length())).replaceAll("^-|-$", "");
    }

    /**
     * A name that was not given before.
     *
     * @param stem how it begins, in small letters
     * @param ending how it ends
     * @return stem and ending, with a number between them where the name was given before
     */
    public String unique(String stem, String ending) {
        String name = stem + ending;
        for (int i = 2; !given.add(name); i++) {
            name = stem + "-" + i + ending;
        }
        return name;
    }

    /** The files in a sub-folder whose names are as a pattern says, each with the name of the sub-folder. */
    public static List<String> in(Path subFolder, Pattern names) throws IOException {
        if (!Files.isDirectory(subFolder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(subFolder)) {
            return all.map(path -> String.valueOf(path.getFileName()))
                    .filter(name -> names.matcher(name).matches())
                    .sorted()
                    .map(name -> subFolder.getFileName() + "/" + name)
                    .toList();
        }
    }
}
