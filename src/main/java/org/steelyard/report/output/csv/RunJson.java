package org.steelyard.report.output.csv;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.type.NotChecked;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.policy.Policy;
import org.steelyard.report.file.FileSum;
import org.steelyard.report.file.OutputFile;
import org.steelyard.report.file.OutputList;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.output.SkippedRows;
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.Utf8;
import org.steelyard.report.words.Methods;

/**
 * {@code run.json}: what was read, under which rules, by which methods, and the totals. Nothing in it depends on time
 * or machine, and keys keep their order, so the same inputs give the same bytes.
 */
public final class RunJson implements SeasonOutput {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Path path;
    private final Map<String, FileSum> parts;

    public RunJson(Path path) {
        this(path, Map.of());
    }

    /** One of reports of which some are in parts, which lie elsewhere. */
    public RunJson(Path path, Map<String, FileSum> parts) {
        this.path = path;
        this.parts = new LinkedHashMap<>(parts);
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        try (Writer writer = Utf8.writer(path)) {
            writer.write(OutputList.text(tree(result)));
        }
    }

    private ObjectNode tree(SeasonResult result) throws IOException {
        RunFacts facts = result.facts();
        ObjectNode tree = JSON.objectNode();
        tree.put("program", "Steelyard");
        tree.put("version", facts.version());
        tree.put("season", facts.season());
        tree.put("caution", Caution.TEXT);
        if (!facts.remarks().isEmpty()) {
            tree.set("remarks", texts(facts.remarks()));
        }
        tree.set("rows", rows(facts));
        tree.set("flights", flights(result.summary()));
        tree.set("findings", list(result.summary().findings(), RunJson::finding));
        tree.set("not_checked", list(facts.notChecked(result.summary()), RunJson::notChecked));
        tree.set("left_out_groupings", list(result.summary().statistics().leftOut(), RunJson::leftOut));
        tree.set("inputs", list(facts.inputs(), RunJson::input));
        tree.set("file_problems", list(result.fileProblems(), RunJson::problem));
        tree.set("skipped", list(facts.skipped(), RunJson::skipped));
        tree.set("skipped_rows", skippedRows(facts.skippedRows()));
        tree.set("config", list(facts.config(), RunJson::config));
        tree.set("options", texts(facts.options()));
        tree.set("policy", policy(result.policy()));
        tree.set("methods", methods());
        tree.set("outputs", outputs(result.files()));
        return tree;
    }

    /** All files with size and checksum, but for this one, which is not complete. */
    private ArrayNode outputs(List<OutputFile> files) throws IOException {
        ArrayNode list = JSON.arrayNode();
        for (OutputFile file : files) {
            Path written = path.resolveSibling(file.fileName());
            if (file == OutputFile.RUN) {
                list.add(OutputList.entry(file.fileName(), Optional.empty()));
            } else if (Files.isRegularFile(written)) {
                list.add(OutputList.entry(file.fileName(), Optional.of(FileSum.of(written))));
            } else {
                partsOf(file).forEach(part -> list.add(OutputList.entry(part, Optional.of(parts.get(part)))));
            }
        }
        return list;
    }

    private List<String> partsOf(OutputFile file) {
        return parts.keySet().stream()
                .filter(part -> part.startsWith(file.fileName() + "/"))
                .toList();
    }

    private static ObjectNode rows(RunFacts facts) {
        return JSON.objectNode()
                .put("seen", facts.rowsSeen())
                .put("accepted", facts.accepted())
                .put("rejected", facts.rejected())
                .put("blank", facts.blank())
                .put("skipped", facts.skippedRowCount());
    }

    private static ObjectNode flights(SeasonSummary summary) {
        StatusCount all = summary.all();
        return JSON.objectNode()
                .put("total", all.flights())
                .put("clean", all.clean())
                .put("marginal", all.marginal())
                .put("breached", all.breached())
                .put("blanks_as_none", summary.flightsWith(FindingCode.BLANK_LOAD));
    }

    private static ObjectNode finding(FindingCount count) {
        return JSON.objectNode()
                .put("code", count.code().code())
                .put("severity", count.severity().label())
                .put("findings", count.findings())
                .put("flights", count.flights());
    }

    private static ObjectNode notChecked(NotChecked some) {
        ObjectNode node = JSON.objectNode().put("type", some.type());
        node.set("phases", texts(some.phases().stream().map(Phase::label).toList()));
        return node;
    }

    private static ObjectNode leftOut(String grouping) {
        return JSON.objectNode().put("grouping", grouping).put("values_more_than", GroupNames.MOST_GROUPS);
    }

    private static ObjectNode input(RunFacts.InputFile input) {
        ObjectNode node = JSON.objectNode()
                .put("file", input.name())
                .put("sha256", input.sha256())
                .put("bytes", input.bytes())
                .put("map", input.mapName())
                .put("rows_seen", input.rowsSeen())
                .put("accepted", input.accepted())
                .put("rejected", input.rejected())
                .put("blank", input.blank())
                .put("skipped", input.skipped());
        node.set("notes", texts(input.notes()));
        return node;
    }

    private static ObjectNode problem(InputProblem problem) {
        return JSON.objectNode()
                .put("file", problem.origin().file())
                .put("sheet", problem.origin().sheet())
                .put("row", problem.origin().row())
                .put("column", problem.column())
                .put("code", problem.code().code())
                .put("reason", problem.reason())
                .put("value", problem.value())
                .put("expected", problem.expected());
    }

    private static ObjectNode skipped(RunFacts.SkippedFile skipped) {
        return JSON.objectNode().put("file", skipped.name()).put("reason", skipped.reason());
    }

    private static ObjectNode skippedRows(SkippedRows rows) {
        ObjectNode node = JSON.objectNode();
        ObjectNode counts = node.putObject("counts");
        rows.counts().forEach((kind, count) -> counts.put(kind.code(), count));
        node.set("first", list(rows.first(), RunJson::skippedRow));
        return node;
    }

    private static ObjectNode skippedRow(SkippedRow row) {
        return JSON.objectNode()
                .put("file", row.origin().file())
                .put("sheet", row.origin().sheet())
                .put("row", row.origin().row())
                .put("kind", row.kind().code())
                .put("reason", row.reason());
    }

    private static ObjectNode config(RunFacts.ConfigFile config) {
        return JSON.objectNode().put("file", config.name()).put("sha256", config.sha256());
    }

    private static ObjectNode policy(Policy policy) {
        ObjectNode tree = JSON.objectNode()
                .put("marginal_cg_pct_mac", policy.marginalCgPercentMac())
                .put("marginal_mass_pct", policy.marginalMassPercent())
                .put("marginal_load_pct", policy.marginalLoadPercent())
                .put("marginal_trim_units", policy.marginalTrimUnits())
                .put("sharing", policy.sharing().label())
                .put("duplicates", policy.duplicates().label());
        policy.recordedTrim()
                .ifPresent(rule -> tree.put("recorded_trim_marginal_units", rule.marginalUnits())
                        .put("recorded_trim_breach_units", rule.breachUnits())
                        .put("recorded_trim_by", rule.groupBy()));
        policy.chance()
                .ifPresent(rule ->
                        tree.put("chance_worth_a_look_pct", rule.percent()).put("chance_decides", rule.decides()));
        policy.spread().ifPresent(rule -> tree.put("seating", rule.seating().label()));
        tree.put("remedy_reserve_pct_mac", policy.remedyReservePercentMac());
        tree.put("remedy_fuel_reserve_pct_capacity", policy.remedyFuelReservePercent());
        return tree;
    }

    private static ObjectNode methods() {
        ObjectNode methods = JSON.objectNode();
        Methods.ALL.forEach(method -> methods.put(method.key(), method.text()));
        return methods;
    }

    private static <T> ArrayNode list(Collection<T> values, Function<T, ObjectNode> node) {
        ArrayNode list = JSON.arrayNode();
        values.forEach(value -> list.add(node.apply(value)));
        return list;
    }

    private static ArrayNode texts(Collection<String> values) {
        ArrayNode list = JSON.arrayNode();
        values.forEach(list::add);
        return list;
    }
}
