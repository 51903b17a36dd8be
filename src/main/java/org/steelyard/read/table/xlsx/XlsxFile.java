package org.steelyard.read.table.xlsx;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.util.XMLHelper;
import org.steelyard.read.table.MergedArea;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/**
 * A workbook, read part by part as a stream (ECMA-376, part 1, clause 18). Texts and styles are held once; rows are not
 * held at all. External entities are off and the limits on packed sizes are on, as POI sets them.
 */
public final class XlsxFile implements Closeable {

    private final OPCPackage container;
    private final XlsxParts parts;
    private final XMLInputFactory xml;
    private final TableName name;
    private final XlsxWorkbook workbook;
    private final XlsxStyles styles;
    private final List<String> texts;

    private XlsxFile(OPCPackage container, TableName name) throws IOException, OpenXML4JException, XMLStreamException {
        this.container = container;
        this.name = name;
        this.xml = XMLHelper.newXMLInputFactory();
        this.parts = new XlsxParts(container);
        XlsxMemory memory = XlsxMemory.ofProgram();
        this.workbook = read(Optional.of(parts.workbook()), part -> XlsxWorkbook.read(part, memory))
                .orElseThrow();
        this.styles =
                read(parts.styles(), part -> XlsxStyles.read(part, memory)).orElse(XlsxStyles.NONE);
        this.texts = read(parts.texts(), part -> XlsxTexts.shared(part, memory)).orElse(List.of());
    }

    /** Reads one part. */
    private interface PartReader<T> {
        T read(XMLStreamReader xml) throws XMLStreamException;
    }

    /** Reads a part that may be absent. */
    private <T> Optional<T> read(Optional<InputStream> part, PartReader<T> reader)
            throws IOException, XMLStreamException {
        if (part.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream bytes = part.get()) {
            XMLStreamReader stream = stream(bytes);
            try {
                return Optional.of(reader.read(stream));
            } finally {
                stream.close();
            }
        }
    }

    /**
     * Opens a workbook.
     *
     * @throws SourceFault if it is none, or is damaged or encrypted
     */
    public static XlsxFile open(Path path) throws SourceFault {
        TableName name = new TableName(SeasonFolder.nameOf(path), "");
        SeasonFolder.requireFile(path);
        requireWorkbook(path, name);
        requireSoundArchive(path, name);
        OPCPackage container = container(path, name);
        try {
            return new XlsxFile(container, name);
        } catch (IOException
                | OpenXML4JException
                | XMLStreamException
                | POIXMLException
                | OpenXML4JRuntimeException e) {
            container.revert();
            throw damaged(name, 0, e);
        }
    }

    private static OPCPackage container(Path path, TableName name) throws SourceFault {
        try {
            return OPCPackage.open(path.toFile(), PackageAccess.READ);
        } catch (InvalidFormatException | UnsupportedFileFormatException | OpenXML4JRuntimeException e) {
            throw damaged(name, 0, e);
        }
    }

    private static void requireWorkbook(Path path, TableName name) throws SourceFault {
        try {
            FileMagic magic = FileMagic.valueOf(path.toFile());
            if (magic == FileMagic.OLE2) {
                throw new SourceFault(name.unreadable(
                        0,
                        isEncrypted(path) ? "the workbook is encrypted" : "the workbook is of the older binary kind",
                        "",
                        "a workbook saved as .xlsx without a password"));
            }
            if (magic != FileMagic.OOXML) {
                String reason = path.toFile().length() == 0 ? "the file is empty" : "the file is no workbook";
                throw new SourceFault(name.unreadable(0, reason, "", "a workbook saved as .xlsx"));
            }
        } catch (IOException e) {
            throw new SourceFault(
                    name.unreadable(0, "the file cannot be opened", "", "a file that is there and may be read"), e);
        }
    }

    private static void requireSoundArchive(Path path, TableName name) throws SourceFault {
        try {
            XlsxArchive.requireSound(path.toFile());
        } catch (IOException | IllegalArgumentException | OpenXML4JRuntimeException e) {
            throw damaged(name, 0, e);
        }
    }

    private static boolean isEncrypted(Path path) throws IOException {
        try (POIFSFileSystem files = new POIFSFileSystem(path.toFile(), true)) {
            return files.getRoot().hasEntryCaseInsensitive("EncryptedPackage");
        }
    }

    /** A fault of the format, after some row. */
    public static SourceFault damaged(TableName name, long afterRow, Exception cause) {
        Optional<XlsxLimitException> limit = XlsxLimitException.behind(cause);
        boolean bomb = String.valueOf(cause.getMessage()).contains("Zip bomb");
        String reason = limit.map(Throwable::getMessage)
                .orElse(bomb ? "the workbook unpacks to a suspicious size" : "the workbook is damaged or cut short");
        String rest = afterRow > 0 ? "; the rows after this one were not read" : "";
        String expected = limit.map(XlsxLimitException::expected).orElse("a workbook that opens without repair");
        return new SourceFault(name.unreadable(afterRow, reason + rest, "", expected), cause);
    }

    public TableName name() {
        return name;
    }

    /** The sheets in the order of the workbook. */
    public List<XlsxSheet> sheets() {
        List<XlsxSheet> sheets = new ArrayList<>();
        for (XlsxWorkbook.Sheet sheet : workbook.sheets()) {
            sheets.add(new XlsxSheet(this, sheet));
        }
        return sheets;
    }

    XlsxCells cells() {
        return new XlsxCells(texts, styles, workbook.date1904());
    }

    /** Whether results of formulas may be missing although something stands in their place. */
    boolean uncalculated() {
        return workbook.uncalculated();
    }

    public InputStream open(XlsxWorkbook.Sheet sheet) throws IOException, InvalidFormatException {
        return parts.sheet(sheet.relation());
    }

    /** The merged areas of a sheet. */
    List<MergedArea> merged(XlsxWorkbook.Sheet sheet) throws IOException, InvalidFormatException, XMLStreamException {
        try (InputStream part = open(sheet)) {
            if (!XlsxMerged.isIn(part, XlsxMerged.ELEMENT)) {
                return List.of();
            }
        }
        XlsxMemory memory = XlsxMemory.ofProgram();
        return read(Optional.of(open(sheet)), part -> XlsxMerged.read(part, memory))
                .orElseThrow();
    }

    XMLStreamReader stream(InputStream part) throws XMLStreamException {
        return XlsxXml.of(part, xml);
    }

    @Override
    public void close() {
        container.revert();
    }
}
