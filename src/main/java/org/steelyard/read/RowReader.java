package org.steelyard.read;

/** Understands the rows of one table. Safe for use by several threads. */
public sealed interface RowReader permits RowParser, ItemParser {

    /** What a row says, or every reason why it says nothing that can be used. */
    ParsedRow parse(RawRow row);
}
