package org.steelyard.bench;

import org.steelyard.model.loading.LastMinuteChange;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.steelyard.balance.Balancer;
import org.steelyard.config.Configuration;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.type.Tail;
import org.steelyard.model.loading.ZoneLoad;

/**
 * Flights of the invented twin-jet in full detail, drawn from a seed: the same number gives the same flight. Some are
 * outside a limit or close to one, so that findings are written in earnest. No two have the same number and date, so
 * that none is taken for another.
 */
final class Flights {

    /** The columns, by the headings of the house's map. */
    static final List<String> HEADINGS = List.of(
            "flight", "date", "tail", "from", "to", "pilot", "flaps", "landing flaps", "cabin crew", "pantry", "pax A",
            "pax B", "pax C", "pax D", "pax E", "pax F", "children C", "hold 1 kg", "hold 2 kg", "hold 3 kg", "hold 4 kg",
            "hold 5 kg", "fuel left kg", "fuel centre kg", "fuel right kg", "taxi kg", "trip kg", "tow limit kg",
            "lw limit kg", "trim set");

    /** Columns without numbers; all others hold numbers. */
    static final List<Integer> TEXTS = List.of(0, 1, 2, 3, 4, 5, 9);

    private static final long SEED = 20261125;
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final String[] PLACES = {"AMBRP", "HIMOR", "CASTL", "ORIEL", "TERNE", "SKARV", "LUNDE", "WESTA"};
    private static final String[] PILOTS = {"marlin3", "fulmar", "saltwind", "tern_two", "gannet", "petrel", "skua9"};
    private static final String[] FLAPS = {"1", "5", "15"};
    private static final String[] PANTRIES = {"", "standard", "short", "double"};

    private final Configuration configuration;
    private final List<Tail> tails;

    Flights(Configuration configuration) {
        this.configuration = configuration;
        this.tails = configuration.tails().values().stream()
                .filter(tail -> tail.type().id().equals("jet180"))
                .toList();
    }

    /** One flight: its cells as a file has them, and the loading that they say. */
    record Flight(List<String> cells, Loading loading) {}

    Flight flight(int number) {
        SplittableRandom random = new SplittableRandom(SEED + 0x9E3779B97F4A7C15L * number);
        int[] seated = seated(random);
        int children = random.nextInt(4);
        int[] holdKg = holdKg(random, seated);
        int wingKg = 2700 + random.nextInt(1830);
        int rightKg = wingKg + random.nextInt(121) - 60;
        int centreKg = random.nextInt(5) == 0 ? random.nextInt(3500) : 0;
        int taxiKg = 120 + random.nextInt(150);
        int tripKg = (int) ((wingKg + rightKg + centreKg) * (0.45 + 0.3 * random.nextDouble()));
        OptionalInt cabinCrew = random.nextInt(3) == 0 ? OptionalInt.of(5) : OptionalInt.empty();
        String pantry = PANTRIES[random.nextInt(PANTRIES.length)];
        OptionalDouble takeoffLimit =
                random.nextInt(12) == 0 ? OptionalDouble.of(66000 + random.nextInt(8500)) : OptionalDouble.empty();
        OptionalDouble landingLimit =
                random.nextInt(40) == 0 ? OptionalDouble.of(60500 + random.nextInt(4500)) : OptionalDouble.empty();
        String pilot = PILOTS[random.nextInt(PILOTS.length)];
        FlightIdent ident = new FlightIdent(
                "J-" + (100 + number / 365),
                FIRST.plusDays(number % 365),
                PLACES[number % PLACES.length],
                PLACES[(number / 3 + 1) % PLACES.length]);
        Loading loading = new Loading(new Origin("season-bench.csv", "", number + 2L), ident, tails.get(random.nextInt(tails.size())), new FlightSetting(FLAPS[random.nextInt(FLAPS.length)], "", "30"), tails.get(random.nextInt(tails.size())).scheme(), new Crew(OptionalInt.empty(), cabinCrew, OptionalDouble.empty(), pantry), load(seated, children, holdKg), new Fuel.ByTank(Amounts.of(wingKg, centreKg, rightKg), taxiKg, tripKg), LastMinuteChange.NONE, new PerformanceLimits(takeoffLimit, landingLimit), OptionalDouble.empty(), List.of(new Extra("pilot", pilot)), List.of());
        loading = recorded(loading, random);
        List<String> cells = new ArrayList<>(List.of(
                ident.flight(),
                ident.date().toString(),
                loading.tail().registration(),
                ident.from(),
                ident.to(),
                pilot,
                loading.setting().flaps(),
                "30",
                cabinCrew.isPresent() ? "5" : "",
                pantry));
        for (int seats : seated) {
            cells.add(Integer.toString(seats));
        }
        cells.add(Integer.toString(children));
        for (int massKg : holdKg) {
            cells.add(Integer.toString(massKg));
        }
        for (int massKg : new int[] {wingKg, centreKg, rightKg, taxiKg, tripKg}) {
            cells.add(Integer.toString(massKg));
        }
        cells.add(whole(takeoffLimit));
        cells.add(whole(landingLimit));
        cells.add(String.format(Locale.ROOT, "%.1f", loading.recordedTrimUnits().orElse(0)));
        return new Flight(cells, loading);
    }

    private static String whole(OptionalDouble number) {
        return number.isPresent() ? Integer.toString((int) number.getAsDouble()) : "";
    }

    private static int[] seated(SplittableRandom random) {
        double full = 0.58 + 0.4 * random.nextDouble();
        int[] seated = new int[6];
        for (int i = 0; i < seated.length; i++) {
            double here = full + 0.12 * (random.nextDouble() - 0.5);
            seated[i] = (int) Math.round(Math.min(1, here) * (i == 2 ? 27 : 30));
        }
        return seated;
    }

    private static int[] holdKg(SplittableRandom random, int[] seated) {
        int passengers = 0;
        for (int seats : seated) {
            passengers += seats;
        }
        double allKg = passengers * (9 + 7 * random.nextDouble());
        double[] shares = {0.12, 0.30, 0.33, 0.18, 0.07};
        int[] holdKg = new int[shares.length];
        for (int i = 0; i < shares.length; i++) {
            holdKg[i] = (int) (allKg * shares[i] * (0.8 + 0.4 * random.nextDouble()));
        }
        if (random.nextInt(90) == 0) {
            holdKg[4] += 700;
        }
        return holdKg;
    }

    private static Load load(int[] seated, int children, int[] holdKg) {
        List<ZoneLoad> zones = new ArrayList<>();
        for (int seats : seated) {
            zones.add(new ZoneLoad(Passengers.adults(seats), OptionalDouble.empty()));
        }
        zones.set(2, new ZoneLoad(new Passengers(0, 0, seated[2], children, 0), OptionalDouble.empty()));
        List<HoldLoad> holds = new ArrayList<>();
        for (int massKg : holdKg) {
            holds.add(new HoldLoad(massKg, 0));
        }
        return new Load.ByPlace(zones, holds);
    }

    /** Nine of ten are set right, most others one or two steps off, a few far off. */
    private Loading recorded(Loading plain, SplittableRandom random) {
        double right = Balancer.balance(plain, configuration.policy())
                .takeoffTrim()
                .flatMap(trim -> trim.settingUnits().isPresent()
                        ? java.util.Optional.of(trim.settingUnits().getAsDouble())
                        : java.util.Optional.empty())
                .orElse(0.0);
        int draw = random.nextInt(1000);
        int steps = draw < 900 ? 0 : draw < 990 ? random.nextInt(5) - 2 : random.nextInt(17) - 8;
        return new Loading(plain.origin(), plain.flight(), plain.tail(), plain.setting(), plain.tail().scheme(), plain.crew(), plain.load(), plain.fuel(), LastMinuteChange.NONE, plain.performance(), OptionalDouble.of(Math.round((right + steps * 0.1) * 10) / 10.0), plain.extras(), List.of());
    }
}
