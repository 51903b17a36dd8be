package org.steelyard.grade.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.steelyard.grade.mark.Diagnosis;
import org.steelyard.grade.mark.Explanation;
import org.steelyard.grade.mark.MadeClass;
import org.steelyard.grade.mark.MadeClass.Sheet;
import org.steelyard.grade.working.SlipKind;

/** What was named on a made class, against what was planted. */
public final class SlipTable {

    private final List<Sheet> sheets;

    private final List<Sheet> strays;

    public SlipTable(List<Sheet> sheets, List<Sheet> strays) {
        this.sheets = sheets;
        this.strays = strays;
    }

    /** Share of the sheets with one figure off by chance that were given a cause for it, certain or not. */
    public double strayBlamePercent() {
        return 100.0 * strays.stream().filter(sheet -> !named(sheet).isEmpty()).count() / strays.size();
    }

    public List<Sheet> planted(int slips) {
        return sheets.stream().filter(sheet -> sheet.planted().size() == slips).toList();
    }

    public static List<Explanation> named(Sheet sheet) {
        return sheet.marked().diagnosis() instanceof Diagnosis.Found found && found.whole()
                ? found.explanations()
                : List.of();
    }

    static boolean first(Sheet sheet) {
        List<Explanation> named = named(sheet);
        return !named.isEmpty() && is(sheet, named.get(0));
    }

    static boolean inSet(Sheet sheet) {
        return named(sheet).stream().anyMatch(one -> is(sheet, one));
    }

    /** The planted slips, or a variant of them of which the student is told the same. */
    private static boolean is(Sheet sheet, Explanation explanation) {
        SlipText text = new SlipText(sheet.exercise());
        List<String> planted = sheet.planted().stream().map(text::sentence).toList();
        return explanation.slips().size() == planted.size()
                && explanation.sentences().containsAll(planted);
    }

    /** Share named first, or in a set of several that the sheet does not tell apart. */
    public double namedPercent(int slips) {
        List<Sheet> all = planted(slips);
        return 100.0 * all.stream().filter(SlipTable::inSet).count() / all.size();
    }

    double firstPercent(int slips) {
        List<Sheet> all = planted(slips);
        return 100.0 * all.stream().filter(SlipTable::first).count() / all.size();
    }

    public double falseBlamePercent() {
        List<Sheet> all = planted(0);
        long blamed = all.stream()
                .filter(sheet -> !(sheet.marked().diagnosis() instanceof Diagnosis.Nothing))
                .count();
        return 100.0 * blamed / all.size();
    }

    public String text() {
        List<String> lines = new ArrayList<>();
        lines.add("# Slips planted and slips named");
        lines.add("");
        lines.add("Written by the tests on a made class of " + sheets.size() + " sheets (seed " + MadeClass.SEED
                + ") over the three types of config/ and every difficulty.");
        lines.add("");
        lines.add("| sheets | n | named first | named first or among those that cannot be told apart |");
        lines.add("|---|---:|---:|---:|");
        for (int slips = 1; slips <= 2; slips++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "| with %s | %d | %.1f %% | %.1f %% |",
                    slips == 1 ? "one slip" : "two slips",
                    planted(slips).size(),
                    firstPercent(slips),
                    namedPercent(slips)));
        }
        lines.add("");
        lines.add(String.format(
                Locale.ROOT,
                "Right sheets: %d, of which %.2f %% were blamed for something.",
                planted(0).size(),
                falseBlamePercent()));
        lines.add("");
        lines.add(String.format(
                Locale.ROOT,
                "Sheets with one figure off by chance, by no slip: %d, of which %.1f %% were given a cause all the same.",
                strays.size(),
                strayBlamePercent()));
        kinds(lines);
        apart(lines);
        return String.join("\n", lines) + "\n";
    }

    private void kinds(List<String> lines) {
        lines.add("");
        lines.add("## One slip: what was named first, by kind");
        lines.add("");
        lines.add("| planted | n | same slip first | same slip in the set | else first |");
        lines.add("|---|---:|---:|---:|---|");
        Map<SlipKind, List<Sheet>> byKind = new EnumMap<>(SlipKind.class);
        planted(1)
                .forEach(sheet -> byKind.computeIfAbsent(sheet.planted().get(0).kind(), kind -> new ArrayList<>())
                        .add(sheet));
        byKind.forEach((kind, of) -> {
            Map<String, Integer> others = new TreeMap<>();
            of.stream()
                    .filter(sheet -> !first(sheet))
                    .forEach(sheet -> others.merge(
                            named(sheet).isEmpty()
                                    ? "cannot tell"
                                    : kinds(named(sheet).get(0)),
                            1,
                            Integer::sum));
            lines.add("| " + kind.label() + " | " + of.size() + " | "
                    + of.stream().filter(SlipTable::first).count() + " | "
                    + of.stream().filter(SlipTable::inSet).count() + " | "
                    + String.join(
                            ", ",
                            others.entrySet().stream()
                                    .map(entry -> entry.getKey() + " " + entry.getValue())
                                    .toList())
                    + " |");
        });
    }

    private static String kinds(Explanation explanation) {
        return String.join(
                " + ",
                explanation.slips().stream().map(slip -> slip.kind().label()).toList());
    }

    /** Kinds that stood together as not to be told apart. */
    private void apart(List<String> lines) {
        Map<String, Integer> sets = new TreeMap<>();
        planted(1).stream()
                .filter(sheet -> named(sheet).size() > 1)
                .forEach(sheet -> sets.merge(
                        String.join(
                                " / ",
                                named(sheet).stream()
                                        .map(SlipTable::kinds)
                                        .distinct()
                                        .sorted()
                                        .toList()),
                        1,
                        Integer::sum));
        lines.add("");
        lines.add("## Slips that cannot be told apart on some sheets");
        lines.add("");
        lines.add("| named together | sheets |");
        lines.add("|---|---:|");
        sets.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(entry -> lines.add("| " + entry.getKey() + " | " + entry.getValue() + " |"));
    }
}
