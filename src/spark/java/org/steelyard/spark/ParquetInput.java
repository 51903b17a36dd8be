package org.steelyard.spark;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.apache.hadoop.fs.Path;
import org.apache.parquet.example.data.Group;
import org.apache.parquet.hadoop.ParquetFileReader;
import org.apache.parquet.hadoop.ParquetReader;
import org.apache.parquet.hadoop.example.GroupReadSupport;
import org.apache.parquet.hadoop.util.HadoopInputFile;
import org.apache.parquet.schema.LogicalTypeAnnotation;
import org.apache.parquet.schema.LogicalTypeAnnotation.DateLogicalTypeAnnotation;
import org.apache.parquet.schema.LogicalTypeAnnotation.DecimalLogicalTypeAnnotation;
import org.apache.parquet.schema.LogicalTypeAnnotation.TimestampLogicalTypeAnnotation;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.PrimitiveType;
import org.apache.parquet.schema.Type;
import org.steelyard.read.season.SourceFile;

/** A season file in Parquet, read through the same heading maps as any other. */
final class ParquetInput {

    private ParquetInput() {}

    static SourceFile open(String address, String name, Setup setup) throws IOException {
        Path path = new Path(address);
        MessageType schema;
        try (ParquetFileReader file = ParquetFileReader.open(HadoopInputFile.fromPath(path, setup.hadoop()))) {
            schema = file.getFileMetaData().getSchema();
        } catch (RuntimeException e) {
            throw new InputRefused(name + ": this cannot be read (" + RunFault.firstLine(e)
                    + "; expected a whole Parquet file)");
        }
        for (Type column : schema.getFields()) {
            if (!column.isPrimitive()
                    || column.isRepetition(Type.Repetition.REPEATED)
                    || column.asPrimitiveType().getPrimitiveTypeName() == PrimitiveType.PrimitiveTypeName.INT96) {
                throw new InputRefused(name + ": the column '" + column.getName()
                        + "' cannot be read (expected texts, numbers, dates and times, one to a cell)");
            }
        }
        List<String> headings =
                schema.getFields().stream().map(Type::getName).toList();
        return SourceFile.ofTyped(
                name, headings, () -> new Rows(path, schema, setup), setup.reading(), setup.tails());
    }

    private static final class Rows implements Iterator<List<Object>>, Closeable {

        private final ParquetReader<Group> reader;
        private final MessageType schema;
        private Group next;

        Rows(Path path, MessageType schema, Setup setup) throws IOException {
            this.schema = schema;
            reader = ParquetReader.builder(new GroupReadSupport(), path)
                    .withConf(setup.hadoop())
                    .build();
            next = reader.read();
        }

        @Override
        public boolean hasNext() {
            return next != null;
        }

        @Override
        public List<Object> next() {
            if (next == null) {
                throw new NoSuchElementException();
            }
            List<Object> cells = new ArrayList<>();
            for (int i = 0; i < schema.getFieldCount(); i++) {
                cells.add(
                        next.getFieldRepetitionCount(i) == 0
                                ? null
                                : value(next, i, schema.getType(i).asPrimitiveType()));
            }
            try {
                next = reader.read();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return cells;
        }

        @Override
        public void close() throws IOException {
            reader.close();
        }
    }

    private static Object value(Group row, int i, PrimitiveType type) {
        LogicalTypeAnnotation meaning = type.getLogicalTypeAnnotation();
        return switch (type.getPrimitiveTypeName()) {
            case BOOLEAN -> String.valueOf(row.getBoolean(i, 0));
            case INT32 ->
                meaning instanceof DateLogicalTypeAnnotation
                        ? LocalDate.ofEpochDay(row.getInteger(i, 0))
                        : whole(row.getInteger(i, 0), meaning);
            case INT64 ->
                meaning instanceof TimestampLogicalTypeAnnotation time
                        ? time(row.getLong(i, 0), time)
                        : whole(row.getLong(i, 0), meaning);
            case FLOAT -> new BigDecimal(Float.toString(row.getFloat(i, 0)));
            case DOUBLE -> row.getDouble(i, 0);
            case BINARY, FIXED_LEN_BYTE_ARRAY ->
                meaning instanceof DecimalLogicalTypeAnnotation decimal
                        ? new BigDecimal(new BigInteger(row.getBinary(i, 0).getBytes()), decimal.getScale())
                        : row.getBinary(i, 0).toStringUsingUTF8();
            case INT96 -> throw new IllegalStateException("columns of this kind are refused");
        };
    }

    private static Number whole(long number, LogicalTypeAnnotation meaning) {
        return meaning instanceof DecimalLogicalTypeAnnotation decimal
                ? BigDecimal.valueOf(number, decimal.getScale())
                : (Number) number;
    }

    /** The time as it is written, wherever that was. */
    private static LocalDateTime time(long value, TimestampLogicalTypeAnnotation kind) {
        ChronoUnit unit =
                switch (kind.getUnit()) {
                    case MILLIS -> ChronoUnit.MILLIS;
                    case MICROS -> ChronoUnit.MICROS;
                    case NANOS -> ChronoUnit.NANOS;
                };
        return LocalDateTime.ofInstant(Instant.EPOCH.plus(value, unit), ZoneOffset.UTC);
    }
}
