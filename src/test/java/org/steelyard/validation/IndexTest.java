package org.steelyard.validation;

import java.util.OptionalDouble;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/** Index of an aircraft and of an item, and back from an index to the CG. */
class IndexTest extends PublishedCases {

    /** Where a formula is written for % MAC alone, any chord will do. */
    private static final MeanChord CHORD = new MeanChord(20, 5);

    IndexTest() {
        super("index", 13, 1);
    }

    @Override
    void answer(Given given, Answers answers) {
        MeanChord chord = given.chord().orElse(CHORD);
        IndexFormula formula = formula(given, chord);
        MassMoment sum = MassMoment.ZERO;
        OptionalDouble massKg = given.massKg("mass");
        if (massKg.isPresent()) {
            sum = state(given, chord, formula, massKg.getAsDouble());
            whole(answers, chord, formula, sum);
        }
        for (Given line : given.list("items")) {
            MassMoment item = item(line, formula);
            String name = line.word("name");
            answers.number(name + "Index", formula.influenceOf(item));
            answers.moment(name + "Moment", item.momentKgM());
            sum = sum.plus(item);
        }
        answers.number("sumIndex", formula.indexOf(sum));
        answers.mass("sum", sum.massKg());
    }

    private static void whole(Answers answers, MeanChord chord, IndexFormula formula, MassMoment state) {
        double index = formula.indexOf(state);
        MassMoment back = formula.at(state.massKg(), index);
        answers.number("index", index);
        answers.length("cg", state.armM());
        answers.length("back", back.armM());
        answers.number("backPercentMac", chord.percentAt(back.armM()));
    }

    private static MassMoment state(Given given, MeanChord chord, IndexFormula formula, double massKg) {
        OptionalDouble index = given.number("index");
        if (index.isPresent()) {
            return formula.at(massKg, index.getAsDouble());
        }
        OptionalDouble percent = given.number("cgPercentMac");
        return MassMoment.at(
                massKg,
                percent.isPresent()
                        ? chord.armAt(percent.getAsDouble())
                        : given.lengthM("cg").orElseThrow());
    }

    /** An index for each % MAC and t stands for a divisor of 1 t over a hundredth of the chord. */
    private static IndexFormula formula(Given given, MeanChord chord) {
        double constant = given.number("constant").orElseThrow();
        OptionalDouble perPercentPerTonne = given.number("perPercentPerTonne");
        if (perPercentPerTonne.isPresent()) {
            double referenceM = chord.armAt(given.number("referencePercentMac").orElseThrow());
            return new IndexFormula(referenceM, 10 * chord.lengthM() / perPercentPerTonne.getAsDouble(), constant);
        }
        return new IndexFormula(
                given.lengthM("reference").orElseThrow(),
                given.momentKgM("divisor").orElseThrow(),
                constant);
    }

    /** An item by its arm, or by what 100 kg of it do to the index. */
    private static MassMoment item(Given line, IndexFormula formula) {
        OptionalDouble per100Kg = line.number("indexPer100Kg");
        if (per100Kg.isEmpty()) {
            return line.item("arm");
        }
        double massKg = line.massKg("mass").orElseThrow();
        IndexFormula change = new IndexFormula(formula.referenceArmM(), formula.divisorKgM(), 0);
        return change.at(massKg, per100Kg.getAsDouble() * massKg / 100);
    }
}
