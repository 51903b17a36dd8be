package org.steelyard.validation;

import java.util.OptionalDouble;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/** Arm to % MAC and back, and the chord that known positions imply. */
class PercentMacTest extends PublishedCases {

    PercentMacTest() {
        super("percent-mac", 24, 1);
    }

    @Override
    void answer(Given given, Answers answers) {
        MeanChord chord = given.chord().orElseThrow();
        answers.length("mac", chord.lengthM());
        answers.length("lemac", chord.leadingEdgeM());
        OptionalDouble momentKgM = given.momentKgM("moment");
        OptionalDouble cgM = momentKgM.isPresent()
                ? OptionalDouble.of(new MassMoment(given.massKg("mass").orElseThrow(), momentKgM.getAsDouble()).armM())
                : given.positionM("cg");
        cgM.ifPresent(arm -> {
            answers.length("cg", arm);
            answers.number("cgPercentMac", chord.percentAt(arm));
            answers.length("behindLemac", arm - chord.leadingEdgeM());
        });
        if (answers.asks("range")) {
            double fromM = given.positionM("from").orElseThrow();
            answers.length("range", given.positionM("to").orElseThrow() - fromM);
        }
    }
}
