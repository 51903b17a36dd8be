package org.steelyard.samples;

import static org.steelyard.samples.WorkbookStandard.elements;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Names, numbers and cells of a workbook that may stand but once, cells in order, merged cells that do not overlap, and
 * numbers that point into the lists of styles and texts. For want of any of these a spreadsheet program offers to
 * repair the file.
 */
final class WorkbookNumbers {

    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
    private static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
    private static final int MOST_CHARS = 32_767;
    private static final int MOST_NAME_CHARS = 31;

    private final Map<String, Document> parts;
    private final List<String> faults;
    private final Map<String, Set<String>> seen = new HashMap<>();

    WorkbookNumbers(Map<String, Document> parts, List<String> faults) {
        this.parts = parts;
        this.faults = faults;
    }

    void look() {
        parts.forEach((name, part) -> {
            if (name.equals("xl/workbook.xml")) {
                workbook(name, part);
            } else if (name.startsWith("xl/worksheets/sheet")) {
                sheet(name, part);
            } else if (name.startsWith("xl/charts/")) {
                chart(name, part);
            } else if (name.startsWith("xl/drawings/drawing")) {
                elements(part, DRAWING, "cNvPr").forEach(one -> once(name, "shape", one.getAttribute("id")));
            } else if (name.startsWith("xl/tables/")) {
                once(
                        "xl/tables",
                        "name of a table",
                        lower(part.getDocumentElement().getAttribute("displayName")));
                once("xl/tables", "id of a table", part.getDocumentElement().getAttribute("id"));
            }
        });
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    private void once(String part, String what, String value) {
        if (!seen.computeIfAbsent(part + what, key -> new HashSet<>()).add(value)) {
            faults.add(part + ": " + what + " " + value + " stands twice");
        }
    }

    private void workbook(String name, Document part) {
        for (Element sheet : elements(part, MAIN, "sheet")) {
            String called = sheet.getAttribute("name");
            once(name, "sheet", lower(called));
            once(name, "id of a sheet", sheet.getAttribute("sheetId"));
            if (called.isEmpty() || called.length() > MOST_NAME_CHARS || called.matches(".*[\\[\\]:*?/\\\\].*")) {
                faults.add(name + ": no name for a sheet: " + called);
            }
        }
        for (Element one : elements(part, MAIN, "definedName")) {
            once(name, "name", lower(one.getAttribute("name")) + " of sheet " + one.getAttribute("localSheetId"));
            ranges(name, one.getTextContent());
        }
    }

    /** The sheets that a reference names are there. */
    private void ranges(String name, String reference) {
        Set<String> sheets = new HashSet<>();
        elements(parts.get("xl/workbook.xml"), MAIN, "sheet").forEach(one -> sheets.add(one.getAttribute("name")));
        for (AreaReference area : AreaReference.generateContiguous(SpreadsheetVersion.EXCEL2007, reference)) {
            if (!sheets.contains(area.getFirstCell().getSheetName())) {
                faults.add(name + ": no sheet for " + reference);
            }
        }
    }

    private void chart(String name, Document part) {
        for (Element one : elements(part, CHART, "axId")) {
            if (one.getParentNode().getLocalName().endsWith("Ax")) {
                once(name, "axis", one.getAttribute("val"));
            }
        }
        for (Element one : elements(part, CHART, "ser")) {
            once(name, "series", first(one, "idx").getAttribute("val"));
            once(name, "place of a series", first(one, "order").getAttribute("val"));
        }
        elements(part, CHART, "f").forEach(one -> ranges(name, one.getTextContent()));
    }

    private static Element first(Element in, String name) {
        return elements(in, CHART, name).get(0);
    }

    private void sheet(String name, Document part) {
        long styles = size("xl/styles.xml", "cellXfs", "xf");
        long texts = size("xl/sharedStrings.xml", "sst", "si");
        int lastRow = 0;
        for (Element row : elements(part, MAIN, "row")) {
            int number = Integer.parseInt(row.getAttribute("r"));
            if (number <= lastRow) {
                faults.add(name + ": row " + number + " after row " + lastRow);
            }
            lastRow = number;
            int last = -1;
            for (Element cell : elements(row, MAIN, "c")) {
                CellReference place = new CellReference(cell.getAttribute("r"));
                if (place.getRow() != number - 1 || place.getCol() <= last) {
                    faults.add(name + ": cell " + cell.getAttribute("r") + " is out of order");
                }
                last = place.getCol();
                cell(name, cell, styles, texts);
            }
        }
        merged(name, part);
    }

    private long size(String part, String list, String one) {
        Document whole = parts.get(part);
        return whole == null
                ? 0
                : elements(whole, MAIN, list).stream()
                        .mapToLong(all -> elements(all, MAIN, one).size())
                        .sum();
    }

    private void cell(String name, Element cell, long styles, long texts) {
        boolean shared = cell.getAttribute("t").equals("s");
        boolean style = cell.getAttribute("s").isEmpty() || Long.parseLong(cell.getAttribute("s")) < styles;
        if (!style || (shared && Long.parseLong(cell.getTextContent()) >= texts)) {
            faults.add(name + ": cell " + cell.getAttribute("r") + " has a style or a text that is not there");
        }
        if (cell.getTextContent().length() > MOST_CHARS) {
            faults.add(name + ": cell " + cell.getAttribute("r") + " is too long");
        }
    }

    private void merged(String name, Document part) {
        List<CellRangeAddress> areas = new ArrayList<>();
        for (Element one : elements(part, MAIN, "mergeCell")) {
            CellRangeAddress area = CellRangeAddress.valueOf(one.getAttribute("ref"));
            if (areas.stream().anyMatch(area::intersects) || area.getNumberOfCells() < 2) {
                faults.add(name + ": merged cells " + area.formatAsString() + " overlap others, or are one");
            }
            areas.add(area);
        }
    }
}
