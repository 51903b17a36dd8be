package org.steelyard.model.trim;

/**
 * How a trim becomes a setting in whole steps of the indicator. A trim within a millionth of a step of a whole or half
 * step is on it: decimal steps and trims are no doubles.
 */
public enum SettingRounding {
    /** To the nearest step; halfway between two, to the more nose-up one. */
    NEAREST_HALFWAY_UP("nearest-halfway-nose-up", "to the nearest step, halfway to the more nose-up one", 0.5, 0.5),
    /** To the nearest step; halfway between two, to the more nose-down one. */
    NEAREST_HALFWAY_DOWN(
            "nearest-halfway-nose-down", "to the nearest step, halfway to the more nose-down one", 0.5, 0.5),
    /** To the next step towards nose-up. */
    NOSE_UP("nose-up", "to the next step towards nose-up", 1, 0),
    /** To the next step towards nose-down. */
    NOSE_DOWN("nose-down", "to the next step towards nose-down", 0, 1);

    private static final double ON_STEP = 1e-6;

    private final String label;
    private final String words;
    private final double stepsBelow;
    private final double stepsAbove;

    SettingRounding(String label, String words, double stepsBelow, double stepsAbove) {
        this.label = label;
        this.words = words;
        this.stepsBelow = stepsBelow;
        this.stepsAbove = stepsAbove;
    }

    /**
     * The whole step of a trim.
     *
     * @param steps a trim in steps, nose-up positive
     * @return a whole number of steps
     */
    double whole(double steps) {
        return switch (this) {
            case NEAREST_HALFWAY_UP -> Math.floor(steps + stepsBelow + ON_STEP);
            case NEAREST_HALFWAY_DOWN -> Math.ceil(steps - stepsAbove - ON_STEP);
            case NOSE_UP -> Math.ceil(steps - ON_STEP);
            case NOSE_DOWN -> Math.floor(steps + ON_STEP);
        };
    }

    /**
     * How far below a whole step its trims begin.
     *
     * @return distance in steps, towards nose-down
     */
    double stepsBelow() {
        return stepsBelow;
    }

    /**
     * How far above a whole step its trims end.
     *
     * @return distance in steps, towards nose-up
     */
    double stepsAbove() {
        return stepsAbove;
    }

    /**
     * How it is called in files.
     *
     * @return lower-case words joined by hyphens
     */
    public String label() {
        return label;
    }

    /**
     * What it does, in words.
     *
     * @return a phrase that goes on from "a trim goes"
     */
    public String words() {
        return words;
    }
}
