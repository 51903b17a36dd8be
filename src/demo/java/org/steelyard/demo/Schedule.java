package org.steelyard.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.Tail;

/** The flights of a month: which tail goes where on which day, each loaded cleanly. */
final class Schedule {

    private static final long SEED = 20260401;
    private static final int TRIES = 200;
    private static final int JETS = 1;
    private static final int PROPS = 2;
    private static final int CLUB = 3;

    private final List<Tail> fleet;
    private final Audit audit;

    Schedule(List<Tail> fleet, Audit audit) {
        this.fleet = List.copyOf(fleet);
        this.audit = audit;
    }

    private List<Tail> tails(String type) {
        return fleet.stream().filter(tail -> tail.type().id().equals(type)).toList();
    }

    /** The airline's month. */
    List<Entry> airline(Style style, YearMonth month) {
        List<Entry> entries = new ArrayList<>();
        for (int day = 1; day <= month.lengthOfMonth(); day++) {
            LocalDate date = month.atDay(day);
            boolean busy = date.getDayOfWeek() == DayOfWeek.FRIDAY || date.getDayOfWeek() == DayOfWeek.SUNDAY;
            int jets = (month.getMonthValue() >= 7 && month.getMonthValue() <= 8 ? 6 : 5) + (busy ? 1 : 0);
            rotations(style, date, JETS, jets, entries);
            rotations(style, date, PROPS, busy ? 3 : 2, entries);
        }
        return entries;
    }

    private void rotations(Style style, LocalDate date, int kind, int count, List<Entry> entries) {
        List<Tail> tails = tails(kind == JETS ? "jet180" : "prop70");
        List<Network.Route> routes = kind == JETS ? Network.JET : Network.PROP;
        for (int i = 0; i < count; i++) {
            Draws draws = new Draws(SEED, date.toEpochDay(), kind, i);
            Network.Route route = routes.get((date.getDayOfYear() + i) % routes.size());
            Tail tail = tails.get((date.getDayOfYear() * count + i) % tails.size());
            String pilot = draws.pick(Network.PILOTS);
            for (int leg = 0; leg < 2; leg++) {
                DemoRow bare = bare(style, tail, date, (kind == JETS ? "J-" : "P-") + (route.number() + 2 * i + leg));
                bare.text(Field.FROM, leg == 0 ? Network.BASE : route.place());
                bare.text(Field.TO, leg == 0 ? route.place() : Network.BASE);
                bare.text(Field.EXTRA, pilot);
                AirlineLoader loader = new AirlineLoader(kind == JETS ? Custom.JET : Custom.PROP, route, audit, draws);
                entries.add(Entry.clean(airline(loader, bare, date, draws), date));
            }
        }
    }

    private static DemoRow bare(Style style, Tail tail, LocalDate date, String flight) {
        DemoRow row = new DemoRow(style, tail);
        row.text(Field.FLIGHT, flight);
        row.put(Meaning.of(Field.DATE), new Cell.Day(date));
        return row;
    }

    private DemoRow airline(AirlineLoader loader, DemoRow bare, LocalDate date, Draws draws) {
        for (int i = 0; i < TRIES; i++) {
            Optional<DemoRow> loaded = loader.attempt(bare, date);
            if (loaded.isPresent()) {
                DemoRow row = loaded.get();
                limits(row, draws);
                if (row.type().id().equals("jet180")) {
                    loader.recordTrim(row);
                }
                return coarser(row, draws);
            }
        }
        throw new IllegalStateException("no clean load was drawn for " + bare.text(Field.FLIGHT) + " on " + date);
    }

    /** A few flights have a limit of the day, well above what they weigh. */
    private void limits(DemoRow row, Draws draws) {
        if (draws.chance(12)) {
            double massKg = audit.balance(row).takeoff().massKg();
            row.mass(Meaning.of(Field.TAKEOFF_LIMIT), Math.rint(massKg / 100) * 100 * (1 + draws.bell(0.02, 0.08)));
        }
    }

    private DemoRow coarser(DemoRow row, Draws draws) {
        int kind = draws.between(1, 100);
        DemoRow coarse = row;
        if (kind <= 7) {
            coarse = Coarser.totals(row);
        } else if (kind <= 10) {
            coarse = Coarser.zeroFuelGiven(row, audit.balance(row));
        } else if (kind <= 13) {
            coarse = Coarser.takeoffGiven(row, audit.balance(row));
        }
        return audit.isClean(coarse) ? coarse : row;
    }

    /** The club's whole summer. */
    List<Entry> club(LocalDate from, LocalDate to) {
        List<Entry> entries = new ArrayList<>();
        List<Tail> tails = tails("single4");
        int number = 0;
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            Draws draws = new Draws(SEED, date.toEpochDay(), CLUB);
            int flights = date.getDayOfWeek().getValue() > 5 ? draws.between(1, 3) : draws.between(0, 1);
            for (int i = 0; i < flights; i++) {
                number++;
                DemoRow bare = bare(Style.CLUB, draws.pick(tails), date, String.format(Locale.ROOT, "S-%03d", number));
                bare.text(Field.FROM, Network.BASE);
                bare.text(Field.TO, draws.pick(Network.CLUB));
                bare.text(Field.EXTRA, draws.pick(Network.MEMBERS));
                entries.add(Entry.clean(club(bare, draws), date));
            }
        }
        return entries;
    }

    private DemoRow club(DemoRow bare, Draws draws) {
        ClubLoader loader = new ClubLoader(audit, draws);
        for (int i = 0; i < TRIES; i++) {
            Optional<DemoRow> loaded = loader.attempt(bare);
            if (loaded.isPresent()) {
                DemoRow given = loader.takeoffGiven(loaded.get());
                return draws.chance(8) && audit.isClean(given) ? given : loaded.get();
            }
        }
        throw new IllegalStateException("no clean load was drawn for " + bare.text(Field.FLIGHT));
    }
}
