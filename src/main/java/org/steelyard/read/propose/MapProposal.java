package org.steelyard.read.propose;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.type.AircraftType;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.read.table.SourceFault;

/**
 * A heading map drafted for a file that none reads yet, with what it rests on. What is in doubt is left out, and said.
 *
 * @param file name of the file
 * @param sheet name of the sheet; blank in a text file
 * @param headingRow number of the row with the headings, from 1
 * @param map the map
 * @param columns what it makes of each column, in the order of the file
 * @param notes what else was found: encoding, numbers, dates
 * @param questions what a person has to decide before the map reads everything; empty if nothing is open
 */
public record MapProposal(
        String file,
        String sheet,
        long headingRow,
        ColumnMap map,
        List<ProposedColumn> columns,
        List<String> notes,
        List<String> questions) {

    public MapProposal {
        Objects.requireNonNull(file);
        Objects.requireNonNull(sheet);
        Objects.requireNonNull(map);
        columns = List.copyOf(columns);
        notes = List.copyOf(notes);
        questions = List.copyOf(questions);
    }

    /**
     * Drafts a map.
     *
     * @param path a text file or workbook
     * @param request what is decided already
     * @param types the types whose zones, holds and tanks the headings may name
     * @param tails the fleet
     * @return the draft
     * @throws SeasonUnreadableException if the file cannot be read, or no row looks like headings
     */
    public static MapProposal of(Path path, ProposalRequest request, Collection<AircraftType> types, Tails tails)
            throws SeasonUnreadableException {
        try (ProposalSource source = ProposalSource.open(path, request)) {
            return new ProposalMaker(source, request, types, tails).proposal();
        } catch (SourceFault fault) {
            throw new SeasonUnreadableException(fault.problems().get(0));
        }
    }
}
