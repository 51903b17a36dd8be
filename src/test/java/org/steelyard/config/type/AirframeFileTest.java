package org.steelyard.config.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Readme;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.model.trim.LiftSlope;
import org.steelyard.model.trim.TakeoffSpeed;
import org.steelyard.model.type.Airframe;

class AirframeFileTest {

    private static final String FILE = "airframes/example.yaml";

    @TempDir
    private Path folder;

    private ConfigResult load(String from, String to) {
        Map<String, String> files = new LinkedHashMap<>(Readme.examples());
        assertThat(files.get(FILE)).contains(from);
        files.put(FILE, files.get(FILE).replaceFirst(java.util.regex.Pattern.quote(from), to));
        Readme.write(folder, files);
        return ConfigFolder.load(folder);
    }

    private Airframe airframe(String from, String to) {
        ConfigResult result = load(from, to);
        assertThat(result).isInstanceOf(ConfigResult.Loaded.class);
        return ((ConfigResult.Loaded) result).configuration().airframes().get("example");
    }

    @Test
    void unitsBecomeRadiansNewtonsAndMetres() {
        Airframe airframe = airframe("moment: -0.06", "moment: -0.06");
        assertThat(airframe.wing().zeroLiftRad()).isCloseTo(Math.toRadians(-2.5), within(1e-12));
        assertThat(airframe.thrust().thrustN()).isEqualTo(12_000);
        assertThat(airframe.thrust().momentNm()).isEqualTo(-1200);
        assertThat(airframe.indicator().trimUnits(Math.toRadians(-3))).isCloseTo(3, within(1e-12));
        assertThat(airframe.flaps().get(0).speed()).isEqualTo(new TakeoffSpeed.Fixed(105 * 1852.0 / 3600));
        assertThat(airframe.flaps().get(1).speed()).isEqualTo(new TakeoffSpeed.OverStall(1.3, 1.8));
    }

    @Test
    void otherUnitsMeanTheSame() {
        assertThat(airframe("area: 28 m2", "area: 301.389 ft2").wing().areaM2()).isCloseTo(28, within(1e-4));
        assertThat(airframe("lift-slope: 5.1 per rad", "lift-slope: 0.08901 per deg")
                        .wing()
                        .liftSlopePerRad())
                .isCloseTo(5.1, within(1e-3));
        assertThat(airframe("force: 12 kN", "force: 2697.7 lbf").thrust().thrustN())
                .isCloseTo(12_000, within(0.5));
    }

    @Test
    void slopesThatAreLeftOutFollowFromAspectRatioAndSweep() {
        Airframe wing = airframe("  lift-slope: 5.1 per rad\n", "");
        double slope = LiftSlope.perRad(8.5, 0, 0);
        assertThat(wing.wing().liftSlopePerRad()).isEqualTo(slope);
        Airframe tail = airframe("  downwash-slope: 0.38\n", "");
        assertThat(tail.tail().downwashSlope()).isEqualTo(LiftSlope.downwashSlope(5.1, 8.5));
        assertThat(airframe("  lift-slope: 4.0 per rad\n", "").tail().liftSlopePerRad())
                .isCloseTo(LiftSlope.perRad(5, Math.toRadians(4), 0), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "airframe: example | airframe: exampel | airframe: unknown type",
                "area: 28 m2 | area: 28 m | wing.area: unknown unit 'm' (value '28 m'; expected an area in m2 or ft2, as '120 m2')",
                "centre: 12.9 m | centre: 2.9 m | the tail's aerodynamic centre must lie behind the wing's",
                "downwash-slope: 0.38 | downwash-slope: 1.2 | the downwash must grow slower than the angle of attack",
                "over-stall: 1.3, max-lift: 1.8 | over-stall: 1.3 | flaps[2]: the take-off speed must be given in one of two ways",
                "speed: 105 kt | speed: 105 kt, over-stall: 1.2 | flaps[1]: the take-off speed must be given in one of two ways",
                "over-stall: 1.3 | over-stall: 0.9 | a speed below the stall carries nothing",
                "flaps: 10 | flaps: 0 | each flap setting once",
                "zero: 0 deg | zero: 0 | indicator.zero: the unit is missing",
            })
    void faultsNamePlaceAndReason(String from, String to, String message) {
        ConfigResult result = load(from, to);
        assertThat(result)
                .isInstanceOfSatisfying(
                        ConfigResult.Faulty.class,
                        faulty -> assertThat(faulty.faults())
                                .hasSize(1)
                                .allSatisfy(fault -> assertThat(fault.message())
                                        .startsWith(FILE + ":")
                                        .contains(message)));
    }

    @Test
    void withoutSlopeAndAspectRatioNothingFollows() {
        Map<String, String> files = new LinkedHashMap<>(Readme.examples());
        files.put(
                FILE,
                files.get(FILE)
                        .replace("  lift-slope: 5.1 per rad\n  aspect-ratio: 8.5\n", "")
                        .replace("  downwash-slope: 0.38\n", ""));
        Readme.write(folder, files);
        List<ConfigFault> faults = ((ConfigResult.Faulty) ConfigFolder.load(folder)).faults();
        assertThat(faults).extracting(ConfigFault::reason).contains("neither a lift-curve slope nor an aspect ratio");
    }

    @Test
    void theFolderMayBeLeftOut() {
        Map<String, String> files = new LinkedHashMap<>(Readme.examples());
        files.remove(FILE);
        Readme.write(folder, files);
        assertThat(ConfigFolder.load(folder))
                .isInstanceOfSatisfying(
                        ConfigResult.Loaded.class,
                        loaded -> assertThat(loaded.configuration().airframes()).isEmpty());
    }
}
