package org.steelyard.report.file;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.steelyard.report.text.Caution;

/**
 * What this program wrote into a folder, each file with size and checksum: {@code run.json} lists the reports of a
 * season, {@value #NAME} what other commands wrote, and {@value #NEXT} reports in parts that are being put in place. A
 * file counts as written by this program as long as it is as the list says, or carries a mark of its own
 * ({@link OutputMark}).
 */
public final class OutputList {

    /** The list of all outputs but those of a season. */
    static final String NAME = "outputs.json";

    /** The list of a season's reports that are being put in place one after the other. */
    public static final String NEXT = ".run.json";

    /** A longer file is no list of outputs. */
    public static final long LONGEST_BYTES = 256L << 20;

    /** The names of all lists. */
    static final List<String> LISTS = List.of(OutputFile.RUN.fileName(), NAME, NEXT);

    private static final String PROGRAM = "program";
    private static final String STEELYARD = "Steelyard";
    private static final String OUTPUTS = "outputs";
    private static final String FILE = "file";
    private static final String BYTES = "bytes";
    private static final String SHA256 = "sha256";

    private final Path folder;
    private final Map<String, List<FileSum>> sums = new LinkedHashMap<>();
    private final Map<String, FileSum> others = new LinkedHashMap<>();
    private final Map<String, Boolean> lists = new LinkedHashMap<>();

    private OutputList(Path folder) {
        this.folder = folder;
    }

    /**
     * Reads the lists of a folder; what is none of ours lists nothing.
     *
     * @param folder the folder, or another that holds its lists ({@link #names()})
     * @return what they list
     */
    public static OutputList in(Path folder) {
        OutputList list = new OutputList(folder);
        for (String name : LISTS) {
            Optional<JsonNode> tree = tree(folder.resolve(name));
            list.lists.put(name, tree.isPresent());
            Map<String, FileSum> found = tree.map(OutputList::listed).orElse(Map.of());
            found.forEach((file, sum) ->
                    list.sums.computeIfAbsent(file, absent -> new ArrayList<>()).add(sum));
            if (name.equals(NAME)) {
                list.others.putAll(found);
            }
        }
        return list;
    }

    /**
     * The names of all lists.
     *
     * @return names of files, each of which may be in a folder of outputs
     */
    public static List<String> names() {
        return LISTS;
    }

    /** The tree of a list, if it was written by this program and is whole. */
    private static Optional<JsonNode> tree(Path file) {
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > LONGEST_BYTES) {
                return Optional.empty();
            }
            JsonNode tree = new ObjectMapper().readTree(Files.readAllBytes(file));
            return Optional.ofNullable(tree)
                    .filter(found -> found.path(PROGRAM).asText().equals(STEELYARD)
                            && found.path(OUTPUTS).isArray());
        } catch (IOException e) {
            return Optional.empty(); // none of ours, or not whole
        }
    }

    private static Map<String, FileSum> listed(JsonNode tree) {
        Map<String, FileSum> sums = new LinkedHashMap<>();
        for (JsonNode output : tree.path(OUTPUTS)) {
            if (output.path(BYTES).isIntegralNumber() && output.path(SHA256).isTextual()) {
                sums.put(
                        output.path(FILE).asText(),
                        new FileSum(
                                output.path(BYTES).asLong(), output.path(SHA256).asText()));
            }
        }
        return sums;
    }

    /**
     * Says of a file whether this program wrote it into the folder where it is, and nobody changed it since.
     *
     * @param folder the folder whose files are asked for
     * @return asks for one file of it
     */
    public static Predicate<Path> isIn(Path folder) {
        OutputList list = Files.isDirectory(folder) ? in(folder) : new OutputList(folder);
        return file -> list.holds(String.valueOf(file.getFileName()));
    }

    /**
     * Whether there is a whole list of that name.
     *
     * @param list its name
     * @return false if it is not there, or not as this program writes it
     */
    public boolean isWhole(String list) {
        return lists.getOrDefault(list, false);
    }

    /**
     * What a file is listed with.
     *
     * @param name its name, with a slash after that of a sub-folder
     * @return empty if it is not listed; two where a run was ended while it put its files in place
     */
    public List<FileSum> sums(String name) {
        return List.copyOf(sums.getOrDefault(name, List.of()));
    }

    /**
     * Whether a name is listed, or that of a list or of a folder of listed files.
     *
     * @param name a name in the folder
     * @return whether this program wrote a file or folder of that name there
     */
    public boolean names(String name) {
        return isWhole(name)
                || sums.containsKey(name)
                || sums.keySet().stream().anyMatch(listed -> listed.startsWith(name + "/"));
    }

    /** Whether a file is as it is listed, or a list. */
    public boolean holds(String name) {
        if (isWhole(name)) {
            return true;
        }
        return sums(name).stream().anyMatch(sum -> isThere(name, sum));
    }

    private boolean isThere(String name, FileSum sum) {
        try {
            return sum.agrees(folder.resolve(name));
        } catch (IOException e) {
            return false;
        }
    }

    /** Whether this program wrote a file of the folder, and nobody changed it since. */
    boolean wrote(String name) {
        return holds(name) || OutputMark.isOn(folder.resolve(name));
    }

    /** The list as it stands in {@value #NAME} after more was written: what stays and what is new. */
    String with(Map<String, FileSum> more, Collection<String> gone) {
        ArrayNode outputs = JsonNodeFactory.instance.arrayNode();
        Map<String, FileSum> all = new TreeMap<>(); // the same, whatever was written when
        others.forEach((name, sum) -> {
            if (!gone.contains(name) && isThere(name, sum)) {
                all.put(name, sum);
            }
        });
        all.putAll(more);
        all.forEach((name, sum) -> outputs.add(entry(name, Optional.of(sum))));
        ObjectNode tree =
                JsonNodeFactory.instance.objectNode().put(PROGRAM, STEELYARD).put("caution", Caution.TEXT);
        tree.set(OUTPUTS, outputs);
        return text(tree);
    }

    public static ObjectNode entry(String name, Optional<FileSum> sum) {
        ObjectNode entry = JsonNodeFactory.instance.objectNode().put(FILE, name);
        sum.ifPresent(known -> entry.put(BYTES, known.bytes()).put(SHA256, known.sha256()));
        return entry;
    }

    /** A tree as text that is the same on every system. */
    public static String text(ObjectNode tree) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter pretty = new DefaultPrettyPrinter();
        pretty.indentObjectsWith(indent);
        pretty.indentArraysWith(indent);
        try {
            byte[] bytes = new ObjectMapper().writer(pretty).writeValueAsBytes(tree);
            return new String(bytes, StandardCharsets.UTF_8) + "\n";
        } catch (JacksonException e) {
            throw new IllegalStateException("a tree of texts and numbers can always be written", e);
        }
    }
}
