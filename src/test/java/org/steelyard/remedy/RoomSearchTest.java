package org.steelyard.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.samples.Draws;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

class RoomSearchTest {

    private static final Policy POLICY = RandomAircraft.STRICT;

    private static AuditedFlight audited(Loading loading) {
        Balance balance = Balancer.balance(loading, POLICY);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, POLICY));
    }

    private static Room room(Loading loading) {
        return RoomSearch.of(audited(loading)).orElseThrow();
    }

    /**
     * Everything at 17 m, zero fuel 45,400 kg, limits at 16.8 and 17.2 m. Holds end the room of holds. At the last
     * minute the worst is what goes from 15 m, 2 m in front: 0.2 (45,400 − x) = 2 x.
     */
    @Test
    void aHoldTakesWhatItsLimitsAndTheEnvelopeLeave() {
        Room room = room(SampleJet.loaded().flaps("").loading());

        assertThat(room.places())
                .extracting(PlaceRoom::name)
                .containsExactly("zone A", "zone B", "zone C", "hold 1", "hold 2", "hold 3");
        assertThat(room.places().get(3).roomKg()).isCloseTo(2000, within(1e-9));
        assertThat(room.places().get(3).limitedBy()).isEqualTo(RoomLimit.PLACE);
        assertThat(room.places().get(4).roomKg()).isCloseTo(2500, within(1e-9));
        assertThat(room.places().get(5).roomKg()).isCloseTo(2000, within(1e-9));
        assertThat(room.places().get(0).persons()).isEqualTo(20);
        assertThat(room.places().get(0).limitedBy()).isEqualTo(RoomLimit.SEATS);
        assertThat(room.lastMinuteKg()).isCloseTo(45_400 * 0.2 / 2.2, within(1e-6));
    }

    @Test
    void theEnvelopeEndsTheRoomOfAHoldFarAft() {
        Room room = room(SampleJet.loaded()
                .flaps("")
                .zone(2, 30)
                .hold(0, 0)
                .hold(2, 1500)
                .loading());
        PlaceRoom rear = room.places().get(5);

        // zero fuel 46,900 kg, 20 × 100 × 2 + 1,500 × 2 = 7,000 kg·m; 0.2 (46,900 + x) = 7,000 + 2 x
        assertThat(rear.limitedBy()).isEqualTo(RoomLimit.CG);
        assertThat(rear.roomKg()).isCloseTo((0.2 * 46_900 - 7_000) / 1.8, within(1e-6));
    }

    @Test
    void aBreachedFlightHasNone() {
        assertThat(RoomSearch.of(audited(SampleJet.loaded().hold(2, 3200).loading())))
                .isEmpty();
    }

    /** A little less keeps every limit, at every tenth of the way too; a little more breaks one. */
    @Test
    @Tag("validation")
    void alittleLessIsCleanAndALittleMoreIsNot() {
        List<RoomLimit> limits = new ArrayList<>();
        for (long seed = 1; seed <= Draws.of(300); seed++) {
            Loading loading = SmallAircraft.loading(seed);
            AuditedFlight flight = audited(loading);
            Optional<Room> room = RoomSearch.of(flight);
            if (room.isEmpty()) {
                continue;
            }
            for (int i = 0; i < room.get().places().size(); i++) {
                PlaceRoom place = room.get().places().get(i);
                limits.add(place.limitedBy());
                for (int tenth = 0; tenth <= 10; tenth++) {
                    double kg = Math.max(0, place.roomKg() * tenth / 10 - 1e-6);
                    assertThat(isClean(loading, i, kg))
                            .as("seed %d, %s + %s of %s", seed, place.name(), kg, place)
                            .isTrue();
                }
                if (place.limitedBy() != RoomLimit.SEATS) {
                    assertThat(isClean(loading, i, place.roomKg() + 1e-4))
                            .as("seed %d, %s", seed, place)
                            .isFalse();
                }
            }
        }
        assertThat(limits).contains(RoomLimit.CG, RoomLimit.PLACE, RoomLimit.SEATS, RoomLimit.GROUP);
    }

    private static boolean isClean(Loading loading, int place, double kg) {
        Load.ByPlace load = (Load.ByPlace) loading.load();
        List<ZoneLoad> zones = new ArrayList<>(load.zones());
        List<HoldLoad> holds = new ArrayList<>(load.holds());
        if (place < zones.size()) {
            ZoneLoad zone = zones.get(place);
            double massKg = zone.massKg(loading.type().cabin().scheme()) + kg;
            zones.set(place, new ZoneLoad(zone.passengers(), OptionalDouble.of(massKg)));
        } else {
            HoldLoad hold = holds.get(place - zones.size());
            holds.set(place - zones.size(), new HoldLoad(hold.massKg() + kg, hold.bags()));
        }
        Loading changed = loading.with(new Load.ByPlace(zones, holds), loading.fuel());
        return audited(changed).assessment().status() != Status.BREACHED;
    }
}
