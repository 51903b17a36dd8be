package org.steelyard.analyse.column;

import java.io.Serializable;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.Extra;

/**
 * By what the flights of a season are grouped: how the group of a flight is got, written and put in order. A new
 * grouping is one more of these.
 *
 * @param <K> what tells groups apart
 */
public final class GroupKind<K> {

    public static final GroupKind<String> TYPE =
            ofNames("type", flight -> flight.loading().type().id());
    public static final GroupKind<TrimSetting> SETTING = new GroupKind<>(
            "flap setting",
            TrimSetting::of,
            setting -> TrimSetting.shown(setting.flaps(), setting.thrust()),
            TrimSetting.BY_NAME);
    public static final GroupKind<String> TAIL =
            ofNames("tail", flight -> flight.loading().tail().registration());
    public static final GroupKind<String> ROUTE =
            ofNames("route", flight -> flight.loading().flight().route());
    public static final GroupKind<YearMonth> MONTH = new GroupKind<>(
            "month", flight -> YearMonth.from(date(flight)), YearMonth::toString, Comparator.naturalOrder());
    public static final GroupKind<Week> WEEK =
            new GroupKind<>("week", flight -> Week.of(date(flight)), Week::label, Week.IN_TIME);
    public static final GroupKind<Band> MASS_BAND = new GroupKind<>(
            "take-off mass",
            flight -> Band.ofMass(
                    flight.loading().type(), flight.balance().takeoff().massKg()),
            Band::label,
            Band.IN_ORDER);
    public static final GroupKind<Band> LOAD_FACTOR = new GroupKind<>(
            "load factor",
            flight ->
                    Band.ofLoadFactor(flight.loading().type(), flight.balance().distribution()),
            Band::label,
            Band.IN_ORDER);

    /** Those that every season has; the columns that the user names come after them. */
    public static final List<GroupKind<?>> ALL =
            List.of(TYPE, SETTING, TAIL, ROUTE, MONTH, WEEK, MASS_BAND, LOAD_FACTOR);

    private static final String BY = "by ";

    private final String id;
    private final String name;
    private final Function<AuditedFlight, K> of;
    private final Function<K, String> label;
    private final Comparator<K> order;

    /** An ISO week. */
    public record Week(int year, int week) implements Serializable {

        static final Comparator<Week> IN_TIME =
                Comparator.comparingInt(Week::year).thenComparingInt(Week::week);

        static Week of(LocalDate date) {
            return new Week(date.get(IsoFields.WEEK_BASED_YEAR), date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
        }

        String label() {
            return year + (week < 10 ? "-W0" : "-W") + week;
        }
    }

    private GroupKind(String name, Function<AuditedFlight, K> of, Function<K, String> label, Comparator<K> order) {
        this(name, name, of, label, order);
    }

    private GroupKind(
            String id, String name, Function<AuditedFlight, K> of, Function<K, String> label, Comparator<K> order) {
        this.id = id;
        this.name = name;
        this.of = of;
        this.label = label;
        this.order = order;
    }

    private static GroupKind<String> ofNames(String name, Function<AuditedFlight, String> of) {
        return ofNames(name, name, of);
    }

    private static GroupKind<String> ofNames(String id, String name, Function<AuditedFlight, String> of) {
        return new GroupKind<>(id, name, of, group -> group.isBlank() ? "not given" : group, GroupOrder.BY_NAME);
    }

    /** Grouping by a carried column, whose heading is compared in any case of letters. */
    public static GroupKind<String> named(String heading) {
        return ofNames(BY + heading, heading, flight -> carried(flight, heading).orElse(""));
    }

    private static LocalDate date(AuditedFlight flight) {
        return flight.loading().flight().date();
    }

    /** What stands in a carried column; empty where the flight does not have it. */
    public static Optional<String> carried(AuditedFlight flight, String heading) {
        for (Extra extra : flight.loading().extras()) {
            if (extra.name().equalsIgnoreCase(heading)) {
                return Optional.of(extra.value());
            }
        }
        return Optional.empty();
    }

    /** Tells it from all others, also from a carried column of the same name. */
    public String id() {
        return id;
    }

    /** The name of the kind of an id. */
    public static String nameOf(String id) {
        return id.startsWith(BY) ? id.substring(BY.length()) : id;
    }

    /** What it is called. */
    public String name() {
        return name;
    }

    /** Whether it is a carried column that the user named. */
    public boolean isNamed() {
        return id.startsWith(BY);
    }

    /** Whether what moves the CG of its groups is looked for in their loads. */
    public boolean isExplained() {
        return this == TAIL || this == ROUTE || this == WEEK || isNamed();
    }

    /** Whether there may be too many groups: not of what the configuration and the calendar hold within bounds. */
    boolean isOpen() {
        return this == TAIL || this == ROUTE || this == MASS_BAND || this == LOAD_FACTOR || isNamed();
    }

    /** The group of a flight. */
    public K of(AuditedFlight flight) {
        return of.apply(flight);
    }

    String label(K group) {
        return label.apply(group);
    }

    Comparator<K> order() {
        return order;
    }
}
