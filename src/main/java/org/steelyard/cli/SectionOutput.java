package org.steelyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import org.steelyard.report.Destination;
import org.steelyard.report.WholeFile;

/** A section of a type's file: into a file, or to the output. */
final class SectionOutput {

    private SectionOutput() {}

    static void write(String section, Optional<Destination> into, PrintWriter out) throws CannotException {
        write("trim", section, into, out);
    }

    static void write(String name, String section, Optional<Destination> into, PrintWriter out) throws CannotException {
        if (into.isEmpty()) {
            out.println();
            out.print(section);
            out.flush();
            return;
        }
        try {
            WholeFile.write(into.get(), section);
            out.println("The " + name + " section is in " + into.get().path() + ": put it into the type's file.");
        } catch (IOException e) {
            throw CannotException.unwritten(
                    "The " + name + " section", into.get().path(), e);
        }
    }
}
