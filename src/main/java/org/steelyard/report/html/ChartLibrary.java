package org.steelyard.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Properties;

/** The chart library that a page carries: uPlot, from its jar on the class path. */
public final class ChartLibrary {

    public static final String NAME = "uPlot";

    private static final String ABOUT = "/META-INF/maven/org.webjars.npm/uplot/pom.properties";
    private static final String VERSION = version();
    private static final String FOLDER = "/META-INF/resources/webjars/uplot/" + VERSION + "/";

    private ChartLibrary() {}

    public static String version() {
        Properties about = new Properties();
        try (InputStream in = Objects.requireNonNull(ChartLibrary.class.getResourceAsStream(ABOUT))) {
            about.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return about.getProperty("version");
    }

    public static String script() {
        return text(FOLDER + "dist/uPlot.iife.min.js");
    }

    public static String style() {
        return text(FOLDER + "dist/uPlot.min.css");
    }

    public static String licence() {
        return text(FOLDER + "LICENSE");
    }

    /** A text from the class path, its lines ended as on every system. */
    public static String text(String name) {
        try (InputStream in = Objects.requireNonNull(ChartLibrary.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
