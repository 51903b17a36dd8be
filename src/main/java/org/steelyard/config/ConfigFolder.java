package org.steelyard.config;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.steelyard.config.file.ColumnsFile;
import org.steelyard.config.file.MarkingFile;
import org.steelyard.config.file.PolicyFile;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.ConfigSource;
import org.steelyard.config.source.Faults;
import org.steelyard.config.source.SourceFiles;
import org.steelyard.config.source.YamlNode;
import org.steelyard.config.source.YamlText;
import org.steelyard.config.type.AirframeFile;
import org.steelyard.config.type.FleetFile;
import org.steelyard.config.type.SchemeFile;
import org.steelyard.config.type.TypeFile;
import org.steelyard.config.value.EntryNames;
import org.steelyard.config.value.HeadedRows;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.KnownPlaces;
import org.steelyard.config.value.KnownValues;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Airframe;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;

/**
 * Reads a configuration folder: {@code standard-masses.yaml}, {@code types/*.yaml}, {@code fleet.csv},
 * {@code policy.yaml}, {@code columns/*.yaml} and, if there are any, {@code airframes/*.yaml}. The folder's own README
 * explains each key. Reading goes on past every fault, so that all of them are named in one go.
 */
public final class ConfigFolder {

    static final String SCHEMES = "standard-masses.yaml";
    static final String TYPES = "types";
    static final String FLEET = "fleet.csv";
    static final String POLICY = "policy.yaml";
    static final String COLUMNS = "columns";
    static final String AIRFRAMES = "airframes";
    static final String MARKING = "marking.yaml";

    private final SourceFiles files;
    private final Faults faults;
    private final Optional<String> onlyType;

    private ConfigFolder(Path folder, Faults faults, Optional<String> onlyType) {
        this.files = new SourceFiles(folder, faults);
        this.faults = faults;
        this.onlyType = onlyType;
    }

    /**
     * Reads a folder.
     *
     * @param folder the configuration folder
     * @return the configuration, or all faults
     */
    public static ConfigResult load(Path folder) {
        return load(folder, new Faults());
    }

    public static ConfigResult load(Path folder, Faults faults) {
        if (!Files.isDirectory(folder)) {
            faults.add(folder.toString().replace('\\', '/'), "the folder is missing", "a configuration folder");
            return new ConfigResult.Faulty(faults.sorted(), List.of());
        }
        return new ConfigFolder(folder, faults, Optional.empty()).read();
    }

    /**
     * Reads no more of a folder than one flight needs: standard masses, policy, fleet and the type; neither the other
     * types nor heading maps and airframes, whose faults are then not noticed, and no checksums. Where that does not
     * serve – the type or tail is not found, or something is at fault – it reads the whole folder.
     *
     * @param folder the configuration folder
     * @param type id of the type, in any case of letters; empty where the tail says it
     * @param tail registration, in any case of letters; empty where the type is given
     * @return the configuration with that type and its tails, or the whole of it, or all faults
     */
    public static ConfigResult loadForFlight(Path folder, Optional<String> type, Optional<String> tail) {
        Optional<String> only = type.or(() -> tail.flatMap(one -> typeOf(folder, one)));
        if (only.isPresent()) {
            Faults faults = new Faults();
            ConfigResult result = new ConfigFolder(folder, faults, only).readForFlight();
            if (result instanceof ConfigResult.Loaded loaded && holds(loaded.configuration(), only.get())) {
                return result;
            }
        }
        return load(folder);
    }

    private static boolean holds(Configuration configuration, String type) {
        return configuration.types().keySet().stream().anyMatch(id -> id.equalsIgnoreCase(type.strip()));
    }

    /** The type that the fleet gives a tail, if it does. */
    private static Optional<String> typeOf(Path folder, String tail) {
        Faults unheard = new Faults();
        return new SourceFiles(folder, unheard)
                .text(FLEET).stream()
                        .flatMap(text -> HeadedRows.rows(FLEET, text, FleetFile.HEADINGS, unheard).stream())
                        .filter(row -> name(row, FleetFile.TAIL).equalsIgnoreCase(tail.strip()))
                        .map(row -> name(row, FleetFile.TYPE))
                        .findFirst();
    }

    /**
     * Reads a marking scheme from a file of its own.
     *
     * @param file the file, of the form of {@code marking.yaml}
     * @param faults where what is wrong with it goes
     * @return the scheme, empty where there is a fault
     */
    public static Optional<MarkingScheme> marking(Path file, List<ConfigFault> faults) {
        Path whole = file.toAbsolutePath().normalize();
        Faults found = new Faults();
        Optional<MarkingScheme> scheme = new ConfigFolder(whole.getParent(), found, Optional.empty())
                .keys(String.valueOf(whole.getFileName()), "marking")
                .flatMap(MarkingFile::read);
        faults.addAll(found.sorted());
        return found.isEmpty() ? scheme : Optional.empty();
    }

    private ConfigResult readForFlight() {
        KnownValues<MassScheme> schemes = schemes();
        KnownValues<AircraftType> types = types(schemes);
        Map<String, Tail> tails = tails(types, schemes);
        Optional<Policy> policy = keys(POLICY, "policy").flatMap(PolicyFile::read);
        return result(schemes, types, tails, policy, Map.of(), List.of(), Optional.empty(), List.of());
    }

    private ConfigResult read() {
        KnownValues<MassScheme> schemes = schemes();
        KnownValues<AircraftType> types = types(schemes);
        Map<String, Tail> tails = tails(types, schemes);
        Optional<Policy> policy = keys(POLICY, "policy").flatMap(PolicyFile::read);
        Map<String, Airframe> airframes = airframes(types);
        List<ColumnMap> maps = maps(types, schemes);
        Optional<MarkingScheme> marking =
                files.has(MARKING) ? keys(MARKING, "marking").flatMap(MarkingFile::read) : Optional.empty();
        return result(schemes, types, tails, policy, airframes, maps, marking, files.sources());
    }

    private ConfigResult result(
            KnownValues<MassScheme> schemes,
            KnownValues<AircraftType> types,
            Map<String, Tail> tails,
            Optional<Policy> policy,
            Map<String, Airframe> airframes,
            List<ColumnMap> maps,
            Optional<MarkingScheme> marking,
            List<ConfigSource> sources) {
        if (!faults.isEmpty()) {
            return new ConfigResult.Faulty(faults.sorted(), sources);
        }
        return new ConfigResult.Loaded(new Configuration(
                new TreeMap<>(types.values()),
                new TreeMap<>(tails),
                policy.orElseThrow(),
                new TreeMap<>(airframes),
                new TreeMap<>(schemes.values()),
                maps,
                marking,
                sources));
    }

    private KnownValues<MassScheme> schemes() {
        Optional<Keys> keys = keys(SCHEMES, "schemes");
        EntryNames names = EntryNames.in("scheme", keys.flatMap(found -> found.peek("schemes")), "id");
        Map<String, MassScheme> schemes = new TreeMap<>();
        keys.map(SchemeFile::read).orElse(List.of()).forEach(scheme -> schemes.put(scheme.id(), scheme));
        return new KnownValues<>("scheme", schemes, new HashSet<>(names.names()), keys.isPresent());
    }

    private KnownValues<AircraftType> types(KnownValues<MassScheme> schemes) {
        Map<String, AircraftType> types = new TreeMap<>();
        Set<String> names = new TreeSet<>();
        List<String> paths =
                files.yamlFiles(TYPES).stream().filter(this::isWanted).toList();
        List<Keys> each = named(paths, "type");
        for (Keys keys : each) {
            names.add(name(keys, "type"));
            TypeFile.read(keys, schemes).ifPresent(type -> types.put(type.id(), type));
        }
        boolean complete = onlyType.isEmpty() && each.size() == paths.size() && !names.contains("");
        return new KnownValues<>("type", types, names, complete);
    }

    /** Whether a file of a type may be the one that is wanted: it holds the type's id somewhere. */
    private boolean isWanted(String path) {
        return onlyType.isEmpty()
                || files.peek(path)
                        .toLowerCase(Locale.ROOT)
                        .contains(onlyType.get().strip().toLowerCase(Locale.ROOT));
    }

    private Map<String, Tail> tails(KnownValues<AircraftType> types, KnownValues<MassScheme> schemes) {
        return files.text(FLEET)
                .map(text -> FleetFile.read(HeadedRows.rows(FLEET, text, FleetFile.HEADINGS, faults), types, schemes))
                .orElse(Map.of());
    }

    private Map<String, Airframe> airframes(KnownValues<AircraftType> types) {
        Map<String, Airframe> airframes = new TreeMap<>();
        for (Keys keys : named(files.yamlFilesIfAny(AIRFRAMES), "airframe")) {
            AirframeFile.read(keys, types).ifPresent(airframe -> airframes.put(airframe.typeId(), airframe));
        }
        return airframes;
    }

    private List<ColumnMap> maps(KnownValues<AircraftType> types, KnownValues<MassScheme> schemes) {
        KnownPlaces places = KnownPlaces.of(types.values().values(), types.allSound());
        List<ColumnMap> maps = new ArrayList<>();
        for (Keys keys : named(files.yamlFiles(COLUMNS), "map")) {
            ColumnsFile.read(keys, places, schemes).ifPresent(maps::add);
        }
        return maps;
    }

    /** Files that each give themselves a name at a key; one that another file has already is a fault. */
    private List<Keys> named(List<String> paths, String nameKey) {
        List<Keys> each = new ArrayList<>();
        Map<String, String> pathsByName = new TreeMap<>();
        for (String path : paths) {
            Optional<Keys> keys = keys(path, nameKey);
            keys.ifPresent(found -> {
                String before = pathsByName.putIfAbsent(name(found, nameKey), path);
                if (before != null) {
                    found.fault(nameKey, "the name stands twice, first in " + before, "each name once");
                }
                each.add(found);
            });
        }
        return each;
    }

    private static String name(Keys keys, String nameKey) {
        return keys.peek(nameKey)
                .map(node -> node instanceof YamlNode.Text text ? text.text() : "")
                .orElse("");
    }

    private Optional<Keys> keys(String path, String kind) {
        return files.text(path)
                .flatMap(text -> YamlText.parse(path, text, faults))
                .map(group -> Keys.of(path, kind, group, faults));
    }
}
