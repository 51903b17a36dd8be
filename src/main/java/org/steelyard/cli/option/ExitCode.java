package org.steelyard.cli.option;

/** Exit codes, for scripts. */
public final class ExitCode {

    /** Finished, whatever was found: findings are the product. */
    public static final int FINISHED = 0;

    /** Finished, but something was found that an option asked to fail on. */
    public static final int FOUND = 1;

    /** Could not start, or could not write the reports. */
    public static final int CANNOT = 2;

    /** A fault of the program itself. */
    public static final int OUR_FAULT = 3;

    private ExitCode() {}
}
