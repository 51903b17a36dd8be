package org.steelyard.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.steelyard.config.Configuration;
import org.steelyard.config.file.PairsFile;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.AircraftType;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.trim.TrimEvidence;

/**
 * Pairs of CG and setting of one type, flap setting and thrust rating, from which a scale can be fitted.
 *
 * @param type the type
 * @param flaps take-off flap setting
 * @param thrustRating thrust rating, blank for any
 * @param pairs the pairs
 */
public record ScaleEvidence(AircraftType type, String flaps, String thrustRating, List<TrimEvidence> pairs) {

    public ScaleEvidence {
        pairs = List.copyOf(pairs);
    }

    /** The scale that the type has already for the setting. */
    public Optional<TrimScale> present() {
        return type.trimScale(Phase.TAKEOFF, flaps, thrustRating);
    }

    /**
     * What a season holds.
     *
     * @param groups evidence by type, flap setting and thrust rating, in order of their names
     * @param rejected rows that could not be used
     * @param repeated rows left out since their flight stands in another, too
     * @param problems files that could not be read
     */
    public record Season(List<ScaleEvidence> groups, long rejected, long repeated, List<InputProblem> problems) {

        public Season {
            groups = List.copyOf(groups);
            problems = List.copyOf(problems);
        }
    }

    /**
     * Gathers the recorded settings of a season with the take-off CG and mass of their flights, but for flights whose
     * load was shared out from totals: their CG is only assumed. A flight that stands in several rows counts by the
     * policy's rule. Scales for a thrust rating are kept apart where the type has such scales; where it has none, all
     * ratings are one.
     *
     * @param season file or folder
     * @param reading how files are read
     * @param configuration types, fleet and policy
     * @return the evidence
     * @throws SeasonUnreadableException if there is nothing to read
     * @throws IOException if a file cannot be closed
     * @throws InterruptedException if the thread is interrupted
     */
    public static Season of(Path season, ReadOptions reading, Configuration configuration)
            throws SeasonUnreadableException, IOException, InterruptedException {
        return new EvidenceOfSeason(configuration).of(season, reading);
    }

    /**
     * The evidence of a file of pairs.
     *
     * @param pairs its pairs
     * @param file its name
     * @param type the type that they are of
     * @param flaps take-off flap setting
     * @param thrustRating thrust rating, blank for any
     * @return the evidence
     */
    public static ScaleEvidence of(
            List<PairsFile.Pair> pairs, String file, AircraftType type, String flaps, String thrustRating) {
        return new ScaleEvidence(
                type,
                flaps,
                thrustRating,
                pairs.stream()
                        .map(pair -> new TrimEvidence(
                                file + ":" + pair.line(), pair.cgPercentMac(), pair.massKg(), pair.settingUnits()))
                        .toList());
    }
}
