package org.steelyard.analyse.part;

import java.io.Serializable;

/** Mean pull of each part over the flights of one group: sums alone, as there are many groups. */
public final class PartMeans implements Serializable {

    private static final long serialVersionUID = 1;

    private final double[] sums;
    private final int parts;
    private long n;

    public PartMeans(int parts) {
        this.parts = parts;
        sums = new double[2 * parts];
    }

    public void add(double[] figures) {
        n++;
        for (int j = 0; j < sums.length; j++) {
            sums[j] += figures[j];
        }
    }

    /** Adds another group. */
    public void add(PartMeans other) {
        n += other.n;
        for (int j = 0; j < sums.length; j++) {
            sums[j] += other.sums[j];
        }
    }

    public int parts() {
        return parts;
    }

    long n() {
        return n;
    }

    double meanPull(int part, double aboutReference) {
        return (sums[part] - aboutReference * sums[parts + part]) / n;
    }
}
