package org.steelyard.read;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.ColumnMap;

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

    /** Everything by the maps and the files themselves. */
    public static ReadOptions of(List<ColumnMap> maps) {
        return new ReadOptions(maps, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
