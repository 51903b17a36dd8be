package org.steelyard.balance;

import org.steelyard.model.unit.MassMoment;

/**
 * What a change of load does to the centre of gravity, and which change brings it where it is wanted. All of it is the
 * law of the lever (FAA-H-8083-1, chapters 2 and 5): with the aircraft's mass M and arm A, an item's mass m and arm a,
 * and the wanted arm W, all arms in m from the datum and positive aft,
 *
 * <ul>
 *   <li>moved from a1 to a2, the new arm is {@code A + m (a2 - a1) / M};
 *   <li>the mass to move is {@code m = M (W - A) / (a2 - a1)};
 *   <li>the mass to add at a is {@code m = M (W - A) / (a - W)}, negative where it must come off;
 *   <li>the arm for a mass to add is {@code a = W + M (W - A) / m}.
 * </ul>
 *
 * <p>Adding and removing alone are {@link MassMoment#plus} and {@link MassMoment#minus}. Lateral changes are the same
 * with distances from the plane of symmetry.
 */
public final class LoadChange {

    private LoadChange() {}

    /**
     * Moves an item.
     *
     * @param state the aircraft, item included
     * @param massKg mass of the item in kg
     * @param fromM arm where it lies, in m from the datum
     * @param toM arm where it goes, in m from the datum
     * @return the same mass with the moment after the move
     */
    public static MassMoment move(MassMoment state, double massKg, double fromM, double toM) {
        return state.plus(new MassMoment(0, massKg * (toM - fromM)));
    }

    /**
     * The mass that must move for a wanted CG.
     *
     * @param state the aircraft
     * @param wantedM wanted arm of its CG in m from the datum
     * @param fromM arm where the load lies, in m from the datum
     * @param toM arm where it may go, in m from the datum
     * @return mass in kg; negative where the load must go the other way
     * @throws IllegalArgumentException if the two places are at one arm
     */
    public static double massToMoveKg(MassMoment state, double wantedM, double fromM, double toM) {
        if (fromM == toM) {
            throw new IllegalArgumentException("moving a load to the same arm, " + toM + " m, does not move the CG");
        }
        return lackKgM(state, wantedM) / (toM - fromM);
    }

    /**
     * The mass to add at a place for a wanted CG: ballast, or with a limit as the wanted arm the largest load that the
     * place may still take.
     *
     * @param state the aircraft without it
     * @param wantedM wanted arm of the CG in m from the datum
     * @param atM arm of the place in m from the datum
     * @return mass in kg; negative where so much must come off there instead
     * @throws IllegalArgumentException if the place is at the wanted arm, where no mass is enough
     */
    public static double massToAddKg(MassMoment state, double wantedM, double atM) {
        if (atM == wantedM) {
            throw new IllegalArgumentException("a load at " + atM + " m never brings the CG there");
        }
        return lackKgM(state, wantedM) / (atM - wantedM);
    }

    /**
     * The arm at which a mass must be added for a wanted CG.
     *
     * @param state the aircraft without it
     * @param wantedM wanted arm of the CG in m from the datum
     * @param massKg mass to add in kg, not zero; negative for a load taken off
     * @return arm in m from the datum
     * @throws IllegalArgumentException if the mass is zero
     */
    public static double armToAddAtM(MassMoment state, double wantedM, double massKg) {
        if (massKg == 0) {
            throw new IllegalArgumentException("a mass of zero does not move the CG");
        }
        return wantedM + lackKgM(state, wantedM) / massKg;
    }

    /** The moment that the state lacks for a CG at the wanted arm. */
    private static double lackKgM(MassMoment state, double wantedM) {
        return state.massKg() * wantedM - state.momentKgM();
    }
}
