package org.steelyard.model.input;

import java.util.Optional;

/**
 * The words by which a filled-in sheet is read back: the labels stand on the blank sheet, and a figure is found by its
 * label and the heading above it, wherever rows and columns have gone.
 */
public final class SheetForm {

    /** Beside it stands the student's name. */
    public static final String STUDENT = "Student";
    /** Beside it stands the name of the exercise. */
    public static final String EXERCISE = "Exercise";
    /** Heading over the labels of the figures. */
    public static final String ASKED = "Figure";
    /** Heading over the figures. */
    public static final String FIGURE = "Your figure";
    /** Heading over the units. */
    public static final String UNIT = "Unit";

    private SheetForm() {}

    /**
     * The label of an item.
     *
     * @param item the item
     * @return its name, with a capital
     */
    public static String label(SheetItem item) {
        return Character.toUpperCase(item.label().charAt(0)) + item.label().substring(1);
    }

    /**
     * The item of a label.
     *
     * @param label words of a sheet, without blanks around them
     * @return its item, in capitals or not; empty if it is none
     */
    public static Optional<SheetItem> item(String label) {
        return SheetItem.ALL.stream()
                .filter(item -> label(item).equalsIgnoreCase(label))
                .findFirst();
    }
}
