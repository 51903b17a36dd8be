package org.steelyard.samples;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.FindingCode;

/**
 * Invented results of flights, for comparisons of seasons: tails, routes and pilots differ, CGs lean to one side, most
 * flights are clean and some groups are not; but what a flight is does not depend on when it was flown. Seeded, and
 * without any code of the program's statistics.
 */
public final class FlownFlights {

    /**
     * A flight's results.
     *
     * @param found kinds of breaches
     */
    public record Flown(
            String type,
            String flaps,
            String tail,
            String route,
            String pilot,
            double cgPercentMac,
            double trimUnits,
            Status status,
            Set<FindingCode> found) {}

    private static final double SD_PERCENT_MAC = 2;
    private static final int TAILS = 8;
    private static final int ROUTES = 20;
    private static final int PILOTS = 15;
    private static final String[] TYPES = {"long", "short"};
    private static final String[] FLAPS = {"1", "5", "15"};

    private final Random random;
    private final double[] ofTail = new double[TAILS];
    private final double[] ofRoute = new double[ROUTES];
    private final double[] carelessness = new double[PILOTS];

    public FlownFlights(long seed) {
        random = new Random(seed);
        for (int i = 0; i < TAILS; i++) {
            ofTail[i] = 0.5 * random.nextGaussian();
        }
        for (int i = 0; i < ROUTES; i++) {
            ofRoute[i] = 0.8 * random.nextGaussian();
        }
        for (int i = 0; i < PILOTS; i++) {
            carelessness[i] = 0.1 * random.nextDouble() * random.nextDouble();
        }
    }

    /** A season of so many flights, as many by each tail. */
    public List<Flown> season(int flights) {
        return season(flights, 0);
    }

    /** The same with the first tail so many standard deviations of a tail's flights farther aft. */
    public List<Flown> season(int flights, double firstTailAftSd) {
        List<Flown> season = new ArrayList<>();
        for (int i = 0; i < flights; i++) {
            int tail = i % TAILS;
            season.add(flight(tail, tail == 0 ? firstTailAftSd * SD_PERCENT_MAC : 0));
        }
        return season;
    }

    /** The tail that {@link #season(int, double)} moves. */
    public static String firstTail() {
        return "T0";
    }

    /** How many tails there are. */
    public static int tails() {
        return TAILS;
    }

    private Flown flight(int tail, double aft) {
        int route = random.nextInt(ROUTES);
        int pilot = random.nextInt(PILOTS);
        int flaps = random.nextInt(FLAPS.length);
        double scatter = Math.sqrt(SD_PERCENT_MAC * SD_PERCENT_MAC - 0.64);
        double cg = 25 + ofTail[tail] + ofRoute[route] + aft + scatter * leaning();
        double trim = 4 - 0.15 * (cg - 25) + 0.5 * flaps + 0.02 * random.nextGaussian();
        Set<FindingCode> found = EnumSet.noneOf(FindingCode.class);
        if (cg > 30.5) {
            found.add(FindingCode.CG_AFT);
        }
        for (FindingCode code : List.of(FindingCode.HOLD_MASS, FindingCode.MASS_HIGH, FindingCode.FUEL_SHORT)) {
            if (random.nextDouble() < carelessness[pilot]) {
                found.add(code);
            }
        }
        Status clean = random.nextDouble() < 0.1 ? Status.MARGINAL : Status.CLEAN;
        return new Flown(
                TYPES[tail % TYPES.length],
                FLAPS[flaps],
                "T" + tail,
                "R" + route,
                "pilot " + pilot,
                cg,
                trim,
                found.isEmpty() ? clean : Status.BREACHED,
                found);
    }

    /** Mean 0, standard deviation 1, a longer tail upwards: the sum of four exponential draws. */
    private double leaning() {
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum -= Math.log(1 - random.nextDouble());
        }
        return (sum - 4) / 2;
    }
}
