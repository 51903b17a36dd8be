package org.steelyard.grade;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.steelyard.check.LimitingMass;
import org.steelyard.model.CgMeasure;
import org.steelyard.model.Claim;
import org.steelyard.model.Geometry;
import org.steelyard.model.MarkingScheme.ItemRule;
import org.steelyard.model.MassMoment;
import org.steelyard.model.SheetItem;

/**
 * Whether a claimed figure is an answer: within the tolerance of the scheme for marks, within the rounding that the
 * sheet shows for diagnosis.
 */
final class Agreement {

    /** Rounding of the states that lead to a mass, in its last place. */
    private static final double MASS_STEPS = 1.6;

    /** Rounding of moments and arms on the way to a CG. */
    private static final double CG_PERCENT_MAC = 0.025;

    /** Reading a trim scale. */
    private static final double TRIM_UNITS = 0.02;

    private static final double SAME_KG = 0.5;

    private static final double ON_STEP = 1e-6;

    private final Exercise exercise;
    private final Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
    private final double massHalfKg;
    private final double cgHalfPercentMac;

    Agreement(Exercise exercise, Map<SheetItem, Claim> claims) {
        this.exercise = exercise;
        this.claims.putAll(claims);
        double massKg = 0;
        double percentMac = 0;
        for (Map.Entry<SheetItem, Claim> entry : claims.entrySet()) {
            if (entry.getValue() instanceof Claim.Figure figure) {
                SheetItem item = entry.getKey();
                if (item.kind() == SheetItem.Kind.MASS) {
                    massKg = Math.max(massKg, figure.halfStep());
                } else if (item.kind() == SheetItem.Kind.CG) {
                    percentMac = Math.max(percentMac, figure.halfStep() / perPercentMac(item, figure.measure()));
                }
            }
        }
        massHalfKg = massKg;
        cgHalfPercentMac = percentMac;
    }

    Optional<Claim> claim(SheetItem item) {
        return Optional.ofNullable(claims.get(item));
    }

    Optional<Claim.Figure> figure(SheetItem item) {
        return claims.get(item) instanceof Claim.Figure figure ? Optional.of(figure) : Optional.empty();
    }

    CgMeasure measure(SheetItem item) {
        return figure(item).map(Claim.Figure::measure).orElse(new FigureText(exercise.type()).usualMeasure());
    }

    /** Whether something stands there that can be compared. */
    boolean isReadable(SheetItem item) {
        Claim claim = claims.get(item);
        if (claim instanceof Claim.Words words) {
            return item.kind() == SheetItem.Kind.LIMIT
                    ? ClaimWords.limit(words.shown()).isPresent()
                    : ClaimWords.inLimits(words.shown()).isPresent();
        }
        return claim instanceof Claim.Figure;
    }

    /** What one % MAC is in a measure, at the right mass of the item's state. */
    double perPercentMac(SheetItem item, CgMeasure measure) {
        Geometry geometry = exercise.type().geometry();
        double armM = geometry.chord().lengthM() / 100;
        double massKg = item.phase()
                .flatMap(exercise.right()::state)
                .map(MassMoment::massKg)
                .orElse(1.0);
        return switch (measure) {
            case PERCENT_MAC -> 1;
            case ARM -> armM;
            case INDEX -> massKg * armM / geometry.index().divisorKgM();
        };
    }

    /** Within the scheme's tolerance, however it is written; a trim within half a step of its indicator at least. */
    boolean isRight(SheetItem item, Answer answer, ItemRule rule) {
        if (!(answer instanceof Answer.Figure number)) {
            return isSameWord(item, answer);
        }
        Claim.Figure figure = figure(item).orElseThrow();
        double perUnit = item.kind() == SheetItem.Kind.CG ? perPercentMac(item, figure.measure()) : 1;
        double shareKg = rule.sharePercent() / 100 * Math.abs(number.value());
        double within = Math.max(rule.within() * perUnit, item.kind() == SheetItem.Kind.MASS ? shareKg : 0);
        double rounding = Math.max(rule.rounding() * perUnit, number.step() / 2);
        double off = Math.abs(figure.value() - number.value());
        return isSet(figure, number) || off <= within + rounding + 1e-9 * Math.max(1, Math.abs(number.value()));
    }

    /** Whether a figure is what is to be set, though the scale's rounding may take it farther than half a step. */
    private static boolean isSet(Claim.Figure figure, Answer.Figure number) {
        return number.step() > 0 && Math.abs(figure.value() - number.setting()) <= ON_STEP * number.step();
    }

    /** How far beyond its rounding a claim is from an answer, 1 being as far as rounding on the way can bring it. */
    double distance(SheetItem item, Answer answer) {
        if (!(answer instanceof Answer.Figure number)) {
            return isSameWord(item, answer) ? 0 : Double.POSITIVE_INFINITY;
        }
        Claim.Figure figure = figure(item).orElseThrow();
        double half = Math.max(figure.halfStep(), number.step() / 2);
        double beyond = isSet(figure, number) ? 0 : Math.abs(figure.value() - number.value()) - half;
        return Math.max(0, beyond) / allowance(item, number.step());
    }

    double allowance(SheetItem item, double trimStep) {
        return switch (item.kind()) {
            case MASS ->
                massHalfKg
                        + MASS_STEPS
                                * Candidates.massStepKg(
                                        exercise.type().geometry().units());
            case CG -> (CG_PERCENT_MAC + cgHalfPercentMac) * perPercentMac(item, measure(item));
            default -> TRIM_UNITS + trimStep / 5;
        };
    }

    private boolean isSameWord(SheetItem item, Answer answer) {
        String shown = claims.get(item).shown();
        if (answer instanceof Answer.Verdict verdict) {
            return ClaimWords.inLimits(shown).equals(Optional.of(verdict.inLimits()));
        }
        LimitingMass right = ((Answer.Limit) answer).limit();
        Optional<LimitingMass> claimed = ClaimWords.limit(shown);
        return claimed.isPresent() && (claimed.get() == right || isAsLow(claimed.get(), right));
    }

    /** Two limits that allow the same mass are both right. */
    private boolean isAsLow(LimitingMass claimed, LimitingMass right) {
        double[] takeoffKg = Limits.takeoffKg(exercise, exercise.right());
        return Math.abs(takeoffKg[Limits.at(claimed)] - takeoffKg[Limits.at(right)]) < SAME_KG;
    }
}
