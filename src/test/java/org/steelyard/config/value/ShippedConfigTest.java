package org.steelyard.config.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.config.Readme;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.Faults;
import org.steelyard.config.source.YamlText;
import org.steelyard.config.type.SchemeFile;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;

/** Round facts of the configuration that comes with the project. */
class ShippedConfigTest {

    private static final Configuration CONFIGURATION = load();

    private static Configuration load() {
        ConfigResult result = ConfigFolder.load(Readme.SHIPPED);
        if (result instanceof ConfigResult.Faulty faulty) {
            throw new AssertionError(
                    faulty.faults().stream().map(ConfigFault::message).toList());
        }
        return ((ConfigResult.Loaded) result).configuration();
    }

    private static AircraftType type(String id) {
        return CONFIGURATION.types().get(id);
    }

    @Test
    void theFleetHasTwelveJetsEightTurbopropsAndFourSingles() {
        assertThat(CONFIGURATION.types().keySet()).containsExactly("jet180", "prop70", "single4");
        assertThat(CONFIGURATION.tails().values())
                .extracting(tail -> tail.type().id())
                .hasSize(24)
                .containsOnly("jet180", "prop70", "single4")
                .satisfies(ids -> {
                    assertThat(ids).filteredOn("jet180"::equals).hasSize(12);
                    assertThat(ids).filteredOn("prop70"::equals).hasSize(8);
                });
    }

    @ParameterizedTest
    @CsvSource({
        "jet180, 74800, 74500, 65000, 61500, 43500",
        "prop70, 23150, 23000, 22350, 20900, 13400",
        "single4, 1228.32813796, 1224.699399, 1224.699399, 1224.699399, 780.1788764",
    })
    void limitsOfMassAreInKilograms(
            String type, double rampKg, double takeoffKg, double landingKg, double zeroFuelKg, double minimumKg) {
        assertThat(type(type).limits().maxRampKg()).isEqualTo(rampKg);
        assertThat(type(type).limits().maxTakeoffKg()).isEqualTo(takeoffKg);
        assertThat(type(type).limits().maxLandingKg()).isEqualTo(landingKg);
        assertThat(type(type).limits().maxZeroFuelKg()).isEqualTo(zeroFuelKg);
        assertThat(type(type).limits().minFlightKg()).isEqualTo(minimumKg);
    }

    @ParameterizedTest
    @CsvSource({"jet180, 180, 6, 5, 3, 3", "prop70, 70, 4, 3, 2, 1", "single4, 3, 2, 2, 2, 1"})
    void placesAreCounted(String type, int seats, int zones, int holds, int tanks, int groups) {
        assertThat(type(type).cabin().seats()).isEqualTo(seats);
        assertThat(type(type).cabin().zones()).hasSize(zones);
        assertThat(type(type).holds()).hasSize(holds);
        assertThat(type(type).fuel().tanks()).hasSize(tanks);
        assertThat(type(type).groups()).hasSize(groups);
    }

    @Test
    void theJetHasEveryKindOfTrimLawAndLine() {
        AircraftType jet = type("jet180");

        assertThat(jet.trimScales())
                .extracting(TrimScale::phase, TrimScale::flaps, scale ->
                        (Object) scale.law().getClass())
                .containsExactly(
                        tuple(Phase.TAKEOFF, "1", TrimTable.class),
                        tuple(Phase.TAKEOFF, "5", TrimPoints.class),
                        tuple(Phase.TAKEOFF, "15", TrimSlope.class),
                        tuple(Phase.LANDING, "30", TrimPoints.class));
        assertThat(jet.trimScale(Phase.TAKEOFF, "5", "").orElseThrow().law().trimUnitsAt(27.5, 65000))
                .hasValue(0.2);
        assertThat(jet.envelopes())
                .extracting(Envelope::phase)
                .containsExactly(Phase.ZERO_FUEL, Phase.TAKEOFF, Phase.FLIGHT, Phase.LANDING);
        assertThat(jet.envelope(Phase.TAKEOFF).orElseThrow().forward().points()).hasSize(5);
        assertThat(jet.envelope(Phase.TAKEOFF).orElseThrow().aft().points()).hasSize(6);
        assertThat(jet.envelope(Phase.TAKEOFF).orElseThrow().aft().straight()).isEqualTo(Straightness.MOMENT);
        assertThat(jet.envelope(Phase.ZERO_FUEL).orElseThrow().aft().straight()).isEqualTo(Straightness.MOMENT);
        assertThat(jet.envelope(Phase.ZERO_FUEL).orElseThrow().forward().straight())
                .isEqualTo(Straightness.ARM);
    }

    /** 67.5 index at 46 t: (67.5 - 50) x 1000 / 46000 m behind 18.6 m. */
    @Test
    void aVertexInIndexIsAtTheArmOfItsIndex() {
        LimitLine aft = type("jet180").envelope(Phase.ZERO_FUEL).orElseThrow().line(Side.AFT);

        assertThat(aft.armAtM(46000)).isCloseTo(18.6 + 17500.0 / 46000, within(1e-12));
    }

    @Test
    void aScaleThatCountsNoseDownIsTurnedIntoNoseUp() {
        TrimScale scale = type("prop70").trimScale(Phase.TAKEOFF, "10", "").orElseThrow();

        assertThat(scale.unit()).isEqualTo(TrimUnit.DEGREES);
        assertThat(scale.law().trimUnitsAt(12, 20000)).hasValue(3.2);
        assertThat(scale.law().trimUnitsAt(38, 20000)).hasValue(-1.0);
        assertThat(scale.bandLowUnits()).isEqualTo(-1.4);
        assertThat(scale.bandHighUnits()).isEqualTo(3.4);
    }

    /** 26 US gal of 3.785411784 L at 0.71 kg/L. */
    @Test
    void theSingleIsKeptInKilogramsAndMetresAndShownInPoundsAndInches() {
        AircraftType single = type("single4");

        assertThat(single.geometry().units().mass()).isEqualTo(MassUnit.LB);
        assertThat(single.geometry().units().length()).isEqualTo(LengthUnit.IN);
        assertThat(single.geometry().units().cg()).isEqualTo(CgForm.ARM);
        assertThat(single.fuel().tanks()).extracting(Tank::capacityKg).containsExactly(69.87870153264, 69.87870153264);
        assertThat(single.cabin().zones().get(1).armM()).isEqualTo(3.3274);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/config/published-masses.csv", useHeadersInDisplayName = true)
    void standardMassesAreThePublishedOnes(String scheme, String what, String value, String source, String how)
            throws NotAcceptedException {
        assertThat(massKg(scheme(scheme), what)).as("%s (%s)", source, how).isEqualTo(WrittenNumber.MASS.read(value));
    }

    private static MassScheme scheme(String id) {
        List<MassScheme> schemes = new ArrayList<>();
        Faults faults = new Faults();
        try {
            String text = Files.readString(Path.of("config/standard-masses.yaml"));
            YamlText.parse("standard-masses.yaml", text, faults)
                    .map(group -> Keys.of("standard-masses.yaml", "schemes", group, faults))
                    .map(SchemeFile::read)
                    .ifPresent(schemes::addAll);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return schemes.stream().filter(found -> found.id().equals(id)).findAny().orElseThrow();
    }

    private static double massKg(MassScheme scheme, String what) {
        return switch (what) {
            case "male" -> scheme.maleKg();
            case "female" -> scheme.femaleKg();
            case "adult" -> scheme.adultKg();
            case "child" -> scheme.childKg();
            case "bag" -> scheme.bagKg();
            case "flight-crew" -> scheme.flightCrewKg();
            case "cabin-crew" -> scheme.cabinCrewKg();
            default -> throw new AssertionError(what);
        };
    }
}
