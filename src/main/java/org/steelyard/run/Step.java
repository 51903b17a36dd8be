package org.steelyard.run;

import java.util.List;
import org.steelyard.model.InputProblem;
import org.steelyard.read.SeasonFolder.Skipped;

/** What passes from the reading thread and the workers to the collector, in the order of the input. */
sealed interface Step {

    /** A file begins. */
    record FileBegins(String name, String sha256, long bytes, int number) implements Step {}

    /** Rows of the file that began last. */
    record Rows(List<AuditedRow> rows) implements Step {}

    /** The file ends. */
    record FileEnds(String mapName, List<String> notes, List<Skipped> skipped, List<InputProblem> problems)
            implements Step {}

    /** There are no more files. */
    record End() implements Step {}

    /** Reading failed for a reason that is not the input's. */
    record Failed(Throwable cause) implements Step {}
}
