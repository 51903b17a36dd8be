package org.steelyard.remedy;

import org.steelyard.remedy.Cargo.Kind;

/**
 * One thing to do.
 *
 * @param action what is done
 * @param kind with what kind of load; {@link Kind#LOOSE} for ballast
 * @param cargo which of the flight's cargoes, -1 for ballast
 * @param amount how much, in pieces or kg
 * @param unitKg mass of a piece in kg
 * @param from place that it leaves, -1 for ballast
 * @param to place where it goes, -1 for what is left behind
 */
record RemedyStep(Action action, Kind kind, int cargo, double amount, double unitKg, int from, int to) {

    /** What is done with a load. */
    enum Action {
        MOVE,
        LEAVE,
        BALLAST
    }

    double massKg() {
        return amount * unitKg;
    }

    RemedyStep withAmount(double other) {
        return new RemedyStep(action, kind, cargo, other, unitKg, from, to);
    }
}
