package org.steelyard.report.grade;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.FileNames;
import org.steelyard.report.file.NumberedPages;
import org.steelyard.report.file.StagedFolder;

/** Writes exercises: blank sheets as workbooks and to print, the key with its working, and the table of loadings. */
public final class ExerciseFiles {

    /** The loadings that the figures are asked for. */
    public static final String GIVEN = "given.csv";

    /** The exercises to print. */
    public static final String PAGES = "exercises.html";

    /** The key to print. */
    public static final String KEY = "key.html";

    /** The folder of the blank sheets. */
    public static final String BLANKS = NumberedPages.BLANKS;

    private ExerciseFiles() {}

    /** The name of a folder for the exercises of a type. */
    public static String folderName(AircraftType type) {
        return "exercises-" + FileNames.plain(type.id());
    }

    /**
     * Writes all of it, or nothing.
     *
     * @param exercises exercises of one type, at least one
     * @param policy the operator's rules
     * @param measure in what CGs are asked for
     * @param to where to; made if it is not there
     * @param version version of the program
     * @throws IOException if a file cannot be written
     */
    public static void write(
            List<MadeExercise> exercises, Policy policy, CgMeasure measure, Destination to, String version)
            throws IOException {
        ExercisePages pages = new ExercisePages(exercises, policy, measure, version);
        try (StagedFolder staged = StagedFolder.at(to)) {
            GivenCsv.write(exercises, staged.file(GIVEN));
            Files.writeString(staged.file(PAGES), pages.blanks(), StandardCharsets.UTF_8);
            Files.writeString(staged.file(KEY), pages.key(), StandardCharsets.UTF_8);
            for (MadeExercise made : exercises) {
                ExerciseText text = new ExerciseText(made, policy);
                String name = text.name().toLowerCase(Locale.ROOT) + ".xlsx";
                ExerciseBook.write(text, measure, "", Map.of(), staged.file(BLANKS + "/" + name));
            }
            staged.publish(FileNames.in(to.path().resolve(BLANKS), NumberedPages.BLANK));
        }
    }

    /**
     * Writes a sheet as a student hands it in.
     *
     * @param made the exercise
     * @param policy the operator's rules
     * @param measure in what CGs are asked for
     * @param sheet the student's name and figures
     * @param file where to
     * @throws IOException if it cannot be written
     */
    public static void filled(MadeExercise made, Policy policy, CgMeasure measure, StudentSheet sheet, Path file)
            throws IOException {
        ExerciseBook.write(new ExerciseText(made, policy), measure, sheet.student(), sheet.claims(), file);
    }

    /**
     * Writes the table of loadings alone.
     *
     * @param exercises exercises of one type, at least one
     * @param file where to
     * @throws IOException if it cannot be written
     */
    public static void given(List<MadeExercise> exercises, Path file) throws IOException {
        GivenCsv.write(exercises, file);
    }
}
