package org.steelyard.read.sheet;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Loading;

/**
 * What was read for marking.
 *
 * @param sheets sheets in the order of files and rows
 * @param problems rows and files that could not be used, and figures that are none
 */
public record GradeInput(List<GivenSheet> sheets, List<InputProblem> problems) {

    /**
     * A sheet, and the loading if it stands beside it.
     *
     * @param sheet the student's figures
     * @param loading the given loading; empty where the sheet names an exercise only
     */
    public record GivenSheet(StudentSheet sheet, Optional<Loading> loading) {}

    public GradeInput {
        sheets = List.copyOf(sheets);
        problems = List.copyOf(problems);
    }
}
