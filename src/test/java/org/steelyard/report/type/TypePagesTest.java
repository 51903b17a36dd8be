package org.steelyard.report.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;
import org.steelyard.report.file.Destination;
import org.steelyard.report.text.Caution;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The pages of the shipped types. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TypePagesTest {

    private Configuration configuration;

    @BeforeAll
    void load() {
        configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
    }

    private AircraftType type(String id) {
        return configuration.types().get(id);
    }

    private List<Tail> tails(String id) {
        return configuration.tails().values().stream()
                .filter(tail -> tail.type().id().equals(id))
                .toList();
    }

    private String page(String id) {
        return TypePages.page(type(id), tails(id), "1.2.3");
    }

    private static Document parsed(String page) throws ParserConfigurationException, IOException, SAXException {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page.replace("<!DOCTYPE html>", ""))));
    }

    private static List<Element> elements(Document page, String name, String look) {
        List<Element> found = new ArrayList<>();
        NodeList all = page.getElementsByTagName(name);
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.getAttribute("class").equals(look)) {
                found.add(element);
            }
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"jet180", "prop70", "single4"})
    void aPageIsWellFormedAndEveryVertexOfEveryPhaseIsMarked(String id) throws Exception {
        Document page = parsed(page(id));
        Element envelopes = elements(page, "svg", "picture wide").get(0);
        long vertices = type(id).envelopes().stream()
                .mapToInt(envelope -> envelope.forward().points().size()
                        + envelope.aft().points().size())
                .sum();
        assertThat(envelopes.getElementsByTagName("circle").getLength()).isEqualTo((int) vertices);
        assertThat(envelopes.getElementsByTagName("path").getLength())
                .isEqualTo(type(id).envelopes().size());
        assertThat(page.getElementsByTagName("figure").getLength())
                .isEqualTo(type(id).trimScales().size() + 1);
        assertThat(page.getDocumentElement().getTextContent()).contains("Steelyard 1.2.3. " + Caution.TEXT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"jet180", "prop70", "single4"})
    void everythingDrawnLiesWithinItsPicture(String id) throws Exception {
        NodeList pictures = parsed(page(id)).getElementsByTagName("svg");
        for (int i = 0; i < pictures.getLength(); i++) {
            Element picture = (Element) pictures.item(i);
            String[] box = picture.getAttribute("viewBox").split(" ", -1);
            double width = Double.parseDouble(box[2]);
            double height = Double.parseDouble(box[3]);
            for (String name : List.of("circle", "line", "rect", "text")) {
                NodeList drawn = picture.getElementsByTagName(name);
                for (int j = 0; j < drawn.getLength(); j++) {
                    Element one = (Element) drawn.item(j);
                    requireWithin(one, width, "x", "x1", "x2", "cx");
                    requireWithin(one, height, "y", "y1", "y2", "cy");
                }
            }
        }
    }

    private static void requireWithin(Element element, double most, String... attributes) {
        for (String attribute : attributes) {
            if (element.hasAttribute(attribute)) {
                assertThat(Double.parseDouble(element.getAttribute(attribute)))
                        .as(element.getTagName() + " " + element.getTextContent())
                        .isBetween(0.0, most);
            }
        }
    }

    @Test
    void theUsersUnitsAreBelowAndTheOtherWayAbove() {
        assertThat(page("single4")).contains("CG aft of datum, in").contains(">% MAC<");
        assertThat(page("jet180")).contains(">CG, % MAC<").contains("arm aft of datum, m");
    }

    /** Places in the drawing go linearly with CG and mass: by the first two vertices of the take-off envelope. */
    @Test
    void verticesLieWhereTheirFiguresSay() {
        List<MatchResult> dots = Pattern.compile("<circle class=\"vertex take-off\" cx=\"([0-9.]+)\" cy=\"([0-9.]+)\"")
                .matcher(page("jet180"))
                .results()
                .toList();
        double x1 = Double.parseDouble(dots.get(0).group(1));
        double x2 = Double.parseDouble(dots.get(4).group(1));
        double aft = Double.parseDouble(dots.get(5).group(1));
        // 9.0, 14.5 and 33.0 % MAC
        assertThat((aft - x1) / (x2 - x1)).isCloseTo((33.0 - 9.0) / (14.5 - 9.0), within(0.02));
        double y1 = Double.parseDouble(dots.get(0).group(2));
        double y2 = Double.parseDouble(dots.get(1).group(2));
        double y5 = Double.parseDouble(dots.get(4).group(2));
        // 42.0, 54.0 and 74.5 t
        assertThat((y1 - y5) / (y1 - y2)).isCloseTo(32.5 / 12.0, within(0.02));
    }

    @Test
    void nothingIsLoadedFromElsewhereAndTheNameOfTheFileIsPlain(@TempDir Path folder) throws IOException {
        List<String> names = TypePages.write(Map.of(type("prop70"), tails("prop70")), Destination.of(folder), "1");
        assertThat(names).containsExactly("type-prop70.html");
        assertThat(Files.readString(folder.resolve("type-prop70.html")))
                .contains("default-src 'none'".replace("'", "&#39;"))
                .doesNotContain("href=")
                .doesNotContain("src=");
    }

    @Test
    void aTableWhoseRowsDoNotFitIsRefused() {
        assertThatThrownBy(() -> new TypeTable("t", List.of("a", "b"), List.of(List.of("1")), ""))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
