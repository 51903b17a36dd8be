package org.steelyard.cli;

import java.util.List;

/** Something that the user can put right keeps a command from its work. */
final class CannotException extends Exception {

    private final List<String> lines;

    CannotException(List<String> lines) {
        super(String.join(System.lineSeparator(), lines));
        this.lines = List.copyOf(lines);
    }

    CannotException(String line) {
        this(List.of(line));
    }

    /** What to tell the user, line by line. */
    List<String> lines() {
        return lines;
    }
}
