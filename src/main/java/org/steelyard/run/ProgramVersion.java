package org.steelyard.run;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Properties;

/** The version of the program, as the build wrote it. */
public final class ProgramVersion {

    private ProgramVersion() {}

    /**
     * The version.
     *
     * @return its number
     */
    public static String number() {
        Properties properties = new Properties();
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(ProgramVersion.class.getResourceAsStream("/org/steelyard/build.properties")),
                StandardCharsets.UTF_8)) {
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("version");
    }
}
