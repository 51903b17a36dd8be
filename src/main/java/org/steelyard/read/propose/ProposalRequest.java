package org.steelyard.read.propose;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.read.text.DateFormat;

/**
 * What a person decides beforehand of a heading map that is to be drafted.
 *
 * @param mapName name of the map
 * @param sheet name of the sheet of a workbook; empty for the one with the most headings that are understood
 * @param dates pattern of the dates; empty to go by the cells
 * @param decimalComma whether numbers have a decimal comma; empty to go by the cells
 * @param trimUnit which way trims without UP and DN count; empty where nobody says
 */
public record ProposalRequest(
        String mapName,
        Optional<String> sheet,
        Optional<String> dates,
        Optional<Boolean> decimalComma,
        Optional<ColumnUnit> trimUnit) {

    /**
     * Checks the choices.
     *
     * @throws IllegalArgumentException if the pattern of the dates is none
     */
    public ProposalRequest {
        Objects.requireNonNull(mapName);
        Objects.requireNonNull(sheet);
        dates.ifPresent(DateFormat::new);
        Objects.requireNonNull(decimalComma);
        Objects.requireNonNull(trimUnit);
    }

    /**
     * Everything by headings and cells.
     *
     * @param mapName name of the map
     * @return the request
     */
    public static ProposalRequest of(String mapName) {
        return new ProposalRequest(mapName, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
