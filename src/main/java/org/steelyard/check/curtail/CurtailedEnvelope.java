package org.steelyard.check.curtail;

import java.util.List;
import java.util.Objects;
import org.steelyard.model.limit.Envelope;

/**
 * An operational envelope beside the certified one.
 *
 * @param certified the envelope as certified
 * @param operational the envelope for use with standard masses and zones
 * @param forward vertices of its forward limit with what moved them
 * @param aft the same for its aft limit
 */
public record CurtailedEnvelope(
        Envelope certified, Envelope operational, List<CurtailedPoint> forward, List<CurtailedPoint> aft) {

    public CurtailedEnvelope {
        Objects.requireNonNull(certified);
        Objects.requireNonNull(operational);
        forward = List.copyOf(forward);
        aft = List.copyOf(aft);
    }
}
