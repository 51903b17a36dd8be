package org.steelyard.spark;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.steelyard.report.output.LeftOutGroupings;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.text.Caution;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.run.ProgramVersion;
import org.steelyard.report.words.SeasonWords;
import org.steelyard.run.SeasonOutcome;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command line of the audit on Spark. */
@Command(
        name = "steelyard-on-spark",
        mixinStandardHelpOptions = true,
        header = "Audit a season on Spark: every flight computed, checked and reported.",
        description = {
            "",
            "SEASON is a folder of .csv, .tsv, .txt, .xlsx and .parquet files, or one such file, where all machines reach"
                    + " it. The reports go into a folder of the season's name: season.xlsx, report.html,"
                    + " statistics.csv, run.json, and in parts flights.parquet, findings.parquet, rejected, skipped.",
            ""
        },
        footer = {
            "",
            "Exit codes: 0 finished, 2 cannot start, read or write, 3 a fault of the program.",
            "",
            Caution.TEXT
        })
public final class SparkAudit implements Callable<Integer> {

    private static final long MEGABYTE = 1 << 20;

    /** On one machine the program has a log of its own that says nothing; Spark does not start without its own. */
    private static final String LOG = "log4j2.loggerContextFactory";

    private static final String MASTER = "spark.master";
    private static final String LOOPBACK = "127.0.0.1";
    private static final String SPARKS_LOG = "org.apache.logging.log4j.core.impl.Log4jContextFactory";

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SEASON", description = "Folder or file with the loadings, as a path or an address.")
    private String season;

    @Option(
            names = {"-c", "--config"},
            paramLabel = "FOLDER",
            defaultValue = "config",
            description = "Aircraft types, fleet, standard masses, policy and heading maps, on the machine of the driver"
                    + " (${DEFAULT-VALUE}).")
    private Path config;

    @Option(
            names = {"-o", "--reports"},
            paramLabel = "FOLDER",
            defaultValue = "reports",
            description = "Where the season's folder of reports is written, where all machines reach it"
                    + " (${DEFAULT-VALUE}).")
    private String reports;

    @Option(
            names = {"-n", "--name"},
            paramLabel = "NAME",
            description = "Name of the season (the name of its folder or file).")
    private Optional<String> name;

    @Option(
            names = {"-m", "--map"},
            paramLabel = "NAME",
            description = "Heading map for every file (found by file name and headings).")
    private Optional<String> map;

    @Option(names = "--charset", paramLabel = "NAME", description = "Encoding of text files, as windows-1252.")
    private Optional<String> charset;

    @Option(
            names = "--delimiter",
            paramLabel = "CHAR",
            description =
                    "Character between cells: comma, semicolon, tab or any one character (found in the headings).")
    private Optional<String> delimiter;

    @Option(
            names = {"-b", "--by"},
            paramLabel = "NAME",
            split = ",",
            description = "Group the statistics by these columns of the inputs, too.")
    private List<String> by = List.of();

    @Option(
            names = "--master",
            paramLabel = "MASTER",
            description = "Which machines do the work, as Spark names them: local[*] is all cores of this one, local[2]"
                    + " two of them. It goes before what spark-submit was told (that, or local[*]).")
    private Optional<String> master;

    @Option(
            names = "--partitions",
            paramLabel = "N",
            description = "Into how many parts the work is divided (three for each core).")
    private Optional<Integer> partitions;

    @Option(
            names = "--piece-mb",
            paramLabel = "MB",
            defaultValue = "32",
            description = "Texts are cut into pieces of this size (${DEFAULT-VALUE}).")
    private int pieceMb;

    @Option(
            names = "--force",
            description = "Write also over files that this program did not write, or that were changed since.")
    private boolean force;

    /**
     * Runs the command.
     *
     * @param args its arguments
     */
    public static void main(String[] args) {
        quiet(LOG, SPARKS_LOG);
        quiet("log4j2.configurationFile", "org/steelyard/spark/log4j2-quiet.properties");
        int exitCode = isSparkHere()
                ? run(writerTo(System.out), writerTo(System.err), args)
                : RunFault.withoutSpark(writerTo(System.err));
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }

    private static boolean isSparkHere() {
        try {
            Class.forName("org.apache.spark.SparkConf", false, SparkAudit.class.getClassLoader());
            return true;
        } catch (ClassNotFoundException e) {
            return false;
        }
    }

    /** Where nobody has set up Spark's log, it tells of errors only; on a cluster that is done before. */
    private static void quiet(String property, String value) {
        if (System.getProperty(property) == null) {
            System.setProperty(property, value);
        }
    }

    private static PrintWriter writerTo(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new SparkAudit())
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(100)
                .setExecutionExceptionHandler((fault, command, parsed) -> RunFault.tell(fault, err))
                .execute(args);
    }

    @Override
    public Integer call() throws IOException, SeasonUnreadableException {
        Configuration configuration = configuration();
        if (pieceMb < 1 || partitions.orElse(1) < 1) {
            throw new ParameterException(
                    spec.commandLine(), "--partitions and --piece-mb: expected whole numbers from 1 on");
        }
        ReadOptions reading = reading(configuration);
        if (name.isPresent()) {
            requireName(name.get());
        }
        SparkConf settings = settings();
        try (JavaSparkContext spark = start(settings)) {
            spark.setLogLevel("ERROR");
            tell(audit(spark, configuration, reading));
        }
        return 0;
    }

    /** How Spark is set up: what was told here goes before what spark-submit was told. */
    private SparkConf settings() throws InputRefused {
        SparkConf settings = new SparkConf().setIfMissing("spark.app.name", "steelyard");
        Master machines = master.map(told -> new Master(told, "--master"))
                .orElseGet(() -> new Master(settings.get(MASTER, "local[*]"), MASTER));
        machines.require();
        machines.requireTakenAlong(settings);
        settings.setMaster(machines.address());
        settings.setIfMissing("spark.ui.enabled", "false");
        settings.setIfMissing("spark.ui.showConsoleProgress", "false");
        if (machines.isLocal()) {
            settings.setIfMissing("spark.driver.host", LOOPBACK);
            settings.setIfMissing("spark.driver.bindAddress", LOOPBACK);
        }
        settings.set(
                "spark.executor.extraJavaOptions",
                settings.get("spark.executor.extraJavaOptions", "") + " -D" + LOG + "=" + SPARKS_LOG);
        return settings;
    }

    private static JavaSparkContext start(SparkConf settings) throws InputRefused {
        try {
            return new JavaSparkContext(settings);
        } catch (Exception e) { // Spark declares none of its own
            throw new InputRefused("Spark does not start on " + settings.get(MASTER) + ": " + RunFault.firstLine(e) + ".");
        }
    }

    private SeasonOutcome audit(JavaSparkContext spark, Configuration configuration, ReadOptions reading)
            throws IOException, SeasonUnreadableException {
        Store store = new Store(spark.hadoopConfiguration());
        SparkRequest request = new SparkRequest(
                season,
                name.isPresent() ? name.get() : nameOfSeason(store),
                config,
                configuration,
                reading,
                reports,
                partitions.orElseGet(() -> 3 * spark.defaultParallelism()),
                pieceMb * MEGABYTE,
                by,
                options(),
                ProgramVersion.number(),
                force);
        try {
            return SparkRun.audit(spark, request);
        } catch (Exception e) {
            if (spark.sc().isStopped()) {
                throw new InputRefused("Spark gave up on " + spark.master()
                        + " before the work was done; expected a master that is running, with workers. Reports of an"
                        + " earlier run are as they were.");
            }
            throw e;
        }
    }

    private String nameOfSeason(Store store) throws IOException {
        String last = store.name(season);
        int dot = last.lastIndexOf('.');
        String named = dot > 0 && !store.isFolder(season) ? last.substring(0, dot) : last;
        requireName(named);
        return named;
    }

    private static void requireName(String name) throws InputRefused {
        try {
            StagedFolder.requireName(name);
        } catch (IllegalArgumentException e) {
            throw new InputRefused("--name: " + e.getMessage() + ".");
        }
    }

    private Configuration configuration() throws InputRefused {
        ConfigResult result = ConfigFolder.load(config);
        if (result instanceof ConfigResult.Loaded loaded) {
            return loaded.configuration();
        }
        List<ConfigFault> faults = ((ConfigResult.Faulty) result).faults();
        StringBuilder all = new StringBuilder("The configuration in " + config + " cannot be used: " + faults.size()
                + (faults.size() == 1 ? " fault" : " faults"));
        faults.forEach(fault -> all.append(System.lineSeparator()).append("  ").append(fault.message()));
        throw new InputRefused(all.toString());
    }

    private ReadOptions reading(Configuration configuration) throws InputRefused {
        List<String> names = configuration.maps().stream().map(ColumnMap::name).toList();
        if (map.isPresent() && !names.contains(map.get())) {
            throw new InputRefused(
                    "There is no heading map '" + map.get() + "'; there are " + String.join(", ", names) + ".");
        }
        try {
            return new ReadOptions(
                    configuration.maps(), map, charset.map(Charset::forName), delimiter.map(this::delimiter));
        } catch (IllegalArgumentException e) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--charset: there is no encoding '" + charset.orElse("")
                            + "'; expected a name as UTF-8 or windows-1252",
                    e);
        }
    }

    private Character delimiter(String value) {
        return ReadOptions.delimiter(value)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--delimiter: '" + value + "' is not one character; expected comma, semicolon, tab or one"
                                + " character"));
    }

    private List<String> options() {
        List<String> given = new ArrayList<>();
        map.ifPresent(value -> given.add("map=" + value));
        charset.ifPresent(value -> given.add("charset=" + value));
        delimiter.ifPresent(value -> given.add("delimiter=" + value));
        if (!by.isEmpty()) {
            given.add("by=" + String.join(",", by));
        }
        return given;
    }

    private void tell(SeasonOutcome outcome) {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        outcome.fileProblems().forEach(problem -> err.println(problem.message()));
        outcome.summary().statistics().missing().stream()
                .filter(by::contains)
                .forEach(missing -> err.println("--by: no flight has a column '" + missing + "' to carry along"));
        RunFacts facts = outcome.facts();
        var all = outcome.summary().all();
        out.println(String.format(
                Locale.ROOT,
                "Season %s: %,d flights, %,d clean, %,d marginal, %,d breached",
                facts.season(),
                all.flights(),
                all.clean(),
                all.marginal(),
                all.breached()));
        out.println(String.format(
                Locale.ROOT,
                "rows seen %,d = %,d accepted + %,d rejected + %,d blank + %,d skipped, from %,d %s",
                facts.rowsSeen(),
                facts.accepted(),
                facts.rejected(),
                facts.blank(),
                facts.skippedRowCount(),
                facts.inputs().size(),
                facts.inputs().size() == 1 ? "file" : "files"));
        facts.remarks().forEach(out::println);
        LeftOutGroupings.of(outcome.summary()).forEach(out::println);
        out.println("Reports are in " + Store.child(reports, facts.season()));
        out.println(Caution.TEXT);
    }
}
