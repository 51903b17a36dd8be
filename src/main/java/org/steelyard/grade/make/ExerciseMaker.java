package org.steelyard.grade.make;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntUnaryOperator;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.Status;
import org.steelyard.grade.text.FigureText;
import org.steelyard.grade.working.Candidates;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.Amounts;

/**
 * Makes exercises. Loadings are drawn until one is what the difficulty asks for. Chance is handed in, so the same
 * numbers give the same exercises.
 */
public final class ExerciseMaker {

    private static final int TRIES = 4000;
    private static final LocalDate DAY = LocalDate.of(2026, 1, 1);

    private final List<Tail> tails;
    private final Policy policy;
    private final IntUnaryOperator chance;

    /**
     * For tails of one type.
     *
     * @param tails at least one
     * @param policy the operator's rules
     * @param chance gives a whole number from 0 to less than its argument
     * @throws IllegalArgumentException if there is no tail
     */
    public ExerciseMaker(List<Tail> tails, Policy policy, IntUnaryOperator chance) {
        if (tails.isEmpty()) {
            throw new IllegalArgumentException("an exercise needs a tail of the type");
        }
        this.tails = List.copyOf(tails);
        this.policy = policy;
        this.chance = chance;
    }

    /**
     * Makes one.
     *
     * @param name what it is called
     * @param difficulty what it is about
     * @return empty if so many draws give none: the type hardly allows it
     */
    public Optional<MadeExercise> make(String name, Difficulty difficulty) {
        for (int i = 0; i < TRIES; i++) {
            Optional<MadeExercise> made = drawn(name, difficulty);
            if (made.isPresent()) {
                return made;
            }
        }
        return Optional.empty();
    }

    private Optional<MadeExercise> drawn(String name, Difficulty difficulty) {
        Loading loading = draw(name, difficulty);
        Assessment assessment = assess(loading);
        return switch (difficulty) {
            case INSIDE -> plain(difficulty, loading, assessment.status() == Status.CLEAN);
            case MARGINAL -> plain(difficulty, loading, assessment.status() == Status.MARGINAL && isClose(assessment));
            case OUT_ZERO_FUEL, OUT_TAKEOFF, OUT_LANDING ->
                plain(
                        difficulty,
                        loading,
                        isOutsideOnlyFrom(difficulty.outsideAt().orElseThrow(), assessment));
            case LAST_MINUTE, FUEL_CHANGE ->
                assessment.status() == Status.BREACHED ? Optional.empty() : changed(difficulty, loading);
            case LOAD_SHIFT -> shifted(loading, assessment);
        };
    }

    private static Optional<MadeExercise> plain(Difficulty difficulty, Loading loading, boolean fits) {
        return fits
                ? Optional.of(new MadeExercise(difficulty, loading, "", loading, Optional.empty()))
                : Optional.empty();
    }

    private Assessment assess(Loading loading) {
        Balance balance = Balancer.balance(loading, policy);
        return Checker.check(loading, balance, policy);
    }

    private static boolean isClose(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> finding.severity() == Severity.MARGINAL)
                .anyMatch(ExerciseMaker::isOfState);
    }

    private static boolean isOfState(Finding finding) {
        return finding.code() == FindingCode.CG_AFT
                || finding.code() == FindingCode.CG_FORWARD
                || finding.code() == FindingCode.MASS_HIGH;
    }

    /** Outside in a phase by CG or mass, and nowhere by anything else; in flight it may be outside as well. */
    private static boolean isOutsideOnlyFrom(Phase phase, Assessment assessment) {
        List<Finding> breaches = breaches(assessment);
        return !breaches.isEmpty()
                && breaches.stream().anyMatch(one -> one.phase() == phase)
                && breaches.stream()
                        .allMatch(one -> isOfState(one) && (one.phase() == phase || one.phase() == Phase.FLIGHT));
    }

    private static List<Finding> breaches(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> finding.severity() == Severity.BREACH)
                .toList();
    }

    private Optional<MadeExercise> shifted(Loading loading, Assessment assessment) {
        List<Finding> breaches = breaches(assessment);
        boolean byCg = !breaches.isEmpty()
                && breaches.stream()
                        .allMatch(one -> one.code() == FindingCode.CG_AFT || one.code() == FindingCode.CG_FORWARD);
        return byCg
                ? LoadShift.leastFor(loading, policy)
                        .map(shift -> new MadeExercise(
                                Difficulty.LOAD_SHIFT,
                                loading,
                                "If a CG is outside its limits, it is to be brought inside by moving load from one"
                                        + " hold to another: the least mass, from where, to where? The figures below are"
                                        + " for the loading as given.",
                                loading,
                                Optional.of(shift)))
                : Optional.empty();
    }

    private Optional<MadeExercise> changed(Difficulty difficulty, Loading loading) {
        FigureText text = new FigureText(loading.type());
        double stepKg = Candidates.massStepKg(loading.type().geometry().units());
        if (difficulty == Difficulty.FUEL_CHANGE) {
            Fuel.ByTank fuel = (Fuel.ByTank) loading.fuel();
            double moreKg = stepKg * 10 * Math.rint(fuel.tanksKg().sum() * (5 + below(15)) / 100 / stepKg / 10);
            double[] tanksKg = fuelByTank(loading, fuel.tanksKg().sum() + moreKg);
            Fuel more = fuel.inTanks(Amounts.of(tanksKg));
            Loading asked = loading.with(loading.load(), more);
            return moreKg > 0 && assess(asked).status() != Status.BREACHED
                    ? Optional.of(new MadeExercise(
                            difficulty,
                            loading,
                            "Before departure " + text.mass(moreKg)
                                    + " of fuel are added, for holding: the fuel is then "
                                    + tanks(loading.type(), text, tanksKg) + ". Taxi and trip fuel stay as they are.",
                            asked,
                            Optional.empty()))
                    : Optional.empty();
        }
        return lastMinute(loading, text, stepKg);
    }

    private static String tanks(AircraftType type, FigureText text, double[] tanksKg) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < tanksKg.length; i++) {
            words.add(type.fuel().tanks().get(i).name() + " " + text.mass(tanksKg[i]));
        }
        return String.join(", ", words);
    }

    private Optional<MadeExercise> lastMinute(Loading loading, FigureText text, double stepKg) {
        Load.ByPlace load = (Load.ByPlace) loading.load();
        AircraftType type = loading.type();
        List<ZoneLoad> zones = new ArrayList<>(load.zones());
        List<HoldLoad> holds = new ArrayList<>(load.holds());
        int zone = below(zones.size());
        int hold = below(holds.size());
        int room = type.cabin().zones().get(zone).seats()
                - zones.get(zone).passengers().seated();
        int persons = Math.min(room, 1 + below(4));
        double loadKg = stepKg
                * 10
                * (1 + below(Math.max(2, (int) (type.holds().get(hold).maxKg() / stepKg / 40))));
        if (persons < 1) {
            return Optional.empty();
        }
        Passengers before = zones.get(zone).passengers();
        zones.set(zone, new ZoneLoad(before.plus(Passengers.adults(persons)), OptionalDouble.empty()));
        holds.set(hold, new HoldLoad(holds.get(hold).massKg() + loadKg, 0));
        Loading asked = loading.with(new Load.ByPlace(zones, holds), loading.fuel());
        return assess(asked).status() == Status.BREACHED
                ? Optional.empty()
                : Optional.of(new MadeExercise(
                        Difficulty.LAST_MINUTE,
                        loading,
                        "Last-minute change: " + persons + (persons == 1 ? " adult more" : " adults more") + " in "
                                + type.cabin().zones().get(zone).name() + ", and " + text.mass(loadKg) + " more in "
                                + type.holds().get(hold).name() + ". The figures below are with the change.",
                        asked,
                        Optional.empty()));
    }

    private int below(int bound) {
        return chance.applyAsInt(bound);
    }

    // ------------------------------------------------------------ drawing

    private Loading draw(String name, Difficulty difficulty) {
        Tail tail = tails.get(below(tails.size()));
        AircraftType type = tail.type();
        boolean wide = difficulty != Difficulty.INSIDE;
        double full = (wide ? 35 + below(66) : 30 + below(61)) / 100.0;
        double lean = (wide ? below(201) - 100 : below(61) - 30) / 100.0;
        Loading bare = new Loading(
                new Origin(name, "", 0),
                new FlightIdent(name, DAY, "", ""),
                tail,
                new FlightSetting(flaps(type), "", ""),
                tail.scheme(),
                crew(type),
                new Load.ByPlace(zones(type, full, lean), holds(type, full, lean)),
                new Fuel.Total(0, 0, 0),
                LastMinuteChange.NONE,
                PerformanceLimits.NONE,
                OptionalDouble.empty(),
                List.of(),
                List.of());
        return fuelled(bare, difficulty == Difficulty.OUT_LANDING ? 8 : 35);
    }

    private String flaps(AircraftType type) {
        List<String> flaps = type.trimScales().stream()
                .filter(scale -> scale.phase() == Phase.TAKEOFF)
                .map(TrimScale::flaps)
                .distinct()
                .toList();
        return flaps.isEmpty() ? "" : flaps.get(below(flaps.size()));
    }

    private Crew crew(AircraftType type) {
        if (type.cabin().pantries().size() < 2 || below(3) > 0) {
            return Crew.STANDARD;
        }
        String code = type.cabin()
                .pantries()
                .get(below(type.cabin().pantries().size()))
                .code();
        return new Crew(OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty(), code);
    }

    /** How full a place is: fuller to the front or to the back as the lean says, from -1 to 1. */
    private double share(double full, double lean, int place, int places) {
        double along = places < 2 ? 0 : 2.0 * place / (places - 1) - 1;
        double share = full * (1 + lean * along) + (below(31) - 15) / 100.0;
        return Math.max(0, Math.min(1, share));
    }

    private List<ZoneLoad> zones(AircraftType type, double full, double lean) {
        List<ZoneLoad> zones = new ArrayList<>();
        List<CabinZone> all = type.cabin().zones();
        for (int i = 0; i < all.size(); i++) {
            int seated = (int) Math.rint(all.get(i).seats() * share(full, lean, i, all.size()));
            int children = below(3) == 0 ? Math.min(seated, below(4)) : 0;
            zones.add(new ZoneLoad(new Passengers(0, 0, seated - children, children, 0), OptionalDouble.empty()));
        }
        return zones;
    }

    private List<HoldLoad> holds(AircraftType type, double full, double lean) {
        double stepKg = Candidates.massStepKg(type.geometry().units());
        List<HoldLoad> holds = new ArrayList<>();
        List<Hold> all = type.holds();
        for (int i = 0; i < all.size(); i++) {
            boolean empty = below(8) == 0;
            double mostKg = all.get(i).maxKg() * 0.95;
            double kg = empty ? 0 : stepKg * Math.rint(mostKg * share(full * 0.75, lean, i, all.size()) / stepKg);
            holds.add(new HoldLoad(kg, 0));
        }
        return holds;
    }

    private Loading fuelled(Loading bare, int leastTripPercent) {
        AircraftType type = bare.type();
        double stepKg = Candidates.massStepKg(type.geometry().units());
        double roundTo = stepKg * (type.fuel().capacityKg() > 1000 * stepKg ? 10 : 1);
        double totalKg = roundTo * Math.rint(type.fuel().capacityKg() * (25 + below(65)) / 100 / roundTo);
        double[] tanksKg = fuelByTank(bare, totalKg);
        double sumKg = Amounts.of(tanksKg).sum();
        double taxiKg = roundTo * Math.rint(Math.max(roundTo, sumKg * (1 + below(2)) / 100) / roundTo);
        double tripKg = stepKg * Math.rint(sumKg * (leastTripPercent + below(40)) / 100 / stepKg);
        return bare.with(bare.load(), new Fuel.ByTank(Amounts.of(tanksKg), taxiKg, tripKg));
    }

    /** A total in the tanks by the type's fill order, in whole steps. */
    private double[] fuelByTank(Loading loading, double totalKg) {
        double stepKg = Candidates.massStepKg(loading.type().geometry().units());
        double mostKg = Math.min(totalKg, loading.type().fuel().capacityKg());
        Loading total = loading.with(loading.load(), new Fuel.Total(mostKg, 0, 0));
        double[] tanksKg =
                Balancer.balance(total, policy).fuel().orElseThrow().rampKg().toArray();
        for (int i = 0; i < tanksKg.length; i++) {
            double capacityKg = loading.type().fuel().tanks().get(i).capacityKg();
            tanksKg[i] = stepKg * Math.floor(Math.min(tanksKg[i], capacityKg) / stepKg + 1e-6);
        }
        return tanksKg;
    }
}
