package org.steelyard.bench;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.flight.Checker;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;

/** One flight in full detail through the core: states, fuel path, trim, every check. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 3, jvmArgs = "-XX:+UseSerialGC")
public class Core {

    private static final int FLIGHTS = 4096;

    @Param("config")
    private String config;

    /** The policy as it is, with chances; and without the spread from which they are computed. */
    @Param({"yes", "no"})
    private String chances;

    private Policy policy;
    private Loading[] loadings;
    private Balance[] balances;
    private int next;

    @Setup
    public void draw() {
        org.steelyard.bench.Setup setup = org.steelyard.bench.Setup.of(Path.of(config));
        policy = chances.equals("yes")
                ? setup.configuration().policy()
                : withoutChances(setup.configuration().policy());
        Flights flights = new Flights(setup.configuration());
        loadings = IntStream.range(0, FLIGHTS)
                .mapToObj(i -> flights.flight(i).loading())
                .toArray(Loading[]::new);
        balances = new Balance[FLIGHTS];
        for (int i = 0; i < FLIGHTS; i++) {
            balances[i] = Balancer.balance(loadings[i], policy);
        }
    }

    private static Policy withoutChances(Policy policy) {
        return new Policy(
                policy.marginalCgPercentMac(),
                policy.marginalMassPercent(),
                policy.marginalLoadPercent(),
                policy.marginalTrimUnits(),
                policy.sharing(),
                policy.recordedTrim(),
                policy.lastMinute(),
                policy.duplicates(),
                Optional.empty(),
                Optional.empty(),
                policy.remedyReservePercentMac(),
                policy.remedyFuelReservePercent());
    }

    private int next() {
        next = (next + 1) % FLIGHTS;
        return next;
    }

    @Benchmark
    public Balance balance() {
        return Balancer.balance(loadings[next()], policy);
    }

    @Benchmark
    public AuditedFlight check() {
        int i = next();
        return new AuditedFlight(loadings[i], balances[i], Checker.check(loadings[i], balances[i], policy));
    }

    @Benchmark
    public AuditedFlight balanceAndCheck() {
        Loading loading = loadings[next()];
        Balance balance = Balancer.balance(loading, policy);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, policy));
    }
}
