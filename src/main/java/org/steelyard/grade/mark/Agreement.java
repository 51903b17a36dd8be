package org.steelyard.grade.mark;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.grade.text.ClaimWords;
import org.steelyard.grade.text.FigureText;
import org.steelyard.grade.working.Answer;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Limits;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.policy.MarkingScheme.ItemRule;

/**
 * Whether a claimed figure is an answer: within the tolerance of the scheme for marks, within the rounding that the
 * sheet shows for diagnosis.
 */
public final class Agreement {

    /** Rounding of moments and arms on the way to a CG. */
    private static final double CG_PERCENT_MAC = 0.025;

    /** Reading a trim scale. */
    private static final double TRIM_UNITS = 0.02;

    private static final double ON_STEP = 1e-6;

    private final Exercise exercise;
    private final Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
    private final SheetRounding rounding;

    public Agreement(Exercise exercise, Map<SheetItem, Claim> claims) {
        this.exercise = exercise;
        this.claims.putAll(claims);
        rounding = new SheetRounding(exercise, claims);
    }

    Optional<Claim> claim(SheetItem item) {
        return Optional.ofNullable(claims.get(item));
    }

    public Optional<Claim.Figure> figure(SheetItem item) {
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

    /** Within the scheme's tolerance, however it is written; a trim within half a step of its indicator at least. */
    boolean isRight(SheetItem item, Answer answer, ItemRule rule) {
        if (!(answer instanceof Answer.Figure number)) {
            return isSameWord(item, answer);
        }
        Claim.Figure figure = figure(item).orElseThrow();
        double perUnit = item.kind() == SheetItem.Kind.CG ? exercise.perPercentMac(item, figure.measure()) : 1;
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
        return distance(item, answer, 0);
    }

    /** The same of an answer that is itself known to within so much only. */
    double distance(SheetItem item, Answer answer, double slack) {
        if (!(answer instanceof Answer.Figure number)) {
            return isSameWord(item, answer) ? 0 : Double.POSITIVE_INFINITY;
        }
        Claim.Figure figure = figure(item).orElseThrow();
        double half = Math.max(halfStep(item), number.step() / 2);
        double off = Math.abs(figure.value() - number.value());
        double beyond = isSet(figure, number) ? 0 : off - half - slack;
        return Math.max(0, beyond) / allowance(item, number.step());
    }

    /** Half of the step to which a figure is rounded, as the sheet shows it; 0 where none is entered. */
    double halfStep(SheetItem item) {
        double written = figure(item).map(Claim.Figure::halfStep).orElse(0.0);
        boolean mass = item.kind() == SheetItem.Kind.MASS && figure(item).isPresent();
        return mass ? Math.max(written, rounding.massHalfKg()) : written;
    }

    public double allowance(SheetItem item, double trimStep) {
        return switch (item.kind()) {
            case MASS -> rounding.massKg();
            case CG -> (CG_PERCENT_MAC + rounding.cgPercentMac()) * exercise.perPercentMac(item, measure(item));
            default -> TRIM_UNITS + trimStep / 5;
        };
    }

    /** Whether CGs are written so finely that rounding hides nothing. */
    boolean isFine() {
        return rounding.cgPercentMac() <= CG_PERCENT_MAC;
    }

    private boolean isSameWord(SheetItem item, Answer answer) {
        String shown = claims.get(item).shown();
        if (answer instanceof Answer.Verdict verdict) {
            return ClaimWords.inLimits(shown).equals(Optional.of(verdict.inLimits()));
        }
        LimitingMass right = ((Answer.Limit) answer).limit();
        Optional<LimitingMass> claimed = ClaimWords.limit(shown);
        return claimed.isPresent() && Limits.allowTheSame(exercise, claimed.get(), right);
    }
}
