package org.steelyard.grade.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

/** The right trim is what is to be set, by the type's own rounding; here 0.05 UP at 25 % MAC in steps of 0.25. */
class RoundedTrimMarkTest {

    private static final MarkingScheme SCHEME =
            Plain.markingScheme("test", 60, 50, List.of(new ItemRule(SheetItem.TRIM, 2, 0, 0, 0)));

    private static Exercise exercise(SettingRounding rounding) {
        AircraftType jet = SampleJet.type();
        TrimScale scale = new TrimScale(
                Phase.TAKEOFF,
                "5",
                "",
                TrimUnit.UNITS,
                new TrimSlope(new TrimPoint(25, 0.05), -0.5, new CgRange(19, 31)),
                0.25,
                -3,
                3,
                rounding,
                TrimBasis.DOCUMENT);
        AircraftType type = Plain.aircraftType(
                jet.id(),
                jet.name(),
                jet.geometry(),
                jet.limits(),
                jet.cabin(),
                jet.holds(),
                jet.groups(),
                jet.fuel(),
                jet.envelopes(),
                List.of(scale));
        Loading plain = SampleJet.loaded().loading();
        Loading loading = Plain.loading(
                plain.origin(),
                plain.flight(),
                Plain.tail("TEST-1", type, plain.tail().basic()),
                plain.setting(),
                plain.crew(),
                plain.load(),
                plain.fuel(),
                plain.performance(),
                plain.recordedTrimUnits(),
                plain.extras());
        return Exercise.of(loading, RandomAircraft.STRICT);
    }

    @ParameterizedTest
    @CsvSource({
        "NOSE_UP, 0.25, RIGHT",
        "NOSE_UP, 0.50, WRONG",
        "NEAREST_HALFWAY_UP, 0.00, RIGHT",
        "NEAREST_HALFWAY_UP, 0.25, WRONG",
        "NOSE_DOWN, 0.00, RIGHT"
    })
    void theSettingOfTheTypesRoundingIsRight(SettingRounding rounding, double units, Outcome outcome) {
        Claim claim = new Claim.Figure(units, 0.005, CgMeasure.PERCENT_MAC, Double.toString(units));
        MarkedSheet marked = new Marker(exercise(rounding), SCHEME)
                .mark(Plain.studentSheet(new Origin("sheets.csv", "", 2), "Wren", "S1", Map.of(SheetItem.TRIM, claim)));
        assertThat(marked.items().get(0).outcome()).isEqualTo(outcome);
    }
}
