package org.steelyard.validation;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.type.ScaleReading;
import org.steelyard.model.type.WeighingRecord;
import org.steelyard.model.unit.MassMoment;

/** Basic mass and CG from scale readings, along the aircraft and across it. */
class WeighingTest extends PublishedCases {

    WeighingTest() {
        super("weighing", 14, 0);
    }

    @Override
    void answer(Given given, Answers answers) {
        List<ScaleReading> readings = new ArrayList<>();
        for (Given reading : given.list("readings")) {
            readings.add(new ScaleReading(
                    reading.word("place"),
                    reading.massKg("reading").orElseThrow(),
                    reading.massKg("tare", 0),
                    reading.lengthM("arm").orElseThrow()));
        }
        MassMoment basic = new WeighingRecord(readings, List.of()).basic();
        answers.mass("mass", basic.massKg());
        answers.length("cg", basic.armM());
        given.chord().ifPresent(chord -> {
            answers.number("cgPercentMac", chord.percentAt(basic.armM()));
            answers.number("slopePercentMac", chord.percentAt(swapped(readings)) - chord.percentAt(basic.armM()));
        });
    }

    /** The CG if the second point carried what the first does. */
    private static double swapped(List<ScaleReading> readings) {
        ScaleReading first = readings.get(0);
        ScaleReading second = readings.get(1);
        return new WeighingRecord(
                        List.of(
                                new ScaleReading(first.place(), second.readingKg(), 0, first.armM()),
                                new ScaleReading(second.place(), first.readingKg(), 0, second.armM())),
                        List.of())
                .basic()
                .armM();
    }
}
