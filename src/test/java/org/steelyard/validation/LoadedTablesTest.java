package org.steelyard.validation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.unit.MassMoment;

/** Tables of items with masses, arms and moments, their totals, and what burns off. */
class LoadedTablesTest extends PublishedCases {

    LoadedTablesTest() {
        super("loaded-tables", 33, 0);
    }

    @Override
    void answer(Given given, Answers answers) {
        Map<String, MassMoment> items = items(given.list("items"));
        items.forEach((name, item) -> answers.state(name, name + "Cg", item));
        MassMoment total = sum(items.values());
        answers.state("total", "cg", total);
        answers.moment("totalMoment", total.momentKgM());
        for (Given subtotal : given.list("subtotals")) {
            String name = subtotal.word("name");
            List<MassMoment> parts =
                    subtotal.words("of").stream().map(items::get).toList();
            answers.state(name, name + "Cg", sum(parts));
        }
        MassMoment after = total.minus(sum(items(given.list("burnt")).values()));
        answers.state("after", "afterCg", after);
        given.chord().ifPresent(chord -> answers.number("cgPercentMac", chord.percentAt(total.armM())));
        OptionalDouble forwardM = given.lengthM("forward");
        OptionalDouble aftM = given.lengthM("aft");
        double maxKg = given.massKg("max", PlainAircraft.VAST_KG);
        if (answers.asks("findings")) {
            answers.word("findings", findings(total, forwardM, aftM, maxKg));
        }
    }

    private static Map<String, MassMoment> items(List<Given> lines) {
        Map<String, MassMoment> items = new LinkedHashMap<>();
        lines.forEach(line -> items.put(line.word("name"), line.item("arm")));
        return items;
    }

    private static MassMoment sum(Iterable<MassMoment> items) {
        MassMoment sum = MassMoment.ZERO;
        for (MassMoment item : items) {
            sum = sum.plus(item);
        }
        return sum;
    }

    private static String findings(MassMoment total, OptionalDouble forwardM, OptionalDouble aftM, double maxKg) {
        String found = new PlainAircraft()
                        .state(new Load.TakeoffGiven(total))
                        .limits(new MassLimits(maxKg, maxKg, maxKg, maxKg, 1), PerformanceLimits.NONE)
                        .envelope(forwardM, aftM)
                        .assessment()
                        .findings()
                        .stream()
                        .filter(finding -> finding.severity() != Severity.NOTE)
                        .map(finding -> finding.severity().label() + " "
                                + finding.code().code())
                        .collect(Collectors.joining(", "));
        return found.isEmpty() ? "none" : found;
    }
}
