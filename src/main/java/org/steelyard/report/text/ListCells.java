package org.steelyard.report.text;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;

/** Where the cells of one row of a list go, from left to right, whatever the output; exactly one for each column. */
public interface ListCells {

    /** Adds a text from data or of our own. */
    ListCells text(String text);

    ListCells whole(long number);

    ListCells number(double number);

    /** Adds a cell without content. */
    ListCells blank();

    /** Adds a number, or an empty cell where it is not known. */
    default ListCells number(OptionalDouble number) {
        return number.isPresent() ? number(number.getAsDouble()) : blank();
    }

    /** Adds a number of which people see so many decimals, 0 to 3. */
    default ListCells figure(double number, int decimals) {
        return number(number);
    }

    default ListCells date(LocalDate date) {
        return text(date.toString());
    }

    default ListCells status(Status status) {
        return text(status.label());
    }

    default ListCells severity(Severity severity) {
        return text(severity.label());
    }
}
