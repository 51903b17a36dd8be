package org.steelyard.samples;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;

/**
 * A flight of which everything is known, drawn from a seed, to be written at every level and in every form. Masses are
 * whole tenths of a pound, which in kg, lb and t are all exact decimals.
 *
 * @param number its number among the flights of the seed, from 0
 * @param tail the aircraft; every zone of its type has a row table
 * @param date date of departure
 * @param rows passengers by zone, seat row and category
 * @param infants infants by zone, sitting with nobody in particular
 * @param cargoLb cargo by hold
 * @param bags bags by hold, at standard mass
 * @param tanksLb fuel by tank
 * @param taxiLb taxi fuel
 * @param tripLb trip fuel
 */
public record KnownFlight(
        int number,
        Tail tail,
        LocalDate date,
        List<List<Map<PassengerCategory, Integer>>> rows,
        List<Integer> infants,
        List<BigDecimal> cargoLb,
        List<Integer> bags,
        List<BigDecimal> tanksLb,
        BigDecimal taxiLb,
        BigDecimal tripLb) {

    private static final List<PassengerCategory> SEATED =
            List.of(PassengerCategory.MALE, PassengerCategory.FEMALE, PassengerCategory.ADULT, PassengerCategory.CHILD);

    /** Flights from a seed. */
    public static List<KnownFlight> draw(int count, long seed, List<Tail> tails) {
        Random random = new Random(seed);
        List<KnownFlight> flights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            flights.add(draw(i, random, tails.get(random.nextInt(tails.size()))));
        }
        return flights;
    }

    private static KnownFlight draw(int number, Random random, Tail tail) {
        AircraftType type = tail.type();
        List<List<Map<PassengerCategory, Integer>>> rows = new ArrayList<>();
        List<Integer> infants = new ArrayList<>();
        for (CabinZone zone : type.cabin().zones()) {
            List<Map<PassengerCategory, Integer>> ofZone = new ArrayList<>();
            zone.rows().forEach(row -> ofZone.add(seats(row.seats(), random)));
            rows.add(ofZone);
            infants.add(random.nextInt(4) == 0 ? 1 : 0);
        }
        List<BigDecimal> cargo = new ArrayList<>();
        List<Integer> bags = new ArrayList<>();
        type.holds().forEach(hold -> {
            cargo.add(random.nextInt(3) == 0 ? BigDecimal.ZERO : tenths(random, 0.3 * hold.maxKg()));
            bags.add(random.nextInt((int) (hold.maxKg() / 40)));
        });
        double wingKg = 1500 + random.nextInt(2500);
        List<BigDecimal> tanks =
                new ArrayList<>(Collections.nCopies(type.fuel().tanks().size(), BigDecimal.ZERO));
        tanks.set(0, tenths(random, 200).add(new BigDecimal(Math.round(2.2 * wingKg))));
        tanks.set(2, tenths(random, 200).add(new BigDecimal(Math.round(2.2 * wingKg))));
        tanks.set(1, random.nextBoolean() ? tenths(random, 4000) : BigDecimal.ZERO);
        return new KnownFlight(
                number,
                tail,
                LocalDate.of(2026, 5, 1).plusDays(random.nextInt(28)),
                rows,
                infants,
                cargo,
                bags,
                tanks,
                tenths(random, 150),
                tenths(random, 1500).add(new BigDecimal(3000)));
    }

    private static Map<PassengerCategory, Integer> seats(int seats, Random random) {
        Map<PassengerCategory, Integer> persons = new EnumMap<>(PassengerCategory.class);
        int left = random.nextInt(seats + 1);
        for (PassengerCategory category : SEATED) {
            int count = category == PassengerCategory.CHILD ? left / 2 : random.nextInt(left + 1);
            persons.put(category, count);
            left -= count;
        }
        return persons;
    }

    private static BigDecimal tenths(Random random, double belowKg) {
        return BigDecimal.valueOf(random.nextInt((int) (belowKg * 22)), 1);
    }

    public String flight() {
        return "H-" + (100 + number);
    }

    /** Persons of a category in a zone. */
    public int persons(int zone, PassengerCategory category) {
        return category == PassengerCategory.INFANT
                ? infants.get(zone)
                : rows.get(zone).stream().mapToInt(row -> row.get(category)).sum();
    }

    /** Persons of a category in all. */
    public int persons(PassengerCategory category) {
        int sum = 0;
        for (int zone = 0; zone < rows.size(); zone++) {
            sum += persons(zone, category);
        }
        return sum;
    }

    public static BigDecimal kg(BigDecimal lb) {
        return lb.multiply(new BigDecimal("0.45359237"));
    }

    public static BigDecimal sum(List<BigDecimal> values) {
        return values.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * The zero-fuel state, person by person and bag by bag in decimal arithmetic: a second computation that shares no
     * code with the program's.
     *
     * @param byRow whether passengers on seats count at the arm of their row, not of their zone
     */
    public MassMoment zeroFuel(boolean byRow) {
        Sum sum = new Sum();
        MassScheme scheme = tail.type().cabin().scheme();
        sum.mass = sum.mass.add(new BigDecimal(tail.basic().massKg()));
        sum.moment = sum.moment.add(new BigDecimal(tail.basic().momentKgM()));
        crew(sum, scheme);
        MassMoment pantry = tail.type().cabin().pantries().get(0).load();
        sum.mass = sum.mass.add(new BigDecimal(pantry.massKg()));
        sum.moment = sum.moment.add(new BigDecimal(pantry.momentKgM()));
        for (int z = 0; z < rows.size(); z++) {
            CabinZone zone = tail.type().cabin().zones().get(z);
            sum.add(infants.get(z), new BigDecimal(scheme.infantKg()), zone.armM());
            for (int r = 0; r < rows.get(z).size(); r++) {
                double armM = byRow ? zone.rows().get(r).armM() : zone.armM();
                rows.get(z)
                        .get(r)
                        .forEach((category, count) -> sum.add(count, new BigDecimal(scheme.massKg(category)), armM));
            }
        }
        for (int h = 0; h < bags.size(); h++) {
            double armM = tail.type().holds().get(h).armM();
            sum.add(bags.get(h), new BigDecimal(scheme.bagKg()), armM);
            sum.add(1, kg(cargoLb.get(h)), armM);
        }
        return new MassMoment(sum.mass.doubleValue(), sum.moment.doubleValue());
    }

    /** The standard crew, one by one into the seats of their role. */
    private void crew(Sum sum, MassScheme scheme) {
        for (CrewRole role : CrewRole.values()) {
            int left = tail.type().cabin().standardCrew(role);
            for (CrewStation station : tail.type().cabin().crewStations()) {
                for (int seat = 0; seat < station.seats() && left > 0 && station.role() == role; seat++) {
                    sum.add(1, new BigDecimal(scheme.massKg(role)), station.armM());
                    left--;
                }
            }
        }
    }

    private static final class Sum {
        private BigDecimal mass = BigDecimal.ZERO;
        private BigDecimal moment = BigDecimal.ZERO;

        void add(int count, BigDecimal eachKg, double armM) {
            BigDecimal kg = eachKg.multiply(BigDecimal.valueOf(count));
            mass = mass.add(kg);
            moment = moment.add(kg.multiply(new BigDecimal(armM)));
        }
    }
}
