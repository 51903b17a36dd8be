package org.steelyard.spark;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.parquet.example.data.Group;
import org.apache.parquet.example.data.simple.SimpleGroupFactory;
import org.apache.parquet.hadoop.ParquetFileWriter;
import org.apache.parquet.hadoop.ParquetWriter;
import org.apache.parquet.hadoop.example.ExampleParquetWriter;
import org.apache.parquet.hadoop.metadata.CompressionCodecName;
import org.apache.parquet.io.LocalOutputFile;
import org.apache.parquet.schema.LogicalTypeAnnotation;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.PrimitiveType.PrimitiveTypeName;
import org.apache.parquet.schema.Types;
import org.steelyard.report.column.ColumnList;
import org.steelyard.report.column.ListColumn;
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.ListCells;

/**
 * A list being written as a Parquet file, with the caution in its notes.
 *
 * @param <T> what a row is of
 */
final class ParquetOutput<T> implements Closeable {

    private final Path file;
    private final List<ListColumn<T>> columns;
    private final ParquetWriter<Group> writer;
    private final SimpleGroupFactory groups;

    ParquetOutput(Path file, String name, ColumnList<T> list) throws IOException {
        this.file = file;
        columns = list.inFiles();
        MessageType schema = schema(name);
        groups = new SimpleGroupFactory(schema);
        writer = ExampleParquetWriter.builder(new LocalOutputFile(file))
                .withType(schema)
                .withExtraMetaData(java.util.Map.of("caution", Caution.TEXT))
                .withCompressionCodec(CompressionCodecName.SNAPPY)
                .withWriteMode(ParquetFileWriter.Mode.OVERWRITE)
                .build();
    }

    private MessageType schema(String name) {
        Types.MessageTypeBuilder schema = Types.buildMessage();
        for (ListColumn<T> column : columns) {
            switch (column.kind()) {
                case TEXT, SENTENCE, SETTING, MARK, DATE ->
                    schema.optional(PrimitiveTypeName.BINARY)
                            .as(LogicalTypeAnnotation.stringType())
                            .named(column.name());
                case WHOLE -> schema.optional(PrimitiveTypeName.INT64).named(column.name());
                case NUMBER -> schema.optional(PrimitiveTypeName.DOUBLE).named(column.name());
            }
        }
        return schema.named(name);
    }

    void write(T item) throws IOException {
        GroupCells row = new GroupCells(groups.newGroup());
        columns.forEach(column -> column.cell().add(item, row));
        writer.write(row.group);
    }

    @Override
    public void close() throws IOException {
        writer.close();
        ParquetFooter.settle(file);
    }

    /** The cells of one row; one without content stays away. */
    private static final class GroupCells implements ListCells {

        private final Group group;
        private int next;

        GroupCells(Group group) {
            this.group = group;
        }

        @Override
        public ListCells text(String text) {
            group.add(next++, text);
            return this;
        }

        @Override
        public ListCells whole(long number) {
            group.add(next++, number);
            return this;
        }

        @Override
        public ListCells number(double number) {
            group.add(next++, number);
            return this;
        }

        @Override
        public ListCells blank() {
            next++;
            return this;
        }
    }
}
