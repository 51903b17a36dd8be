package org.steelyard.grade.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.LastMinuteChange.Part;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.SeatRowLoad;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.SeatRow;
import org.steelyard.model.type.Tail;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

class WorkingTest {

    private static final Policy POLICY = Plain.policy(1, 0.5, 2, 0.2, SharingRule.BY_CAPACITY);

    private static Exercise exercise(Loading loading) {
        return Exercise.of(loading, POLICY);
    }

    private static double number(Working working, SheetItem item, CgMeasure measure) {
        return ((Answer.Figure) working.answer(item, measure).orElseThrow()).value();
    }

    /**
     * Figures by hand from the sample jet's round numbers: 45,400 kg at 17 m without fuel, 8,000 kg of fuel at 17 m.
     */
    @ParameterizedTest
    @CsvSource({
        "zone or hold left out: hold 1, ZERO_FUEL_MASS, 44400",
        "zone or hold left out: hold 1, LANDING_MASS, 47200",
        "zone or hold left out: hold 1, ZERO_FUEL_CG, 26.1261",
        "zone or hold left out: hold 1, UNDERLOAD, 7600",
        "zone or hold twice: hold 3, ZERO_FUEL_MASS, 46400",
        "zone or hold twice: hold 3, ZERO_FUEL_CG, 26.0776",
        "neighbour's arm: zone A at the arm of zone B, ZERO_FUEL_MASS, 45400",
        "neighbour's arm: zone A at the arm of zone B, ZERO_FUEL_CG, 26.1013",
        "crew left out: flight crew, ZERO_FUEL_MASS, 45200",
        "crew left out: flight crew, TRAFFIC_LOAD, 11800",
        "taxi fuel not taken off, TAKEOFF_MASS, 53400",
        "taxi fuel not taken off, LANDING_MASS, 48400",
        "taxi fuel twice, TAKEOFF_MASS, 53000",
        "taxi fuel twice, LANDING_MASS, 48000",
        "trip fuel off the wrong mass, TAKEOFF_MASS, 53200",
        "trip fuel off the wrong mass, LANDING_MASS, 48400",
        "ramp for take-off, TAKEOFF_MASS, 53400",
        "ramp for take-off, LANDING_MASS, 48200",
        "kilograms turned into pounds: all holds, ZERO_FUEL_MASS, 47809.2452",
        "pounds taken for kilograms: ramp fuel, RAMP_MASS, 49028.7390",
        "fuel volume as mass: ramp fuel in L taken for kg, RAMP_MASS, 55400",
        "fuel volume as mass: ramp fuel taken for US gal, RAMP_MASS, 69626.6354",
        "datum for LEMAC, TAKEOFF_CG, 425",
        "LEMAC or MAC slip: the reference arm of the index for LEMAC, TAKEOFF_CG, 0",
        "LEMAC or MAC slip: divided by LEMAC, TAKEOFF_CG, 6.25",
        "limit left out: maximum zero-fuel mass, LIMITING_MASS, 60000",
        "limit of the wrong phase: landing limit without the trip fuel, LIMITING_MASS, 55000",
        "limit of the wrong phase: zero-fuel limit without the fuel, TRAFFIC_LOAD, 3800",
        "limit of the wrong phase: landing limit without the trip fuel, UNDERLOAD, 1800",
        "kilograms turned into pounds: take-off mass, TAKEOFF_MASS, 117285.9234",
        "kilograms turned into pounds: take-off mass, LANDING_MASS, 48200",
    })
    void aSlipGivesWhatItGivesOnPaper(String label, SheetItem item, double expected) {
        Exercise exercise = exercise(SampleJet.loaded().loading());
        assertThat(number(new Working(exercise, List.of(slip(exercise, label))), item, CgMeasure.PERCENT_MAC))
                .isCloseTo(expected, within(1e-4));
    }

    private static Slip slip(Exercise exercise, String label) {
        return Candidates.of(exercise).stream()
                .filter(slip -> slip.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(label));
    }

    /** With hold 1 moved to hold 3: 775,800 kg m without fuel, 908,400 at take-off; trim -0.5 units for each % MAC. */
    @ParameterizedTest
    @CsvSource({
        "nose up for nose down, 0.9398",
        "zero-fuel CG for trim, -1.1013",
        "scale read the wrong way, -2.0602",
        "rounded too early: CG to whole % MAC for the trim, -1.0",
    })
    void aTrimSlipGivesWhatItGivesOnPaper(String label, double expected) {
        Exercise exercise = exercise(SampleJet.loaded().hold(0, 0).hold(2, 2000).loading());
        assertThat(number(new Working(exercise, List.of(slip(exercise, label))), SheetItem.TRIM, CgMeasure.ARM))
                .isCloseTo(expected, within(1e-4));
    }

    @Test
    void theIndexConstantIsMissingFromTheIndexAlone() {
        Exercise exercise = exercise(SampleJet.loaded().loading());
        Working working = new Working(exercise, List.of(slip(exercise, "index constant forgotten")));
        assertThat(number(working, SheetItem.TAKEOFF_CG, CgMeasure.INDEX)).isCloseTo(0, within(1e-9));
        assertThat(number(working, SheetItem.TAKEOFF_CG, CgMeasure.PERCENT_MAC)).isCloseTo(25, within(1e-9));
    }

    @Test
    void aSumThatIsOffGoesOnIntoEveryLaterMass() {
        Exercise exercise = exercise(SampleJet.loaded().loading());
        Slip slip = new Slip(
                SlipKind.ARITHMETIC, Slip.Target.ITEM, SheetItem.ALL.indexOf(SheetItem.RAMP_MASS), 1000, "ramp mass");
        Working working = new Working(exercise, List.of(slip));
        assertThat(number(working, SheetItem.ZERO_FUEL_MASS, CgMeasure.ARM)).isCloseTo(45400, within(1e-6));
        assertThat(number(working, SheetItem.RAMP_MASS, CgMeasure.ARM)).isCloseTo(54400, within(1e-6));
        assertThat(number(working, SheetItem.LANDING_MASS, CgMeasure.ARM)).isCloseTo(49200, within(1e-6));
    }

    /**
     * Figures by hand from the sample jet's round numbers with persons of 110 kg and crew of 90, and two persons, 500
     * kg and 300 kg of fuel more at the last minute: 46,380 kg without fuel, 8,300 kg of fuel.
     */
    @ParameterizedTest
    @CsvSource({
        "'', ZERO_FUEL_MASS, 46380",
        "'', ZERO_FUEL_CG, 25.5390",
        "'', RAMP_MASS, 54680",
        "'', TAKEOFF_MASS, 54480",
        "'', LANDING_MASS, 49480",
        "zone or hold left out: hold 1, ZERO_FUEL_MASS, 45380",
        "crew left out: cabin crew, ZERO_FUEL_MASS, 46200",
        "pounds taken for kilograms: ramp fuel, RAMP_MASS, 50144.8167",
        "taxi fuel not taken off, LANDING_MASS, 49680",
    })
    void aSchemeOfItsOwnAndALastMinuteChangeCount(String label, SheetItem item, double expected) {
        Exercise exercise = exercise(changed(SampleJet.loaded().loading()));
        List<Slip> slips = label.isEmpty() ? List.of() : List.of(slip(exercise, label));
        assertThat(number(new Working(exercise, slips), item, CgMeasure.PERCENT_MAC))
                .isCloseTo(expected, within(1e-4));
    }

    private static Loading changed(Loading plain) {
        MassScheme scheme = new MassScheme("own", "round numbers", 110, 110, 110, 50, 0, 10, 90, 90);
        LastMinuteChange change = new LastMinuteChange(List.of(
                new Part(LoadPart.PASSENGERS, 1, 2, 2, 220),
                new Part(LoadPart.HOLDS, 2, 0, 0, 500),
                new Part(LoadPart.FUEL, 0, 0, 0, 300)));
        return Plain.loading(
                plain.origin(),
                plain.flight(),
                plain.tail(),
                plain.setting(),
                scheme,
                plain.crew(),
                plain.load(),
                plain.fuel(),
                change,
                plain.performance(),
                plain.recordedTrimUnits(),
                plain.extras());
    }

    /** Ten persons of 100 kg, two metres ahead of their zone's arm at 17 m: 2,000 kg m less, on 45,400 kg. */
    @Test
    void personsWhoseSeatRowIsKnownCountThere() {
        Loading plain = SampleJet.loaded().loading();
        Load.ByPlace load = (Load.ByPlace) plain.load();
        List<ZoneLoad> zones = new ArrayList<>(load.zones());
        zones.set(
                1, new ZoneLoad(Passengers.adults(10), OptionalDouble.empty(), List.of(new SeatRowLoad(0, 10, 1000))));
        Loading seated =
                plain.with(withRowAhead(plain.tail())).with(new Load.ByPlace(zones, load.holds()), plain.fuel());
        Exercise exercise = exercise(seated);
        assertThat(number(exercise.right(), SheetItem.ZERO_FUEL_MASS, CgMeasure.ARM))
                .isCloseTo(45400, within(1e-6));
        assertThat(number(exercise.right(), SheetItem.ZERO_FUEL_CG, CgMeasure.ARM))
                .isCloseTo(17 - 2000 / 45400.0, within(1e-9));
    }

    private static Tail withRowAhead(Tail tail) {
        AircraftType is = tail.type();
        Cabin cabin = is.cabin();
        List<CabinZone> zones = new ArrayList<>(cabin.zones());
        zones.set(1, new CabinZone("B", "zone B", 17, 30, List.of(new SeatRow("1", 15, 10), new SeatRow("2", 18, 20))));
        Cabin seats = new Cabin(
                zones, cabin.crewStations(), cabin.flightCrew(), cabin.cabinCrew(), cabin.pantries(), cabin.scheme());
        AircraftType type = Plain.aircraftType(
                is.id(),
                is.name(),
                is.geometry(),
                is.limits(),
                seats,
                is.holds(),
                is.groups(),
                is.fuel(),
                is.envelopes(),
                is.trimScales());
        return Plain.tail(tail.registration(), type, tail.basic());
    }

    @Test
    void withoutSlipsTheWorkingIsWhatBalanceAndChecksCompute() {
        for (int i = 0; i < 60; i++) {
            Loading loading = new RandomAircraft(1000 + i).loading();
            Exercise exercise = exercise(loading);
            for (Phase phase : List.of(Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.LANDING)) {
                var right = exercise.balance().state(phase).orElseThrow();
                var worked = exercise.right().state(phase).orElseThrow();
                assertThat(worked.massKg()).as("seed %d, %s", 1000 + i, phase).isCloseTo(right.massKg(), within(1e-6));
                assertThat(worked.momentKgM()).isCloseTo(right.momentKgM(), within(1e-4));
            }
            exercise.trafficLoad().ifPresent(load -> {
                assertThat(number(exercise.right(), SheetItem.TRAFFIC_LOAD, CgMeasure.ARM))
                        .isCloseTo(load.allowedKg(), within(1e-6));
                assertThat(number(exercise.right(), SheetItem.UNDERLOAD, CgMeasure.ARM))
                        .isCloseTo(load.underloadKg(), within(1e-6));
                assertThat(exercise.right(SheetItem.LIMITED_BY, CgMeasure.ARM))
                        .contains(new Answer.Limit(load.limitedBy()));
            });
            boolean breached = exercise.assessment().status() == org.steelyard.check.result.Status.BREACHED;
            assertThat(exercise.right(SheetItem.VERDICT, CgMeasure.ARM)).contains(new Answer.Verdict(!breached));
        }
    }

    @Test
    void digitsThatStandBesideEachOtherAreSwappedEachOnce() {
        assertThat(Digits.swaps(1223, 1)).containsExactly(2123.0, 1232.0);
        assertThat(Digits.swaps(-17.6, 0.1)).hasSize(2).allMatch(value -> value < 0);
        assertThat(Digits.swaps(508, 1)).containsExactly(580.0);
        assertThat(Digits.swaps(7, 1)).isEmpty();
    }
}
