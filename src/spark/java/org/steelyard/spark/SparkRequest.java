package org.steelyard.spark;

import java.nio.file.Path;
import java.util.List;
import org.steelyard.config.Configuration;
import org.steelyard.read.table.ReadOptions;

/**
 * What to audit and how.
 *
 * @param season address of a folder or file that all machines reach
 * @param name name of the season, which names its folder of reports
 * @param config the configuration folder, on the driver's machine
 * @param configuration what it holds
 * @param reading how files are read
 * @param reports address of the folder of all reports, which all machines reach
 * @param partitions into how many parts the work is divided
 * @param pieceBytes least size of the pieces into which large texts are cut
 * @param by headings of carried columns by which statistics are grouped, too
 * @param options options that change results, as name=value
 * @param version version of the program
 * @param force whether reports may be written over files that this program did not write
 */
public record SparkRequest(
        String season,
        String name,
        Path config,
        Configuration configuration,
        ReadOptions reading,
        String reports,
        int partitions,
        long pieceBytes,
        List<String> by,
        List<String> options,
        String version,
        boolean force) {

    public SparkRequest {
        by = List.copyOf(by);
        options = List.copyOf(options);
    }
}
