package org.steelyard.read.table.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipTypes;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;

/**
 * Where the parts of a workbook are (ECMA-376, part 1, clause 12.2, and part 2). Relationships of the strict kind
 * (ISO/IEC 29500) name the same parts by other addresses; the elements inside go by the same local names.
 */
final class XlsxParts {

    private static final String CONTENT = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private static final List<String> NEEDED = List.of("/styles", "/sharedStrings");

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
        requireParts();
    }

    /** Without its texts or styles a workbook would be read as if it had none: other cells, numbers for dates. */
    private void requireParts() throws InvalidFormatException {
        for (PackageRelationship relation : workbook.getRelationships()) {
            boolean needed = NEEDED.stream().anyMatch(relation.getRelationshipType()::endsWith);
            if (needed && !container.containPart(PackagingURIHelper.createPartName(relation.getTargetURI()))) {
                throw new InvalidFormatException("no part " + relation.getTargetURI());
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
