package org.steelyard.run;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.steelyard.config.Configuration;
import org.steelyard.read.table.ReadOptions;

/**
 * What to audit and how.
 *
 * @param season file or folder with the season's loadings
 * @param name name of the season, which names its folder of reports
 * @param configuration types, fleet, policy and heading maps
 * @param reading how files are read
 * @param reports folder that holds a folder of reports for each season
 * @param threads number of worker threads, at least 1
 * @param version version of the program, for the run's facts
 * @param by headings of carried columns by which statistics are grouped, too
 * @param options options that change results, as name=value, for the run's facts
 * @param room whether the room at each place of each flight is written too
 * @param force whether reports may be written over files that this program did not write
 */
public record SeasonRequest(
        Path season,
        String name,
        Configuration configuration,
        ReadOptions reading,
        Path reports,
        int threads,
        String version,
        List<String> by,
        List<String> options,
        boolean room,
        boolean force) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if there is not at least one thread
     */
    public SeasonRequest {
        Objects.requireNonNull(season);
        Objects.requireNonNull(name);
        Objects.requireNonNull(configuration);
        Objects.requireNonNull(reading);
        Objects.requireNonNull(reports);
        Objects.requireNonNull(version);
        by = List.copyOf(by);
        options = List.copyOf(options);
        if (threads < 1) {
            throw new IllegalArgumentException("an audit needs at least one thread, not " + threads);
        }
    }
}
