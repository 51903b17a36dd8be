package org.steelyard.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.unit.MassMoment;

/** The table of levels in the README of inputs names what {@code flights.csv} calls them. */
class ReadmeLevelsTest {

    @Test
    void everyLevelStandsInTheTable() throws IOException {
        List<String> levels = new ArrayList<>();
        boolean isInTable = false;
        for (String line : Files.readAllLines(Path.of("data-in/README.md"), StandardCharsets.UTF_8)) {
            isInTable = line.startsWith("| level |") || (isInTable && !line.isBlank());
            String[] cells = line.split("\\|", -1);
            if (isInTable && line.startsWith("| `") && cells.length == 5) {
                levels.add(cells[1].replace("`", "").strip());
            }
        }
        List<Load> loads = List.of(
                new Load.ByPlace(List.of(), List.of()),
                new Load.ByZone(List.of(), HoldLoad.EMPTY),
                new Load.ByHold(Passengers.NONE, OptionalDouble.empty(), List.of()),
                new Load.Totals(Passengers.NONE, OptionalDouble.empty(), HoldLoad.EMPTY),
                new Load.ZeroFuelGiven(MassMoment.at(1, 1)),
                new Load.TakeoffGiven(MassMoment.at(1, 1)));
        assertThat(loads).hasSameSizeAs(Load.class.getPermittedSubclasses());
        assertThat(levels)
                .containsExactlyElementsOf(
                        loads.stream().map(load -> load.level().label()).toList());
    }
}
