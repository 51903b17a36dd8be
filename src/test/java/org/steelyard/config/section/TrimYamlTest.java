package org.steelyard.config.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Readme;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Amounts;
import org.steelyard.samples.Plain;

/** What is written as a trim section is put into the example type's file and read back by the loader. */
class TrimYamlTest {

    private static final SettingRounding ROUNDING = SettingRounding.NOSE_UP;

    private static TrimScale scale(String flaps, String thrust, TrimUnit unit, TrimLaw law, TrimBasis basis) {
        return new TrimScale(Phase.TAKEOFF, flaps, thrust, unit, law, 0.25, -2.5, 4, ROUNDING, basis);
    }

    static Stream<TrimScale> scales() {
        return Stream.of(
                scale(
                        "5",
                        "",
                        TrimUnit.UNITS,
                        new TrimPoints(List.of(
                                new TrimPoint(9.12345, 3.98765),
                                new TrimPoint(20, 3.98765),
                                new TrimPoint(35.99999, -1.2))),
                        TrimBasis.EVIDENCE),
                scale(
                        "1+F: \"odd\" #no",
                        "full",
                        TrimUnit.DEGREES,
                        new TrimTable(
                                Amounts.of(3200.4, 4500, 5699.6),
                                Amounts.of(10.00001, 20, 33.3333),
                                List.of(Amounts.of(3, 2, 1), Amounts.of(3.3, 2, 1), Amounts.of(3.6, 2.5, -0.0004))),
                        TrimBasis.ESTIMATE),
                scale(
                        "no",
                        "",
                        TrimUnit.UNITS,
                        new TrimSlope(new TrimPoint(27.5, 0.2), -0.1543, new CgRange(9, 36)),
                        TrimBasis.DOCUMENT),
                plain(TrimUnit.Numbering.PLAIN, 2, 9),
                plain(TrimUnit.Numbering.PLAIN_NOSE_DOWN, -9, 0));
    }

    private static TrimScale plain(TrimUnit.Numbering numbering, double lowUnits, double highUnits) {
        return Plain.trimScale(
                Phase.TAKEOFF,
                "10",
                "",
                new TrimUnit(TrimUnit.Measure.UNITS, numbering),
                new TrimSlope(new TrimPoint(25, (lowUnits + highUnits) / 2), -0.2, new CgRange(9, 36)),
                0.25,
                lowUnits,
                highUnits);
    }

    private static TrimScale readBack(Path folder, TrimScale scale) {
        Map<String, String> files = new LinkedHashMap<>(Readme.examples());
        String type = files.get("types/example.yaml");
        String section =
                TrimYaml.section(List.of(new TrimYaml.Entry(scale, List.of("a comment: with - signs", "two\nlines"))));
        files.put("types/example.yaml", type.substring(0, type.indexOf("\ntrim:\n") + 1) + section);
        Readme.write(folder, files);
        ConfigResult result = ConfigFolder.load(folder);
        assertThat(result).isInstanceOf(ConfigResult.Loaded.class);
        return ((ConfigResult.Loaded) result)
                .configuration()
                .types()
                .get("example")
                .trimScales()
                .get(0);
    }

    @ParameterizedTest
    @MethodSource("scales")
    void aSectionIsReadBackAsTheScaleThatItWas(TrimScale scale, @TempDir Path folder) {
        TrimScale read = readBack(folder, scale);
        assertThat(read.flaps()).isEqualTo(scale.flaps());
        assertThat(read.thrustRating()).isEqualTo(scale.thrustRating());
        assertThat(read.unit()).isEqualTo(scale.unit());
        assertThat(read.basis()).isEqualTo(scale.basis());
        assertThat(read.stepUnits()).isEqualTo(scale.stepUnits());
        assertThat(read.rounding()).isEqualTo(scale.rounding());
        assertThat(read.bandLowUnits()).isEqualTo(scale.bandLowUnits());
        assertThat(read.bandHighUnits()).isEqualTo(scale.bandHighUnits());
        CgRange range = scale.law().cgRange();
        assertThat(read.law().cgRange().fromPercentMac())
                .isLessThanOrEqualTo(range.fromPercentMac())
                .isCloseTo(range.fromPercentMac(), within(0.001));
        assertThat(read.law().cgRange().toPercentMac())
                .isGreaterThanOrEqualTo(range.toPercentMac())
                .isCloseTo(range.toPercentMac(), within(0.001));
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 100; i++) {
            double cg = random.nextDouble(range.fromPercentMac(), range.toPercentMac());
            double massKg = random.nextDouble(3201, 5699);
            assertThat(read.law().trimUnitsAt(cg, massKg).orElseThrow())
                    .isCloseTo(scale.law().trimUnitsAt(cg, massKg).orElseThrow(), within(0.002));
        }
    }
}
