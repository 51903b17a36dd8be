package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.text.FindingText;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.Side;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Tail;
import org.steelyard.samples.Plain;

/** What comes with the program: standard masses against the published ones, and the types against common practice. */
@Tag("validation")
class ShippedFiguresTest {

    private static final Path CONFIG = Path.of("config");

    private static Configuration configuration() {
        ConfigResult result = ConfigFolder.load(CONFIG);
        assertThat(result).isInstanceOf(ConfigResult.Loaded.class);
        return ((ConfigResult.Loaded) result).configuration();
    }

    private static AircraftType jet() {
        return configuration().types().get("jet180");
    }

    /** Each line: a scheme of ours, its key, and the published line that the figure must be. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            easa-30 | male | aeroplanes 20 seats or more | male
            easa-30 | female | aeroplanes 20 seats or more | female
            easa-30 | adult | aeroplanes 30 seats or more | all adult
            easa-30 | child | 20 seats or more | child 2-<12
            easa-30 | infant | infant on lap | in adult figure
            easa-30 | bag | checked bag, European | bag
            easa-30 | flight-crew | flight crew | person
            easa-30 | cabin-crew | cabin crew | person
            easa-30-domestic | bag | checked bag, 20 seats or more, domestic | bag
            easa-30-intercontinental | bag | checked bag, intercontinental | bag
            easa-holiday | male | holiday charter | male
            easa-holiday | female | holiday charter | female
            easa-holiday | adult | holiday charter | all adult
            easa-holiday | bag | checked bag, all other | bag
            easa-19 | male | 10-19 seats | male
            easa-19 | female | 10-19 seats | female
            easa-19 | child | 10-19 seats | child
            easa-9 | male | 6-9 seats | male
            easa-9 | female | 6-9 seats | female
            easa-9 | child | 6-9 seats | child
            easa-5 | male | 1-5 seats | male
            easa-5 | female | 1-5 seats | female
            easa-5 | child | 1-5 seats | child
            faa-summer | male | male summer | person
            faa-summer | female | female summer | person
            faa-summer | adult | adult summer | person
            faa-summer | child | child summer | person
            faa-summer | bag | checked bag | bag
            faa-summer | flight-crew | flight crew | person
            faa-summer | cabin-crew | cabin crew | person
            faa-winter | male | male winter | person
            faa-winter | female | female winter | person
            faa-winter | adult | adult winter | person
            faa-winter | child | child winter | person
            """)
    void standardMassesAreThePublishedOnes(String scheme, String key, String published, String kind)
            throws IOException {
        boolean faa = scheme.startsWith("faa");
        for (CSVRecord row : ReferenceTablesTest.table("standard-masses.csv")) {
            boolean sameScheme = row.get("scheme").startsWith(faa ? "FAA AC" : "EASA");
            if (sameScheme
                    && row.get("class").equals(published)
                    && row.get("kind").equals(kind)) {
                assertThat(shipped().get(scheme + '/' + key)).isEqualTo(row.get("value") + ' ' + row.get("unit"));
                return;
            }
        }
        throw new AssertionError("not published: " + published + ", " + kind);
    }

    private static Map<String, String> shipped() throws IOException {
        Map<String, String> masses = new LinkedHashMap<>();
        JsonNode file =
                new YAMLMapper().readTree(CONFIG.resolve("standard-masses.yaml").toFile());
        for (JsonNode scheme : file.get("schemes")) {
            for (var field : scheme.properties()) {
                masses.put(
                        scheme.get("id").asText() + '/' + field.getKey(),
                        field.getValue().asText());
            }
        }
        return masses;
    }

    /** Some 0.2 unit nose-up near 27.5 % MAC is plausible for a twin-jet's scale; common practice. */
    @Test
    void theJetTrimsALittleAboveNeutralInTheMiddleOfItsRange() {
        TrimScale scale = jet().trimScale(Phase.TAKEOFF, "5", "").orElseThrow();
        double units = scale.law().trimUnitsAt(27.5, 65_000).orElseThrow();
        assertThat(units).isCloseTo(0.2, within(1e-9));
        assertThat(FindingText.trim(scale.settingFor(units), scale.stepUnits(), scale.unit()))
                .isEqualTo("0.2 UP");
    }

    /** A more forward CG needs more nose-up trim, on every scale; common practice. */
    @Test
    void everyScaleTurnsNoseUpAsTheCgMovesForward() {
        int scales = 0;
        for (AircraftType type : configuration().types().values()) {
            double massKg = 0.9 * type.limits().maxTakeoffKg();
            for (TrimScale scale : type.trimScales()) {
                CgRange range = scale.law().cgRange();
                double front = at(scale.law(), range.fromPercentMac(), massKg);
                assertThat(front).isGreaterThan(at(scale.law(), range.toPercentMac(), massKg));
                scales++;
            }
        }
        assertThat(scales).isGreaterThan(3);
    }

    private static double at(TrimLaw law, double cgPercentMac, double massKg) {
        return law.trimUnitsAt(cgPercentMac, massKg).orElseThrow();
    }

    /** Changing the flap setting changes the trim; common practice. */
    @Test
    void eachFlapSettingOfTheJetHasItsOwnTrim() {
        assertThat(jet().trimScales().stream()
                        .filter(scale -> scale.phase() == Phase.TAKEOFF)
                        .map(scale -> at(scale.law(), 25, 65_000))
                        .distinct())
                .hasSizeGreaterThanOrEqualTo(3);
    }

    /** A transport's permissible range is of the order of 20 to 40 % MAC; common practice. */
    @Test
    void theJetsRangeIsOfTheOrderOfATransports() {
        MeanChord chord = jet().geometry().chord();
        for (Envelope envelope : jet().envelopes()) {
            double massKg = (envelope.minMassKg() + envelope.maxMassKg()) / 2;
            double front = chord.percentAt(envelope.line(Side.FORWARD).armAtM(massKg));
            double aft = chord.percentAt(envelope.line(Side.AFT).armAtM(massKg));
            assertThat(front).isBetween(5.0, 25.0);
            assertThat(aft).isBetween(30.0, 45.0);
            assertThat(aft - front).isBetween(15.0, 35.0);
        }
    }

    /** Burning fuel moves the CG in flight; common practice. */
    @Test
    void aFlightOfTheJetLandsWithAnotherCgThanItTookOffWith() {
        Configuration configuration = configuration();
        Tail tail = configuration.tails().values().stream()
                .filter(one -> one.type().id().equals("jet180"))
                .findFirst()
                .orElseThrow();
        Loading loading = Plain.loading(
                new Origin("case.csv", "", 2),
                new FlightIdent("C1", LocalDate.of(2026, 4, 1), "AAAAA", "BBBBB"),
                tail,
                new FlightSetting("5", "", ""),
                Crew.STANDARD,
                new Load.Totals(Passengers.adults(150), OptionalDouble.empty(), new HoldLoad(2000, 0)),
                new Fuel.Total(12_000, 200, 8_000),
                PerformanceLimits.NONE,
                OptionalDouble.empty(),
                List.of());
        Balance balance = Balancer.balance(loading, configuration.policy());
        MeanChord chord = tail.type().geometry().chord();
        double takeoff = chord.percentAt(balance.takeoff().armM());
        double landing = chord.percentAt(balance.landing().orElseThrow().armM());
        assertThat(Math.abs(landing - takeoff)).isBetween(0.2, 10.0);
        assertThat(takeoff).isBetween(15.0, 35.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"faa-summer", "faa-winter"})
    void massesOfEarlierEditionsOfACircularSayThatTheyAre(String scheme) {
        assertThat(configuration().schemes().get(scheme).source())
                .contains("120-27D and 120-27E")
                .contains("earlier editions of the circular");
    }
}
