package org.steelyard.report.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.output.page.Runs;
import org.steelyard.report.season.SeasonReports;
import org.steelyard.samples.PlantedSeason;

class WorkbookChartsTest {

    private static final Pattern ADDRESS = Pattern.compile("<c:f>([^<]+)</c:f>");

    @TempDir
    static Path folder;

    private static XSSFWorkbook book;

    @BeforeAll
    static void writeASeason() throws IOException {
        book = new XSSFWorkbook(Files.newInputStream(write("one")));
    }

    @AfterAll
    static void close() throws IOException {
        book.close();
    }

    private static Path write(String season) throws IOException {
        List<AuditedFlight> flights = new ArrayList<>(new PlantedSeason(31, 14, 12).flights());
        try (SeasonReports reports = SeasonReports.open(folder, season, PlantedSeason.POLICY)) {
            for (AuditedFlight flight : flights) {
                reports.flight(flight);
            }
            reports.finish(Runs.facts(flights.size(), 0));
        }
        return folder.resolve(season).resolve("season.xlsx");
    }

    private static List<XSSFChart> charts(String sheet) {
        return book.getSheet(sheet).createDrawingPatriarch().getCharts();
    }

    private static List<String> titles(String sheet) {
        return charts(sheet).stream()
                .map(chart -> chart.getTitleText().getString())
                .toList();
    }

    private static List<XSSFChart> all() {
        List<XSSFChart> all = new ArrayList<>();
        for (var sheet : book) {
            var drawing = ((XSSFSheet) sheet).getDrawingPatriarch();
            if (drawing != null) {
                all.addAll(drawing.getCharts());
            }
        }
        return all;
    }

    @Test
    void aTypeHasItsEnvelopesAndThePicturesOfItsTrim() {
        assertThat(titles("Charts SAMPLE"))
                .hasSize(6)
                .contains(
                        "Envelope and flights, take-off",
                        "Envelope and flights, zero fuel",
                        "Envelope and flights, landing",
                        "Take-off trim against CG by flap setting",
                        "Take-off trim by month with flaps 5")
                .anyMatch(title -> title.startsWith("Take-off trim with flaps 5: typical "));
        assertThat(titles("Drift by week")).containsExactly("SAMPLE: weekly mean take-off CG");
        assertThat(titles("What drives the spread"))
                .containsExactly("SAMPLE: spread of take-off CG", "SAMPLE, flaps 5: spread of take-off trim");
    }

    /** Every axis has a title, every series a name, and every address holds cells with something in them. */
    @Test
    void chartsNameTheirAxesAndDrawCellsThatAreThere() {
        assertThat(all()).hasSizeGreaterThanOrEqualTo(10);
        for (XSSFChart chart : all()) {
            String xml = chart.getCTChart().xmlText();
            String title = chart.getTitleText().getString();
            int axes = chart.getCTChart().getPlotArea().getValAxArray().length
                    + chart.getCTChart().getPlotArea().getCatAxArray().length;
            assertThat(xml.split("<c:title>", -1)).as(title).hasSizeGreaterThanOrEqualTo(axes + 2);
            assertThat(xml)
                    .as(title)
                    .contains("<c:plotVisOnly val=\"false\"/>")
                    .contains("<c:dispBlanksAs val=\"gap\"/>");
            Matcher address = ADDRESS.matcher(xml);
            int found = 0;
            while (address.find()) {
                assertThat(filled(address.group(1)))
                        .as(title + " " + address.group(1))
                        .isPositive();
                found++;
            }
            assertThat(found).as(title).isGreaterThanOrEqualTo(2);
        }
    }

    private static int filled(String address) {
        int filled = 0;
        for (CellReference cell : new AreaReference(address, SpreadsheetVersion.EXCEL2007).getAllReferencedCells()) {
            var row = book.getSheet(cell.getSheetName()).getRow(cell.getRow());
            filled += row != null && row.getCell(cell.getCol()) != null ? 1 : 0;
        }
        return filled;
    }

    @Test
    void marksDifferByShapeAndColour() {
        Set<String> shapes = new HashSet<>();
        Set<Integer> colours = new HashSet<>();
        for (WorkbookChart.SeriesStyle style : List.of(
                WorkbookChart.SeriesStyle.CLEAN,
                WorkbookChart.SeriesStyle.MARGINAL,
                WorkbookChart.SeriesStyle.BREACHED)) {
            shapes.add(style.shape());
            colours.add(style.rgb());
        }
        assertThat(shapes).hasSize(3);
        assertThat(colours).hasSize(3);
    }

    /** The points of the envelope are the flights: as many as the sheet says. */
    @Test
    void everyFlightIsAPoint() {
        XSSFSheet points = book.getSheet("Points SAMPLE");
        assertThat(points.getRow(0).getCell(0).getStringCellValue())
                .isEqualTo("Points of the charts: all 168 flights of the type.");
        assertThat(points.getLastRowNum()).isEqualTo(168 + 1);
    }

    @Test
    void theSameSeasonGivesTheSameBytes() throws IOException {
        Path again = write("two");
        // the name of the season stands in the book, so the same name is used for both
        Files.move(folder.resolve("two"), folder.resolve("kept"));
        Path third = write("two");
        assertThat(third).hasSameBinaryContentAs(folder.resolve("kept").resolve(again.getFileName()));
    }
}
