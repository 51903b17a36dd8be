package org.steelyard.report;

import java.text.Normalizer;
import java.util.Locale;

/** Names of files from names of students. */
final class GradeNames {

    private static final int MOST = 40;

    private GradeNames() {}

    /** Number and name in letters, digits and hyphens; the number keeps it apart from others. */
    static String page(int number, int of, String student) {
        int digits = Integer.toString(of).length();
        String plain = Normalizer.normalize(student, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String cut = plain.length() > MOST ? plain.substring(0, MOST) : plain;
        return String.format(Locale.ROOT, "%0" + digits + "d%s.html", number, cut.isEmpty() ? "" : "-" + cut);
    }
}
