package org.steelyard.model.trim;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.model.limit.CgRange;

/**
 * How stabilizer trim follows from the centre of gravity, and where the type says so from take-off mass. A law holds on
 * its own range only and is never extended. Nose-up is positive, so a law never rises with CG: the further forward the
 * CG, the more nose-up trim (common practice).
 */
public sealed interface TrimLaw permits TrimPoints, TrimTable, TrimSlope {

    /**
     * Hands the law to the case of its kind.
     *
     * @param cases what to do with each kind
     * @param <T> what comes of it
     * @return what the case makes of it
     */
    <T> T match(Cases<T> cases);

    /**
     * One method for each kind of law, so that none can be passed over.
     *
     * @param <T> what comes of a law
     */
    interface Cases<T> {

        /**
         * Points joined by straight lines.
         *
         * @param points the law
         * @return what comes of it
         */
        T points(TrimPoints points);

        /**
         * A table by CG and mass.
         *
         * @param table the law
         * @return what comes of it
         */
        T table(TrimTable table);

        /**
         * One straight line.
         *
         * @param slope the law
         * @return what comes of it
         */
        T slope(TrimSlope slope);
    }

    /**
     * The trim for a CG.
     *
     * @param cgPercentMac CG in % MAC
     * @param massKg take-off mass in kg
     * @return trim in units, nose-up positive; empty where the law does not reach
     */
    OptionalDouble trimUnitsAt(double cgPercentMac, double massKg);

    /**
     * The CGs that the law covers.
     *
     * @return range in % MAC
     */
    CgRange cgRange();

    /**
     * The law at one mass as points joined by straight lines.
     *
     * @param massKg take-off mass in kg
     * @return points with rising CG; empty where the law does not reach that mass
     */
    List<TrimPoint> pointsAt(double massKg);

    /**
     * The inverse: the CGs whose trim lies in a band.
     *
     * @param lowUnits lower end of the band, nose-up positive
     * @param highUnits upper end of the band, not below the lower one
     * @param massKg take-off mass in kg
     * @return the range of CG in % MAC; empty where no CG of the law has such a trim
     */
    default Optional<CgRange> cgFor(double lowUnits, double highUnits, double massKg) {
        return TrimPoints.inverse(pointsAt(massKg), lowUnits, highUnits);
    }
}
