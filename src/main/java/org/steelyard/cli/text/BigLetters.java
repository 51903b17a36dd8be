package org.steelyard.cli.text;

import java.util.ArrayList;
import java.util.List;

/** Draws a setting five lines high, with blocks, or with plain signs where a terminal knows no others. */
public final class BigLetters {

    private static final int ROWS = 5;
    private static final String KNOWN = "0123456789.UPDN°- ";

    /** Each letter by rows, in the order of the known ones; # is ink. */
    private static final String[] SHAPES = {
        " #### /##  ##/##  ##/##  ##/ #### ",
        "  ## / ### /  ## /  ## / ####",
        " #### /##  ##/   ## / ##   /######",
        "##### /    ##/  ### /    ##/##### ",
        "   ## /  ### / ## ## /#######/   ## ",
        "######/##    /##### /    ##/##### ",
        " #### /##    /##### /##  ##/ #### ",
        "######/   ## /  ##  / ##   /##    ",
        " #### /##  ##/ #### /##  ##/ #### ",
        " #### /##  ##/ #####/    ##/ #### ",
        "  /  /  /  /##",
        "##  ##/##  ##/##  ##/##  ##/ #### ",
        "##### /##  ##/##### /##    /##    ",
        "##### /##  ##/##  ##/##  ##/##### ",
        "##   ##/###  ##/## # ##/##  ###/##   ##",
        " ## /#  #/ ## /    /    ",
        "      /      /######/      /      ",
        "   /   /   /   /   "
    };

    private BigLetters() {}

    /** The text in big letters; signs that are not known are left out. */
    public static List<String> draw(String text, boolean plain) {
        List<String> lines = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < text.length(); i++) {
                int index = KNOWN.indexOf(text.charAt(i));
                if (index >= 0) {
                    line.append(rowOf(SHAPES[index], row)).append("  ");
                }
            }
            String drawn = line.toString().stripTrailing();
            lines.add(plain ? drawn : drawn.replace('#', '█'));
        }
        return lines;
    }

    /** A row, filled up to the width of the shape. */
    private static String rowOf(String shape, int row) {
        String[] rows = shape.split("/", -1);
        int width = 0;
        for (String one : rows) {
            width = Math.max(width, one.length());
        }
        return rows[row] + " ".repeat(width - rows[row].length());
    }
}
