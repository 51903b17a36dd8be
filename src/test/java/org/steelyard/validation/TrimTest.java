package org.steelyard.validation;

import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.balance.LoadChange;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/** Readings of load sheets and reports: how they are shown, and which way a change of load turns the trim. */
class TrimTest extends PublishedCases {

    private static final MeanChord CHORD = new MeanChord(18, 4);
    private static final double CG_M = 19;
    private static final double SOME_KG = 60_000;

    TrimTest() {
        super("trim", 10, 1);
    }

    @Override
    void answer(Given given, Answers answers) {
        OptionalDouble trim = given.number("trimUnits");
        trim.ifPresent(units -> answers.word("shown", FindingText.trim(units, 0.1, TrimUnit.UNITS)));
        switch (given.word("do")) {
            case "show" -> {}
            case "change" -> {
                double units = trim.orElseThrow();
                TrimLaw law = new TrimSlope(new TrimPoint(CHORD.percentAt(CG_M), units), -0.5, new CgRange(0, 100));
                double cgPercentMac = CHORD.percentAt(changed(given).armM());
                answers.word(
                        "turns", turns(law.trimUnitsAt(cgPercentMac, SOME_KG).orElseThrow() - units));
            }
            case "line" -> line(given, answers);
            default -> throw new AssertionError("nothing does " + given.word("do"));
        }
    }

    private static MassMoment changed(Given given) {
        MassMoment before = MassMoment.at(SOME_KG, CG_M);
        double placeM = CG_M + given.lengthM("behindCg").orElseThrow();
        OptionalDouble removedKg = given.massKg("removed");
        return removedKg.isPresent()
                ? before.minus(MassMoment.at(removedKg.getAsDouble(), placeM))
                : LoadChange.move(before, given.massKg("moved").orElseThrow(), CG_M, placeM);
    }

    private static void line(Given given, Answers answers) {
        List<TrimPoint> points = given.list("points").stream()
                .map(point -> new TrimPoint(
                        point.number("cgPercentMac").orElseThrow(),
                        point.number("trimUnits").orElseThrow()))
                .toList();
        TrimPoints law = new TrimPoints(points);
        double fromPercentMac = law.cgRange().fromPercentMac();
        double slope = law.trimUnitsAt(fromPercentMac + 1, SOME_KG).orElseThrow()
                - law.trimUnitsAt(fromPercentMac, SOME_KG).orElseThrow();
        answers.number("slopeUnits", slope);
        answers.word("turns", turns(slope));
    }

    private static String turns(double units) {
        return units > 0 ? "nose-up" : "nose-down";
    }
}
