package org.steelyard.spark;

import java.io.Serializable;

/**
 * A file of the season.
 *
 * @param address where it lies, as Hadoop writes it
 * @param name its name
 * @param bytes its size
 */
record SeasonFile(String address, String name, long bytes) implements Serializable {

    boolean isParquet() {
        return name.endsWith(".parquet");
    }
}
