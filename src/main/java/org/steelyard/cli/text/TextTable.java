package org.steelyard.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.unit.OneLine;

/** A table in plain text: columns as wide as they must be, the last one cut at the width of the page. */
public final class TextTable {

    private static final String GAP = "  ";
    private static final String CUT = "…";

    private final int width;
    private final List<List<String>> rows = new ArrayList<>();
    private final boolean[] right;

    /** Names of columns; one that begins with # holds numbers, which stand to the right. */
    public TextTable(int width, String... headings) {
        this.width = width;
        this.right = new boolean[headings.length];
        List<String> names = new ArrayList<>();
        for (int i = 0; i < headings.length; i++) {
            right[i] = headings[i].startsWith("#");
            names.add(right[i] ? headings[i].substring(1) : headings[i]);
        }
        rows.add(names);
    }

    public TextTable row(String... cells) {
        return row(List.of(cells));
    }

    public TextTable row(List<String> cells) {
        if (cells.size() != right.length) {
            throw new IllegalArgumentException("a row has " + right.length + " cells, not " + cells.size());
        }
        rows.add(cells.stream().map(OneLine::whole).toList());
        return this;
    }

    boolean isEmpty() {
        return rows.size() == 1;
    }

    /** The lines, each with an indent. */
    public List<String> lines(String indent) {
        int[] widths = new int[right.length];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(
                        widths[i], row.get(i).codePointCount(0, row.get(i).length()));
            }
        }
        return rows.stream().map(row -> line(indent, row, widths)).toList();
    }

    /** A text in lines of at most a width, all with an indent and those after the first with more of it. */
    public static List<String> wrapped(String text, String indent, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(indent);
        boolean begun = false;
        for (String word : OneLine.whole(text).split(" ", -1)) {
            if (begun && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(indent).append(GAP);
                begun = false;
            }
            line.append(begun ? " " : "").append(word);
            begun = true;
        }
        lines.add(line.toString());
        return lines;
    }

    private String line(String indent, List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder(indent);
        for (int i = 0; i < widths.length; i++) {
            String cell = row.get(i);
            String fill = " ".repeat(widths[i] - cell.codePointCount(0, cell.length()));
            line.append(i == 0 ? "" : GAP).append(right[i] ? fill + cell : cell + fill);
        }
        String text = line.toString().stripTrailing();
        int length = text.codePointCount(0, text.length());
        return length <= width ? text : text.substring(0, text.offsetByCodePoints(0, width - 1)) + CUT;
    }
}
