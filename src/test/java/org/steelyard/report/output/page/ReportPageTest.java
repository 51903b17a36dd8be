package org.steelyard.report.output.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.report.output.page.Flights.JET;
import static org.steelyard.report.output.page.Flights.aft;
import static org.steelyard.report.output.page.Flights.flight;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.report.html.ChartLibrary;
import org.steelyard.report.text.Caution;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ReportPageTest {

    private static final String EVIL = "</title><script>alert(1)</script>\" onload='x' & \u202Eabc \u05E9\u05DC";

    @TempDir
    private Path reports;

    private String page(List<AuditedFlight> flights, List<RejectedRow> rejected) throws IOException {
        return Runs.text(Runs.write(reports, flights, rejected).resolve("report.html"));
    }

    private String page(AuditedFlight... flights) throws IOException {
        return page(List.of(flights), List.of());
    }

    /** The page as XML, by the parser of the JDK: nothing from outside is loaded. */
    private static Document xml(String page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        factory.setExpandEntityReferences(false);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static Stream<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i));
    }

    @Test
    void thePageIsWellFormedAndSaysWhatCounts() throws Exception {
        List<AuditedFlight> flights = Flights.season(9, 600);
        Document page = xml(page(flights, List.of(Runs.rejected(700, List.of("ZFW"), "x"))));
        String text = page.getDocumentElement().getTextContent();
        long breached = flights.stream()
                .filter(flight -> flight.assessment().status().label().equals("breached"))
                .count();
        assertThat(text)
                .contains(breached + " flights are outside at least one limit")
                .contains("602 rows read from 1 file: 600 accepted, 1 rejected, 1 blank, 0 skipped.")
                .contains("season.csv:700")
                .contains("definition 7")
                .contains(Caution.TEXT);
        assertThat(elements(page, "section").map(section -> section.getAttribute("id")))
                .contains("worst", "groups", "findings", "trim", "envelopes", "months", "inputs", "rejected", "files");
        assertThat(elements(page, "a").map(link -> link.getAttribute("href")))
                .contains("flights.csv", "findings.csv", "rejected.csv", "run.json");
    }

    @Test
    void nothingIsLoadedAndNoMarkupRunsAScript() throws Exception {
        String text = page(Flights.season(9, 60), List.of());
        Document page = xml(text);
        assertThat(elements(page, "*").map(Element::getTagName))
                .doesNotContain("link", "img", "iframe", "object", "image", "use", "foreignObject");
        elements(page, "*").forEach(element -> {
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                String name = element.getAttributes().item(i).getNodeName();
                assertThat(name).doesNotStartWith("on").isNotIn("style", "src", "srcset");
            }
        });
        assertThat(elements(page, "a").map(link -> link.getAttribute("href"))).noneMatch(href -> href.contains(":"));
        assertThat(elements(page, "style").map(Element::getTextContent))
                .noneMatch(css -> css.contains("url(") || css.contains("@import"));
    }

    @Test
    void thePolicyAllowsItsOwnScriptsAndStyleSheetsByChecksumAndNothingElse() throws Exception {
        String text = page();
        Element policy = elements(xml(text), "meta")
                .filter(meta -> meta.getAttribute("http-equiv").equals("Content-Security-Policy"))
                .findFirst()
                .orElseThrow();
        assertThat(policy.getAttribute("content"))
                .isEqualTo("default-src 'none'; script-src" + checksums(text, "script") + "; style-src"
                        + checksums(text, "style") + "; base-uri 'none'; form-action 'none'");
    }

    private static String checksums(String text, String element) throws Exception {
        Matcher found = Pattern.compile("<" + element + ">(.*?)</" + element + ">", Pattern.DOTALL)
                .matcher(text);
        StringBuilder checksums = new StringBuilder();
        while (found.find()) {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(found.group(1).getBytes(StandardCharsets.UTF_8));
            checksums
                    .append(" 'sha256-")
                    .append(Base64.getEncoder().encodeToString(digest))
                    .append('\'');
        }
        assertThat(checksums).hasSize(2 * " 'sha256-".length() + 2 * 45);
        return checksums.toString();
    }

    @Test
    void ourScriptsMakeNoMarkupFromText() throws Exception {
        String text = page();
        String own = text.substring(text.lastIndexOf("<script>"));
        assertThat(own)
                .contains("createElement")
                .doesNotContain("innerHTML", "outerHTML", "insertAdjacentHTML", "document.write", "eval(", "Function(");
    }

    @Test
    void theLicenceOfTheChartLibraryIsOnThePage() throws Exception {
        assertThat(page()).contains("uPlot " + ChartLibrary.version()).contains("The MIT License (MIT)");
    }

    @Test
    void theDataOfThePageHoldsEveryFlightWithItsFigures() throws Exception {
        List<AuditedFlight> flights = new ArrayList<>(Flights.season(9, 60));
        flights.add(flight(EVIL)
                .takeoff(61_000, 21.5)
                .inDetail()
                .found(aft(Severity.BREACH, -1))
                .build());
        JsonNode data = data(page(flights, List.of(Runs.rejected(700, List.of("ZFW"), EVIL))));
        assertThat(data.get("flights")).hasSize(61);
        JsonNode last = data.get("flights").get(60);
        assertThat(last.get(0).textValue()).isEqualTo(EVIL);
        assertThat(data.get("tails").get(last.get(2).intValue()).textValue()).isEqualTo("ZZ-JA");
        assertThat(last.get(7).intValue()).isEqualTo(PageNumbers.of(Status.BREACHED));
        assertThat(last.get(14)).hasSize(5 * 4);
        assertThat(last.get(14).get(13).doubleValue()).isEqualTo(61_000);
        assertThat(last.get(14).get(14).doubleValue()).isEqualTo(21.5);
        assertThat(last.get(16)).hasSize(2 * 2);
        assertThat(last.get(17).get(1).textValue()).contains("1.00 % MAC behind the aft limit");
        assertThat(data.get("rejected").get(0).get(1).textValue())
                .as("a message quotes what can be seen, and leaves out what turns text round")
                .contains(EVIL.replace('\u202e', ' '));
    }

    @Test
    void aThinnedPageKeepsTheBreachesInOrderAndIsTheSameEachTime() throws Exception {
        List<AuditedFlight> flights = Flights.season(9, 400);
        List<String> breached = flights.stream()
                .filter(flight -> flight.assessment().status() == Status.BREACHED)
                .map(flight -> flight.loading().flight().flight())
                .toList();
        PageLimits limits = new PageLimits(breached.size(), breached.size() + 2, breached.size() + 20);
        String text = Runs.text(Runs.thinned(reports, flights, limits));
        JsonNode data = data(text);
        List<String> kept = new ArrayList<>();
        data.get("flights").forEach(flight -> {
            if (flight.get(7).intValue() == PageNumbers.of(Status.BREACHED)) {
                kept.add(flight.get(0).textValue());
            }
        });
        assertThat(kept).isEqualTo(breached);
        assertThat(data.get("flights")).hasSize(limits.all());
        assertThat(data.get("sample")
                        .get("kept")
                        .get(PageNumbers.of(Status.MARGINAL))
                        .intValue())
                .isEqualTo(2);
        assertThat(data.get("sample").get("seed").longValue()).isEqualTo(PageSample.SEED);
        assertThat(reports.resolve("thinned.waiting")).doesNotExist();
        assertThat(Runs.text(Runs.thinned(reports, flights, limits))).isEqualTo(text);
    }

    private static JsonNode data(String page) throws Exception {
        Element script = elements(xml(page), "script")
                .filter(element -> element.getAttribute("id").equals("season-data"))
                .findFirst()
                .orElseThrow();
        return new ObjectMapper().readTree(script.getTextContent());
    }

    @Test
    void textFromDataStaysText() throws Exception {
        AuditedFlight flight = flight(EVIL)
                .tail(EVIL, JET)
                .route(EVIL, EVIL)
                .flaps(EVIL)
                .row(EVIL, 3)
                .found(aft(Severity.BREACH, -1))
                .build();
        String text = page(List.of(flight), List.of(Runs.rejected(2, List.of(EVIL), EVIL)));
        String withoutData = text.replaceFirst("(?s)<script type=.*?</script>", "");
        assertThat(text).doesNotContain("<script>alert");
        assertThat(withoutData).hasSizeLessThan(text.length()).doesNotContain("\" onload");
        Document page = xml(text);
        assertThat(elements(page, "bdi").map(Element::getTextContent)).contains(EVIL);
    }

    @Test
    void aSeasonWithoutFlightsStillHasAPage() throws Exception {
        assertThat(xml(page()).getDocumentElement().getTextContent()).contains("No flights");
    }

    @Test
    void aCleanSeasonSaysSo() throws Exception {
        assertThat(page(flight("1").build()))
                .contains("All flights are inside every limit and close to none.")
                .contains("No flight is outside a limit.");
    }

    @Test
    void aSingleFlightHasNoStandardDeviation() throws Exception {
        Document page = xml(page(flight("1").takeoff(60_000, 20).build()));
        List<String> row = elements(page, "section")
                .filter(section -> section.getAttribute("id").equals("trim"))
                .flatMap(section -> {
                    NodeList cells = section.getElementsByTagName("td");
                    return IntStream.range(0, 11).mapToObj(i -> cells.item(i).getTextContent());
                })
                .toList();
        assertThat(row)
                .containsExactly(
                        "5", "1", "4.40 UP", "–", "4.40 UP", "4.40 UP", "4.40 UP", "4.40 UP", "4.40 UP", "4.40 UP",
                        "4.40 UP");
    }

    @Test
    void cleanFlightsAreThinnedAndThePageSaysSoWhileBreachesAreAllKept() throws Exception {
        List<AuditedFlight> flights = new ArrayList<>();
        for (int i = 0; i < 12_000; i++) {
            flights.add(flight("F").takeoff(50_000 + i, 15 + i % 97 / 10.0).build());
        }
        for (int i = 0; i < 300; i++) {
            flights.add(flight("F")
                    .takeoff(45_000 + 60 * i, 37 + i % 3)
                    .found(aft(Severity.BREACH, -1))
                    .build());
        }
        String text = page(flights, List.of());
        assertThat(text).contains("of the clean flights one in 4 is drawn (3,000 of 12,000), of the others all");
        long crosses = elements(xml(text), "path")
                .filter(path -> path.getAttribute("class").equals("flights breached"))
                .mapToLong(path ->
                        path.getAttribute("d").chars().filter(c -> c == 'M').count())
                .sum();
        assertThat(crosses).isEqualTo(300);
    }

    @Test
    void flightsOnTheSameSpotAreDrawnOnce() throws Exception {
        AuditedFlight flight = flight("1").found(aft(Severity.BREACH, -1)).build();
        List<String> drawn = elements(xml(page(flight, flight)), "path")
                .filter(path -> path.getAttribute("class").equals("flights breached"))
                .map(path -> path.getAttribute("d"))
                .toList();
        assertThat(drawn).singleElement().asString().containsOnlyOnce("M");
    }

    @Test
    void aFlightBeyondThePictureIsDrawnOnItsEdgeAndCounted() throws Exception {
        assertThat(page(flight("1").takeoff(60_000, 300).build())).contains("1 flight lies beyond the edge");
    }
}
