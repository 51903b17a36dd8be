package org.steelyard.model.input;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.steelyard.model.loading.Origin;

/**
 * One student's load sheet.
 *
 * @param origin where it was read
 * @param student the student's name as entered; blank if nothing stands there
 * @param exercise the exercise that it answers: the flight of the given loading
 * @param asked the figures that the sheet has room for: what has none is not asked for
 * @param claims what was entered; figures that are missing are not in it
 */
public record StudentSheet(
        Origin origin, String student, String exercise, Set<SheetItem> asked, Map<SheetItem, Claim> claims) {

    public StudentSheet {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(student);
        Objects.requireNonNull(exercise);
        EnumSet<SheetItem> room = EnumSet.noneOf(SheetItem.class);
        room.addAll(asked);
        asked = Collections.unmodifiableSet(room);
        EnumMap<SheetItem, Claim> copy = new EnumMap<>(SheetItem.class);
        copy.putAll(claims);
        claims = Collections.unmodifiableMap(copy);
    }

    /**
     * The sheet, asked for other figures.
     *
     * @param items what is asked for
     * @return with the same entries
     */
    public StudentSheet asking(Set<SheetItem> items) {
        return new StudentSheet(origin, student, exercise, items, claims);
    }
}
