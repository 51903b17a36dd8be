package org.steelyard.cli;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of the program, as the build wrote it. */
final class Version implements IVersionProvider {

    static String number() {
        Properties properties = new Properties();
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(Version.class.getResourceAsStream("/org/steelyard/build.properties")),
                StandardCharsets.UTF_8)) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("version");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"Steelyard " + number()};
    }
}
