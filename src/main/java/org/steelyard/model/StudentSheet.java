package org.steelyard.model;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * One student's load sheet.
 *
 * @param origin where it was read
 * @param student the student's name as entered; blank if nothing stands there
 * @param exercise the exercise that it answers: the flight of the given loading
 * @param claims what was entered; figures that are missing are not in it
 */
public record StudentSheet(Origin origin, String student, String exercise, Map<SheetItem, Claim> claims) {

    /** Copies the claims. */
    public StudentSheet {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(student);
        Objects.requireNonNull(exercise);
        EnumMap<SheetItem, Claim> copy = new EnumMap<>(SheetItem.class);
        copy.putAll(claims);
        claims = Collections.unmodifiableMap(copy);
    }
}
