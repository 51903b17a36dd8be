package org.steelyard.samples;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.type.SeatRow;

/** Row tables for tests. */
public final class Rows {

    private Rows() {}

    /**
     * Rows at one pitch about an arm, the first ones having a seat more where they do not come out even.
     *
     * @param count number of rows
     * @param pitchM from row to row in m
     * @param seats seats together
     * @param middleM arm of the middle between the first and the last row in m
     * @return the rows from front to back
     */
    public static List<SeatRow> of(int count, double pitchM, int seats, double middleM) {
        List<SeatRow> rows = new ArrayList<>();
        for (int row = 0; row < count; row++) {
            double armM = middleM + (row - (count - 1) / 2.0) * pitchM;
            rows.add(new SeatRow(Integer.toString(row + 1), armM, seats / count + (row < seats % count ? 1 : 0)));
        }
        return rows;
    }
}
