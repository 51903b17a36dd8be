package org.steelyard.remedy;

import org.steelyard.remedy.Cargo.Kind;

/**
 * One thing to do.
 *
 * @param deed what is done
 * @param kind with what kind of load; {@link Kind#LOOSE} for ballast
 * @param cargo which of the flight's cargoes, -1 for ballast
 * @param amount how much, in pieces or kg
 * @param unitKg mass of a piece in kg
 * @param from place that it leaves, -1 for ballast
 * @param to place where it goes, -1 for what is left behind
 */
record RemedyStep(Deed deed, Kind kind, int cargo, double amount, double unitKg, int from, int to) {

    /** What is done with a load. */
    enum Deed {
        MOVE,
        LEAVE,
        BALLAST
    }

    double massKg() {
        return amount * unitKg;
    }

    RemedyStep withAmount(double other) {
        return new RemedyStep(deed, kind, cargo, other, unitKg, from, to);
    }
}
