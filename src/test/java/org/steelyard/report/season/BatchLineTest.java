package org.steelyard.report.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.output.page.Flights;
import org.steelyard.report.text.Work;

class BatchLineTest {

    private static final AuditedFlight FLIGHT = Flights.flight("1").build();

    /** Notes in which order batches, told apart by their size, are begun and added. */
    private static final class Noted implements SeasonOutput {

        private final List<Integer> begun = new ArrayList<>();
        private final List<Integer> added = new ArrayList<>();

        @Override
        public Work begin(List<AuditedFlight> flights) {
            begun.add(flights.size());
            return () -> {
                pause(flights.size() % 3);
                return () -> added.add(flights.size());
            };
        }

        /** Later batches are ready sooner than earlier ones. */
        private static void pause(int millis) {
            try {
                Thread.sleep(millis);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void finish(SeasonResult result) {}
    }

    private static List<AuditedFlight> batch(int size) {
        return IntStream.range(0, size).mapToObj(i -> FLIGHT).toList();
    }

    @Test
    void batchesAreAddedInTheOrderInWhichTheyWereBegunWhateverTheWorkersDo() throws IOException {
        Noted output = new Noted();
        ExecutorService workers = Executors.newFixedThreadPool(4);
        try {
            OrderedBatches line = new OrderedBatches(workers, 6);
            for (int i = 1; i <= 60; i++) {
                line.put(batch(i), List.of(output));
                assertThat(output.added.size()).isGreaterThanOrEqualTo(i - 6);
            }
            line.drain();
        } finally {
            workers.shutdownNow();
        }
        List<Integer> all = IntStream.rangeClosed(1, 60).boxed().toList();
        assertThat(output.begun).isEqualTo(all);
        assertThat(output.added).isEqualTo(all);
    }

    @Test
    void aFaultOfAWorkerReachesTheCallerAsItIs() throws IOException {
        SeasonOutput failing = new SeasonOutput() {
            @Override
            public Work begin(List<AuditedFlight> flights) {
                return () -> {
                    throw new IllegalStateException("no");
                };
            }

            @Override
            public void finish(SeasonResult result) {}
        };
        OrderedBatches line = new OrderedBatches(Runnable::run, 1);
        line.put(batch(1), List.of(failing));
        assertThatThrownBy(line::drain)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("no");
    }
}
