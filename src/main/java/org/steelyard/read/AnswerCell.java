package org.steelyard.read;

import java.util.Optional;
import org.steelyard.model.ColumnUnit;
import org.steelyard.model.SheetItem;

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
