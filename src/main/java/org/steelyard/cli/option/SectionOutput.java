package org.steelyard.cli.option;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.WholeFile;

/** A section of a type's file: into a file, or to the output. */
public final class SectionOutput {

    private SectionOutput() {}

    public static void write(String section, Optional<Destination> into, PrintWriter out) throws CannotException {
        write("trim", section, into, out);
    }

    public static void write(String name, String section, Optional<Destination> into, PrintWriter out)
            throws CannotException {
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
