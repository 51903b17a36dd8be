package org.steelyard.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Load;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/** Limits between two masses, straight in arm, % MAC or moment, and the verdict on a CG beside them. */
class EnvelopesTest extends PublishedCases {

    /** Where only % MAC is given, any chord will do. */
    private static final MeanChord CHORD = new MeanChord(10, 4);

    private static final IndexFormula INDEX = new IndexFormula(11, 1000, 40);
    private static final double SOME_KG = 50_000;

    EnvelopesTest() {
        super("envelopes", 22, 1);
    }

    @Override
    void answer(Given given, Answers answers) {
        Side side = given.word("side").equals("aft") ? Side.AFT : Side.FORWARD;
        if (answers.asks("status")) {
            answers.word("status", status(given, side));
            return;
        }
        Straightness straight = given.word("straight").equals("moment") ? Straightness.MOMENT : Straightness.ARM;
        List<LimitPoint> vertices = new ArrayList<>();
        for (Given vertex : given.list("vertices")) {
            vertices.add(new LimitPoint(vertex.massKg("mass").orElseThrow(), armM(vertex, "arm", "percentMac")));
        }
        double massKg = given.massKg("at").orElseThrow();
        double limitM = new LimitLine(side, straight, vertices).armAtM(massKg);
        answers.length("limit", limitM);
        answers.number("limitPercentMac", CHORD.percentAt(limitM));
        answers.length("aheadOfArmLine", new LimitLine(side, Straightness.ARM, vertices).armAtM(massKg) - limitM);
    }

    private static double armM(Given given, String arm, String percent) {
        OptionalDouble percentMac = given.number(percent);
        return percentMac.isPresent()
                ? CHORD.armAt(percentMac.getAsDouble())
                : given.lengthM(arm).orElseThrow();
    }

    private static String status(Given given, Side side) {
        double limitM = armM(given, "limit");
        OptionalDouble beside = OptionalDouble.of(limitM);
        OptionalDouble none = OptionalDouble.empty();
        return new PlainAircraft()
                .chord(CHORD)
                .marginal(given.number("marginalPercentMac").orElse(0))
                .envelope(side == Side.FORWARD ? beside : none, side == Side.AFT ? beside : none)
                .state(new Load.TakeoffGiven(MassMoment.at(SOME_KG, armM(given, "cg"))))
                .assessment()
                .status()
                .label();
    }

    private static double armM(Given given, String stem) {
        OptionalDouble index = given.number(stem + "Index");
        return index.isPresent()
                ? INDEX.at(SOME_KG, index.getAsDouble()).armM()
                : CHORD.armAt(given.number(stem + "PercentMac").orElseThrow());
    }
}
