package org.steelyard.cli;

import org.steelyard.run.ProgramVersion;
import picocli.CommandLine.IVersionProvider;

/** The version of the program for the command line. */
final class Version implements IVersionProvider {

    static String number() {
        return ProgramVersion.number();
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Steelyard " + number()};
    }
}
