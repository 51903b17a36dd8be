package org.steelyard.report;

import java.util.Locale;
import java.util.regex.Pattern;

/** Names of files from names of students. */
final class GradeNames {

    /** What such names look like: nothing else in the folder is ours. */
    static final Pattern PAGE = Pattern.compile("[0-9]+(-[a-z0-9-]+)?\\.html");

    private GradeNames() {}

    /** Number and name in letters, digits and hyphens; the number keeps it apart from others. */
    static String page(int number, int of, String student) {
        int digits = Integer.toString(of).length();
        String plain = FileNames.plain(student);
        return String.format(Locale.ROOT, "%0" + digits + "d%s.html", number, plain.isEmpty() ? "" : "-" + plain);
    }
}
