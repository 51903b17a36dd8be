package org.steelyard.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line: wires the packages, prints, and turns the result into an exit code. */
@Command(
        name = "steelyard",
        version = "Steelyard 0.1.0",
        mixinStandardHelpOptions = true,
        description = "Audits a season of aircraft loadings: mass, CG and stabilizer trim of every flight.")
final class Main implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    public static void main(String[] args) {
        int exitCode = run(writerTo(System.out), writerTo(System.err), args);
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }

    private static PrintWriter writerTo(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    /** Runs one command line and hands back its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new Main()).setOut(out).setErr(err).execute(args);
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return 0;
    }
}
