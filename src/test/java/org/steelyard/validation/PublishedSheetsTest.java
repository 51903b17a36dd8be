package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.steelyard.grade.mark.Diagnosis;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.grade.mark.Marker;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.samples.Plain;

/**
 * Published worked examples handed in as load sheets: what is printed is entered as it is printed, and must get every
 * point, without tolerance but for the rounding of the print itself. The sources stand in the files of cases.
 */
@Tag("validation")
class PublishedSheetsTest {

    private static final Policy POLICY = Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);

    /** Names of printed figures and the items that they are, with the factor to SI. */
    private static final Map<String, SheetItem> MASSES = Map.of(
            "zeroFuel", SheetItem.ZERO_FUEL_MASS,
            "takeoff", SheetItem.TAKEOFF_MASS,
            "landing", SheetItem.LANDING_MASS,
            "maxTakeoff", SheetItem.LIMITING_MASS,
            "allowed", SheetItem.TRAFFIC_LOAD,
            "underload", SheetItem.UNDERLOAD);

    private static final Map<String, SheetItem> CGS = Map.of(
            "zeroFuel", SheetItem.ZERO_FUEL_CG,
            "takeoff", SheetItem.TAKEOFF_CG,
            "landing", SheetItem.LANDING_CG);

    /** No tolerance but half of the last place in print. */
    private static MarkingScheme scheme(Map<SheetItem, Claim> claims, MeanChord chord) {
        List<ItemRule> rules = claims.entrySet().stream()
                .map(entry -> {
                    Claim.Figure figure = (Claim.Figure) entry.getValue();
                    boolean arm = entry.getKey().kind() == SheetItem.Kind.CG && figure.measure() == CgMeasure.ARM;
                    double perUnit = arm ? chord.lengthM() / 100 : 1;
                    return new ItemRule(entry.getKey(), 1, 0, 0, figure.halfStep() / perUnit);
                })
                .toList();
        return Plain.markingScheme("published", 100, 0, rules);
    }

    private static Map<SheetItem, Claim> claims(PublishedCase one) {
        Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
        one.expected()
                .properties()
                .forEach(field -> claim(field.getKey(), field.getValue().asText(), claims));
        return claims;
    }

    private static void claim(String name, String printed, Map<SheetItem, Claim> claims) {
        for (Entry<String, SheetItem> entry : MASSES.entrySet()) {
            put(name, printed, entry.getKey() + "Kg", 1, CgMeasure.ARM, entry.getValue(), claims);
            put(name, printed, entry.getKey() + "Lb", MassUnit.LB.toKg(1), CgMeasure.ARM, entry.getValue(), claims);
        }
        for (Entry<String, SheetItem> entry : CGS.entrySet()) {
            put(name, printed, entry.getKey() + "PercentMac", 1, CgMeasure.PERCENT_MAC, entry.getValue(), claims);
            put(name, printed, entry.getKey() + "CgIn", LengthUnit.IN.toM(1), CgMeasure.ARM, entry.getValue(), claims);
        }
    }

    private static void put(
            String name,
            String printed,
            String wanted,
            double factor,
            CgMeasure measure,
            SheetItem item,
            Map<SheetItem, Claim> claims) {
        if (name.equals(wanted)) {
            BigDecimal value = new BigDecimal(printed);
            double half = 0.5 * Math.pow(10, -value.scale()) * factor;
            claims.put(item, new Claim.Figure(value.doubleValue() * factor, half, measure, printed));
        }
    }

    @TestFactory
    Stream<DynamicTest> aPrintedLoadingGetsEveryPoint() {
        return PublishedCase.read("transport-loadings").stream()
                .filter(one -> !claims(one).isEmpty())
                .map(one -> DynamicTest.dynamicTest(
                        one.id() + " " + one.what(),
                        () -> requireFull(one, TransportLoadingsTest.aircraft(new Given(one.given())))));
    }

    @TestFactory
    Stream<DynamicTest> printedLimitsGetEveryPoint() {
        return PublishedCase.read("limiting-masses").stream()
                .filter(PublishedSheetsTest::isForwards)
                .map(one -> DynamicTest.dynamicTest(
                        one.id() + " " + one.what(),
                        () -> requireFull(one, LimitingMassesTest.aircraft(new Given(one.given()), new Answers(one)))));
    }

    /** Worked forwards from a basic or dry operating mass to what is allowed. */
    private static boolean isForwards(PublishedCase one) {
        String given = one.given().toString();
        return one.reasonNotRun().isEmpty()
                && !given.contains("\"allowed")
                && !given.contains("\"takeoffKg")
                && !given.contains("\"takeoffLb")
                && (given.contains("\"basic") || given.contains("\"dry"))
                && claims(one).containsKey(SheetItem.TRAFFIC_LOAD);
    }

    @Test
    void enoughPublishedSheetsAreMarked() {
        assertThat(PublishedCase.read("limiting-masses").stream().filter(PublishedSheetsTest::isForwards))
                .hasSizeGreaterThan(8);
    }

    private static void requireFull(PublishedCase one, PlainAircraft aircraft) {
        Exercise exercise = Exercise.of(aircraft.loading(), POLICY);
        StudentSheet sheet = Plain.studentSheet(new Origin("published", "", 1), one.id(), "published", claims(one));
        MarkedSheet marked = new Marker(
                        exercise,
                        scheme(sheet.claims(), exercise.type().geometry().chord()))
                .mark(sheet);
        assertThat(marked.items().stream().filter(item -> !item.claimed().isEmpty()))
                .as("%s", one.source())
                .isNotEmpty()
                .allSatisfy(item -> assertThat(item.points()).as("%s", item).isEqualTo(item.outOf()));
        assertThat(marked.diagnosis()).isInstanceOf(Diagnosis.Nothing.class);
    }
}
