package org.steelyard.config.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.Faults;
import org.steelyard.config.source.SourceFiles;
import org.steelyard.config.value.Cg;
import org.steelyard.config.value.HeadedRows;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.NotAcceptedException;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.type.MeanChord;

/**
 * Reads pairs of CG and trim setting, as they are read off a printed scale or noted in flight: comma-separated values
 * in UTF-8 with the columns {@code cg}, {@code setting} and, if wanted, {@code mass} and {@code note}. Units stand with
 * the numbers, as {@code 24.5 % MAC}, or in the heading, as {@code cg (% MAC)}. A setting is {@code 0.2 UP}, {@code 1.1
 * DN}, or a number that is nose-up positive.
 */
public final class PairsFile {

    private static final double FARTHEST_PERCENT_MAC = 1_000;
    private static final double HEAVIEST_KG = 1e7;
    private static final double MOST_UNITS = 1_000;
    private static final String CG = "cg";
    private static final String SETTING = "setting";
    private static final String MASS = "mass";
    private static final String NOTE = "note";
    private static final HeadedRows.Headings HEADINGS =
            new HeadedRows.Headings(List.of(CG, SETTING), List.of(MASS, NOTE));

    /**
     * A pair.
     *
     * @param line line of the file
     * @param cgPercentMac CG in % MAC
     * @param massKg take-off mass in kg, if it is given
     * @param settingUnits setting, nose-up positive
     */
    public record Pair(int line, double cgPercentMac, OptionalDouble massKg, double settingUnits) {}

    /**
     * What a file holds: pairs, or what is wrong with it.
     *
     * @param pairs the pairs in order; none if there is a fault
     * @param faults every fault
     */
    public record Content(List<Pair> pairs, List<ConfigFault> faults) {

        public Content {
            pairs = List.copyOf(pairs);
            faults = List.copyOf(faults);
        }
    }

    private PairsFile() {}

    /**
     * Reads a file.
     *
     * @param path the file
     * @param chord the type's chord, for CGs that are arms
     * @return pairs, or faults
     */
    public static Content read(Path path, MeanChord chord) {
        Faults faults = new Faults();
        Path whole = path.toAbsolutePath();
        Path folder = Optional.ofNullable(whole.getParent()).orElse(whole);
        String name = String.valueOf(whole.getFileName());
        List<Pair> pairs = new ArrayList<>();
        new SourceFiles(folder, faults)
                .text(name)
                .ifPresent(text -> HeadedRows.rows(name, text, HEADINGS, faults)
                        .forEach(row -> pair(row, chord).ifPresent(pairs::add)));
        return new Content(faults.isEmpty() ? pairs : List.of(), faults.sorted());
    }

    private static Optional<Pair> pair(Keys row, MeanChord chord) {
        double cgPercentMac = row.number(CG, text -> cg(text, chord));
        double settingUnits = row.number(SETTING, PairsFile::setting);
        OptionalDouble massKg = row.find(MASS, PairsFile::mass).orElseGet(OptionalDouble::empty);
        row.find(NOTE, text -> text);
        return row.make(() -> new Pair(row.line(), cgPercentMac, massKg, settingUnits));
    }

    private static double cg(String text, MeanChord chord) throws NotAcceptedException {
        double cgPercentMac = Cg.readPercentMac(text, chord);
        if (!(Math.abs(cgPercentMac) <= FARTHEST_PERCENT_MAC)) {
            throw new NotAcceptedException("no position near the chord", "a CG within ten chords of its leading edge");
        }
        return cgPercentMac;
    }

    private static OptionalDouble mass(String text) throws NotAcceptedException {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        double massKg = WrittenNumber.MASS.read(text);
        if (massKg > HEAVIEST_KG) {
            throw new NotAcceptedException("no mass of an aircraft", "a take-off mass");
        }
        return OptionalDouble.of(massKg);
    }

    private static double setting(String text) throws NotAcceptedException {
        double units = number(text);
        if (!(Math.abs(units) <= MOST_UNITS)) {
            throw new NotAcceptedException("no trim setting", "a setting of at most 1000 units to either side");
        }
        return units;
    }

    private static double number(String text) throws NotAcceptedException {
        String upper = text.toUpperCase(Locale.ROOT);
        if (upper.endsWith("UP") || upper.endsWith("DN")) {
            double number =
                    WrittenNumber.number(text.substring(0, text.length() - 2).strip());
            if (number < 0) {
                throw new NotAcceptedException(
                        "a sign and a direction", "a number without sign before UP or DN, as '0.2 UP'");
            }
            return upper.endsWith("UP") ? number : 0.0 - number;
        }
        return WrittenNumber.number(text);
    }
}
