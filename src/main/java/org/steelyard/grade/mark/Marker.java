package org.steelyard.grade.mark;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steelyard.grade.mark.OwnFigures.Route;
import org.steelyard.grade.text.AnswerText;
import org.steelyard.grade.text.FigureText;
import org.steelyard.grade.working.Answer;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Slip;
import org.steelyard.grade.working.Working;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;

/**
 * Marks the sheets of one exercise: each figure against the right one within the scheme's tolerance, then against what
 * the student's own earlier figures lead to, then against what the slip leads to that explains the sheet. Points of an
 * item: all if right, the scheme's share if it follows, none else.
 */
public final class Marker {

    private final Exercise exercise;
    private final MarkingScheme scheme;
    private final Diagnoser diagnoser;
    private final FigureText text;

    /**
     * For an exercise.
     *
     * @param exercise what was asked
     * @param scheme how it is marked
     */
    public Marker(Exercise exercise, MarkingScheme scheme) {
        this.exercise = exercise;
        this.scheme = scheme;
        diagnoser = Diagnoser.of(exercise);
        text = new FigureText(exercise.type());
    }

    /**
     * Every slip that can be told on this exercise.
     *
     * @return the slips that are tried on each sheet
     */
    public List<Slip> slips() {
        return diagnoser.slips();
    }

    /**
     * Marks a sheet.
     *
     * @param sheet what the student handed in
     * @return marks, chains and cause
     */
    public MarkedSheet mark(StudentSheet sheet) {
        return new Marking(sheet).marked();
    }

    private final class Marking {

        private final StudentSheet sheet;
        private final Agreement agreement;
        private final Map<SheetItem, Outcome> outcomes = new EnumMap<>(SheetItem.class);
        private final Map<SheetItem, String> chains = new EnumMap<>(SheetItem.class);
        private final Set<SheetItem> following = EnumSet.noneOf(SheetItem.class);

        Marking(StudentSheet sheet) {
            this.sheet = sheet;
            Map<SheetItem, Claim> asked = new EnumMap<>(SheetItem.class);
            for (ItemRule rule : scheme.items()) {
                Claim claim = sheet.claims().get(rule.item());
                if (claim != null
                        && sheet.asked().contains(rule.item())
                        && exercise.right(rule.item(), CgMeasure.ARM).isPresent()) {
                    asked.put(rule.item(), claim);
                }
            }
            agreement = new Agreement(exercise, Readings.of(exercise, asked));
        }

        MarkedSheet marked() {
            for (ItemRule rule : scheme.items()) {
                outcomes.put(rule.item(), againstTheRightFigure(rule));
            }
            for (ItemRule rule : scheme.items()) {
                Outcome outcome = outcomes.get(rule.item());
                if (outcome == Outcome.WRONG || (outcome == Outcome.RIGHT && isConcluded(rule.item()))) {
                    againstOwnFigures(rule);
                }
            }
            Diagnosis diagnosis = diagnoser.diagnose(agreement, with(Outcome.WRONG), with(Outcome.FOLLOWS), following);
            if (diagnosis instanceof Diagnosis.Found found && found.whole()) {
                againstTheSlips(found.explanations().get(0).slips());
            }
            return new MarkedSheet(sheet, exercise, items(), diagnosis, scheme.passPercent(), HandedIn.ONCE);
        }

        private Set<SheetItem> with(Outcome outcome) {
            Set<SheetItem> items = EnumSet.noneOf(SheetItem.class);
            outcomes.forEach((item, had) -> {
                if (had == outcome) {
                    items.add(item);
                }
            });
            return items;
        }

        private Outcome againstTheRightFigure(ItemRule rule) {
            SheetItem item = rule.item();
            Optional<Answer> right = exercise.right(item, agreement.measure(item));
            if (right.isEmpty() || !sheet.asked().contains(item)) {
                return Outcome.NOT_ASKED;
            }
            if (agreement.claim(item).isEmpty()) {
                return Outcome.MISSING;
            }
            if (!agreement.isReadable(item)) {
                return Outcome.UNREADABLE;
            }
            return agreement.isRight(item, right.get(), rule) ? Outcome.RIGHT : Outcome.WRONG;
        }

        /** What rightly comes of figures that are right but for rounding is right; of one that is wrong it follows. */
        private void againstOwnFigures(ItemRule rule) {
            for (Route route : new OwnFigures(exercise, agreement).routes(rule.item())) {
                if (agrees(rule, route)) {
                    following.add(rule.item());
                    if (outcomes.get(rule.item()) == Outcome.WRONG) {
                        letThrough(rule.item(), route.from());
                    }
                }
            }
        }

        private void letThrough(SheetItem item, List<SheetItem> from) {
            boolean fromWrong = from.stream().anyMatch(this::isWrong);
            boolean fromRounded = from.stream().allMatch(this::isRightButForRounding);
            if (fromWrong || (fromRounded && isConcluded(item))) {
                outcomes.put(item, fromWrong ? Outcome.FOLLOWS : Outcome.RIGHT);
                chains.put(item, "right from your own " + listed(from));
            }
        }

        private boolean isRightButForRounding(SheetItem item) {
            return exercise.right(item, agreement.measure(item))
                    .filter(right -> agreement.distance(item, right) <= 1)
                    .isPresent();
        }

        /**
         * Trim, limit and verdict are read off from other figures; masses and CGs are held to the scheme's tolerance.
         */
        private boolean isConcluded(SheetItem item) {
            return item.kind() != SheetItem.Kind.MASS && item.kind() != SheetItem.Kind.CG;
        }

        private boolean isWrong(SheetItem item) {
            return outcomes.get(item) == Outcome.WRONG || outcomes.get(item) == Outcome.FOLLOWS;
        }

        private boolean agrees(ItemRule rule, Route route) {
            return agreement.isRight(rule.item(), route.answer(), rule)
                    || agreement.distance(rule.item(), route.answer(), route.slack()) <= 1;
        }

        private String listed(List<SheetItem> items) {
            List<String> words = items.stream()
                    .map(item -> item.label() + " of "
                            + agreement.claim(item).map(Claim::shown).orElse("nothing"))
                    .toList();
            int last = words.size() - 1;
            if (last > 3) {
                return "masses and CGs";
            }
            return last < 1 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
        }

        /** What is wrong by a slip that showed already in an earlier figure follows from it. */
        private void againstTheSlips(List<Slip> slips) {
            Working all = new Working(exercise, slips);
            Set<SheetItem> firsts = EnumSet.noneOf(SheetItem.class);
            for (Slip slip : slips) {
                firstWrong(new Working(exercise, List.of(slip))).ifPresent(firsts::add);
            }
            if (firsts.isEmpty()) {
                with(Outcome.WRONG).stream().findFirst().ifPresent(firsts::add);
            }
            for (ItemRule rule : scheme.items()) {
                SheetItem item = rule.item();
                if (outcomes.get(item) == Outcome.WRONG && !firsts.contains(item)) {
                    Optional<Answer> answer = all.answer(item, agreement.measure(item));
                    if (answer.isPresent() && agreement.distance(item, answer.get()) <= 1) {
                        outcomes.put(item, Outcome.FOLLOWS);
                        chains.put(item, "follows from the same slip: " + cause(slips, item));
                    }
                }
            }
        }

        private String cause(List<Slip> slips, SheetItem item) {
            for (Slip slip : slips) {
                if (differs(new Working(exercise, List.of(slip)), item)) {
                    return slip.label();
                }
            }
            return slips.get(0).label();
        }

        private Optional<SheetItem> firstWrong(Working working) {
            return scheme.items().stream()
                    .map(ItemRule::item)
                    .filter(item -> outcomes.get(item) == Outcome.WRONG)
                    .filter(item -> differs(working, item))
                    .findFirst();
        }

        private boolean differs(Working working, SheetItem item) {
            CgMeasure measure = agreement.measure(item);
            Optional<Answer> right = exercise.right(item, measure);
            Optional<Answer> slipped = working.answer(item, measure);
            if (right.isEmpty() || slipped.isEmpty()) {
                return right.isPresent() != slipped.isPresent();
            }
            if (right.get() instanceof Answer.Figure one && slipped.get() instanceof Answer.Figure other) {
                return Math.abs(one.value() - other.value())
                        > agreement.allowance(item, one.step()) / 2 + 1e-9 * Math.abs(one.value());
            }
            return !exercise.isSameWord(right.get(), slipped.get());
        }

        private List<MarkedItem> items() {
            List<MarkedItem> items = new ArrayList<>();
            for (ItemRule rule : scheme.items()) {
                Outcome outcome = outcomes.get(rule.item());
                if (outcome != Outcome.NOT_ASKED) {
                    items.add(item(rule, outcome));
                }
            }
            return items;
        }

        private MarkedItem item(ItemRule rule, Outcome outcome) {
            SheetItem item = rule.item();
            double points = switch (outcome) {
                case RIGHT -> rule.points();
                case FOLLOWS -> rule.points() * scheme.followPercent() / 100;
                default -> 0;
            };
            CgMeasure measure = agreement.measure(item);
            Answer right = exercise.right(item, measure).orElseThrow();
            return new MarkedItem(
                    item,
                    outcome,
                    points,
                    rule.points(),
                    agreement.claim(item).map(Claim::shown).orElse(""),
                    AnswerText.of(text, item, right, measure),
                    chains.getOrDefault(item, ""));
        }
    }
}
