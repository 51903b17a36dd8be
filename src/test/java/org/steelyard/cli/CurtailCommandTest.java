package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;

/** Operational envelopes of the shipped types. */
class CurtailCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private static void copy(Path from, Path to) throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(from)) {
            files = walk.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Path target = to.resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.copy(file, target);
        }
    }

    private static Configuration load(Path config) {
        return ((ConfigResult.Loaded) ConfigFolder.load(config)).configuration();
    }

    @Test
    void theSectionPutIntoTheTypesFileIsReadBackInsideTheCertifiedLimits() throws IOException {
        Path section = folder.resolve("envelopes.yaml");
        Path page = folder.resolve("operational.html");

        assertThat(run("curtail", "jet180", "--section", section.toString(), "--page", page.toString()))
                .isEqualTo(ExitCode.FINISHED);

        Path config = folder.resolve("config");
        copy(Path.of("config"), config);
        Path file = config.resolve("types/jet180.yaml");
        String text = Files.readString(file);
        int begin = text.indexOf("\nenvelopes:\n") + 1;
        int end = text.indexOf("\n# what moves", begin) + 1;
        Files.writeString(file, text.substring(0, begin) + Files.readString(section) + text.substring(end));
        List<Envelope> certified = load(Path.of("config")).types().get("jet180").envelopes();
        List<Envelope> operational = load(config).types().get("jet180").envelopes();
        assertThat(operational).hasSameSizeAs(certified).hasSize(4);
        for (int i = 0; i < operational.size(); i++) {
            for (LimitPoint point : operational.get(i).forward().points()) {
                assertThat(point.armM())
                        .isGreaterThan(certified.get(i).forward().armAtM(point.massKg()));
            }
            for (LimitPoint point : operational.get(i).aft().points()) {
                assertThat(point.armM()).isLessThan(certified.get(i).aft().armAtM(point.massKg()));
            }
        }
        assertThat(Files.readString(section)).contains("seating within zones", "landing gear", "together");
        assertThat(Files.readString(page)).contains("Operational envelope", "taken off, kg m", "simulation, training");
        assertThat(out.toString()).contains("jet180, in flight", "The envelopes section is in ");
    }

    @Test
    void whatIsNotKnownOfATypeIsSaid() {
        assertThat(run("curtail", "single4")).isEqualTo(ExitCode.FINISHED);

        assertThat(out.toString())
                .contains(
                        "The rows of some zones are not known", "gives no movements", "envelopes:\n", "  take-off:\n");
    }

    @Test
    void anUnknownTypeAndAnImpossibleNumberCannotStart() {
        assertThat(run("curtail", "jet999")).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).contains("There is no type 'jet999'; there are jet180, prop70, single4.");
        assertThat(run("curtail", "jet180", "--deviations", "-1")).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).contains("--deviations: -1.0 is not possible; expected 0 to 10");
    }
}
