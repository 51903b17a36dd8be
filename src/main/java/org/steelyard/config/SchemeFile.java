package org.steelyard.config;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.MassScheme;

/** Reads {@code standard-masses.yaml}: schemes of standard masses, each with its source. */
final class SchemeFile {

    private SchemeFile() {}

    static List<MassScheme> read(Keys keys) {
        keys.names("scheme", "schemes", "id");
        List<MassScheme> schemes = keys.each("schemes", SchemeFile::scheme);
        keys.make(() -> schemes);
        return schemes;
    }

    private static Optional<MassScheme> scheme(Keys keys) {
        String id = keys.text("id");
        String source = keys.text("source");
        double maleKg = keys.number("male", Measure.MASS);
        double femaleKg = keys.number("female", Measure.MASS);
        double adultKg = keys.number("adult", Measure.MASS);
        double childKg = keys.number("child", Measure.MASS);
        double infantKg = keys.number("infant", Measure.MASS_OR_NONE);
        double bagKg = keys.number("bag", Measure.MASS);
        double flightCrewKg = keys.number("flight-crew", Measure.MASS);
        double cabinCrewKg = keys.number("cabin-crew", Measure.MASS);
        return keys.make(() -> new MassScheme(
                id, source, maleKg, femaleKg, adultKg, childKg, infantKg, bagKg, flightCrewKg, cabinCrewKg));
    }
}
