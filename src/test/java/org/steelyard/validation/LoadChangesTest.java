package org.steelyard.validation;

import java.util.OptionalDouble;
import org.steelyard.balance.LoadChange;
import org.steelyard.check.flight.LimitingMasses;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.unit.MassMoment;

/** Shifts, additions, removals, ballast, the mass to move or to add for a wanted CG, levers of forces. */
class LoadChangesTest extends PublishedCases {

    LoadChangesTest() {
        super("load-changes", 58, 0);
    }

    @Override
    void answer(Given given, Answers answers) {
        MassMoment state = given.item("cg");
        if (state.massKg() != 0) {
            answers.length("old", state.armM());
        }
        answers.moment("oldMoment", state.momentKgM());
        switch (given.word("do")) {
            case "add" -> after(given, answers, state, added(given, state));
            case "move" ->
                after(
                        given,
                        answers,
                        state,
                        LoadChange.move(
                                state,
                                given.massKg("item").orElseThrow(),
                                given.lengthM("from").orElseThrow(),
                                given.lengthM("to").orElseThrow()));
            case "massToMove" ->
                answers.mass(
                        "move",
                        LoadChange.massToMoveKg(
                                state,
                                given.positionM("wanted").orElseThrow(),
                                given.lengthM("from").orElseThrow(),
                                given.lengthM("to").orElseThrow()));
            case "massToAdd" -> massToAdd(given, answers, state);
            case "armToAdd" -> {
                double addedKg = given.massKg("added").orElseThrow();
                answers.length(
                        "at",
                        LoadChange.armToAddAtM(state, given.lengthM("wanted").orElseThrow(), addedKg));
                answers.mass("total", state.plus(MassMoment.at(addedKg, 0)).massKg());
            }
            default -> throw new AssertionError("nothing does " + given.word("do"));
        }
    }

    private static MassMoment added(Given given, MassMoment state) {
        MassMoment sum = state;
        for (Given change : given.list("changes")) {
            sum = sum.plus(change.item("arm"));
        }
        return sum;
    }

    private static void after(Given given, Answers answers, MassMoment before, MassMoment after) {
        if (after.massKg() != 0) {
            answers.length("cg", after.armM());
        }
        answers.mass("mass", after.massKg());
        answers.moment("moment", after.momentKgM());
        answers.moment("change", after.momentKgM() - before.momentKgM());
        if (before.massKg() != 0) {
            answers.length("shift", after.armM() - before.armM());
            given.chord().ifPresent(chord -> answers.number("cgPercentMac", chord.percentAt(after.armM())));
        }
    }

    private static void massToAdd(Given given, Answers answers, MassMoment state) {
        double massKg = LoadChange.massToAddKg(
                state,
                given.lengthM("wanted").orElseThrow(),
                given.lengthM("at").orElseThrow());
        OptionalDouble maxKg = given.massKg("maxTakeoff");
        double allowedKg = maxKg.isPresent() ? roomKg(maxKg.getAsDouble(), state) : massKg;
        answers.mass("add", Math.min(massKg, allowedKg));
        answers.mass("total", state.plus(MassMoment.at(massKg, 0)).massKg());
    }

    private static double roomKg(double maxKg, MassMoment state) {
        MassLimits limits = new MassLimits(maxKg, maxKg, maxKg, maxKg, 1);
        return LimitingMasses.of(limits, PerformanceLimits.NONE, 0, 0, 0)
                .trafficLoad(state.massKg(), 0)
                .allowedKg();
    }
}
