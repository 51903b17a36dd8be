package org.steelyard.check.chance;

import java.util.List;
import org.steelyard.model.policy.SeatingRule;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.SeatRow;

/**
 * Where the passengers of a zone may sit: the number of seats they are drawn from, their mean distance aft of the
 * middle of the zone's seats and the variance of it. At random they are drawn from all seats, with a rule from those
 * that it fills.
 *
 * @param seats number of seats to draw from
 * @param meanM mean distance aft of the middle of the zone's seats in m
 * @param varianceM2 variance of a seat's distance over those seats in m²
 */
record SeatSpread(double seats, double meanM, double varianceM2) {

    /**
     * The seats of a zone.
     *
     * @param seated how many passengers, not whole where they are shared out from a total
     */
    static SeatSpread of(CabinZone zone, double seated, SeatingRule rule) {
        if (zone.rows().isEmpty()) {
            return new SeatSpread(zone.seats(), 0, 0);
        }
        List<SeatRow> rows = zone.rows();
        double middleM = middleM(rows, zone.seats());
        if (rule == SeatingRule.RANDOM) {
            return new SeatSpread(zone.seats(), 0, squaresM2(rows, middleM) / zone.seats());
        }
        double taken = Math.min(seated, zone.seats());
        if (taken <= 0) {
            return new SeatSpread(0, 0, 0);
        }
        double[] sums = sums(rows, taken, middleM);
        double meanM = sums[1] / taken;
        return new SeatSpread(taken, meanM, Math.max(0, sums[2] / taken - meanM * meanM));
    }

    private static double middleM(List<SeatRow> rows, int seats) {
        double sumM = 0;
        for (int i = 0; i < rows.size(); i++) {
            sumM += rows.get(i).seats() * rows.get(i).armM();
        }
        return sumM / seats;
    }

    private static double squaresM2(List<SeatRow> rows, double middleM) {
        double squaresM2 = 0;
        for (int i = 0; i < rows.size(); i++) {
            double atM = rows.get(i).armM() - middleM;
            squaresM2 += rows.get(i).seats() * atM * atM;
        }
        return squaresM2;
    }

    /**
     * Number, sum and sum of squares of the distances of the seats taken first: two at the windows of each row from the
     * front, then two at the aisle, then the others.
     */
    private static double[] sums(List<SeatRow> rows, double taken, double middleM) {
        double seats = 0;
        double sumM = 0;
        double squaresM2 = 0;
        int pass = 0;
        while (seats < taken - 1e-9) {
            for (int i = 0; i < rows.size(); i++) {
                SeatRow row = rows.get(i);
                double here = Math.min(Math.max(0, Math.min(row.seats() - 2 * pass, 2)), taken - seats);
                double atM = row.armM() - middleM;
                seats += here;
                sumM += here * atM;
                squaresM2 += here * atM * atM;
            }
            pass++;
        }
        return new double[] {seats, sumM, squaresM2};
    }
}
