package org.steelyard.run;

import java.io.IOException;
import java.util.List;
import org.steelyard.model.input.InputProblem;
import org.steelyard.read.table.SeasonFolder.Skipped;

/** What passes from the reading thread and the workers to the collector, in the order of the input. */
sealed interface ReadStep {

    /** Hands the step to the visitor's method for its kind. */
    void to(Visitor visitor) throws IOException;

    /** One method for each kind of step, so that none can be passed over. */
    interface Visitor {

        void take(FileBegins begins);

        void take(Rows rows) throws IOException;

        void take(FileEnds ends);

        void take(End end);

        void take(Failed failed) throws IOException;
    }

    /** A file begins. */
    record FileBegins(String name, String sha256, long bytes, int number) implements ReadStep {

        @Override
        public void to(Visitor visitor) {
            visitor.take(this);
        }
    }

    /** Rows of the file that began last. */
    record Rows(List<AuditedRow> rows) implements ReadStep {

        @Override
        public void to(Visitor visitor) throws IOException {
            visitor.take(this);
        }
    }

    /** The file ends. */
    record FileEnds(String mapName, List<String> notes, List<Skipped> skipped, List<InputProblem> problems)
            implements ReadStep {

        @Override
        public void to(Visitor visitor) {
            visitor.take(this);
        }
    }

    /** There are no more files. */
    record End() implements ReadStep {

        @Override
        public void to(Visitor visitor) {
            visitor.take(this);
        }
    }

    /** Reading failed for a reason that is not the input's. */
    record Failed(Throwable cause) implements ReadStep {

        @Override
        public void to(Visitor visitor) throws IOException {
            visitor.take(this);
        }
    }
}
