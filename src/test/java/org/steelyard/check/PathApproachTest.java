package org.steelyard.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.FuelPath;
import org.steelyard.model.Envelope;
import org.steelyard.model.LimitLine;
import org.steelyard.model.LimitPoint;
import org.steelyard.model.Loading;
import org.steelyard.model.MassMoment;
import org.steelyard.model.Phase;
import org.steelyard.model.Side;
import org.steelyard.model.Straightness;
import org.steelyard.samples.RandomAircraft;

class PathApproachTest {

    /** Dense sampling as a second opinion: never below the exact answer, and close to it. */
    @Test
    void theExactApproachIsWhatDenseSamplingTendsTo() {
        LongStream.range(0, 2000).forEach(seed -> {
            Loading loading = new RandomAircraft(seed).loading();
            Envelope envelope = loading.type().envelope(Phase.FLIGHT).orElseThrow();
            FuelPath path = Balancer.balance(loading, RandomAircraft.STRICT)
                    .fuel()
                    .orElseThrow()
                    .path();
            for (Side side : Side.values()) {
                double exactM = PathApproach.find(path, envelope.line(side))
                        .orElseThrow()
                        .roomM();
                double sampledM = sampledRoomM(path, envelope.line(side), 200);
                assertThat(sampledM).as("seed %d, %s", seed, side).isGreaterThanOrEqualTo(exactM - 1e-9);
                assertThat(sampledM).as("seed %d, %s", seed, side).isCloseTo(exactM, within(2e-2));
            }
        });
    }

    private static double sampledRoomM(FuelPath path, LimitLine line, int parts) {
        double leastM = Double.POSITIVE_INFINITY;
        List<MassMoment> points = path.points();
        for (int i = 1; i < points.size(); i++) {
            for (int k = 0; k <= parts; k++) {
                double t = (double) k / parts;
                double massKg = points.get(i).massKg() * t + points.get(i - 1).massKg() * (1 - t);
                double momentKgM =
                        points.get(i).momentKgM() * t + points.get(i - 1).momentKgM() * (1 - t);
                leastM = Math.min(leastM, line.roomM(massKg, momentKgM / massKg));
            }
        }
        return leastM;
    }

    @Test
    void aTurnInsideAPieceIsFound() {
        // forward limit falls with mass: arm = 20 - 0.1 m; path M = 1000 + 4 m; room = 1000/m + 4 - 20 + 0.1 m,
        // least where -1000/m^2 + 0.1 = 0: m = 100, room = 10 + 4 - 20 + 10 = 4
        LimitLine line =
                new LimitLine(Side.FORWARD, Straightness.ARM, List.of(new LimitPoint(50, 15), new LimitPoint(150, 5)));
        FuelPath path = new FuelPath(List.of(new MassMoment(140, 1560), new MassMoment(60, 1240)));
        Approach approach = PathApproach.find(path, line).orElseThrow();
        assertThat(approach.at().massKg()).isCloseTo(100, within(1e-9));
        assertThat(approach.roomM()).isCloseTo(4, within(1e-12));
    }

    @Test
    void aPathThatCrossesAStepIsHeldAgainstItsStricterSide() {
        LimitLine line = new LimitLine(
                Side.AFT,
                Straightness.ARM,
                List.of(
                        new LimitPoint(50, 10),
                        new LimitPoint(100, 10),
                        new LimitPoint(100, 8),
                        new LimitPoint(150, 8)));
        FuelPath path = new FuelPath(List.of(new MassMoment(120, 120 * 7.5), new MassMoment(80, 80 * 7.5)));
        assertThat(PathApproach.find(path, line).orElseThrow().roomM()).isCloseTo(0.5, within(1e-12));
        FuelPath standing = new FuelPath(List.of(new MassMoment(100, 100 * 9)));
        assertThat(PathApproach.find(standing, line).orElseThrow().roomM()).isCloseTo(1, within(1e-12));
    }

    @Test
    void aPathOutsideTheMassesOfTheLineHasNoApproach() {
        LimitLine line =
                new LimitLine(Side.AFT, Straightness.ARM, List.of(new LimitPoint(50, 10), new LimitPoint(100, 10)));
        FuelPath path = new FuelPath(List.of(new MassMoment(140, 1560), new MassMoment(110, 1240)));
        assertThat(PathApproach.find(path, line)).isEmpty();
    }
}
