package org.steelyard.read.propose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.read.propose.ProposedColumn.Confidence;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.table.SeasonUnreadableException;

/** What a draft makes of headings and cells; types and fleet are those of the fixtures. */
class MapProposalTest {

    private static final String KEYS = "Flight;Date;Reg";
    private static final String KEY_CELLS = "T1;2024-05-13;SX-BAA";

    @TempDir
    private Path folder;

    private MapProposal draft(String text) throws Exception {
        return draft(text, ProposalRequest.of("new"));
    }

    private MapProposal draft(String text, ProposalRequest request) throws Exception {
        Path file = Files.writeString(folder.resolve("x.csv"), text);
        return MapProposal.of(file, request, List.of(Fixtures.TWIN, Fixtures.SINGLE), Fixtures.TAILS);
    }

    /** The column of one heading, beside the keys, with some cells. */
    private ProposedColumn column(String heading, String... cells) throws Exception {
        StringBuilder text = new StringBuilder(KEYS + ";" + heading + "\n");
        for (String cell : cells) {
            text.append(KEY_CELLS).append(';').append(cell).append('\n');
        }
        return draft(text.toString()).columns().get(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Pax A             | 12     | passengers A ADULT ''",
                "Children B        | 2      | passengers B CHILD ''",
                "Lap infants       | 1      | passengers '' INFANT ''",
                "Passengers total  | 120    | passengers '' ADULT ''",
                "PaxA              | 12     | passengers A ADULT ''",
                "Seats rear        | 12     | passengers B ADULT ''",
                "Pax A (kg)        | 900    | passenger-mass A ADULT 'kg'",
                "Hold 1 kg         | 812.5  | hold-mass 1 ADULT 'kg'",
                "Cpt 2 [lb]        | 812    | hold-mass 2 ADULT 'lb'",
                "Cargo weight, t   | 1.2    | hold-mass '' ADULT 't'",
                "Bags 3            | 14     | hold-bags 3 ADULT ''",
                "All pcs           | 14     | hold-bags '' ADULT ''",
                "Fuel left (US gal)| 100    | fuel left ADULT 'US gal'",
                "TankRight_L       | 100.5  | fuel right ADULT 'L'",
                "Block fuel kg     | 5200   | fuel '' ADULT 'kg'",
                "Fuel              | 5200 L | fuel '' ADULT 'in-cell'",
                "Taxi lb           | 300    | taxi-fuel '' ADULT 'lb'",
                "Trip fuel kg      | 300    | trip-fuel '' ADULT 'kg'",
                "Fuel density kg/L | 0.79   | fuel-density '' ADULT 'kg/L'",
                "ZFW kg            | 30000  | zero-fuel-mass '' ADULT 'kg'",
                "ZFW CG % MAC      | 25.5   | zero-fuel-cg '' ADULT '% MAC'",
                "ZFW MAC           | 25.5   | zero-fuel-cg '' ADULT '% MAC'",
                "Take-off weight lb| 30000  | takeoff-mass '' ADULT 'lb'",
                "TOW arm in        | 434.8  | takeoff-cg '' ADULT 'in'",
                "RTOW kg           | 30000  | takeoff-limit '' ADULT 'kg'",
                "Max landing weight (t) | 30 | landing-limit '' ADULT 't'",
                "T/O flap          | 5      | flaps '' ADULT ''",
                "Landing flaps     | 30     | landing-flaps '' ADULT ''",
                "Cockpit           | 2      | flight-crew '' ADULT ''",
                "Pilot lb          | 180    | flight-crew-mass '' ADULT 'lb'",
                "Cabin crew        | 4      | cabin-crew '' ADULT ''",
                "Catering          | std    | pantry '' ADULT ''",
                "Departure         | LGAV   | from '' ADULT ''",
                "Dest.             | LGAV   | to '' ADULT ''",
                "Stab trim         | 1.2 UP | recorded-trim '' ADULT 'in-cell'",
                "Pilot             | Vera   | extra '' ADULT ''",
                "Departure UTC     | 08:15  | extra '' ADULT ''",
                "Mood              | good   | extra '' ADULT ''",
            })
    void aColumnIsUnderstoodByItsWordsItsUnitAndItsCells(String heading, String cell, String meaning) throws Exception {
        ColumnRule rule = column(heading, cell).rule();
        String place = rule.place().isEmpty() ? "''" : rule.place();
        assertThat(rule.field().key() + " " + place + " " + rule.category() + " '"
                        + rule.unit().symbol() + "'")
                .isEqualTo(meaning);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Hold 7 kg  | 100   | no hold of the types has such a name; there are 1, 2, 3",
                "Pax Z      | 3     | no zone of the types has such a name; there are A, B",
                "Fuel gal   | 100   | the heading does not say whether US or imperial gallons",
                "Hold 1     | 100   | it looks like hold-mass, but neither heading nor cells name a unit of it",
                "TOW        | 30000 | it looks like takeoff-mass, but neither heading nor cells name a unit of it",
                "CG % MAC   | 25.1  | the heading does not say of which state",
                "Trim       | 1.1   | trims without UP or DN: nothing says which way they count",
                "Hold 1 kg  | 1,250 | '1,250' may have a decimal sign or a group of three digits",
                "Hold 1 kg  | none  | 1 of 1 cells are no numbers: 'none'",
            })
    void whatIsInDoubtIsLeftOutWithItsReason(String heading, String cell, String why) throws Exception {
        ProposedColumn column = column(heading, cell);
        assertThat(column.rule().field()).isEqualTo(Field.IGNORED);
        assertThat(column.confidence()).isEqualTo(Confidence.DOUBTFUL);
        assertThat(column.why()).isEqualTo(why);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "13.05.2024 01.05.2024 | dd.MM.uuuu",
                "13.5.2024 1.5.2024    | d.M.uuuu",
                "05/13/2024 05/01/2024 | MM/dd/uuuu",
                "13/05/24 01/05/24     | dd/MM/uu",
                "13-May-2024 01-May-2024 | d-MMM-uuuu",
                "20240513 20240501     | uuuuMMdd",
                "13MAY24 01MAY24       | ddMMMuu",
                "2024-05-13T08:15Z 2024-05-01T23:59+02:00 | uuuu-MM-dd'T'HH:mm[:ss]XXX",
            })
    void theDatePatternThatTheCellsFitIsDeclared(String cells, String pattern) throws Exception {
        StringBuilder text = new StringBuilder("Flight;Date;Reg\n");
        for (String cell : cells.split(" ", -1)) {
            text.append("T1;").append(cell).append(";SX-BAA\n");
        }
        MapProposal draft = draft(text.toString());
        assertThat(draft.columns().get(1).rule().dateFormats()).containsExactly(pattern);
        assertThat(draft.questions()).isEmpty();
    }

    @Test
    void daysAndMonthsThatCannotBeToldApartAreAskedFor() throws Exception {
        String text = "Flight;Date;Reg\nT1;01/05/2024;SX-BAA\nT2;02/05/2024;SX-BAA\n";
        MapProposal draft = draft(text);
        assertThat(draft.columns().get(1).rule().field()).isEqualTo(Field.IGNORED);
        assertThat(draft.questions())
                .containsExactly(
                        "Is '01/05/2024' in 'Date' dd/MM/uuuu or MM/dd/uuuu? Say --dates dd/MM/uuuu or --dates MM/dd/uuuu.",
                        "Which column is the date? Without it no row can be read.");

        MapProposal decided = draft(
                text,
                new ProposalRequest(
                        "new", Optional.empty(), Optional.of("MM/dd/uuuu"), Optional.empty(), Optional.empty()));
        assertThat(decided.columns().get(1).rule().dateFormats()).containsExactly("MM/dd/uuuu");
        assertThat(decided.questions()).isEmpty();
    }

    @Test
    void aDateThatIsNoneIsCountedAndTheOthersDecide() throws Exception {
        StringBuilder text = new StringBuilder("Flight;Date;Reg\n");
        for (int day = 10; day < 30; day++) {
            text.append("T1;").append(day).append("/05/2024;SX-BAA\n");
        }
        ProposedColumn column = draft(text + "T1;31/04/2024;SX-BAA\n").columns().get(1);
        assertThat(column.confidence()).isEqualTo(Confidence.LIKELY);
        assertThat(column.why()).isEqualTo("dates as dd/MM/uuuu; 1 of 21 cells are no dates: '31/04/2024'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,5 12,25      | true  | NONE",
                "1.250,5 3      | true  | POINT",
                "1.5 12.25      | false | NONE",
                "1,250.5 3      | false | COMMA",
                "1,250,000 3    | false | COMMA",
                "1.250.000 3    | true  | POINT",
                "1\u00A0250,5 3 | true  | BLANK",
                "1'250.5 3      | false | APOSTROPHE",
                "1,250 1.5      | false | COMMA",
            })
    void theCellsSayHowNumbersAreWritten(String cells, boolean comma, DigitGrouping grouping) throws Exception {
        StringBuilder text = new StringBuilder(KEYS + ";Hold 1 kg\n");
        for (String cell : cells.split(" ", -1)) {
            text.append(KEY_CELLS).append(';').append(cell).append('\n');
        }
        MapProposal draft = draft(text.toString());
        assertThat(draft.map().decimalComma()).isEqualTo(comma);
        assertThat(draft.map().grouping()).isEqualTo(grouping);
        assertThat(draft.columns().get(3).confidence()).isEqualTo(Confidence.SURE);
    }

    @Test
    void totalsBesideCategoriesAreLeftOutAsTheyWouldBeAddedUp() throws Exception {
        MapProposal draft = draft(KEYS + ";Pax;Souls;Adults;Children\n" + KEY_CELLS + ";12;12;10;2\n");
        assertThat(draft.columns().subList(3, 7))
                .extracting(column -> column.rule().field().key() + ": " + column.why())
                .containsExactly(
                        "ignored: columns count the passengers by category already, and would be added to it",
                        "ignored: columns count the passengers by category already, and would be added to it",
                        "passengers: whole numbers",
                        "passengers: whole numbers");
    }

    @Test
    void ofTwoColumnsThatMeanTheSameTheLaterIsLeftOut() throws Exception {
        MapProposal draft = draft(KEYS + ";Pax;Souls\n" + KEY_CELLS + ";12;12\n");
        assertThat(draft.columns().get(3).rule().field()).isEqualTo(Field.PASSENGERS);
        assertThat(draft.columns().get(4).rule().field()).isEqualTo(Field.IGNORED);
        assertThat(draft.columns().get(4).why()).isEqualTo("'Pax' means the same already");
    }

    @Test
    void rowsAboveTheHeadingsEncodingAndDelimiterAreFound() throws Exception {
        Path file = folder.resolve("club.txt");
        Files.write(
                file,
                "Saison d'été 2024\n\nFlight\tDate\tReg\tPilot\nT1\t2024-05-13\tSX-BAA\tRenée\n"
                        .getBytes(Charset.forName("windows-1252")));
        MapProposal draft = MapProposal.of(file, ProposalRequest.of("new"), List.of(Fixtures.TWIN), Fixtures.TAILS);
        assertThat(draft.headingRow()).isEqualTo(3);
        assertThat(draft.map().charset()).isEqualTo("windows-1252");
        assertThat(draft.map().delimiter()).contains('\t');
        assertThat(draft.columns().get(3).samples()).containsExactly("Renée");
        assertThat(draft.notes())
                .containsExactly(
                        "The text is not UTF-8; read as windows-1252. Look at letters with accents.",
                        "Cells are parted by tabs.");
    }

    @Test
    void aFileWithoutHeadingsIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("x.csv"), "a,b\n1,2\n", StandardCharsets.UTF_8);
        assertThatThrownBy(
                        () -> MapProposal.of(file, ProposalRequest.of("new"), List.of(Fixtures.TWIN), Fixtures.TAILS))
                .isInstanceOf(SeasonUnreadableException.class)
                .hasMessage("x.csv: no row looks like headings (expected a row with headings for flight, date, tail and"
                        + " loads)");
    }

    @Test
    void tailsAreFoundByTheirCellsWhereTheHeadingSaysNothing() throws Exception {
        MapProposal draft = draft("Flight;Date;Hull;Pax\nT1;2024-05-13;SX-BAA;1\nT1;2024-05-13;SX-BAB;1\n");
        assertThat(draft.columns().get(2).rule())
                .isEqualTo(new ColumnRule(
                        "Hull", Field.TAIL, "", PassengerCategory.ADULT, ColumnUnit.NONE, List.of(), true));
        assertThat(draft.columns().get(2).confidence()).isEqualTo(Confidence.LIKELY);
    }
}
