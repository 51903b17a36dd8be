package org.steelyard.spark;

import org.steelyard.samples.Plain;
import java.nio.file.Path;
import java.util.List;
import org.apache.spark.SparkConf;
import org.apache.spark.SparkContext;
import org.apache.spark.api.java.JavaSparkContext;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.run.Progress;
import org.steelyard.run.SeasonRequest;
import org.steelyard.run.SeasonRun;

/** The Spark of all tests, of which a process can have but one; it ends with the process. */
final class OneSpark {

    static final Path CONFIG = Path.of("config");
    static final Path DEMO = Path.of("data-in/demo");

    private OneSpark() {}

    static synchronized JavaSparkContext context() {
        JavaSparkContext spark = new JavaSparkContext(SparkContext.getOrCreate(new SparkConf()
                .setAppName("test")
                .setMaster("local[2]")
                .set("spark.ui.enabled", "false")
                .set("spark.driver.host", "127.0.0.1")
                .set("spark.driver.bindAddress", "127.0.0.1")));
        spark.setLogLevel("ERROR");
        return spark;
    }

    static Configuration configuration() {
        return ((ConfigResult.Loaded) ConfigFolder.load(CONFIG)).configuration();
    }

    static SparkRequest request(String season, String name, String reports, boolean force) {
        return request(season, name, reports, 2, 1 << 20, force);
    }

    static SparkRequest request(
            String season, String name, String reports, int partitions, long pieceBytes, boolean force) {
        Configuration configuration = configuration();
        return new SparkRequest(
                season,
                name,
                CONFIG,
                configuration,
                ReadOptions.of(configuration.maps()),
                reports,
                partitions,
                pieceBytes,
                List.of(),
                List.of(),
                "test",
                force);
    }

    /** The audit on one machine, whose reports are in the folder of that name. */
    static Path oneMachine(Path season, String name, Path reports) throws Exception {
        Configuration configuration = configuration();
        SeasonRun.audit(
                Plain.seasonRequest(
                        season,
                        name,
                        configuration,
                        ReadOptions.of(configuration.maps()),
                        reports,
                        2,
                        "test",
                        List.of()),
                new Progress() {});
        return reports.resolve(name);
    }
}
