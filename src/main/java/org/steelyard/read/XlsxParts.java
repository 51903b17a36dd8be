package org.steelyard.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipTypes;

/**
 * Where the parts of a workbook are (ECMA-376, part 1, clause 12.2, and part 2). Relationships of the strict kind
 * (ISO/IEC 29500) name the same parts by other addresses; the elements inside go by the same local names.
 */
final class XlsxParts {

    private static final String CONTENT = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private static final long MOST_DIRECTORY_BYTES = 4 << 20;

    private final OPCPackage container;
    private final PackagePart workbook;

    XlsxParts(OPCPackage container) throws InvalidFormatException {
        this.container = container;
        PackageRelationship core =
                List.of(PackageRelationshipTypes.CORE_DOCUMENT, PackageRelationshipTypes.STRICT_CORE_DOCUMENT).stream()
                        .map(container::getRelationshipsByType)
                        .filter(found -> found.size() > 0)
                        .map(found -> found.getRelationship(0))
                        .findFirst()
                        .orElseThrow(() -> new InvalidFormatException("the container names no workbook"));
        this.workbook = container.getPart(core);
        if (workbook == null) {
            throw new InvalidFormatException("the workbook's part is not there");
        }
    }

    /**
     * Refuses an archive whose list of contents, relationships or properties are large: POI takes them into memory as
     * they are.
     */
    static void requireSmallDirectory(Path path) throws IOException {
        try (ZipFile zip = ZipFile.builder().setPath(path).get()) {
            for (ZipArchiveEntry part : Collections.list(zip.getEntries())) {
                String name = part.getName().toLowerCase(Locale.ROOT);
                if (name.endsWith(".rels") || name.startsWith("[content") || name.startsWith("docprops/")) {
                    try (InputStream bytes = zip.getInputStream(part)) {
                        requireSmall(bytes);
                    }
                }
            }
        }
    }

    private static void requireSmall(InputStream bytes) throws IOException {
        byte[] chunk = new byte[1 << 13];
        long size = 0;
        for (int n = bytes.read(chunk); n >= 0; n = bytes.read(chunk)) {
            size += n;
            if (size > MOST_DIRECTORY_BYTES) {
                throw new XlsxLimitException(
                        "the workbook's list of contents unpacks to a suspicious size",
                        "a workbook as spreadsheet programs save it");
            }
        }
    }

    InputStream workbook() throws IOException {
        return workbook.getInputStream();
    }

    Optional<InputStream> styles() throws IOException {
        return ofKind("styles+xml");
    }

    Optional<InputStream> texts() throws IOException {
        return ofKind("sharedStrings+xml");
    }

    private Optional<InputStream> ofKind(String kind) throws IOException {
        List<PackagePart> parts = container.getPartsByContentType(CONTENT + kind);
        return parts.isEmpty() ? Optional.empty() : Optional.of(parts.get(0).getInputStream());
    }

    /** A sheet by the id of its relationship. */
    InputStream sheet(String relation) throws IOException, InvalidFormatException {
        PackageRelationship found = workbook.getRelationship(relation);
        if (found == null) {
            throw new InvalidFormatException("no part of the id " + relation);
        }
        return workbook.getRelatedPart(found).getInputStream();
    }
}
