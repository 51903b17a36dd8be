package org.steelyard.report.html;

/** Tables of the page: in a frame that can be scrolled by touch and by key where the screen is narrow. */
public final class ScrolledTables {

    /** Stands before a heading over numbers. */
    public static final String NUMBERS = "#";

    private ScrolledTables() {}

    /**
     * Opens a table with its headings; those over numbers begin with {@code #}.
     *
     * @param look blank, or {@code stack} for rows that become blocks on a narrow screen
     */
    public static void open(Html html, String name, String look, String... headings) {
        open(html, name, look);
        for (String heading : headings) {
            boolean number = heading.startsWith(NUMBERS);
            html.open("th", "scope", "col", "class", number ? "number" : "");
            html.data(number ? heading.substring(1) : heading).close();
        }
        body(html);
    }

    /** Opens a table before its headings. */
    static void open(Html html, String name, String look) {
        html.open("div", "class", "frame " + look, "role", "region", "tabindex", "0", "aria-label", name);
        html.open("table").open("thead").open("tr");
    }

    /** Closes the headings. */
    static void body(Html html) {
        html.close().close().open("tbody").text("\n");
    }

    public static void numbers(Html html, String... numbers) {
        for (String number : numbers) {
            html.element("td", number, "class", "number");
        }
    }

    public static void close(Html html) {
        html.close().close().closeBlock();
    }
}
