package org.steelyard.read.propose;

import java.util.List;
import java.util.Objects;
import org.steelyard.model.input.ColumnRule;

/**
 * What a drafted heading map makes of one column.
 *
 * @param heading as it stands in the file
 * @param samples cells of the first five rows
 * @param rule what the column is taken to mean; {@code ignored} where that is in doubt
 * @param confidence how sure that is
 * @param why what it rests on, or why the column is left out, in words
 */
public record ProposedColumn(String heading, List<String> samples, ColumnRule rule, Confidence confidence, String why) {

    /** How sure the meaning of a column is. */
    public enum Confidence {
        /** Heading, unit and every cell agree. */
        SURE("sure"),
        /** A person should look at the reason. */
        LIKELY("likely"),
        /** Nothing is known of it: it is carried along as text. */
        CARRIED("carried along"),
        /** It looks like something that matters, but not surely so: it is left out until a person decides. */
        DOUBTFUL("left out");

        private final String label;

        Confidence(String label) {
            this.label = label;
        }

        /** In words. */
        public String label() {
            return label;
        }
    }

    public ProposedColumn {
        Objects.requireNonNull(heading);
        samples = List.copyOf(samples);
        Objects.requireNonNull(rule);
        Objects.requireNonNull(confidence);
        Objects.requireNonNull(why);
    }
}
