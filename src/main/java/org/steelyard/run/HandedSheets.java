package org.steelyard.run;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.steelyard.grade.mark.HandedIn;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.DuplicateRule;

/**
 * Sheets as they were handed in, in the order in which they were read. What an exercise asks for is what any of its
 * sheets has room for. Sheets of one student for one exercise, by the name without regard to capitals and blanks, are
 * one too many: the scheme says which stands. A sheet without a name is nobody's.
 */
final class HandedSheets {

    private final DuplicateRule rule;
    private final List<Handed> all = new ArrayList<>();
    private final Map<Loading, Set<SheetItem>> asked = new HashMap<>();
    private final Map<Loading, Map<String, List<Handed>>> byStudent = new HashMap<>();

    /** A sheet with its number in the order of reading, and the loading that it answers. */
    record Handed(int number, StudentSheet sheet, Loading loading) {}

    HandedSheets(DuplicateRule rule) {
        this.rule = rule;
    }

    void add(StudentSheet sheet, Loading loading) {
        Handed handed = new Handed(all.size(), sheet, loading);
        all.add(handed);
        asked.computeIfAbsent(loading, one -> EnumSet.noneOf(SheetItem.class)).addAll(sheet.asked());
        byStudent
                .computeIfAbsent(loading, one -> new HashMap<>())
                .computeIfAbsent(name(handed), one -> new ArrayList<>())
                .add(handed);
    }

    /** The name of the student, or one that no student has. */
    private static String name(Handed handed) {
        String name = handed.sheet().student().strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
        return name.isEmpty() ? "\n" + handed.number() : name;
    }

    private List<Handed> same(Handed one) {
        return byStudent.get(one.loading()).get(name(one));
    }

    /** The sheets that count, asked for what their exercises ask for; those that give way are told of. */
    List<Handed> standing(List<InputProblem> problems) {
        List<Handed> standing = new ArrayList<>();
        for (Handed one : all) {
            if (stands(one)) {
                standing.add(new Handed(one.number(), one.sheet().asking(asked.get(one.loading())), one.loading()));
            } else {
                problems.add(gaveWay(one));
            }
        }
        return standing;
    }

    HandedIn among(Handed standing) {
        List<Handed> same = same(standing);
        return new HandedIn(
                same.size(),
                rule,
                same.stream()
                        .filter(one -> !stands(one))
                        .map(one -> one.sheet().origin())
                        .toList());
    }

    private boolean stands(Handed one) {
        List<Handed> same = same(one);
        return same.size() == 1
                || switch (rule) {
                    case FIRST -> same.get(0).number() == one.number();
                    case LAST -> same.get(same.size() - 1).number() == one.number();
                    case NONE -> false;
                    case ALL -> true;
                };
    }

    private InputProblem gaveWay(Handed one) {
        List<Handed> same = same(one);
        String way = same.stream()
                .filter(this::stands)
                .findFirst()
                .map(other -> "gives way to " + other.sheet().origin())
                .orElse("does not count");
        return new InputProblem(
                one.sheet().origin(),
                "student",
                ProblemCode.DUPLICATE,
                "the sheet " + way + ": " + one.loading().flight().flight() + " is handed in "
                        + HandedIn.times(same.size()) + ", and " + (rule == DuplicateRule.NONE ? "" : "the ")
                        + rule.label(),
                one.sheet().student(),
                "one sheet of a student for each exercise");
    }
}
