package org.steelyard.grade.mark;

import java.util.List;
import org.steelyard.grade.working.Slip;

/**
 * One or two slips that give every figure of a sheet.
 *
 * @param slips the slips, in the order of the working
 * @param sentences what was likely done and what the right step is, one for each slip
 * @param share how likely it is against the other explanations that were found, from 0 to 1
 */
public record Explanation(List<Slip> slips, List<String> sentences, double share) {

    public Explanation {
        slips = List.copyOf(slips);
        sentences = List.copyOf(sentences);
    }

    /**
     * The explanation in a few words.
     *
     * @return its slips, joined
     */
    public String label() {
        return String.join(" and ", slips.stream().map(Slip::label).toList());
    }
}
