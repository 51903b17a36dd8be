package org.steelyard.grade.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.steelyard.grade.mark.MadeClass.Sheet;
import org.steelyard.grade.text.SlipTable;
import org.steelyard.grade.working.SlipKind;

/**
 * A made class with planted slips. The gate marks a small one and writes its table to {@code target/slips.md}, which an
 * integration test holds against {@code reports/slips.md}; {@code -Dsteelyard.class=1600} marks 1,600 sheets with one
 * slip, 400 with two and 800 right ones, and writes {@code target/slips-full.md}.
 */
class SlipsTest {

    private static final int IN_THE_GATE = 130;
    private static final int SINGLES = Integer.getInteger("steelyard.class", IN_THE_GATE);

    private static SlipTable table;

    @BeforeAll
    static void markTheClass() throws IOException {
        List<Sheet> sheets = MadeClass.of(MadeClass.SEED, SINGLES, SINGLES / 4, SINGLES / 2);
        table = new SlipTable(sheets, MadeClass.strays(MadeClass.SEED + 1, SINGLES / 2));
        Path file = Path.of("target", SINGLES == IN_THE_GATE ? "slips.md" : "slips-full.md");
        Files.createDirectories(file.getParent());
        Files.writeString(file, table.text(), StandardCharsets.UTF_8);
    }

    @Test
    void everyKindIsPlanted() {
        assertThat(table.planted(1).stream().map(sheet -> sheet.planted().get(0).kind()))
                .contains(SlipKind.values());
    }

    @Test
    void ninetyFiveInAHundredSingleSlipsAreNamedFirstOrInTheSetThatCannotBeToldApart() {
        assertThat(table.planted(1)).hasSize(SINGLES);
        assertThat(table.namedPercent(1)).isGreaterThanOrEqualTo(95);
    }

    @Test
    void sixtyInAHundredPairsAreNamed() {
        assertThat(table.planted(2)).hasSizeGreaterThan(SINGLES / 6);
        assertThat(table.namedPercent(2)).isGreaterThanOrEqualTo(60);
    }

    @Test
    void rightSheetsAreNotBlamedAndGetEveryPoint() {
        assertThat(table.falseBlamePercent()).isLessThan(0.5);
        assertThat(table.planted(0))
                .allSatisfy(sheet -> assertThat(sheet.marked().items())
                        .allMatch(item -> item.outcome() == Outcome.RIGHT || item.outcome() == Outcome.MISSING));
    }

    @Test
    void aFigureThatIsOffByChanceIsSeldomGivenACause() {
        assertThat(table.strayBlamePercent()).isLessThan(15);
    }

    @Test
    void marksAddUpAndNeverExceedWhatCanBeHad() {
        for (int slips = 0; slips <= 2; slips++) {
            assertThat(table.planted(slips)).allSatisfy(sheet -> {
                MarkedSheet marked = sheet.marked();
                double sum = 0;
                for (MarkedItem item : marked.items()) {
                    assertThat(item.points()).isBetween(0.0, item.outOf());
                    sum += item.points();
                }
                assertThat(marked.points()).isEqualTo(sum);
                assertThat(marked.items()).hasSizeLessThanOrEqualTo(14);
            });
        }
    }

    @Test
    void everyExplanationHasASentenceForEachSlip() {
        assertThat(table.planted(1))
                .allSatisfy(sheet -> assertThat(SlipTable.named(sheet))
                        .allSatisfy(one -> assertThat(one.sentences())
                                .hasSameSizeAs(one.slips())
                                .allMatch(sentence -> sentence.endsWith(".") && sentence.length() > 40)));
    }
}
