package org.steelyard.read.table;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;

/**
 * How season files are to be read.
 *
 * @param maps heading maps, at least one
 * @param mapName name of the map for every file; empty to choose by file name and headings
 * @param charset text encoding of every text file without a byte order mark; goes before the map's
 * @param delimiter character between the cells of every text file; goes before the map's
 */
public record ReadOptions(
        List<ColumnMap> maps, Optional<String> mapName, Optional<Charset> charset, Optional<Character> delimiter) {

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no map
     */
    public ReadOptions {
        maps = List.copyOf(maps);
        Objects.requireNonNull(mapName);
        Objects.requireNonNull(charset);
        Objects.requireNonNull(delimiter);
        if (maps.isEmpty()) {
            throw new IllegalArgumentException("reading needs at least one heading map");
        }
    }

    /**
     * The delimiter that somebody names.
     *
     * @param name comma, semicolon, tab or the character itself
     * @return the character; empty if it is none
     */
    public static Optional<Character> delimiter(String name) {
        return switch (name.toLowerCase(Locale.ROOT)) {
            case "comma" -> Optional.of(',');
            case "semicolon" -> Optional.of(';');
            case "tab" -> Optional.of('\t');
            default -> name.length() == 1 ? Optional.of(name.charAt(0)) : Optional.empty();
        };
    }

    /** Everything by the maps and the files themselves. */
    public static ReadOptions of(List<ColumnMap> maps) {
        return new ReadOptions(maps, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
