package org.steelyard.analyse.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import org.steelyard.analyse.column.FlightColumns;
import org.steelyard.analyse.column.GroupColumn;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.Grouped;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.part.SpreadDrivers.Driver;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.type.AircraftType;

/** Sums over the parts of the load by type, by setting, and by tail, route, week and named column within a type. */
public final class PartTallies {

    /** A group of one type. */
    public record Key(String grouping, int type, int group) {}

    /** Reasons are given for the first so many groups. */
    private static final int MOST_KEPT = 50_000;

    private final SeasonFigures figures;
    private final Map<String, LoadParts> names = new HashMap<>();
    private final Map<Integer, PartTally> byType = new HashMap<>();
    private final Map<Integer, PartTally> bySetting = new HashMap<>();
    private final Map<Key, PartMeans> byGroup = new HashMap<>();
    private int kinds = Integer.MAX_VALUE;
    private boolean full;

    public PartTallies(SeasonFigures figures) {
        this.figures = figures;
    }

    /** Takes the sums of a type. */
    public void put(LoadParts parts, PartTally sums) {
        names.put(parts.type().id(), parts);
        byType.put(figures.types().find(parts.type().id()), sums);
    }

    /** Takes the sums of a setting. */
    public void put(TrimSetting setting, PartTally sums) {
        bySetting.put(figures.settings().find(setting), sums);
    }

    /** Takes the sums of a group. */
    public void put(Key key, PartMeans sums) {
        byGroup.put(key, sums);
    }

    /** Takes the flight that the columns took last; hands back its parts if they are known. */
    public Optional<PartFigures> add(AuditedFlight flight, FlightColumns columns) {
        if (!LoadParts.areKnown(flight)) {
            return Optional.empty();
        }
        AircraftType type = flight.loading().type();
        LoadParts parts = names.computeIfAbsent(type.id(), id -> new LoadParts(type));
        PartFigures figures = PartFigures.of(flight, parts);
        int index = columns.flights() - 1;
        OptionalDouble trim = columns.of(Measure.TAKEOFF_TRIM).at(index);
        int typeCode = columns.column(GroupKind.TYPE).of(index);
        double[] all = figures.all();
        tally(byType, typeCode, parts).add(figures, all, OptionalDouble.empty());
        tally(bySetting, columns.column(GroupKind.SETTING).of(index), parts).add(figures, all, trim);
        forgetWhatIsLeftOut(columns.withinTypes());
        for (GroupColumn<?> column : columns.withinTypes()) {
            add(new Key(column.grouping(), typeCode, column.of(index)), parts, all);
        }
        return Optional.of(figures);
    }

    private void forgetWhatIsLeftOut(List<GroupColumn<?>> left) {
        if (left.size() < kinds) {
            kinds = left.size();
            byGroup.keySet()
                    .removeIf(key ->
                            left.stream().noneMatch(column -> column.grouping().equals(key.grouping())));
        }
    }

    private void add(Key key, LoadParts parts, double[] figures) {
        PartMeans known = byGroup.get(key);
        if (known != null) {
            known.add(figures);
        } else if (byGroup.size() >= MOST_KEPT) {
            full = true; // for good, as a group that comes in later would lack its first flights
        } else if (!full) {
            PartMeans first = new PartMeans(parts.size());
            first.add(figures);
            byGroup.put(key, first);
        }
    }

    private static <K> PartTally tally(Map<K, PartTally> tallies, K key, LoadParts parts) {
        return tallies.computeIfAbsent(key, absent -> new PartTally(parts.size()));
    }

    public LoadParts names(String typeId) {
        return names.get(typeId);
    }

    public PartTally ofSetting(TrimSetting setting) {
        return bySetting.get(figures.settings().find(setting));
    }

    /** What moves the mean CG of some groups against that of others; nothing where either has no detail. */
    public List<PartPull> reasons(String grouping, int type, IntPredicate these, IntPredicate those) {
        LoadParts parts = names.get(figures.types().key(type));
        if (parts == null) {
            return List.of();
        }
        PartMeans one = new PartMeans(parts.size());
        PartMeans other = new PartMeans(parts.size());
        byGroup.forEach((key, means) -> {
            if (key.type() == type && key.grouping().equals(grouping)) {
                if (these.test(key.group())) {
                    one.add(means);
                }
                if (those.test(key.group())) {
                    other.add(means);
                }
            }
        });
        double about = byType.get(type).meanAboutReference();
        return one.n() == 0 || other.n() == 0
                ? List.of()
                : PartPull.greatest(parts, j -> one.meanPull(j, about) - other.meanPull(j, about));
    }

    /** What drives the spread of CG by type, then of trim by setting. */
    public List<SpreadDrivers> drivers() {
        List<SpreadDrivers> drivers = new ArrayList<>();
        Grouped cg = figures.byType(Measure.TAKEOFF_CG);
        for (int type : figures.types().inOrder()) {
            PartTally tally = byType.get(type);
            if (tally != null && tally.n() >= SpreadDrivers.FEWEST && tally.sdCg() > 0) {
                drivers.add(ofCg(type, tally, cg.n(type)));
            }
        }
        Grouped trim = figures.bySetting(Measure.TAKEOFF_TRIM);
        for (int setting : figures.settings().inOrder()) {
            PartTally tally = bySetting.get(setting);
            if (tally != null && tally.nTrim() >= SpreadDrivers.FEWEST && tally.sdTrim() > 0) {
                drivers.add(ofTrim(setting, tally, trim.n(setting)));
            }
        }
        return drivers;
    }

    private SpreadDrivers ofCg(int type, PartTally tally, long flights) {
        String id = figures.types().key(type);
        return new SpreadDrivers(
                Measure.TAKEOFF_CG,
                id,
                "",
                "",
                tally.n(),
                flights - tally.n(),
                tally.sdCg(),
                ranked(names.get(id), tally, false),
                0);
    }

    private SpreadDrivers ofTrim(int setting, PartTally tally, long flights) {
        TrimSetting key = figures.settings().key(setting);
        List<Driver> drivers = ranked(names.get(key.typeId()), tally, true);
        double explained = drivers.stream().mapToDouble(Driver::share).sum();
        return new SpreadDrivers(
                Measure.TAKEOFF_TRIM,
                key.typeId(),
                key.flaps(),
                key.thrust(),
                tally.nTrim(),
                flights - tally.nTrim(),
                tally.sdTrim(),
                drivers,
                1 - explained);
    }

    private static List<Driver> ranked(LoadParts parts, PartTally tally, boolean trim) {
        List<Driver> drivers = new ArrayList<>();
        for (int j = 0; j < parts.size(); j++) {
            drivers.add(new Driver(
                    parts.name(j),
                    parts.kind(j),
                    tally.meanMassKg(j),
                    tally.meanPull(j, tally.meanAboutReference()),
                    trim ? tally.shareOfTrim(j) : tally.shareOfCg(j)));
        }
        drivers.sort(
                Comparator.comparingDouble((Driver driver) -> -driver.share()).thenComparing(Driver::part));
        return drivers;
    }
}
