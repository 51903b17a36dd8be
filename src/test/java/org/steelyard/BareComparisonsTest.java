package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Masses, moments, arms and CGs are compared by {@code model.Tolerance}, so that what is on a limit is inside whatever
 * the last digits of a sum are. What is compared by the bare operators instead is listed here, with the reason.
 */
class BareComparisonsTest {

    private static final List<String> PACKAGES = List.of("model", "balance", "check", "remedy", "trim");
    private static final Pattern OPERATOR = Pattern.compile("(?<=\\s)(<=|>=|<|>|==|!=)(?=\\s)");
    private static final Pattern MEASURE =
            Pattern.compile("\\b\\w*(?:Kg|PercentMac|KgM|[a-z]M)\\b(?!(?:\\(\\))?\\.(?:length|size))");
    private static final Pattern NOTHING = Pattern.compile("(?i).*(room|margin|limit|most|least).*");

    /** Whatever these do is what the tolerance is made of. */
    private static final Set<String> THE_TOLERANCE = Set.of("Tolerance.java");

    /** File and comparison, by the reason why the last digits do not matter there. */
    private static final Map<String, List<String>> LISTED = Map.of(
            "the order of the figures of a type's file, of which no sum is made",
            List.of(
                    "Airframe.java: tail.centreArmM() > wing.centreArmM()",
                    "CgRange.java: fromPercentMac <= toPercentMac",
                    "LimitLine.java: here > points.get(i - 2).massKg()",
                    "LimitLine.java: points.get(points.size() - 1).massKg() > points.get(0).massKg()",
                    "LineChance.java: line.points().get(piece).massKg() > line.points().get(piece - 1).massKg()",
                    "LineChance.java: points.get(i).massKg() > points.get(i - 1).massKg()",
                    "MassLimits.java: maxLandingKg > minFlightKg",
                    "MassLimits.java: maxZeroFuelKg > minFlightKg",
                    "Crossing.java: low.massKg() < high.massKg()",
                    "Tank.java: armTable.get(i).quantityKg() > armTable.get(i - 1).quantityKg()",
                    "Tank.java: otherKg <= massKg",
                    "Tank.java: otherKg >= massKg",
                    "TrimPoints.java: here.cgPercentMac() > before.cgPercentMac()",
                    "TrimSlope.java: cgRange.fromPercentMac() < cgRange.toPercentMac()",
                    "TrimTable.java: massesKg.at(i) > massesKg.at(i - 1)",
                    "TypeReview.java: zones.get(i).armM() == zones.get(i - 1).armM()"),
            "which piece of a line or table a figure falls into: at the joint both give the same, or the figure was put"
                    + " on the joint before",
            List.of(
                    "LimitLine.java: low.massKg() == massKg",
                    "LimitLine.java: massKg == high.massKg()",
                    "LimitLine.java: massKg == low.massKg()",
                    "LimitLine.java: points.get(i + 1).massKg() == massKg",
                    "LimitLine.java: points.get(i).massKg() < massKg",
                    "LoadSpread.java: table.get(high).quantityKg() < quantityKg",
                    "PathApproach.java: massKg == high.massKg()",
                    "PathApproach.java: massKg == low.massKg()",
                    "Tank.java: quantityKg <= high.quantityKg()",
                    "TrimPoints.java: onPercentMac == high.cgPercentMac()",
                    "TrimPoints.java: points.get(i).cgPercentMac() < onPercentMac",
                    "TrimTable.java: onPercentMac == cgsPercentMac.at(column)"),
            "no division by nothing",
            List.of(
                    "LoadChange.java: atM == wantedM",
                    "LoadChange.java: fromM == toM",
                    "MomentGuard.java: high.massKg() <= low.massKg()"),
            "whether a parabola turns between two ends, beside which it is no less than at them",
            List.of(
                    "MomentGuard.java: turnKg < toKg",
                    "MomentGuard.java: turnKg > fromKg",
                    "PathApproach.java: turnKg < toKg",
                    "PathApproach.java: turnKg > fromKg",
                    "PathApproach.java: roomM < leastRoomM"),
            "the arithmetic of fuel that flows, by a grain far finer than the tolerance so that sums stay exact",
            List.of(
                    "FuelFlow.java: Math.abs(movedKg - haltKg) <= NOTHING_KG",
                    "FuelFlow.java: leftKg > NOTHING_KG",
                    "FuelFlow.java: movedKg < haltKg",
                    "FuelFlow.java: movedKg > haltKg",
                    "FuelFlow.java: quantityKg < share.untilKg()",
                    "FuelFlow.java: quantityKg > share.untilKg()",
                    "FuelFlow.java: table.get(i).quantityKg() < quantityKg"),
            "the direction in which a search goes on",
            List.of(
                    "Allowance.java: toKg < fromKg",
                    "FuelFill.java: high.sum() != totalKg",
                    "FuelFill.java: middle.sum() < totalKg",
                    "FuelFill.java: totalKg < tanksKg.sum()",
                    "FuelSearch.java: tooLittleKg < enoughKg",
                    "LoadProgram.java: aroundKg > middleKg"),
            "what is far, by a distance that is a matter of taste",
            List.of(
                    "FuelSearch.java: Math.abs(inOrderKg.at(i) - aboardKg.at(i)) > SAME_KG",
                    "LimitReview.java: byPercentMac > SMALL_PERCENT_MAC",
                    "LimitReview.java: covered.fromPercentMac() > from + SMALL_PERCENT_MAC",
                    "LimitReview.java: covered.toPercentMac() < to - SMALL_PERCENT_MAC",
                    "LineChance.java: Math.abs(line.points().get(i).massKg() - massKg) < reachKg",
                    "ScaleFitter.java: Arrays.stream(kg).max().orElse(0) - Arrays.stream(kg).min().orElse(0) >"
                            + " LEAST_MASS_SPREAD * referenceKg",
                    "TypeReview.java: Math.abs(massKg - usualKg) > FAR_MASS_PERCENT / 100 * usualKg"));

    private record Found(String file, String left, String operator, String right) {

        String text() {
            return file + ": " + left + " " + operator + " " + right;
        }

        boolean isOfAMeasure() {
            return MEASURE.matcher(left).find() || MEASURE.matcher(right).find();
        }

        /** A moment, whose tolerance is that of CG at a mass. */
        boolean isByTheTolerance() {
            return right.endsWith("toleranceKgM");
        }

        /** Whether something is there at all, which is no limit. */
        boolean asksForAny() {
            return right.equals("0") && !NOTHING.matcher(left).matches();
        }
    }

    private static List<Found> comparisons() throws IOException {
        List<Found> found = new ArrayList<>();
        for (String name : PACKAGES) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/steelyard", name))) {
                for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                        .sorted()
                        .toList()) {
                    found.addAll(in(file));
                }
            }
        }
        return found;
    }

    private static List<Found> in(Path file) throws IOException {
        String code = Files.readString(file, StandardCharsets.UTF_8)
                .replaceAll("(?s)/\\*.*?\\*/", "")
                .replaceAll("//[^\n]*", "")
                .replaceAll("\"(?:[^\"\\\\]|\\\\.)*\"", "\"\"")
                .replaceAll("\\s+", " ");
        List<Found> found = new ArrayList<>();
        Matcher operator = OPERATOR.matcher(code);
        while (operator.find()) {
            found.add(new Found(
                    file.getFileName().toString(),
                    operand(code, operator.start() - 1, -1),
                    operator.group(),
                    operand(code, operator.end(), 1)));
        }
        return found;
    }

    /** The text beside an operator, up to where its expression begins or ends. */
    private static String operand(String code, int from, int step) {
        int depth = 0;
        int at = from;
        for (; at >= 0 && at < code.length(); at += step) {
            char c = code.charAt(at);
            boolean opens = c == (step > 0 ? '(' : ')');
            boolean closes = c == (step > 0 ? ')' : '(');
            if (depth == 0 && (closes || isBorder(code, at))) {
                break;
            }
            depth += opens ? 1 : closes ? -1 : 0;
        }
        String text = step > 0 ? code.substring(from, at) : code.substring(at + 1, from + 1);
        return text.replaceAll("^\\s*return ", "").trim();
    }

    private static boolean isBorder(String code, int at) {
        return ",;?:{}".indexOf(code.charAt(at)) >= 0
                || code.startsWith("&&", at)
                || code.startsWith("||", at)
                || code.startsWith("&&", at - 1)
                || code.startsWith("||", at - 1)
                || code.startsWith("->", at)
                || code.startsWith("->", at - 1)
                || code.startsWith(" = ", at - 1)
                || code.startsWith(" |= ", at - 1)
                || code.startsWith(" |= ", at - 2);
    }

    @Test
    void massesAndCgsAreComparedByTheOneTolerance() throws IOException {
        Set<String> bare = comparisons().stream()
                .filter(Found::isOfAMeasure)
                .filter(found -> !found.asksForAny() && !found.isByTheTolerance())
                .filter(found -> !THE_TOLERANCE.contains(found.file()))
                .map(Found::text)
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(bare)
                .containsExactlyInAnyOrderElementsOf(
                        LISTED.values().stream().flatMap(List::stream).toList());
    }

    @Test
    void theComparisonsOfTheToleranceItselfAreSeen() throws IOException {
        assertThat(comparisons().stream().map(Found::text))
                .contains(
                        "Tolerance.java: massKg > limitKg + MASS_KG",
                        "Tolerance.java: cgPercentMac < limitPercentMac - CG_PERCENT_MAC");
    }
}
