package org.steelyard.analyse.change;

import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.analyse.find.GroupApart;

/**
 * One figure of one group in two seasons.
 *
 * <p>Means: interval and chance by Welch; effect in pooled standard deviations. Shares: interval by Newcombe, chance by
 * Fisher's exact test; effect as Cohen's h. Chances are adjusted by Holm's weighted method over everything that is
 * compared; each figure by each grouping has the same weight, shared equally among its groups. So two seasons without a
 * difference are told apart, in whatever, at most once in twenty, however the tests depend on each other. Only groups
 * with at least {@link GroupApart#FEWEST} flights in both seasons are tested.
 *
 * @param figure what is compared
 * @param grouping type, tail, route, or the heading of a carried column; {@code kind of finding} for those
 * @param typeId type
 * @param flaps flap setting; blank where all are together
 * @param thrust thrust rating of the scale; blank for a scale of any rating, and where all are together
 * @param group which group
 * @param flightsBefore flights before
 * @param flightsAfter flights after
 * @param before figure before; empty without flights
 * @param after figure after; empty without flights
 * @param low lower end of the 95 % interval of the difference, after less before; empty where it is not tested
 * @param high upper end of it
 * @param effect size of the difference
 * @param chance adjusted chance; empty where it is not tested
 * @param verdict what to make of it
 */
public record SeasonChange(
        Figure figure,
        String grouping,
        String typeId,
        String flaps,
        String thrust,
        String group,
        long flightsBefore,
        long flightsAfter,
        OptionalDouble before,
        OptionalDouble after,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble effect,
        OptionalDouble chance,
        Verdict verdict) {

    /** What is compared. */
    public enum Figure {
        /** Mean take-off CG in % MAC. */
        TAKEOFF_CG("mean take-off CG", "% MAC"),
        /** Mean take-off trim, nose-up positive, within a scale. */
        TAKEOFF_TRIM("mean take-off trim", "units"),
        /** Share of breached flights. */
        BREACHED("breached flights", "%"),
        /** Share of marginal flights. */
        MARGINAL("marginal flights", "%"),
        /** Share of flights with a kind of finding. */
        FINDING("flights with the finding", "%");

        private final String label;
        private final String unit;

        Figure(String label, String unit) {
            this.label = label;
            this.unit = unit;
        }

        /** Its name in words. */
        public String label() {
            return label;
        }

        /** Unit of its values; shares are in percent. */
        public String unit() {
            return unit;
        }

        /** Whether it is a share. */
        public boolean isShare() {
            return unit.equals("%");
        }
    }

    /** What to make of a change. */
    public enum Verdict {
        /** Breached share rose beyond chance, and is above that of the type now but was not before. */
        NEW_OFFENDER("new offender"),
        /** A share rose beyond chance. */
        WORSE("more than before"),
        /** Breached share fell beyond chance, and was above that of the type but is not now. */
        CURED("cured"),
        /** A share fell beyond chance. */
        BETTER("less than before"),
        /** A mean moved aft or nose-up beyond chance. */
        UP("moved up"),
        /** A mean moved forward or nose-down beyond chance. */
        DOWN("moved down"),
        /** No more than chance. */
        WITHIN_CHANCE("within chance"),
        /** Too few flights in one of the seasons to say. */
        FEW("few flights"),
        /** Flew in the second season only. */
        ONLY_AFTER("only after"),
        /** Flew in the first season only. */
        ONLY_BEFORE("only before");

        private final String label;

        Verdict(String label) {
            this.label = label;
        }

        /** Its name in words. */
        public String label() {
            return label;
        }

        /** Whether more than chance moved it. */
        public boolean beyondChance() {
            return compareTo(WITHIN_CHANCE) < 0;
        }
    }

    /** After less before; empty where one is not known. */
    public OptionalDouble difference() {
        return before.isPresent() && after.isPresent()
                ? OptionalDouble.of(after.getAsDouble() - before.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Those beyond chance with one of some verdicts. */
    public static List<SeasonChange> having(List<SeasonChange> changes, Verdict... verdicts) {
        return changes.stream()
                .filter(change -> List.of(verdicts).contains(change.verdict()))
                .toList();
    }
}
