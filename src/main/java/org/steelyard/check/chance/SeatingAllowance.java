package org.steelyard.check.chance;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.limit.Side;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.SeatRow;

/**
 * The moment by which passengers may sit off the middle of their zones when window seats fill first, then those at the
 * aisle, then the others, all from one end: after each passenger mass × (row - middle of the zone) is added, and the
 * greatest sum counts. Zones may each stand at their greatest sum, as far as there are passengers. (The method of FAA
 * AC 120-27 and of manufacturers' manuals that follow it, as EMB-145 AOM 1-06-40.)
 */
public final class SeatingAllowance {

    /** For each number of passengers aboard, none first, the greatest moment in kg·m. */
    private final double[] greatestKgM;

    private SeatingAllowance(double[] greatestKgM) {
        this.greatestKgM = greatestKgM;
    }

    /**
     * The allowance to one side.
     *
     * @param zones the zones of the cabin
     * @param personKg mass of a passenger in kg
     * @param side the side towards which they sit
     * @return the allowance for each number of passengers
     */
    public static SeatingAllowance of(List<CabinZone> zones, double personKg, Side side) {
        double[] best = {0};
        for (CabinZone zone : zones) {
            best = together(best, sums(zone, personKg, side));
        }
        return new SeatingAllowance(best);
    }

    /**
     * With at most so many passengers aboard.
     *
     * @param passengers their number
     * @return greatest moment in kg·m
     */
    public double kgM(int passengers) {
        return greatestKgM[Math.min(Math.max(passengers, 0), greatestKgM.length - 1)];
    }

    /**
     * With as many passengers as there are seats.
     *
     * @return greatest moment in kg·m
     */
    public double kgM() {
        return greatestKgM[greatestKgM.length - 1];
    }

    /** For so many in a zone, the greatest sum on the way there. */
    private static double[] sums(CabinZone zone, double personKg, Side side) {
        double[] sums = new double[zone.seats() + 1];
        double sumKgM = 0;
        int seated = 0;
        for (double aftM : seats(zone, side)) {
            sumKgM += personKg * (side == Side.AFT ? aftM : -aftM);
            seated++;
            sums[seated] = Math.max(sums[seated - 1], sumKgM);
        }
        return sums;
    }

    /** Distances aft of the middle of the zone in the order in which seats are taken from the side's end. */
    private static List<Double> seats(CabinZone zone, Side side) {
        if (zone.rows().isEmpty()) {
            return List.of();
        }
        List<Double> seats = new ArrayList<>();
        List<SeatRow> rows = zone.rows();
        double sumM = 0;
        for (int pass = 0; seats.size() < zone.seats(); pass++) {
            for (int i = 0; i < rows.size(); i++) {
                SeatRow row = rows.get(side == Side.FORWARD ? i : rows.size() - 1 - i);
                for (int k = 2 * pass; k < Math.min(2 * pass + 2, row.seats()); k++) {
                    seats.add(row.armM());
                    sumM += row.armM();
                }
            }
        }
        double middleM = sumM / zone.seats();
        return seats.stream().map(atM -> atM - middleM).toList();
    }

    private static double[] together(double[] one, double[] other) {
        double[] best = new double[one.length + other.length - 1];
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < other.length; j++) {
                best[i + j] = Math.max(best[i + j], one[i] + other[j]);
            }
        }
        for (int i = 1; i < best.length; i++) {
            best[i] = Math.max(best[i], best[i - 1]);
        }
        return best;
    }
}
