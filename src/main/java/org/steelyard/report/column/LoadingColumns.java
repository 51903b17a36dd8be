package org.steelyard.report.column;

import java.util.function.Function;
import java.util.stream.Stream;
import org.steelyard.model.loading.Loading;

/** Which flight a row is of, and where that stands: columns that several lists have. */
final class LoadingColumns {

    static final ListColumn<Loading> SHEET = ListColumn.<Loading>text(
                    "sheet",
                    "sheet of a workbook that the flight was read from",
                    loading -> loading.origin().sheet())
            .onSheet("Sheet", 10);

    static final ListColumn<Loading> FROM = ListColumn.<Loading>text(
                    "from", "place of departure", loading -> loading.flight().from())
            .onSheet("From", 8);

    static final ListColumn<Loading> TO = ListColumn.<Loading>text(
                    "to", "destination", loading -> loading.flight().to())
            .onSheet("To", 8);

    private LoadingColumns() {}

    /** What the lists of flights, findings and room begin with. */
    static <T> Stream<ListColumn<T>> first(Function<T, Loading> loading) {
        return Stream.of(
                        ListColumn.<Loading>text(
                                        "file",
                                        "file that the flight was read from",
                                        one -> one.origin().file())
                                .onSheet("File", 22),
                        ListColumn.<Loading>whole(
                                        "row",
                                        "row of that file or sheet, headings counted",
                                        one -> one.origin().row())
                                .onSheet("Row"),
                        ListColumn.<Loading>text(
                                        "flight",
                                        "flight number or name",
                                        one -> one.flight().flight())
                                .onSheet("Flight", 11),
                        ListColumn.<Loading>date(
                                        "date",
                                        "date of departure",
                                        one -> one.flight().date())
                                .onSheet("Date"),
                        ListColumn.<Loading>text(
                                        "tail",
                                        "registration of the aircraft",
                                        one -> one.tail().registration())
                                .onSheet("Tail", 11),
                        ListColumn.<Loading>text(
                                        "type",
                                        "id of the aircraft type",
                                        one -> one.type().id())
                                .onSheet("Type", 14))
                .map(column -> column.of(loading));
    }
}
