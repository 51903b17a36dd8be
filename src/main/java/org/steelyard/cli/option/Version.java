package org.steelyard.cli.option;

import org.steelyard.run.ProgramVersion;
import picocli.CommandLine.IVersionProvider;

/** The version of the program for the command line. */
public final class Version implements IVersionProvider {

    public static String number() {
        return ProgramVersion.number();
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Steelyard " + number()};
    }
}
