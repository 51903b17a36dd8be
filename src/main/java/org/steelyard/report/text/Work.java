package org.steelyard.report.text;

import java.io.IOException;
import java.util.List;

/** What takes time and needs no order; touches nothing that others change. */
@FunctionalInterface
public interface Work {

    Addition make();

    /** All of them as one, in this order. */
    static Work all(List<Work> works) {
        return () -> {
            List<Addition> made = works.stream().map(Work::make).toList();
            return () -> {
                for (Addition addition : made) {
                    addition.add();
                }
            };
        };
    }

    /** Adds what was made to the file. */
    @FunctionalInterface
    interface Addition {
        void add() throws IOException;
    }
}
