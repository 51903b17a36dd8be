package org.steelyard.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.Version;
import org.steelyard.report.file.WriteFault;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** The command line: wires the packages, prints, and turns the result into an exit code. */
@Command(
        name = "steelyard",
        versionProvider = Version.class,
        mixinStandardHelpOptions = true,
        header = "Mass, CG and stabilizer trim of every flight of a season.",
        description = {
            "",
            "Give it a folder of loadings as CSV or XLSX. It computes every flight, flags what is outside a limit or"
                    + " close to one, and writes a workbook, tables and a page into the reports folder.",
            ""
        },
        commandListHeading = "Commands:%n",
        footer = {
            "",
            "Exit codes: 0 finished, 1 finished and found what --fail-on asked for, 2 cannot start or write, 3 a fault"
                    + " of the program.",
            "",
            "For simulation, training and analysis only. For real flight the approved manual of the aircraft, the"
                    + " operator's procedures, local rules and licensed people decide."
        })
final class Main implements Callable<Integer> {

    static final List<Class<?>> COMMANDS = List.of(
            SetCommand.class,
            CardsCommand.class,
            CheckConfigCommand.class,
            AuditCommand.class,
            AgainstCommand.class,
            FitScaleCommand.class,
            EstimateScaleCommand.class,
            GradeCommand.class,
            MakeExercisesCommand.class,
            CurtailCommand.class,
            ProposeMapCommand.class);

    @Spec
    private CommandSpec spec;

    public static void main(String[] args) {
        // not System.out, which keeps a failure to itself
        int exitCode = run(writerTo(new FileOutputStream(FileDescriptor.out)), writerTo(System.err), args);
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }

    private static PrintWriter writerTo(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    /** Runs one command line and hands back its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        // no option is a time or an address of a database, and their converters cost 10 ms at the start
        System.setProperty("picocli.converters.excludes", "java\\.(sql|time)\\..*");
        CommandLine line = new CommandLine(new Main());
        for (Class<?> command : commands(args)) {
            line.addSubcommand(command);
        }
        line.setOut(out)
                .setErr(err)
                .setUsageHelpWidth(100)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new Failures());
        try {
            return told(line.execute(args), out, err);
        } catch (OutOfMemoryError e) {
            return outOfMemory(err);
        } catch (Error e) { // anything else is told like the program's other faults, with their exit code
            return ourFault(err, e);
        }
    }

    /** What was to be read and went nowhere is no success; whatever a command wrote into files stands. */
    private static int told(int exitCode, PrintWriter out, PrintWriter err) {
        if (!out.checkError()) {
            return exitCode;
        }
        err.println("The output could not be written: whoever was to read it is gone, or the disk is full.");
        return exitCode == ExitCode.FINISHED ? ExitCode.CANNOT : exitCode;
    }

    /** The command that is called, alone, for each costs time at the start; all where help or a hint may name them. */
    private static List<Class<?>> commands(String... args) {
        return COMMANDS.stream()
                .filter(one -> args.length > 0
                        && one.getAnnotation(Command.class).name().equals(args[0]))
                .findFirst()
                .<List<Class<?>>>map(List::of)
                .orElse(COMMANDS);
    }

    /**
     * No lambda: the class-data archive leaves out what its lambdas refer to, which would be the library's largest
     * class.
     */
    private static final class Failures implements IExecutionExceptionHandler {

        @Override
        public int handleExecutionException(Exception cause, CommandLine command, ParseResult parsed) {
            PrintWriter err = command.getErr();
            if (cause instanceof CannotException cannot) {
                cannot.lines().forEach(err::println);
                return ExitCode.CANNOT;
            }
            for (Throwable inner = cause; inner != null; inner = inner.getCause()) {
                if (inner instanceof OutOfMemoryError) {
                    return outOfMemory(err);
                }
                if (inner instanceof UncheckedIOException disk) {
                    return diskFault(err, disk.getCause());
                }
            }
            return ourFault(err, cause);
        }
    }

    private static int ourFault(PrintWriter err, Throwable cause) {
        err.println("This is a fault of the program, not of your files. Please report it with what follows.");
        cause.printStackTrace(err);
        return ExitCode.OUR_FAULT;
    }

    /** A fault of the disk that no command foresaw; what it says of the place is all that is known. */
    private static int diskFault(PrintWriter err, IOException cause) {
        err.println("A file cannot be read or written: " + WriteFault.of(cause) + ".");
        return ExitCode.CANNOT;
    }

    private static int outOfMemory(PrintWriter err) {
        long mib = Runtime.getRuntime().maxMemory() >> 20;
        err.println(
                "There is not enough memory: the program may use " + mib + " MB. Give it more, as JDK_JAVA_OPTIONS=-Xmx"
                        + Math.max(2, 2 * mib / 1024 + 1)
                        + "g in the environment or java -Xmx… -jar, or audit the season in parts. Nothing was written; what stood"
                        + " there before is as it was.");
        return ExitCode.CANNOT;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return ExitCode.FINISHED;
    }
}
