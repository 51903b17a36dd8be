package org.steelyard.validation;

import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.model.unit.VolumeUnit;

/** Conversions of mass, length, moment and volume, and fuel by volume and density. */
class ConversionsTest extends PublishedCases {

    ConversionsTest() {
        super("units", 16, 0);
    }

    @Override
    void answer(Given given, Answers answers) {
        OptionalDouble density = given.densityKgPerL();
        OptionalDouble massKg = given.massKg("mass");
        massKg.ifPresent(kg -> answers.mass("mass", kg));
        given.massKg("volume").ifPresent(kg -> answers.mass("mass", kg));
        given.volumeL("volume").ifPresent(litres -> answers.inside(Dimension.VOLUME, "volume", litres));
        if (massKg.isPresent() && density.isPresent()) {
            answers.inside(
                    Dimension.VOLUME, "volume", VolumeUnit.L.fromKg(massKg.getAsDouble(), density.getAsDouble()));
        }
        List.of("body", "hand", "change", "male", "female", "bag", "business", "economy", "empty", "front")
                .forEach(stem -> given.massKg(stem).ifPresent(kg -> answers.mass(stem, kg)));
        List.of("maleSummer", "femaleSummer")
                .forEach(stem -> given.massKg(stem).ifPresent(kg -> answers.mass(stem, kg)));
        List.of("a", "b", "c").forEach(stem -> given.lengthM(stem).ifPresent(m -> answers.length(stem, m)));
        given.momentKgM("emptyMoment").ifPresent(kgM -> answers.moment("emptyMoment", kgM));
    }
}
