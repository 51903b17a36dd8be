package org.steelyard.cli.option;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.report.file.WriteFault;

/** Something that the user can put right keeps a command from its work. */
public final class CannotException extends Exception {

    private final List<String> lines;

    public CannotException(List<String> lines) {
        super(String.join(System.lineSeparator(), lines));
        this.lines = List.copyOf(lines);
    }

    public CannotException(String line) {
        this(List.of(line));
    }

    /**
     * Outputs that cannot be written.
     *
     * @param what them, as "The reports", with the verb's number in "cannot be written"
     * @param where the file or folder
     * @param e why
     */
    public static CannotException unwritten(String what, Path where, IOException e) {
        return new CannotException(what + " cannot be written to " + where + ": " + WriteFault.sentences(e));
    }

    /** What to tell the user, line by line. */
    public List<String> lines() {
        return lines;
    }
}
