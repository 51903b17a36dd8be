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
import org.apache.spark.SparkException;
import org.apache.spark.api.java.JavaSparkContext;
import org.steelyard.config.ConfigFault;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.ColumnMap;
import org.steelyard.model.InputProblem;
import org.steelyard.read.ReadOptions;
import org.steelyard.read.SeasonUnreadableException;
import org.steelyard.report.Caution;
import org.steelyard.report.RunFacts;
import org.steelyard.report.SeasonWords;
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

    private static final int CANNOT = 2;
    private static final int OUR_FAULT = 3;
    private static final long MEGABYTE = 1 << 20;

    /** On one machine the program has a log of its own that says nothing; Spark does not start without its own. */
    private static final String LOG = "log4j2.loggerContextFactory";

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

    @Option(names = "--delimiter", paramLabel = "CHAR", description = "Character between the cells of text files.")
    private Optional<Character> delimiter;

    @Option(
            names = {"-b", "--by"},
            paramLabel = "NAME",
            split = ",",
            description = "Group the statistics by these columns of the inputs, too.")
    private List<String> by = List.of();

    @Option(
            names = "--master",
            paramLabel = "MASTER",
            description = "Which machines do the work, as Spark names them: local[*] is all cores of this one (what"
                    + " spark-submit was told, or local[*]).")
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

    /**
     * Runs the command.
     *
     * @param args its arguments
     */
    public static void main(String[] args) {
        quiet(LOG, SPARKS_LOG);
        quiet("log4j2.configurationFile", "org/steelyard/spark/log4j2-quiet.properties");
        int exitCode = run(writerTo(System.out), writerTo(System.err), args);
        if (exitCode != 0) {
            System.exit(exitCode);
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
                .setExecutionExceptionHandler((cause, command, parsed) -> failed(cause, err))
                .execute(args);
    }

    private static int failed(Exception cause, PrintWriter err) {
        for (Throwable one = cause; one != null; one = one.getCause()) {
            if (one instanceof InputRefused) {
                err.println(one.getMessage());
                return CANNOT;
            }
        }
        if (cause instanceof SeasonUnreadableException unreadable) {
            unreadable.problems().stream().map(InputProblem::message).forEach(err::println);
            return CANNOT;
        }
        if (cause instanceof IOException || cause instanceof SparkException) {
            err.println("The season cannot be read or its reports not be written: " + cause.getMessage()
                    + ". Reports of an earlier run are as they were.");
            return CANNOT;
        }
        err.println("This is a fault of the program, not of your files. Please report it with what follows.");
        cause.printStackTrace(err);
        return OUR_FAULT;
    }

    @Override
    public Integer call() throws IOException, SeasonUnreadableException {
        Configuration configuration = configuration();
        if (pieceMb < 1 || partitions.orElse(1) < 1) {
            throw new ParameterException(
                    spec.commandLine(), "--partitions and --piece-mb: expected whole numbers from 1 on");
        }
        ReadOptions reading = reading(configuration);
        SparkConf settings = new SparkConf().setIfMissing("spark.app.name", "steelyard");
        master.ifPresent(machines -> settings.setMaster(machines));
        settings.setIfMissing("spark.master", "local[*]");
        settings.setIfMissing("spark.ui.enabled", "false");
        settings.setIfMissing("spark.ui.showConsoleProgress", "false");
        settings.set(
                "spark.executor.extraJavaOptions",
                settings.get("spark.executor.extraJavaOptions", "") + " -D" + LOG + "=" + SPARKS_LOG);
        try (JavaSparkContext spark = new JavaSparkContext(settings)) {
            spark.setLogLevel("ERROR");
            SparkRequest request = new SparkRequest(
                    season,
                    name.orElseGet(this::nameOfSeason),
                    config,
                    configuration,
                    reading,
                    reports,
                    partitions.orElseGet(() -> 3 * spark.defaultParallelism()),
                    pieceMb * MEGABYTE,
                    by,
                    options(),
                    version());
            tell(SparkRun.audit(spark, request));
        }
        return 0;
    }

    private String nameOfSeason() {
        String path = season.endsWith("/") ? season.substring(0, season.length() - 1) : season;
        String last = path.substring(path.lastIndexOf('/') + 1);
        int dot = last.lastIndexOf('.');
        return dot > 0 ? last.substring(0, dot) : last;
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
            return new ReadOptions(configuration.maps(), map, charset.map(Charset::forName), delimiter);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--charset: there is no encoding '" + charset.orElse("")
                            + "'; expected a name as UTF-8 or windows-1252",
                    e);
        }
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

    private static String version() {
        String version = SparkAudit.class.getPackage().getImplementationVersion();
        return version == null ? "unpacked" : version;
    }

    private void tell(SeasonOutcome outcome) {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        outcome.fileProblems().forEach(problem -> err.println(problem.message()));
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
        SeasonWords.leftOut(outcome.summary()).forEach(out::println);
        out.println("Reports are in " + reports + "/" + facts.season());
        out.println(Caution.TEXT);
    }
}
