package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AgainstCommandTest {

    private static final String HEADINGS = "flight,date,tail,from,to,pilot,flaps,pax A,pax B,pax C,pax D,pax E,pax F,"
            + "hold 1 kg,hold 2 kg,hold 3 kg,hold 4 kg,hold 5 kg,fuel left kg,fuel centre kg,fuel right kg,taxi kg,"
            + "trip kg\n";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    /** Flights of two pilots and two tails; the owl loads so much more into hold 4. */
    private Path season(String name, long seed, int owlKg) throws IOException {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder(HEADINGS);
        for (int i = 0; i < 80; i++) {
            boolean owl = i % 4 == 0;
            text.append(String.format(
                    Locale.ROOT,
                    "T%d,2026-05-%02d,%s,PORTA,LANDB,%s,5,20,22,25,25,22,20,%d,%d,900,%d,100,3500,0,3500,200,4800%n",
                    i,
                    1 + i % 28,
                    i % 2 == 0 ? "QI-JAA" : "QI-JAB",
                    owl ? "owl" : "heron",
                    700 + random.nextInt(200),
                    1100 + random.nextInt(200),
                    500 + random.nextInt(200) + (owl ? owlKg : 0)));
        }
        Path path = Files.createDirectories(folder.resolve(name)).resolve(name + "-1.csv");
        Files.writeString(path, text.toString(), StandardCharsets.UTF_8);
        return path.getParent();
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private int against(Path after, Path before) {
        return run(
                "against", after.toString(), before.toString(), "-o", reports().toString());
    }

    private Path reports() {
        return folder.resolve("reports");
    }

    private String table(String name) throws IOException {
        return Files.readString(reports().resolve(name).resolve("change.csv"), StandardCharsets.UTF_8);
    }

    @Test
    void aPilotWhoBeganToLoadTooMuchIsANewOffenderAndCuredTheOtherWayRound() throws IOException {
        Path spring = season("spring", 1, 0);
        Path summer = season("summer", 2, 2500);
        assertThat(against(summer, spring)).as(err.toString()).isZero();
        assertThat(out.toString())
                .contains("summer against spring")
                .containsPattern("New offenders\\R  jet180, pilot owl: breached flights 0\\.00 to 100\\.00 %")
                .contains("Cured: none")
                .contains("simulation, training and analysis only");
        assertThat(table("summer-against-spring"))
                .startsWith(
                        "figure,grouping,type,flaps,thrust,group,unit,flights_before,flights_after,before,after,difference,")
                .contains("breached flights,pilot,jet180,,,owl,%,20,20,0,100,100,")
                .contains("new offender")
                .contains("flights with the finding,kind of finding,jet180,,,Too much in a hold,%,80,80,0,25,25,");
        assertThat(reports().resolve("summer-against-spring")).isDirectoryContaining("glob:**/change.xlsx");

        assertThat(against(reports().resolve("spring"), reports().resolve("summer")))
                .as(err.toString())
                .isZero();
        assertThat(table("spring-against-summer")).contains("cured");
    }

    @Test
    void seasonsThatDifferByChanceAloneHaveNoNews() throws IOException {
        assertThat(against(season("one", 3, 0), season("two", 4, 0))).isZero();
        assertThat(out.toString())
                .contains("New offenders: none")
                .contains("Shares that rose: none")
                .contains("Means that moved: none")
                .contains("comparisons within chance");
    }

    @Test
    void reportsThatNoAuditWroteAreRefusedByName() throws IOException {
        Path spring = season("spring", 1, 0);
        Path odd = Files.createDirectories(folder.resolve("odd"));
        Files.writeString(odd.resolve("flights.csv"), "tail,from,to\nQI-JAA,A,B\n", StandardCharsets.UTF_8);
        Files.writeString(odd.resolve("findings.csv"), "file\n", StandardCharsets.UTF_8);
        assertThat(against(odd, spring)).isEqualTo(2);
        assertThat(err.toString()).contains("odd/run.json is not there");
    }
}
