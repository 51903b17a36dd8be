package org.steelyard.check;

import org.steelyard.model.CabinZone;
import org.steelyard.model.SeatRows;
import org.steelyard.model.SeatingRule;

/**
 * Where the passengers of a zone may sit: the number of seats they are drawn from, their mean distance aft of the
 * zone's arm and the variance of it. At random they are drawn from all seats, with a rule from those that it fills.
 *
 * @param seats number of seats to draw from
 * @param meanM mean distance aft of the zone's arm in m
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
        SeatRows rows = zone.rows().get();
        double middleM = sums(rows, zone.seats(), zone.seats(), 0)[1] / zone.seats();
        double taken = rule == SeatingRule.RANDOM ? zone.seats() : Math.min(seated, zone.seats());
        if (taken <= 0) {
            return new SeatSpread(0, 0, 0);
        }
        double[] sums = sums(rows, zone.seats(), taken, middleM);
        double meanM = sums[1] / taken;
        return new SeatSpread(taken, meanM, Math.max(0, sums[2] / taken - meanM * meanM));
    }

    /**
     * Number, sum and sum of squares of the distances of the seats taken first: two at the windows of each row from the
     * front, then two at the aisle, then the others.
     */
    private static double[] sums(SeatRows rows, int seats, double taken, double middleM) {
        double[] sums = new double[3];
        int pass = 0;
        while (sums[0] < taken - 1e-9) {
            for (int row = 0; row < rows.rows() && sums[0] < taken; row++) {
                int inRow = seats / rows.rows() + (row < seats % rows.rows() ? 1 : 0);
                double here = Math.min(Math.max(0, Math.min(inRow - 2 * pass, 2)), taken - sums[0]);
                double atM = row * rows.pitchM() - middleM;
                sums[0] += here;
                sums[1] += here * atM;
                sums[2] += here * atM * atM;
            }
            pass++;
        }
        return sums;
    }
}
