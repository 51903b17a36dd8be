package org.steelyard.check.curtail;

import java.util.List;
import org.steelyard.model.limit.LimitPoint;

/**
 * A vertex of an operational limit.
 *
 * @param certified where the certified limit stands
 * @param operational where the operational limit stands at the same mass
 * @param contributions what moves it, at that mass
 * @param totalKgM the moment taken off at that mass: what is added, and the root of the sum of squares of what is by
 *     chance
 * @param takenKgM the moment by which the vertex is moved: the greatest total of the masses up to its neighbours, so
 *     that the line between vertices keeps what is taken off everywhere
 */
public record CurtailedPoint(
        LimitPoint certified,
        LimitPoint operational,
        List<Contribution> contributions,
        double totalKgM,
        double takenKgM) {

    public CurtailedPoint {
        contributions = List.copyOf(contributions);
    }
}
