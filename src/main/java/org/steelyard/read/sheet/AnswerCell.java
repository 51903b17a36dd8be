package org.steelyard.read.sheet;

import java.util.Optional;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.SheetItem;
import org.steelyard.read.table.CellKind;

/**
 * A cell with a student's answer.
 *
 * @param item what was asked
 * @param unit the unit that stands beside it or over it; empty if none of the item does
 * @param beside the words that stand there, for a message
 * @param text what was entered, not blank
 * @param kind what the source says of it
 */
record AnswerCell(SheetItem item, Optional<ColumnUnit> unit, String beside, String text, CellKind kind) {}
