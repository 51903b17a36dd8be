package org.steelyard.run;

import java.util.Arrays;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;

/** Whoever counts rows must say what becomes of each kind, or it does not compile. */
class KindsOfRowTest {

    private static final EdgeTable EDGES = new EdgeTable(KindsOfRowTest.class);

    @AfterAll
    static void write() {
        EDGES.write();
    }

    @Test
    void eachKindHasAMethodOfItsOwn() {
        row("a row as it was read", ParsedRow.class, ParsedRow.Cases.class, 5);
        row("a row after its worker", AuditedRow.class, AuditedRow.Visitor.class, 5);
        row("a step to the counting thread", ReadStep.class, ReadStep.Visitor.class, 5);
        row("a law of trim", TrimLaw.class, TrimLaw.Cases.class, 3);
    }

    private static void row(String what, Class<?> kinds, Class<?> cases, int kindsByHand) {
        long answers = Arrays.stream(cases.getDeclaredMethods())
                .filter(method -> !method.isDefault() && !method.isSynthetic())
                .count();
        EDGES.row(
                EdgeTopic.KINDS_OF_ROW,
                what + ": kinds, and methods that whoever takes one must have",
                kindsByHand + " and " + kindsByHand,
                kinds.getPermittedSubclasses().length + " and " + answers);
    }
}
