package org.steelyard.config;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.steelyard.config.source.ConfigSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Airframe;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Tail;

/**
 * All that a run is set up with.
 *
 * @param types aircraft types by their id, sorted
 * @param tails aircraft by registration, sorted
 * @param policy the operator's rules
 * @param airframes what is known to estimate trim from, by type, sorted
 * @param schemes schemes of standard masses by their id, sorted
 * @param maps heading maps in the order of their files' names
 * @param marking how load sheets are marked; empty where there is no scheme
 * @param sources files that all this comes from, sorted by path
 */
public record Configuration(
        SortedMap<String, AircraftType> types,
        SortedMap<String, Tail> tails,
        Policy policy,
        SortedMap<String, Airframe> airframes,
        SortedMap<String, MassScheme> schemes,
        List<ColumnMap> maps,
        Optional<MarkingScheme> marking,
        List<ConfigSource> sources) {

    public Configuration {
        types = sorted(types);
        tails = sorted(tails);
        Objects.requireNonNull(policy);
        airframes = sorted(airframes);
        schemes = sorted(schemes);
        maps = List.copyOf(maps);
        Objects.requireNonNull(marking);
        sources = List.copyOf(sources);
    }

    private static <V> SortedMap<String, V> sorted(Map<String, V> map) {
        return Collections.unmodifiableSortedMap(new TreeMap<>(map));
    }
}
