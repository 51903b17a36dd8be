package org.steelyard.check.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.FuelPath;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Draws;
import org.steelyard.samples.RandomAircraft;

class PathApproachTest {

    private static final int PARTS = 100;

    /**
     * Dense sampling as a second opinion, refined between the samples around the least one: never below the exact
     * answer, and as near to it as rounding allows.
     */
    @Test
    void theExactApproachIsWhatDenseSamplingTendsTo() {
        LongStream.range(0, Draws.of(2000)).forEach(seed -> {
            Loading loading = new RandomAircraft(seed).loading();
            Envelope envelope = loading.type().envelope(Phase.FLIGHT).orElseThrow();
            FuelPath path = Balancer.balance(loading, RandomAircraft.STRICT)
                    .fuel()
                    .orElseThrow()
                    .path();
            for (Side side : Side.values()) {
                LimitLine line = envelope.line(side);
                double exactM = PathApproach.find(path, line).orElseThrow().roomM();
                double sampledM = sampledRoomM(path, line);
                if (!(Math.abs(sampledM - exactM) <= 1e-7)) {
                    throw new AssertionError(
                            "seed " + seed + ", " + side + ": sampled " + sampledM + ", exact " + exactM);
                }
            }
        });
    }

    private static double sampledRoomM(FuelPath path, LimitLine line) {
        double leastM = Double.POSITIVE_INFINITY;
        List<MassMoment> points = path.points();
        for (int i = 1; i < points.size(); i++) {
            MassMoment from = points.get(i - 1);
            MassMoment to = points.get(i);
            int best = 0;
            for (int k = 0; k <= PARTS; k++) {
                best = roomM(line, from, to, k) < roomM(line, from, to, best) ? k : best;
            }
            leastM = Math.min(leastM, roomM(line, from, to, best));
            leastM = Math.min(leastM, refined(line, from, to, Math.max(best - 1, 0), Math.min(best + 1, PARTS)));
        }
        return leastM;
    }

    private static double roomM(LimitLine line, MassMoment from, MassMoment to, double k) {
        double t = k / PARTS;
        double massKg = to.massKg() * t + from.massKg() * (1 - t);
        return line.roomM(massKg, (to.momentKgM() * t + from.momentKgM() * (1 - t)) / massKg);
    }

    /** The least room between two samples, by cutting off the worse third again and again. */
    private static double refined(LimitLine line, MassMoment from, MassMoment to, double low, double high) {
        double left = low;
        double right = high;
        while (right - left > 1e-9) {
            double third = (right - left) / 3;
            if (roomM(line, from, to, left + third) < roomM(line, from, to, right - third)) {
                right -= third;
            } else {
                left += third;
            }
        }
        return roomM(line, from, to, (left + right) / 2);
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
    void aPathBelowTheMassesOfTheLineHasNoApproach() {
        LimitLine line =
                new LimitLine(Side.AFT, Straightness.ARM, List.of(new LimitPoint(50, 10), new LimitPoint(100, 10)));
        FuelPath path = new FuelPath(List.of(new MassMoment(49, 520), new MassMoment(30, 330)));
        assertThat(PathApproach.find(path, line)).isEmpty();
    }
}
