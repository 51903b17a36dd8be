package org.steelyard.samples;

/** What an edge case is about; every topic has cases in the table of edge cases. */
public enum EdgeTopic {
    ON_A_LIMIT("On a limit"),
    BLANK_LOAD("Blank load cells"),
    ONE_ENVELOPE("One envelope only"),
    DENSITY("Another fuel density"),
    FUEL_IMBALANCE("Fuel imbalance while the fuel burns"),
    FUEL_REMEDY("Fuel as a remedy"),
    DRIVERS("Drivers of the spread"),
    THRUST("Trim by thrust rating"),
    LANDING_SCALE("Landing trim scale that does not reach"),
    ROUNDED_SETTING("Settings in whole steps"),
    FREIGHTER("Operational limits without passengers"),
    ROUNDED_LIMIT("Permitted and needed, rounded"),
    UNKNOWN_FLAPS("Flaps without a scale"),
    ABOVE_ENVELOPE("Above the masses of an envelope"),
    VERDICT_FIRST("Verdict beside the setting"),
    CHANCE_OF_A_CHANGE("More than chance between two seasons"),
    KINDS_OF_ROW("Kinds of row"),
    WORDS("Words that hold"),
    OUTPUTS_AGREE("Page and workbook agree"),
    EXCEEDANCES("Largest exceedances, like with like"),
    PRINTED_SCALE("Printed trim scales of exercises"),
    BLANK_SHEETS("Blank sheets that give nothing away"),
    KEY("The key to the exercises"),
    RIGHT_SHEETS("Right sheets in other writings"),
    WRITINGS("Ordinary writings of an answer"),
    SCHEME_ROUNDING("Tolerance of the marking scheme"),
    LOOSE_MATCH("Loose matches and second slips"),
    HANDED_IN_TWICE("Handed in twice"),
    WORKBOOK_PARTS("Workbooks by the standard");

    private final String title;

    EdgeTopic(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
