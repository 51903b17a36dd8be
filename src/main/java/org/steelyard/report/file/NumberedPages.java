package org.steelyard.report.file;

import java.util.regex.Pattern;

/** Folders of numbered files, of which a later run may write fewer. What is named otherwise in them is none of ours. */
public final class NumberedPages {

    /** The folder of marked sheets. */
    public static final String STUDENTS = "students";

    /** The folder of sheets to fill in. */
    public static final String BLANKS = "blank";

    public static final Pattern STUDENT = Pattern.compile("[0-9]+(-[a-z0-9-]+)?\\.html");

    public static final Pattern BLANK = Pattern.compile("x[0-9]+\\.xlsx");

    private static final Pattern ANY = Pattern.compile(STUDENTS + "/" + STUDENT + "|" + BLANKS + "/" + BLANK);

    private NumberedPages() {}

    static boolean isOne(String name) {
        return ANY.matcher(name).matches();
    }
}
