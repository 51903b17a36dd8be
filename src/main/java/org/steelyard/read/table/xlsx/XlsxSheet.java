package org.steelyard.read.table.xlsx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.read.table.MergedArea;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;

/** One sheet of a workbook. */
public final class XlsxSheet implements Table {

    private final XlsxFile file;
    private final XlsxWorkbook.Sheet sheet;
    private final TableName name;
    private Optional<List<MergedArea>> merged = Optional.empty();

    XlsxSheet(XlsxFile file, XlsxWorkbook.Sheet sheet) {
        this.file = file;
        this.sheet = sheet;
        this.name = new TableName(file.name().file(), sheet.name());
    }

    @Override
    public TableName name() {
        return name;
    }

    public boolean hidden() {
        return sheet.hidden();
    }

    @Override
    public boolean rowsMayEndEarly() {
        return true;
    }

    @Override
    public List<RawRow> head(ColumnMap map) throws SourceFault {
        List<RawRow> rows = new ArrayList<>();
        try (XlsxRows all = open()) {
            Optional<RawRow> row = all.nextFilled();
            while (row.isPresent() && rows.size() < HEAD_ROWS) {
                rows.add(row.get());
                row = all.nextFilled();
            }
        } catch (SourceFault e) {
            if (rows.isEmpty()) {
                throw e;
            }
        } catch (IOException e) {
            throw XlsxFile.damaged(name, 0, e);
        }
        return rows;
    }

    /** The merged areas; none if the sheet is damaged, which the reading of its rows then tells. */
    @Override
    public List<MergedArea> merged() {
        if (merged.isEmpty()) {
            merged = Optional.of(readMerged());
        }
        return merged.get();
    }

    private List<MergedArea> readMerged() {
        try {
            return file.merged(sheet);
        } catch (IOException
                | InvalidFormatException
                | XMLStreamException
                | OpenXML4JRuntimeException
                | IllegalArgumentException e) {
            return List.of();
        }
    }

    @Override
    public RowStream rows(ColumnMap map) throws SourceFault {
        return open();
    }

    private XlsxRows open() throws SourceFault {
        try {
            return new XlsxRows(file, sheet, name);
        } catch (IOException
                | InvalidFormatException
                | XMLStreamException
                | OpenXML4JRuntimeException
                | IllegalArgumentException e) {
            throw XlsxFile.damaged(name, 0, e);
        }
    }
}
