package org.steelyard.balance;

import java.util.List;
import org.steelyard.model.unit.MassMoment;

/**
 * The aircraft's mass and moment from take-off to landing while fuel burns. Between two neighbouring points the moment
 * is a linear function of mass, so the points say everything.
 *
 * @param points from take-off to landing, mass never rising; one point if nothing burns
 */
public record FuelPath(List<MassMoment> points) {

    /**
     * Checks that there is a point.
     *
     * @throws IllegalArgumentException if there is none
     */
    public FuelPath {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a fuel path has at least one point");
        }
    }
}
