package org.steelyard.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line: wires the packages, prints, and turns the result into an exit code. */
@Command(
        name = "steelyard",
        version = "Steelyard 0.1.0",
        mixinStandardHelpOptions = true,
        description = "Audits a season of aircraft loadings.")
final class Main implements Runnable {

    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }

    @Override
    public void run() {
        CommandLine.usage(this, System.out);
    }
}
