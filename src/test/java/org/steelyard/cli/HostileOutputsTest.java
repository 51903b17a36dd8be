package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.samples.WorkbookStandard;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Outputs are safe to open, whatever the names in the inputs are: of every kind, of every command. */
class HostileOutputsTest {

    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]+)?");
    private static final String STARTERS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    @TempDir
    private static Path folder;

    private static List<Path> files;

    @BeforeAll
    static void write() throws IOException {
        try (Stream<Path> all = Files.walk(HostileOutputs.write(folder))) {
            files = all.filter(Files::isRegularFile).toList();
        }
    }

    private static List<Path> ending(String ending) {
        List<Path> some =
                files.stream().filter(file -> file.toString().endsWith(ending)).toList();
        assertThat(some).as(ending).isNotEmpty();
        return some;
    }

    @Test
    void everyCommandWroteAndNothingLeftItsFolder() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all.map(path -> path.getFileName().toString())).containsExactlyInAnyOrder("in", "out");
        }
        try (Stream<Path> all = Files.list(folder.resolve("out"))) {
            assertThat(all.map(path -> path.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "audit", "against", "grade", "exercises", "cards", "types", "curtail", "set", "map", "fit");
        }
        Pattern plain = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]*");
        assertThat(files)
                .allSatisfy(file -> assertThat(file.getFileName().toString()).matches(plain))
                .allSatisfy(file ->
                        assertThat(file.getFileName().toString().length()).isLessThan(80));
        Set<String> lower = new HashSet<>();
        assertThat(files)
                .allSatisfy(file -> assertThat(lower.add(file.toString().toLowerCase(Locale.ROOT)))
                        .isTrue());
        assertThat(files.stream().filter(file -> file.toString().contains("students")))
                .hasSize(HostileOutputs.EVIL.size() + 4);
        assertThat(files.stream().filter(file -> file.getFileName().toString().startsWith("type-")))
                .hasSize(5);
    }

    @Test
    void noCellOfATableBeginsLikeAFormula() throws IOException {
        int evil = 0;
        for (Path file : ending(".csv")) {
            try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
                for (CSVRecord row : rows) {
                    for (String cell : row) {
                        boolean starts = !cell.isEmpty() && STARTERS.indexOf(cell.charAt(0)) >= 0;
                        assertThat(!starts || NUMBER.matcher(cell).matches())
                                .as(file + ":" + row.getRecordNumber() + ": " + cell)
                                .isTrue();
                        evil += cell.startsWith("'") ? 1 : 0;
                    }
                }
            }
        }
        assertThat(evil).isGreaterThan(500);
    }

    @Test
    void everyWorkbookFollowsTheStandard() throws IOException {
        for (Path file : ending(".xlsx")) {
            assertThat(WorkbookStandard.faults(file)).as(file.toString()).isEmpty();
        }
    }

    @Test
    void everyTextOfAWorkbookIsTextAndNothingInItLeadsOut() throws Exception {
        int evil = 0;
        for (Path file : ending(".xlsx")) {
            try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
                for (var part : book.getPackage().getParts()) {
                    if (part.isRelationshipPart()) {
                        continue;
                    }
                    for (PackageRelationship relation : part.getRelationships()) {
                        assertThat(relation.getTargetMode()).as(file.toString()).isEqualTo(TargetMode.INTERNAL);
                    }
                    assertThat(part.getContentType()).doesNotContain("macro").doesNotContain("externalLink");
                }
                for (Sheet sheet : book) {
                    for (Row row : sheet) {
                        for (Cell cell : row) {
                            assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA);
                            boolean starts = cell.getCellType() == CellType.STRING
                                    && !cell.getStringCellValue().isEmpty()
                                    && STARTERS.indexOf(
                                                    cell.getStringCellValue().charAt(0))
                                            >= 0;
                            if (starts
                                    && !NUMBER.matcher(cell.getStringCellValue())
                                            .matches()) {
                                evil++;
                            }
                        }
                    }
                }
            }
        }
        assertThat(evil).isGreaterThan(100);
    }

    /** Flights, tails, types, places, columns carried along: read back from the table as they went in. */
    @Test
    void namesComeBackUnharmed() throws IOException {
        Path file = folder.resolve("out/audit/=a'&/flights.csv");
        Set<String> flights = new HashSet<>();
        Set<String> places = new HashSet<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            for (CSVRecord row : rows) {
                flights.add(org.steelyard.model.unit.GuardedText.free(row.get("flight")));
                places.add(org.steelyard.model.unit.GuardedText.free(row.get("from")));
                assertThat(org.steelyard.model.unit.GuardedText.free(row.get("type")))
                        .startsWith("=T");
                assertThat(org.steelyard.model.unit.GuardedText.free(row.get("tail")))
                        .startsWith("=QI<i onclick");
            }
        }
        List<String> trimmed =
                HostileOutputs.EVIL.stream().map(HostileOutputsTest::read).toList();
        assertThat(places).isSubsetOf(trimmed).hasSizeGreaterThanOrEqualTo(trimmed.size() - 1);
        assertThat(flights).allSatisfy(flight -> assertThat(trimmed).anyMatch(evil -> flight.startsWith(evil)));
    }

    /** As a reader takes a cell: without white space around it. */
    private static String read(String cell) {
        return cell.strip();
    }

    @Test
    void pagesHoldNoElementAttributeOrScriptFromData() throws Exception {
        for (Path file : ending(".html")) {
            String page = Files.readString(file, StandardCharsets.UTF_8);
            Document document = xml(page.replaceFirst("<!DOCTYPE html>", ""));
            Element policy = first(document, "meta", "http-equiv", "Content-Security-Policy");
            String content = policy.getAttribute("content");
            assertThat(content)
                    .as(file.toString())
                    .startsWith("default-src 'none'; ")
                    .contains("base-uri 'none'")
                    .contains("form-action 'none'")
                    .doesNotContain("unsafe")
                    .doesNotContain("http")
                    .doesNotContain("*");
            NodeList scripts = document.getElementsByTagName("script");
            for (int i = 0; i < scripts.getLength(); i++) {
                Element script = (Element) scripts.item(i);
                if (script.getAttribute("type").equals("application/json")) {
                    assertThat(new ObjectMapper()
                                    .readTree(script.getTextContent())
                                    .isObject())
                            .isTrue();
                } else {
                    assertThat(content).contains(sha256(body(page, i)));
                }
            }
            for (Element element : elements(document)) {
                assertThat(element.getTagName()).isNotIn("img", "iframe", "object", "embed", "form", "base", "link");
                for (Attr attribute : attributes(element)) {
                    assertThat(attribute.getName().toLowerCase(Locale.ROOT)).doesNotStartWith("on");
                    if (List.of("href", "src", "xlink:href", "action").contains(attribute.getName())) {
                        assertThat(attribute.getValue()).matches("(#[\\w-]*|[a-z-]+\\.(csv|xlsx|json|html))");
                    }
                }
            }
        }
    }

    private static String body(String page, int number) {
        var scripts = Pattern.compile("(?s)<script[^>]*>(.*?)</script>").matcher(page);
        for (int i = 0; i <= number; i++) {
            assertThat(scripts.find()).isTrue();
        }
        return scripts.group(1);
    }

    private static String sha256(String text) throws Exception {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    }

    private static Document xml(String page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setErrorHandler(null);
        return builder.parse(new InputSource(new StringReader(page)));
    }

    private static Element first(Document document, String name, String attribute, String value) {
        return elements(document).stream()
                .filter(element -> element.getTagName().equals(name))
                .filter(element -> element.getAttribute(attribute).equals(value))
                .findFirst()
                .orElseThrow();
    }

    private static List<Element> elements(Document document) {
        NodeList all = document.getElementsByTagName("*");
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            elements.add((Element) all.item(i));
        }
        return elements;
    }

    private static List<Attr> attributes(Element element) {
        List<Attr> attributes = new ArrayList<>();
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            attributes.add((Attr) element.getAttributes().item(i));
        }
        return attributes;
    }

    @Test
    void factsOfTheRunAreOneObject() throws IOException {
        for (Path file : ending("run.json")) {
            var run = new ObjectMapper().readTree(file.toFile());
            assertThat(StreamSupport.stream(run.get("inputs").spliterator(), false)
                            .map(input -> input.get("file").asText()))
                    .anyMatch(name -> name.startsWith("season-='<b>&\""));
        }
    }

    /** A drafted map of hostile headings is a map with those headings, and nothing else. */
    @Test
    void sectionsAndMapsForTheConfigurationHoldTextAsText() throws IOException {
        Path columns = folder.resolve("in/config/columns/evil.yaml");
        Files.copy(folder.resolve("out/map/evil.yaml"), columns);
        try {
            ConfigResult result = ConfigFolder.load(folder.resolve("in/config"));
            assertThat(result).as(result.toString()).isInstanceOf(ConfigResult.Loaded.class);
            assertThat(((ConfigResult.Loaded) result)
                            .configuration().maps().stream()
                                    .filter(map -> map.name().equals("evil"))
                                    .flatMap(map -> map.columns().stream())
                                    .map(column -> column.heading()))
                    .contains(read(HostileOutputs.EVIL.get(0)), HostileOutputs.EVIL.get(1));
        } finally {
            Files.delete(columns);
        }
        Map<String, String> sections = Map.of("curtail/envelopes.yaml", "envelopes:", "fit/trim.yaml", "trim:");
        sections.forEach((name, head) -> assertThat(folder.resolve("out").resolve(name))
                .content(StandardCharsets.UTF_8)
                .satisfies(text -> assertThat(text.lines()
                                .filter(line -> !line.isBlank() && !line.startsWith(" ") && !line.startsWith("#")))
                        .containsExactly(head)));
    }
}
