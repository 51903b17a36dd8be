package org.steelyard.check.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.Quantity;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

class FindingTextTest {

    private static AircraftType inPoundsAndInches() {
        AircraftType type = SampleJet.type();
        return Plain.aircraftType(
                type.id(),
                type.name(),
                new Geometry(
                        type.geometry().chord(),
                        type.geometry().index(),
                        new DisplayUnits(MassUnit.LB, LengthUnit.IN, CgForm.ARM)),
                type.limits(),
                type.cabin(),
                type.holds(),
                type.groups(),
                type.fuel(),
                type.envelopes(),
                type.trimScales());
    }

    @Test
    void figuresAreInTheUnitsOfTheTypesUsers() {
        // chord from 16 m, 4 m long: 30 % MAC is 17.2 m = 677.17 in; 1 % MAC is 0.04 m = 1.57 in
        Finding aft =
                new Finding(FindingCode.CG_AFT, Severity.BREACH, Phase.TAKEOFF, "aft limit", Quantity.CG, 31, 30, -1);
        assertThat(FindingText.sentence(aft, inPoundsAndInches()))
                .isEqualTo("take-off CG 678.74 in is 1.58 in behind the aft limit of 677.17 in");
        assertThat(FindingText.sentence(aft, SampleJet.type()))
                .isEqualTo("take-off CG 31.00 % MAC is 1.00 % MAC behind the aft limit of 30.00 % MAC");
        Finding mass = new Finding(
                FindingCode.HOLD_MASS, Severity.BREACH, Phase.ZERO_FUEL, "hold 1", Quantity.MASS, 1100, 1000, -100);
        assertThat(FindingText.sentence(mass, inPoundsAndInches()))
                .isEqualTo("hold 1 2425 lb is 221 lb above its limit of 2205 lb");
        Finding floor = new Finding(
                FindingCode.FLOOR_AREA,
                Severity.BREACH,
                Phase.ZERO_FUEL,
                "hold 1 floor",
                Quantity.AREA_LOAD,
                500,
                400,
                -100);
        // 1 kg/m² is 0.2048 lb/ft²
        assertThat(FindingText.sentence(floor, inPoundsAndInches()))
                .isEqualTo("hold 1 floor 102.4 lb/ft² is 20.5 lb/ft² above its limit of 81.9 lb/ft²");
    }

    @ParameterizedTest
    @CsvSource({
        "0.2, 0.1, UNITS, 0.2 UP",
        "-1.1, 0.1, UNITS, 1.1 DN",
        "0, 0.1, UNITS, 0.0",
        "-0.04, 0.1, UNITS, 0.0",
        "2.25, 0.25, UNITS, 2.25 UP",
        "3, 1, UNITS, 3 UP",
        "-2.5, 0.5, DEGREES, 2.5° DN"
    })
    void trimReadsAsPilotsSayIt(double trim, double step, TrimUnit.Measure measure, String text) {
        TrimUnit unit = new TrimUnit(measure, TrimUnit.Numbering.UP_DN);
        assertThat(FindingText.trim(trim, step, unit)).isEqualTo(text);
    }
}
