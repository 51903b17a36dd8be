package org.steelyard.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.steelyard.grade.MadeClass.Sheet;

class SlipsTest {

    @Test
    void plantedSlipsAreNamedAndRightSheetsAreNotBlamed() {
        int n = Integer.getInteger("steelyard.class", 300);
        long t0 = System.nanoTime();
        List<Sheet> sheets = MadeClass.of(MadeClass.SEED, n, n / 3, n / 2);
        SlipTable table = new SlipTable(sheets);
        System.out.println(table.text());
        System.out.println((System.nanoTime() - t0) / 1e9 + " s");
        for (Sheet s : table.planted(1)) {
            if (!SlipTable.inSet(s)) System.out.println(s.planted() + "\n   -> " + SlipTable.named(s).stream().map(Explanation::label).toList() + " " + s.marked().diagnosis().getClass().getSimpleName());
        }
        assertThat(table.namedPercent(1)).isGreaterThan(95);
    }
}
