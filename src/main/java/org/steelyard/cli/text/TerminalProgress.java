package org.steelyard.cli.text;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.steelyard.run.Progress;

/**
 * Shows how an audit gets on: a moving line where there is a terminal, a plain line now and then where there is none.
 */
public final class TerminalProgress implements Progress, AutoCloseable {

    private static final long NANOS_BETWEEN_LINES = 5_000_000_000L;

    private final PrintWriter err;
    private final boolean quiet;
    private final Optional<ProgressBar> bar;
    private String file = "";
    private long nextLineNanos;

    private TerminalProgress(PrintWriter err, boolean quiet, Optional<ProgressBar> bar) {
        this.err = err;
        this.quiet = quiet;
        this.bar = bar;
        nextLineNanos = System.nanoTime() + NANOS_BETWEEN_LINES;
    }

    public static TerminalProgress on(PrintWriter err, boolean quiet) {
        boolean terminal = !quiet && Terminal.isThere();
        return new TerminalProgress(err, quiet, terminal ? Optional.of(bar()) : Optional.empty());
    }

    private static ProgressBar bar() {
        return new ProgressBarBuilder()
                .setTaskName("audit")
                .setStyle(ProgressBarStyle.ASCII)
                .setInitialMax(-1)
                .setUnit(" rows", 1)
                .setUpdateIntervalMillis(200)
                .hideEta()
                .clearDisplayOnFinish()
                .build();
    }

    @Override
    public void file(String name, int number, int files) {
        file = name + " (" + number + " of " + files + ")";
        bar.ifPresent(shown -> shown.setExtraMessage(file));
    }

    @Override
    public void rows(long seen) {
        if (bar.isPresent()) {
            bar.get().stepTo(seen);
        } else if (!quiet && System.nanoTime() - nextLineNanos > 0) {
            nextLineNanos = System.nanoTime() + NANOS_BETWEEN_LINES;
            err.println(String.format(Locale.ROOT, "%,d rows, in %s", seen, file));
        }
    }

    @Override
    public void finishing() {
        bar.ifPresent(shown -> shown.setExtraMessage("writing the reports"));
    }

    @Override
    public void close() {
        bar.ifPresent(ProgressBar::close);
    }
}
