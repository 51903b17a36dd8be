package org.steelyard.report.grade;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.FileNames;
import org.steelyard.report.file.NumberedPages;
import org.steelyard.report.file.StagedFolder;

/** Writes what marking gives: {@code grades.xlsx}, {@code grades.csv}, and a page for each student. */
public final class GradeReports {

    /** Name of the workbook. */
    public static final String BOOK = "grades.xlsx";

    /** Name of the table. */
    public static final String TABLE = "grades.csv";

    /** The folder of the students' pages. */
    public static final String STUDENTS = NumberedPages.STUDENTS;

    private GradeReports() {}

    /**
     * Writes all of it, or nothing.
     *
     * @param sheets marked sheets, in the order in which they were read
     * @param problems what could not be used
     * @param scheme how they were marked
     * @param to where to; made if it is not there
     * @param version version of the program
     * @throws IOException if one cannot be written
     */
    public static void write(
            List<MarkedSheet> sheets, List<InputProblem> problems, MarkingScheme scheme, Destination to, String version)
            throws IOException {
        String name = String.valueOf(to.path().toAbsolutePath().normalize().getFileName());
        try (StagedFolder staged = StagedFolder.at(to)) {
            GradeBook.write(sheets, problems, scheme, name, staged.file(BOOK));
            GradeCsv.write(sheets, scheme, staged.file(TABLE));
            int number = 0;
            for (MarkedSheet sheet : sheets) {
                number++;
                String page =
                        GradeNames.page(number, sheets.size(), sheet.sheet().student());
                Files.writeString(
                        staged.file(STUDENTS + "/" + page),
                        GradePage.of(sheet, scheme.name(), version),
                        StandardCharsets.UTF_8);
            }
            staged.publish(FileNames.in(to.path().resolve(STUDENTS), NumberedPages.STUDENT));
        }
    }
}
