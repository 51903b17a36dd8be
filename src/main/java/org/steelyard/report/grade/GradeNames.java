package org.steelyard.report.grade;

import java.util.Locale;
import org.steelyard.report.file.FileNames;

/** Names of files from names of students. */
final class GradeNames {

    private GradeNames() {}

    /** Number and name in letters, digits and hyphens; the number keeps it apart from others. */
    static String page(int number, int of, String student) {
        int digits = Integer.toString(of).length();
        String plain = FileNames.plain(student);
        return String.format(Locale.ROOT, "%0" + digits + "d%s.html", number, plain.isEmpty() ? "" : "-" + plain);
    }
}
