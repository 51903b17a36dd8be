package org.steelyard.config.type;

import java.util.List;
import java.util.Optional;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.type.MassScheme;

/** Reads {@code standard-masses.yaml}: schemes of standard masses, each with its source. */
public final class SchemeFile {

    private SchemeFile() {}

    public static List<MassScheme> read(Keys keys) {
        keys.names("scheme", "schemes", "id");
        List<MassScheme> schemes = keys.each("schemes", SchemeFile::scheme);
        keys.make(() -> schemes);
        return schemes;
    }

    private static Optional<MassScheme> scheme(Keys keys) {
        String id = keys.text("id");
        String source = keys.text("source");
        double maleKg = keys.number("male", WrittenNumber.MASS);
        double femaleKg = keys.number("female", WrittenNumber.MASS);
        double adultKg = keys.number("adult", WrittenNumber.MASS);
        double childKg = keys.number("child", WrittenNumber.MASS);
        double infantKg = keys.number("infant", WrittenNumber.MASS_OR_NONE);
        double bagKg = keys.number("bag", WrittenNumber.MASS);
        double flightCrewKg = keys.number("flight-crew", WrittenNumber.MASS);
        double cabinCrewKg = keys.number("cabin-crew", WrittenNumber.MASS);
        return keys.make(() -> new MassScheme(
                id, source, maleKg, femaleKg, adultKg, childKg, infantKg, bagKg, flightCrewKg, cabinCrewKg));
    }
}
