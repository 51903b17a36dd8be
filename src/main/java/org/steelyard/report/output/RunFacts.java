package org.steelyard.report.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.type.NotChecked;

/**
 * What a run read and under which rules, so that its results can be traced and repeated. Nothing in it depends on the
 * time or the machine: the same inputs give the same bytes.
 *
 * @param season name of the season
 * @param version version of the program
 * @param options options that change results, as name=value
 * @param inputs season files in the order in which they were read
 * @param config configuration files
 * @param skipped files of the season's folder and sheets of its workbooks that were not read, with the reason
 * @param skippedRows rows that were passed over
 * @param remarks what else is to be known of the results, in sentences, as bounds of errors and what is left out
 * @param notChecked of each type of the configuration that has not an envelope for each phase, in which it has none
 */
public record RunFacts(
        String season,
        String version,
        List<String> options,
        List<InputFile> inputs,
        List<ConfigFile> config,
        List<SkippedFile> skipped,
        SkippedRows skippedRows,
        List<String> remarks,
        List<NotChecked> notChecked) {

    public RunFacts {
        options = List.copyOf(options);
        inputs = List.copyOf(inputs);
        config = List.copyOf(config);
        skipped = List.copyOf(skipped);
        Objects.requireNonNull(skippedRows);
        remarks = List.copyOf(remarks);
        notChecked = List.copyOf(notChecked);
    }

    /**
     * A season file.
     *
     * @param name file name
     * @param sha256 checksum in hexadecimal
     * @param bytes size
     * @param mapName heading maps that it was read with; blank if it could not be read
     * @param rowsSeen data rows, headings not counted; always accepted + rejected + blank + skipped
     * @param accepted rows that became flights
     * @param rejected rows that did not
     * @param blank rows without any content
     * @param skipped rows that were passed over, as totals
     * @param notes what else is to be known of it, as columns left out
     */
    public record InputFile(
            String name,
            String sha256,
            long bytes,
            String mapName,
            long rowsSeen,
            long accepted,
            long rejected,
            long blank,
            long skipped,
            List<String> notes) {

        /** Copies the notes and checks that no row is lost. */
        public InputFile {
            notes = List.copyOf(notes);
            if (rowsSeen != accepted + rejected + blank + skipped) {
                throw new IllegalStateException(name + ": " + rowsSeen + " rows seen, but " + accepted + " accepted, "
                        + rejected + " rejected, " + blank + " blank and " + skipped + " skipped");
            }
        }
    }

    /**
     * A configuration file.
     *
     * @param name path within the configuration folder, with forward slashes
     * @param sha256 checksum in hexadecimal
     */
    public record ConfigFile(String name, String sha256) {}

    /**
     * A file or sheet that was not read.
     *
     * @param name file name, with the sheet in square brackets where it is one
     * @param reason why not
     */
    public record SkippedFile(String name, String reason) {}

    /**
     * What is not checked of the flights of a season.
     *
     * @param summary the season
     * @return of each type with flights that has not an envelope for each phase
     */
    public List<NotChecked> notChecked(SeasonSummary summary) {
        return notChecked.stream()
                .filter(one ->
                        summary.types().stream().anyMatch(type -> type.group().equals(one.type())))
                .toList();
    }

    /**
     * What is not checked of the flights of a season, in a sentence.
     *
     * @param summary the season
     * @return blank where all is checked
     */
    public String notCheckedSentence(SeasonSummary summary) {
        List<NotChecked> some = notChecked(summary);
        return some.isEmpty()
                ? ""
                : "No CG is checked where a type has no envelope: "
                        + some.stream()
                                .map(one -> one.type() + " " + one.when())
                                .collect(Collectors.joining("; "))
                        + ".";
    }

    /**
     * The same facts with one more remark.
     *
     * @param remark a sentence
     * @return the facts, the remark last
     */
    RunFacts with(String remark) {
        List<String> more = new ArrayList<>(remarks);
        more.add(remark);
        return new RunFacts(season, version, options, inputs, config, skipped, skippedRows, more, notChecked);
    }

    /**
     * Rows over all season files.
     *
     * @return data rows seen
     */
    public long rowsSeen() {
        return inputs.stream().mapToLong(InputFile::rowsSeen).sum();
    }

    /**
     * Rejected rows over all season files.
     *
     * @return rows that did not become flights
     */
    public long rejected() {
        return inputs.stream().mapToLong(InputFile::rejected).sum();
    }

    /**
     * Blank rows over all season files.
     *
     * @return rows without content
     */
    public long blank() {
        return inputs.stream().mapToLong(InputFile::blank).sum();
    }

    /**
     * Rows passed over in all season files.
     *
     * @return rows that are neither flights nor faults
     */
    public long skippedRowCount() {
        return inputs.stream().mapToLong(InputFile::skipped).sum();
    }

    /**
     * Flights over all season files.
     *
     * @return rows that became flights
     */
    public long accepted() {
        return inputs.stream().mapToLong(InputFile::accepted).sum();
    }
}
