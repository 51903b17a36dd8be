package org.steelyard.demo;

import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.Field;

/** Writes a file of the season as its heading map says: delimiter, encoding, decimal sign, dates. */
final class CsvWriter {

    private final PlannedFile file;
    private final boolean decimalComma;
    private final DateTimeFormatter dates;

    private CsvWriter(PlannedFile file) {
        this.file = file;
        this.decimalComma = file.map().decimalComma();
        this.dates = file.map().columns().stream()
                .filter(rule -> rule.field() == Field.DATE)
                .map(ColumnRule::dateFormats)
                .flatMap(List::stream)
                .findFirst()
                .map(pattern -> DateTimeFormatter.ofPattern(pattern, Locale.ROOT))
                .orElse(DateTimeFormatter.ISO_LOCAL_DATE);
    }

    static byte[] bytes(PlannedFile file) throws IOException {
        return new CsvWriter(file).text().getBytes(charset(file.map()));
    }

    private static Charset charset(ColumnMap map) {
        return map.charset().isBlank() ? StandardCharsets.UTF_8 : Charset.forName(map.charset());
    }

    /** The club's computer ends its lines as Windows does. */
    private String text() throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(file.map().delimiter().orElse(','))
                .setRecordSeparator(file.style() == Style.CLUB ? "\r\n" : "\n")
                .get();
        StringWriter out = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(out, format)) {
            printer.printRecord(file.headings());
            for (Entry entry : file.entries()) {
                List<String> cells = file.cells(entry).stream().map(this::shown).toList();
                printer.printRecord(cells);
            }
        }
        return out.toString();
    }

    private String shown(Optional<Cell> cell) {
        return cell.map(this::shown).orElse("");
    }

    private String shown(Cell cell) {
        if (cell instanceof Cell.Text text) {
            return text.text();
        }
        if (cell instanceof Cell.Amount amount) {
            return shown(amount.value(), amount.decimals());
        }
        if (cell instanceof Cell.Day day) {
            return shown(day.date());
        }
        throw new IllegalStateException("only a workbook has such a cell: " + cell);
    }

    private String shown(double value, int decimals) {
        String digits = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
        return decimalComma ? digits.replace('.', ',') : digits;
    }

    private String shown(LocalDate date) {
        return dates.format(date);
    }
}
