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
import org.steelyard.report.text.Caution;
import org.steelyard.report.text.OutputColumn;

/** A Parquet file being written, with the caution in its notes. */
final class ParquetOutput implements Closeable {

    private final Path file;
    private final ParquetWriter<Group> writer;
    private final SimpleGroupFactory groups;

    ParquetOutput(Path file, String name, List<OutputColumn> columns) throws IOException {
        this.file = file;
        MessageType schema = schema(name, columns);
        groups = new SimpleGroupFactory(schema);
        writer = ExampleParquetWriter.builder(new LocalOutputFile(file))
                .withType(schema)
                .withExtraMetaData(java.util.Map.of("caution", Caution.TEXT))
                .withCompressionCodec(CompressionCodecName.SNAPPY)
                .withWriteMode(ParquetFileWriter.Mode.OVERWRITE)
                .build();
    }

    static MessageType schema(String name, List<OutputColumn> columns) {
        Types.MessageTypeBuilder schema = Types.buildMessage();
        for (OutputColumn column : columns) {
            switch (column.kind()) {
                case TEXT ->
                    schema.optional(PrimitiveTypeName.BINARY)
                            .as(LogicalTypeAnnotation.stringType())
                            .named(column.name());
                case WHOLE -> schema.optional(PrimitiveTypeName.INT64).named(column.name());
                case NUMBER -> schema.optional(PrimitiveTypeName.DOUBLE).named(column.name());
            }
        }
        return schema.named(name);
    }

    void write(List<Object> cells) throws IOException {
        Group row = groups.newGroup();
        for (int i = 0; i < cells.size(); i++) {
            Object cell = cells.get(i);
            if (cell instanceof String text) {
                row.add(i, text);
            } else if (cell instanceof Long number) {
                row.add(i, number);
            } else if (cell instanceof Double number) {
                row.add(i, number);
            }
        }
        writer.write(row);
    }

    @Override
    public void close() throws IOException {
        writer.close();
        ParquetFooter.settle(file);
    }
}
