package org.steelyard.samples;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Holds a workbook against ECMA-376: every part against its schema (parts 1 and 4), and the package as part 2 has it:
 * each part has a content type and is reached by relationships, and these resolve. What no schema says is looked at,
 * too: names, numbers and cells that may stand but once, and numbers that point into a list.
 */
public final class WorkbookStandard {

    private static final String TYPES_PART = "[Content_Types].xml";
    private static final String CORE_PART = "docProps/core.xml";
    private static final String TYPES_NS = "http://schemas.openxmlformats.org/package/2006/content-types";
    private static final String CORE_NS = "http://schemas.openxmlformats.org/package/2006/metadata/core-properties";
    private static final String RELATIONS_NS = "http://schemas.openxmlformats.org/package/2006/relationships";
    private static final String REFERENCE_NS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private final Map<String, Document> parts = new LinkedHashMap<>();
    private final Map<String, String> contentTypes = new HashMap<>();
    private final Map<String, Map<String, String>> targets = new HashMap<>();
    private final List<String> faults = new ArrayList<>();

    private WorkbookStandard() {}

    /**
     * What is wrong with a workbook.
     *
     * @param workbook the file
     * @return part and reason of each fault; none if it follows the standard
     * @throws IOException if it cannot be read
     */
    public static List<String> faults(Path workbook) throws IOException {
        WorkbookStandard standard = new WorkbookStandard();
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            standard.read(zip);
        }
        standard.contentTypes();
        standard.relations();
        standard.everyPartIsReached();
        standard.parts.forEach((name, part) -> standard.references(name, part.getDocumentElement()));
        new WorkbookNumbers(standard.parts, standard.faults).look();
        return standard.faults;
    }

    private void fault(String part, String reason) {
        faults.add(part + ": " + reason);
    }

    private void read(ZipFile zip) throws IOException {
        Set<String> seen = new HashSet<>();
        for (ZipEntry entry : Collections.list(zip.entries())) {
            String name = entry.getName();
            if (!seen.add(name.toLowerCase(Locale.ROOT))) {
                fault(name, "stands twice");
            }
            if (!name.equals(TYPES_PART) && !name.equals(CORE_PART)) {
                try (InputStream part = zip.getInputStream(entry)) {
                    SchemasOfTheStandard.faults(part).forEach(reason -> fault(name, reason));
                }
            }
            try (InputStream part = zip.getInputStream(entry)) {
                parts.put(name, parse(part));
            } catch (SAXException | ParserConfigurationException e) {
                fault(name, String.valueOf(e.getMessage()));
            }
        }
    }

    private static Document parse(InputStream part) throws IOException, SAXException, ParserConfigurationException {
        DocumentBuilderFactory builders = DocumentBuilderFactory.newInstance();
        builders.setNamespaceAware(true);
        builders.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return builders.newDocumentBuilder().parse(part);
    }

    static List<Element> elements(Node from, String namespace, String name) {
        NodeList found = from instanceof Document whole
                ? whole.getElementsByTagNameNS(namespace, name)
                : ((Element) from).getElementsByTagNameNS(namespace, name);
        List<Element> elements = new ArrayList<>(found.getLength());
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private void contentTypes() {
        Document types = parts.get(TYPES_PART);
        if (types == null) {
            fault(TYPES_PART, "is missing");
            return;
        }
        Map<String, String> byEnding = new HashMap<>();
        for (Element one : elements(types, TYPES_NS, "Default")) {
            once(byEnding, one.getAttribute("Extension").toLowerCase(Locale.ROOT), one.getAttribute("ContentType"));
        }
        Map<String, String> byName = new HashMap<>();
        for (Element one : elements(types, TYPES_NS, "Override")) {
            String name = one.getAttribute("PartName");
            once(byName, name.replaceFirst("^/", ""), one.getAttribute("ContentType"));
            if (!name.startsWith("/") || !parts.containsKey(name.substring(1))) {
                fault(TYPES_PART, "no part " + name);
            }
        }
        for (String name : parts.keySet()) {
            String type = byName.getOrDefault(name, byEnding.get(name.replaceFirst(".*\\.", "")));
            if (!name.equals(TYPES_PART) && (type == null || type.isEmpty())) {
                fault(name, "has no content type");
            }
            contentTypes.put(name, String.valueOf(type));
        }
    }

    private void once(Map<String, String> all, String key, String value) {
        if (all.put(key, value) != null) {
            fault(TYPES_PART, key + " stands twice");
        }
    }

    private void relations() {
        for (String name : parts.keySet()) {
            if (name.endsWith(".rels")) {
                String source = name.replace("_rels/", "").replaceFirst("\\.rels$", "");
                if (!source.isEmpty() && !parts.containsKey(source)) {
                    fault(name, "no part " + source);
                }
                targets.put(source, targets(name, source));
            }
        }
    }

    private Map<String, String> targets(String name, String source) {
        Map<String, String> found = new HashMap<>();
        for (Element relation : elements(parts.get(name), RELATIONS_NS, "Relationship")) {
            String id = relation.getAttribute("Id");
            String target = relation.getAttribute("Target");
            boolean outside = relation.getAttribute("TargetMode").equals("External");
            String part = outside
                    ? ""
                    : URI.create("/" + source).resolve(target).getPath().substring(1);
            if (found.put(id, part) != null) {
                fault(name, id + " stands twice");
            }
            if (!outside && !parts.containsKey(part)) {
                fault(name, "no part " + target);
            } else if (!outside) {
                kind(name, relation.getAttribute("Type"), part);
            }
        }
        return found;
    }

    /** A relationship of a kind leads to a part of that kind: both names end in the same word. */
    private void kind(String name, String relation, String part) {
        String kind = relation.substring(relation.lastIndexOf('/') + 1);
        String ending = switch (kind) {
            case "officeDocument" -> "sheet.main+xml";
            case "extended-properties" -> "extended-properties+xml";
            default -> kind + "+xml";
        };
        if (!contentTypes.get(part).endsWith(ending)) {
            fault(
                    name,
                    "a relationship of kind " + kind + " leads to " + part + " of content type "
                            + contentTypes.get(part));
        }
    }

    private void everyPartIsReached() {
        Set<String> left = new TreeSet<>(parts.keySet());
        left.removeIf(name -> name.equals(TYPES_PART) || name.endsWith(".rels"));
        Deque<String> next = new ArrayDeque<>(List.of(""));
        while (!next.isEmpty()) {
            for (String target : targets.getOrDefault(next.pop(), Map.of()).values()) {
                if (left.remove(target)) {
                    next.push(target);
                }
            }
        }
        left.forEach(name -> fault(name, "no relationship leads to it"));
        if (parts.containsKey(CORE_PART)) {
            core(parts.get(CORE_PART).getDocumentElement());
        }
    }

    /** Part 2, section 8.3: each property at most once, none within another. */
    private void core(Element properties) {
        if (!properties.getNamespaceURI().equals(CORE_NS)) {
            fault(CORE_PART, "is no list of properties");
        }
        Set<String> seen = new HashSet<>();
        for (Node one = properties.getFirstChild(); one != null; one = one.getNextSibling()) {
            if (one instanceof Element property
                    && (!seen.add(property.getLocalName())
                            || !elements(property, "*", "*").isEmpty())) {
                fault(CORE_PART, property.getLocalName() + " stands twice, or holds another");
            }
        }
    }

    /** What a part names by the id of a relationship is among its relationships. */
    private void references(String name, Element element) {
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            Node attribute = element.getAttributes().item(i);
            if (REFERENCE_NS.equals(attribute.getNamespaceURI())
                    && !targets.getOrDefault(name, Map.of()).containsKey(attribute.getNodeValue())) {
                fault(name, "no relationship " + attribute.getNodeValue());
            }
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                references(name, inner);
            }
        }
    }
}
