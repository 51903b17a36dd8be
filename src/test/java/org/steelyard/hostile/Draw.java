package org.steelyard.hostile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Drawn changes to bytes, texts and tables; the same draws make the same changes. */
public final class Draw {

    private static final String LONG_DIGITS = "9".repeat(400);

    /** Cells that have broken programs before. */
    private static final List<String> CELLS = List.of(
            "",
            " ",
            "0",
            "-0",
            "-1",
            "1",
            "1.5",
            "1,5",
            "1e308",
            "1E400",
            "-1e308",
            "NaN",
            "Infinity",
            "-Infinity",
            "0x1F",
            "1e-320",
            LONG_DIGITS,
            "0." + "0".repeat(400) + "1",
            "1.234,5",
            "1,234.5",
            "1'234",
            "1 234",
            "1\u00A0234",
            "1_000",
            "1.",
            ".5",
            "+5",
            "5-",
            "--5",
            "1d",
            "1f",
            "00012",
            "10000",
            "10001",
            "999999.999",
            "1000000",
            "1000001",
            "\u0661\u0662",
            "\uFF11\uFF12",
            "\u22125",
            "\u00BD",
            "12 kg",
            "12kg",
            "1250 lb",
            "1,2 t",
            "3 L",
            "24.5 % MAC",
            "24.5%",
            "% MAC",
            "11.2 m",
            "0.2 UP",
            "1.1 DN",
            "-0.2 UP",
            "UP",
            "=1+1",
            "=SUM(A1:A9)",
            "+1",
            "@SUM(A1)",
            "-",
            "#REF!",
            "#N/A",
            "TRUE",
            "yes",
            "no",
            "null",
            "\u0000",
            "a\u0000b",
            "\uFEFF",
            "\uFEFF1",
            "\u200B",
            "\u202Eabc\u202C",
            "e\u0301\u0301\u0301",
            "\u05D0\u05D1",
            "\uD83D\uDEE9",
            "Total",
            "SUM",
            "Average x",
            "Summe",
            "a\nb",
            "a\r\nb",
            "a\"b",
            "\"",
            "\"\"",
            "a,b;c\td|e",
            "'",
            "\\",
            "${jndi:x}",
            "../../x",
            "<b>&amp;",
            "2026-02-30",
            "0000-00-00",
            "9999-12-31",
            "+999999999-01-01",
            "2026-05-01",
            "2026-05-01T10:00:00",
            "01/02/2026",
            "31.04.2026",
            "46143",
            "46143.5",
            "-1.5",
            "QI-JAA",
            "qi-sab",
            "QI-PAA",
            "ZZ-TOP",
            "sep=;",
            "x".repeat(3000),
            "first",
            "front",
            "1C",
            "adult",
            "male",
            "bags",
            "cargo",
            "fuel",
            "crew",
            "A",
            "left");

    private static final String CHARS = "0123456789.,;:-+eE \t\"'\n\r\u0000|/%\u00E9\uFEFF\u200Fx=[]{}&*!#?<>@`~";

    private final SplittableRandom random;

    /**
     * Draws from a source of chance.
     *
     * @param random the source
     */
    public Draw(SplittableRandom random) {
        this.random = random;
    }

    /** A whole number from 0 to below a bound. */
    public int below(int bound) {
        return random.nextInt(bound);
    }

    /** Whether it happens, once in so many. */
    public boolean onceIn(int times) {
        return random.nextInt(times) == 0;
    }

    /** One of several. */
    public <T> T of(List<T> several) {
        return several.get(random.nextInt(several.size()));
    }

    /** A hostile cell, or one that is a little changed. */
    public String cell(String old) {
        return switch (random.nextInt(4)) {
            case 0 -> old;
            case 1 -> text(old);
            default -> of(CELLS);
        };
    }

    /** A text with a character more, fewer, or other. */
    public String text(String old) {
        int at = random.nextInt(old.length() + 1);
        char c = CHARS.charAt(random.nextInt(CHARS.length()));
        return switch (random.nextInt(4)) {
            case 0 -> old.substring(0, at) + c + old.substring(at);
            case 1 -> old.substring(0, at) + old.substring(Math.min(old.length(), at + 1));
            case 2 -> old.substring(0, at);
            default -> old.substring(0, at) + c + old.substring(Math.min(old.length(), at + 1));
        };
    }

    /** Bytes of which some are flipped, cut, doubled or put in. */
    public byte[] bytes(byte[] old) {
        if (old.length == 0) {
            return old;
        }
        int at = random.nextInt(old.length);
        switch (random.nextInt(5)) {
            case 0 -> {
                return Arrays.copyOf(old, at);
            }
            case 1 -> {
                byte[] flipped = old.clone();
                for (int i = random.nextInt(8); i >= 0; i--) {
                    flipped[random.nextInt(old.length)] ^= (byte) (1 << random.nextInt(8));
                }
                return flipped;
            }
            case 2 -> {
                byte[] set = old.clone();
                set[at] = (byte) random.nextInt(256);
                return set;
            }
            case 3 -> {
                int until = Math.min(old.length, at + 1 + random.nextInt(20));
                byte[] less = Arrays.copyOf(old, old.length - (until - at));
                System.arraycopy(old, until, less, at, old.length - until);
                return less;
            }
            default -> {
                int length = Math.min(old.length - at, 1 + random.nextInt(20));
                byte[] more = Arrays.copyOf(old, old.length + length);
                System.arraycopy(old, at, more, at + length, old.length - at);
                return more;
            }
        }
    }

    /** A table with the rows and cells of another, some of them changed, gone, doubled or in other places. */
    public List<List<String>> table(List<List<String>> old) {
        List<List<String>> rows = new ArrayList<>();
        old.forEach(row -> rows.add(new ArrayList<>(row)));
        for (int i = random.nextInt(6); i >= 0 && !rows.isEmpty(); i--) {
            change(rows);
        }
        return rows;
    }

    private void change(List<List<String>> rows) {
        int at = random.nextInt(rows.size());
        List<String> row = rows.get(at);
        switch (random.nextInt(14)) {
            case 0 -> rows.add(at, new ArrayList<>(row));
            case 1 -> rows.remove(at);
            case 2 -> rows.add(at, new ArrayList<>(List.of("")));
            case 3 -> rows.add(random.nextInt(rows.size()), rows.remove(at));
            case 4 -> {
                if (!row.isEmpty()) {
                    row.subList(random.nextInt(row.size()), row.size()).clear();
                }
            }
            case 5 -> row.add(of(CELLS));
            case 6 -> column(rows);
            case 7 -> rows.add(new ArrayList<>(List.of("Total", "", "", "12")));
            default -> {
                if (!row.isEmpty()) {
                    int cell = random.nextInt(row.size());
                    row.set(cell, cell(row.get(cell)));
                }
            }
        }
    }

    private void column(List<List<String>> rows) {
        int column = random.nextInt(rows.get(0).size() + 1);
        boolean gone = random.nextBoolean();
        for (List<String> row : rows) {
            if (column < row.size()) {
                if (gone) {
                    row.remove(column);
                } else {
                    row.add(column, row.get(column));
                }
            }
        }
    }
}
