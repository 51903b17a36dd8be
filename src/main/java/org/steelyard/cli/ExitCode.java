package org.steelyard.cli;

/** Exit codes, for scripts. */
final class ExitCode {

    /** Finished, whatever was found: findings are the product. */
    static final int FINISHED = 0;

    /** Finished, but something was found that an option asked to fail on. */
    static final int FOUND = 1;

    /** Could not start, or could not write the reports. */
    static final int CANNOT = 2;

    /** A fault of the program itself. */
    static final int OUR_FAULT = 3;

    private ExitCode() {}
}
