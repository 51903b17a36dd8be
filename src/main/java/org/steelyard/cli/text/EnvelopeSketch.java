package org.steelyard.cli.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.MassMoment;

/**
 * The take-off envelope in characters, 80 columns wide at most: CG to the right, mass upwards, the states of the flight
 * as letters where they lie. The take-off state is the point that counts; the letters are explained below it.
 */
final class EnvelopeSketch {

    private static final int WIDTH = 60;
    private static final int HEIGHT = 15;
    private static final double MARGIN = 0.08;
    private static final int CG_MARKS = 6;
    private static final int ROWS_FOR_A_MARK = 3;
    private static final double BEYOND = 0.6;

    private final AircraftType type;
    private final Balance balance;
    private final Envelope envelope;
    private final boolean plain;
    private final char[][] grid = new char[HEIGHT][WIDTH];
    private double cgFrom = Double.POSITIVE_INFINITY;
    private double cgTo = Double.NEGATIVE_INFINITY;
    private double massFrom;
    private double massTo;

    EnvelopeSketch(AircraftType type, Balance balance, boolean plain) {
        this.type = type;
        this.balance = balance;
        this.plain = plain;
        envelope = type.envelope(Phase.TAKEOFF).orElseThrow();
        massFrom = envelope.minMassKg();
        massTo = envelope.maxMassKg();
        for (LimitLine line : List.of(envelope.forward(), envelope.aft())) {
            for (LimitPoint point : line.points()) {
                see(percent(point.armM()));
            }
        }
        reachFor(balance.takeoff());
        double cgRoom = MARGIN * (cgTo - cgFrom);
        cgFrom -= cgRoom;
        cgTo += cgRoom;
        double massRoom = MARGIN * (massTo - massFrom);
        massFrom -= massRoom;
        massTo += massRoom;
        for (char[] row : grid) {
            Arrays.fill(row, ' ');
        }
    }

    private void see(double cg) {
        cgFrom = Math.min(cgFrom, cg);
        cgTo = Math.max(cgTo, cg);
    }

    /** Makes room for the take-off state beyond the envelope, but not so much that the envelope shrinks to nothing. */
    private void reachFor(MassMoment takeoff) {
        double cg = percent(takeoff.armM());
        double reach = BEYOND * (cgTo - cgFrom);
        see(Math.max(cgFrom - reach, Math.min(cgTo + reach, cg)));
        double massReach = BEYOND * (massTo - massFrom);
        double kg = Math.max(massFrom - massReach, Math.min(massTo + massReach, takeoff.massKg()));
        massFrom = Math.min(massFrom, kg);
        massTo = Math.max(massTo, kg);
    }

    private double percent(double armM) {
        return type.geometry().chord().percentAt(armM);
    }

    List<String> lines() {
        edges();
        caps(envelope.minMassKg());
        caps(envelope.maxMassKg());
        state(Phase.ZERO_FUEL, 'z');
        state(Phase.LANDING, 'l');
        state(Phase.TAKEOFF, plain ? 'X' : '●');
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "  %s", "mass, " + units().mass().symbol()));
        for (int row = 0; row < HEIGHT; row++) {
            String label = massMark(row);
            lines.add(String.format(
                    Locale.ROOT, "%10s %s%s", label, plain ? "|" : "│", new String(grid[row]).stripTrailing()));
        }
        lines.add(" ".repeat(11) + (plain ? "+" : "└") + (plain ? "-" : "─").repeat(WIDTH));
        lines.add(" ".repeat(12) + marks());
        lines.add(" ".repeat(12) + legend());
        return lines;
    }

    /** Both limits, row by row; where a limit moves far between rows the step is filled. */
    private void edges() {
        for (LimitLine line : List.of(envelope.forward(), envelope.aft())) {
            int before = -1;
            for (int row = HEIGHT - 1; row >= 0; row--) {
                double massKg = massAt(row);
                if (envelope.reaches(massKg)) {
                    int column = column(percent(line.armAtM(massKg)));
                    put(row, column, plain ? '#' : '▒');
                    fill(row, before, column);
                    before = column;
                } else {
                    before = -1;
                }
            }
        }
    }

    private void fill(int row, int before, int column) {
        for (int i = Math.min(before, column) + 1; before >= 0 && i < Math.max(before, column); i++) {
            put(row, i, plain ? '#' : '▒');
        }
    }

    /** The lowest and the highest mass. */
    private void caps(double massKg) {
        int row = row(massKg);
        int from = column(percent(envelope.forward().armAtM(massKg)));
        int to = column(percent(envelope.aft().armAtM(massKg)));
        for (int i = from; i <= to; i++) {
            put(row, i, plain ? '#' : '▒');
        }
    }

    private void state(Phase phase, char letter) {
        Optional<MassMoment> state = balance.state(phase);
        state.ifPresent(at -> put(
                Math.max(0, Math.min(HEIGHT - 1, row(at.massKg()))),
                Math.max(0, Math.min(WIDTH - 1, column(percent(at.armM())))),
                letter));
    }

    private void put(int row, int column, char sign) {
        if (row >= 0 && row < HEIGHT && column >= 0 && column < WIDTH) {
            grid[row][column] = sign;
        }
    }

    private double massAt(int row) {
        return massTo - (row + 0.5) / HEIGHT * (massTo - massFrom);
    }

    private int row(double massKg) {
        return (int) Math.floor((massTo - massKg) / (massTo - massFrom) * HEIGHT);
    }

    private int column(double cg) {
        return (int) Math.floor((cg - cgFrom) / (cgTo - cgFrom) * WIDTH);
    }

    private DisplayUnits units() {
        return type.geometry().units();
    }

    /** A round mass, if one lies in the row. */
    private String massMark(int row) {
        double from = units().mass().fromKg(massTo - (row + 1.0) / HEIGHT * (massTo - massFrom));
        double to = units().mass().fromKg(massTo - row / (double) HEIGHT * (massTo - massFrom));
        double step = round((to - from) * ROWS_FOR_A_MARK);
        double mark = Math.floor(to / step) * step;
        return mark > from ? String.format(Locale.ROOT, step < 1 ? "%,.1f" : "%,.0f", mark) : "";
    }

    private String marks() {
        StringBuilder marks = new StringBuilder();
        double from = shownCg(cgFrom);
        double to = shownCg(cgTo);
        double step = round((to - from) / CG_MARKS);
        for (double mark = Math.ceil(from / step) * step; mark <= to; mark += step) {
            int column = (int) Math.floor((mark - from) / (to - from) * WIDTH);
            String text = String.format(Locale.ROOT, step < 0.1 ? "%.2f" : step < 1 ? "%.1f" : "%.0f", mark);
            if (column >= marks.length() && column + text.length() + cgUnit().length() < WIDTH) {
                marks.append(" ".repeat(column - marks.length())).append(text).append(' ');
            }
        }
        return marks + " " + cgUnit();
    }

    /** The nearest of 1, 2 and 5 times a power of ten. */
    private static double round(double rough) {
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double digit = rough / power;
        return power * (digit < 1.5 ? 1 : digit < 3.5 ? 2 : digit < 7.5 ? 5 : 10);
    }

    private double shownCg(double cg) {
        return units().cg() == CgForm.ARM
                ? units().length().fromM(type.geometry().chord().armAt(cg))
                : cg;
    }

    private String cgUnit() {
        return units().cg() == CgForm.ARM ? units().length().symbol() : "% MAC";
    }

    private String legend() {
        String legend = (plain ? "X" : "●") + " take-off";
        if (balance.zeroFuel().isPresent()) {
            legend += "   z zero fuel";
        }
        return balance.landing().isPresent() ? legend + "   l landing" : legend;
    }
}
