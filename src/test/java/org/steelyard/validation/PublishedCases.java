package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;

/**
 * Runs every case of one file through the program. A printed answer must be met to half its last decimal, or to the
 * tolerance that the case states; one that does not follow from its inputs must be rejected.
 */
@Tag("validation")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class PublishedCases {

    private final String kind;
    private final int run;
    private final int notRun;
    private final List<PublishedCase> published;

    /**
     * The cases of a file.
     *
     * @param kind name of the file
     * @param run how many cases must run
     * @param notRun how many state a reason why not
     */
    PublishedCases(String kind, int run, int notRun) {
        this.kind = kind;
        this.run = run;
        this.notRun = notRun;
        this.published = PublishedCase.read(kind);
    }

    /** Answers a case by the program's own code. */
    abstract void answer(Given given, Answers answers);

    @TestFactory
    Stream<DynamicTest> publishedCase() {
        return published.stream()
                .filter(one -> one.reasonNotRun().isEmpty())
                .map(one -> DynamicTest.dynamicTest(one.id() + " " + one.what(), () -> run(one)));
    }

    private void run(PublishedCase one) {
        Given given = new Given(one.given());
        Answers answers = new Answers(one);
        answer(given, answers);
        assertThat(given.unused())
                .as("%s: figures given but not used", one.id())
                .isEmpty();
        List<Answers.Compared> rows = answers.compared();
        PublishedTable.add(kind, one, rows);
        assertThat(rows).allMatch(Answers.Compared::right);
    }

    @Test
    void asManyCasesAsAnnouncedAndEachOnce() {
        long skipped =
                published.stream().filter(one -> one.reasonNotRun().isPresent()).count();
        assertThat(skipped).as("cases not run").isEqualTo(notRun);
        assertThat(published.size() - skipped).as("cases run").isEqualTo(run);
        Set<String> ids = new HashSet<>();
        assertThat(published).allMatch(one -> ids.add(one.id()));
    }

    @AfterAll
    void writeTable() {
        published.stream()
                .filter(one -> one.reasonNotRun().isPresent())
                .forEach(one -> PublishedTable.addNotRun(kind, one));
        PublishedTable.write(kind);
    }
}
