package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;

/** The published tables of envelopes and of standard masses. */
@Tag("validation")
class ReferenceTablesTest {

    /** Where limits are in % MAC, any chord will do. */
    private static final MeanChord CHORD = new MeanChord(5, 2);

    static List<CSVRecord> table(String name) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader in = new InputStreamReader(
                ReferenceTablesTest.class.getResourceAsStream("/reference/" + name), StandardCharsets.UTF_8)) {
            return format.parse(in).getRecords();
        } catch (IOException e) {
            throw new IllegalStateException(name, e);
        }
    }

    /** Published limits as lines: each vertex lies on its line, and between two the line is straight, by Hipparchus. */
    @Test
    void publishedLimitsAreStraightBetweenTheirVertices() {
        Map<String, List<LimitPoint>> lines = new LinkedHashMap<>();
        for (CSVRecord row : table("cg-envelopes.csv")) {
            String key = row.get("type") + '/' + row.get("side");
            lines.computeIfAbsent(key, k -> new ArrayList<>()).add(point(row));
        }
        lines.values().removeIf(points -> points.size() < 2);
        assertThat(lines).hasSize(8);
        lines.forEach((key, points) -> {
            Side side = key.endsWith("/fwd") ? Side.FORWARD : Side.AFT;
            straightBetween(new LimitLine(side, Straightness.ARM, points), points);
        });
    }

    private static LimitPoint point(CSVRecord row) {
        String[] units = row.get("units").split("/", 2);
        MassUnit mass = units[0].equals("lb") ? MassUnit.LB : MassUnit.KG;
        double limit = Double.parseDouble(row.get("limit"));
        double armM = switch (units[1]) {
            case "in" -> LengthUnit.IN.toM(limit);
            case "mm" -> LengthUnit.MM.toM(limit);
            default -> CHORD.armAt(limit);
        };
        return new LimitPoint(mass.toKg(Double.parseDouble(row.get("mass"))), armM);
    }

    private static void straightBetween(LimitLine line, List<LimitPoint> points) {
        double[] massesKg = points.stream().mapToDouble(LimitPoint::massKg).toArray();
        double[] armsM = points.stream().mapToDouble(LimitPoint::armM).toArray();
        PolynomialSplineFunction other = new LinearInterpolator().interpolate(massesKg, armsM);
        for (LimitPoint point : points) {
            assertThat(line.roomM(point.massKg(), point.armM())).isZero();
        }
        for (int i = 0; i <= 100; i++) {
            double massKg = line.minMassKg() + i * (line.maxMassKg() - line.minMassKg()) / 100;
            double inReachKg = Math.min(massKg, line.maxMassKg());
            assertThat(line.armAtM(inReachKg)).isCloseTo(other.value(inReachKg), within(1e-12));
        }
    }

    /** Each published mass of a person or bag, as a scheme would hold it: seven of them weigh seven times as much. */
    @Test
    void publishedStandardMassesCountAsTheyArePublished() {
        int checked = 0;
        for (CSVRecord row : table("standard-masses.csv")) {
            if (row.get("value").chars().allMatch(Character::isDigit)
                    && !row.get("value").equals("0")) {
                MassUnit unit = row.get("unit").equals("lb") ? MassUnit.LB : MassUnit.KG;
                double massKg = unit.toKg(Double.parseDouble(row.get("value")));
                MassScheme scheme = PlainAircraft.scheme(massKg, massKg, massKg, massKg, massKg, massKg);
                for (PassengerCategory category : PassengerCategory.values()) {
                    assertThat(seven(category).massKg(scheme)).isCloseTo(7 * massKg, within(1e-9));
                }
                assertThat(new HoldLoad(0, 7).massKg(scheme)).isCloseTo(7 * massKg, within(1e-9));
                checked++;
            }
        }
        assertThat(checked).isEqualTo(42);
    }

    private static Passengers seven(PassengerCategory category) {
        return switch (category) {
            case MALE -> new Passengers(7, 0, 0, 0, 0);
            case FEMALE -> new Passengers(0, 7, 0, 0, 0);
            case ADULT -> new Passengers(0, 0, 7, 0, 0);
            case CHILD -> new Passengers(0, 0, 0, 7, 0);
            case INFANT -> new Passengers(0, 0, 0, 0, 7);
        };
    }
}
