package org.steelyard.bench;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.model.trim.TrimScale;

/** Writes seasons of any size: {@code Season CONFIG FILE FLIGHTS}, by the file's ending .csv, .xlsx or .json. */
final class Season {

    private static final int COLUMNS = Flights.HEADINGS.size();

    private Season() {}

    public static void main(String[] args) throws IOException {
        Setup setup = Setup.of(Path.of(args[0]));
        Path file = Path.of(args[1]);
        Flights flights = new Flights(setup.configuration());
        if (args[1].endsWith(".csv")) {
            csv(flights, file, Integer.parseInt(args[2]));
        } else if (args[1].endsWith(".xlsx")) {
            xlsx(flights, file, Integer.parseInt(args[2]));
        } else {
            Files.writeString(file, json(setup), StandardCharsets.UTF_8);
        }
    }

    private static void csv(Flights flights, Path file, int count) throws IOException {
        try (Writer out = new BufferedWriter(Files.newBufferedWriter(file), 1 << 16)) {
            out.write(String.join(",", Flights.HEADINGS) + "\n");
            for (int i = 0; i < count; i++) {
                out.write(String.join(",", flights.flight(i).cells()) + "\n");
            }
        }
    }

    /** As people's workbooks have it: texts shared, dates and numbers as such. */
    private static void xlsx(Flights flights, Path file, int count) throws IOException {
        try (SXSSFWorkbook book = new SXSSFWorkbook(new XSSFWorkbook(), 100, false, true);
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            CellStyle dates = book.createCellStyle();
            dates.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
            Sheet sheet = book.createSheet("Flights");
            Row headings = sheet.createRow(0);
            for (int i = 0; i < COLUMNS; i++) {
                headings.createCell(i).setCellValue(Flights.HEADINGS.get(i));
            }
            for (int i = 0; i < count; i++) {
                row(sheet.createRow(i + 1), flights.flight(i).cells(), dates);
            }
            book.write(out);
        }
    }

    private static void row(Row row, List<String> cells, CellStyle dates) {
        for (int i = 0; i < COLUMNS; i++) {
            String cell = cells.get(i);
            if (i == 1) {
                row.createCell(i).setCellValue(LocalDate.parse(cell));
                row.getCell(i).setCellStyle(dates);
            } else if (Flights.TEXTS.contains(i) && !cell.isEmpty()) {
                row.createCell(i).setCellValue(cell);
            } else if (!cell.isEmpty()) {
                row.createCell(i).setCellValue(Double.parseDouble(cell));
            }
        }
    }

    /** What the comparison in Python must know of type and fleet, so that both compute from the same numbers. */
    private static String json(Setup setup) {
        AircraftType type = setup.type();
        StringBuilder json = new StringBuilder("{");
        json.append("\"tails\":{").append(setup.configuration().tails().values().stream()
                .filter(tail -> tail.type().equals(type))
                .map(Season::tail)
                .collect(Collectors.joining(","))).append("},");
        json.append("\"lemac\":").append(type.geometry().chord().percentAt(0)).append(',');
        json.append("\"chord\":").append(type.geometry().chord().lengthM()).append(',');
        json.append("\"adult\":").append(type.cabin().scheme().adultKg()).append(',');
        json.append("\"child\":").append(type.cabin().scheme().childKg()).append(',');
        json.append("\"flight_crew\":").append(type.cabin().scheme().massKg(org.steelyard.model.type.CrewRole.FLIGHT)).append(',');
        json.append("\"cabin_crew\":").append(type.cabin().scheme().massKg(org.steelyard.model.type.CrewRole.CABIN)).append(',');
        json.append("\"zones\":").append(type.cabin().zones().stream().map(zone -> zone.armM()).toList()).append(',');
        json.append("\"holds\":").append(type.holds().stream().map(hold -> hold.armM()).toList()).append(',');
        json.append("\"stations\":").append(type.cabin().crewStations().stream()
                .map(station -> "[" + station.seats() + "," + station.armM() + "]").toList()).append(',');
        json.append("\"pantries\":{").append(type.cabin().pantries().stream()
                .map(pantry -> "\"" + pantry.code() + "\":[" + pantry.load().massKg() + "," + pantry.load().momentKgM() + "]")
                .collect(Collectors.joining(","))).append("},");
        json.append("\"tanks\":").append(type.fuel().tanks().stream().map(Season::tank).toList()).append(',');
        json.append("\"limits\":[").append(type.limits().maxZeroFuelKg()).append(',')
                .append(type.limits().maxTakeoffKg()).append(',').append(type.limits().maxLandingKg()).append("],");
        json.append("\"envelopes\":{").append(type.envelopes().stream()
                .map(envelope -> "\"" + envelope.phase().label() + "\":[" + line(envelope.forward()) + "," + line(envelope.aft()) + "]")
                .collect(Collectors.joining(","))).append("},");
        json.append("\"trim\":{").append(type.trimScales().stream()
                .filter(scale -> scale.phase() == org.steelyard.model.finding.Phase.TAKEOFF)
                .map(scale -> "\"" + scale.flaps() + "\":" + scale(scale)).collect(Collectors.joining(","))).append("}}");
        return json.toString();
    }

    private static String tail(Tail tail) {
        return "\"" + tail.registration() + "\":[" + tail.basic().massKg() + "," + tail.basic().momentKgM() + "]";
    }

    private static String tank(Tank tank) {
        return tank.armTable().stream().map(point -> "[" + point.quantityKg() + "," + point.quantityKg() * point.armM() + "]")
                .toList().toString();
    }

    private static String line(LimitLine line) {
        return "[\"" + line.straight() + "\"," + line.points().stream()
                .map(point -> "[" + point.massKg() + "," + point.armM() + "]").collect(Collectors.joining(",")) + "]";
    }

    /** The scale as trim at whole steps of CG (down) and mass (across), fine enough to hold each of its corners. */
    private static String scale(TrimScale scale) {
        double[] masses = {42000, 46000, 58000, 70000, 75000};
        StringBuilder rows = new StringBuilder("[");
        for (double massKg : masses) {
            rows.append(rows.length() > 1 ? "," : "").append('[');
            for (double cg = scale.law().cgRange().fromPercentMac(); cg <= scale.law().cgRange().toPercentMac(); cg += 0.5) {
                rows.append(cg == scale.law().cgRange().fromPercentMac() ? "" : ",")
                        .append(scale.law().trimUnitsAt(cg, Math.max(46000, massKg)).orElse(0));
            }
            rows.append(']');
        }
        return "{\"from\":" + scale.law().cgRange().fromPercentMac() + ",\"masses\":[42000,46000,58000,70000,75000],\"rows\":"
                + rows.append("],\"step\":").append(scale.stepUnits()).append('}');
    }
}
