package org.steelyard.samples;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.random.Well19937c;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
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
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;

/**
 * A made season of the sample jet, without any truth in it but those that are planted: tails, routes, pilots and weeks
 * are drawn independently of the load. Seeded.
 */
public final class PlantedSeason {

    public static final Policy POLICY = Plain.policy(
            0.5, 1, 5, 0.25, SharingRule.BY_CAPACITY, Optional.of(new RecordedTrimRule(0.25, 0.5, "pilot")));

    private static final AircraftType TYPE = SampleJet.type();
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 30);
    private static final int TAILS = 6;
    private static final int ROUTES = 8;
    private static final int PILOTS = 10;

    private final Well19937c random;
    private final int weeks;
    private final int flightsAWeek;
    private int gates;
    private double tailAftPercentMac;
    private double routeRearHoldKg;
    private int driftFromWeek = Integer.MAX_VALUE;
    private double driftRearHoldKg;

    public PlantedSeason(long seed, int weeks, int flightsAWeek) {
        random = new Well19937c(seed);
        this.weeks = weeks;
        this.flightsAWeek = flightsAWeek;
    }

    /** The basic CG of TAIL-3 is such that its take-off CG is farther aft by so much. */
    public PlantedSeason tailAft(double percentMac) {
        tailAftPercentMac = percentMac;
        return this;
    }

    /** So much more lies in hold 3 on route FROM5–TO. */
    public PlantedSeason routeWithRearHold(double massKg) {
        routeRearHoldKg = massKg;
        return this;
    }

    /** From an ISO week on so much more lies in hold 3. */
    public PlantedSeason drift(int isoWeek, double massKg) {
        driftFromWeek = isoWeek;
        driftRearHoldKg = massKg;
        return this;
    }

    /** Every flight has a gate, too, of so many. */
    public PlantedSeason gates(int count) {
        gates = count;
        return this;
    }

    public List<AuditedFlight> flights() {
        List<AuditedFlight> flights = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            for (int i = 0; i < flightsAWeek; i++) {
                flights.add(flight(flights.size(), FIRST.plusWeeks(week).plusDays(i % 7), 14 + week));
            }
        }
        return flights;
    }

    private AuditedFlight flight(int number, LocalDate date, int isoWeek) {
        int tail = random.nextInt(TAILS);
        int route = random.nextInt(ROUTES);
        double rearKg =
                holdKg() + (route == 5 ? routeRearHoldKg : 0) + (isoWeek >= driftFromWeek ? driftRearHoldKg : 0);
        Load load = new Load.ByPlace(
                List.of(zone(), zone(), zone()),
                List.of(new HoldLoad(holdKg(), 0), new HoldLoad(holdKg(), 0), new HoldLoad(rearKg, 0)));
        double sideKg = 3000 + random.nextInt(1000);
        Loading loading = Plain.loading(
                new Origin("planted.csv", "", number + 2),
                new FlightIdent("P" + number, date, "FROM" + route, "TO"),
                tail(tail),
                new FlightSetting("5", "", "30"),
                Crew.STANDARD,
                load,
                new Fuel.ByTank(Amounts.of(sideKg, sideKg, 1000), 200, 5000),
                PerformanceLimits.NONE,
                OptionalDouble.empty(),
                extras(number));
        Balance balance = Balancer.balance(loading, POLICY);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, POLICY));
    }

    private List<Extra> extras(int number) {
        Extra pilot = new Extra("pilot", "pilot " + random.nextInt(PILOTS));
        return gates == 0 ? List.of(pilot) : List.of(pilot, new Extra("gate", "G" + number % gates));
    }

    /** A take-off mass is some 56,000 kg, of which 40,000 are the tail's. */
    private Tail tail(int index) {
        double armM = 17 + (index == 3 ? tailAftPercentMac / 100 * 4 * 56_000 / 40_000 : 0);
        return Plain.tail("TAIL-" + index, TYPE, MassMoment.at(40_000, armM));
    }

    private ZoneLoad zone() {
        int adults = (int) Math.max(0, Math.min(30, Math.round(15 + 4 * random.nextGaussian())));
        return new ZoneLoad(Passengers.adults(adults), OptionalDouble.empty());
    }

    private double holdKg() {
        return Math.max(0, Math.min(2500, 1000 + 250 * random.nextGaussian()));
    }
}
