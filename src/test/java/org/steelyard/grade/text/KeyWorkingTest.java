package org.steelyard.grade.text;

import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** The sample jet takes off with 53,200 kg at 25 % MAC, between limits of 20 and 30 % MAC. */
class KeyWorkingTest {

    private static final EdgeTable EDGES = new EdgeTable(KeyWorkingTest.class);
    private static final double TAKEOFF_KG = 53_200;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    /** The sample's loading with a basic mass so placed that it takes off at a CG. */
    private static Exercise takingOffAt(double cgPercentMac) {
        Loading loading = SampleJet.loaded().loading();
        double chordM = loading.type().geometry().chord().lengthM();
        MassMoment basic = loading.tail().basic();
        MassMoment moved =
                new MassMoment(basic.massKg(), basic.momentKgM() + TAKEOFF_KG * chordM * (cgPercentMac - 25) / 100);
        Tail tail = new Tail(loading.tail().registration(), loading.type(), moved, Optional.empty());
        return Exercise.of(loading.with(tail), Plain.policy(1, 0.5, 2, 0.2, SharingRule.BY_CAPACITY));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "25; 5.00 % MAC behind the forward limit, 5.00 % MAC ahead of the aft limit",
                "30.23; 10.23 % MAC behind the forward limit, 0.23 % MAC behind the aft limit",
                "19.5; 0.50 % MAC ahead of the forward limit, 10.50 % MAC ahead of the aft limit",
            })
    void aMarginSaysOnWhichSideOfItsLimitTheCgIs(double cgPercentMac, String expected) {
        String line = KeyWorking.of(takingOffAt(cgPercentMac)).stream()
                .flatMap(step -> step.lines().stream())
                .filter(one -> one.startsWith("take-off  ") && one.contains("limit"))
                .findFirst()
                .orElseThrow();
        EDGES.row(
                EdgeTopic.KEY,
                "take-off at " + cgPercentMac + " % MAC, limits 20 and 30: the key's margins",
                expected,
                line.replaceFirst("^take-off +", ""));
    }
}
