package org.steelyard.model.finding;

/** The kinds of findings. */
public enum FindingCode {
    /** A state's mass above its limit, structural or of the day, or close below it. */
    MASS_HIGH("mass-high"),
    /** A state's mass below the type's minimum. */
    MASS_LOW("mass-low"),
    /** CG at or ahead of the forward limit, or close to it. */
    CG_FORWARD("cg-forward"),
    /** CG at or behind the aft limit, or close to it. */
    CG_AFT("cg-aft"),
    /** A mass for which the envelope gives no limits at all. */
    MASS_OFF_ENVELOPE("mass-off-envelope"),
    /** More passengers in a zone or seat row than seats. */
    ZONE_SEATS("zone-seats"),
    /** More crew of a role than seats. */
    CREW_SEATS("crew-seats"),
    /** Too much in a hold. */
    HOLD_MASS("hold-mass"),
    /** Too much for a hold's floor, along its length. */
    FLOOR_RUNNING("floor-running"),
    /** Too much for a hold's floor, by area. */
    FLOOR_AREA("floor-area"),
    /** Too much in several places together. */
    GROUP_MASS("group-mass"),
    /** More in a tank than it holds. */
    TANK_CAPACITY("tank-capacity"),
    /** Two tanks that differ too much. */
    FUEL_IMBALANCE("fuel-imbalance"),
    /** Less fuel aboard than taxi and trip burn. */
    FUEL_SHORT("fuel-short"),
    /** CG or mass for which the trim scale gives no setting. */
    TRIM_OFF_SCALE("trim-off-scale"),
    /** Trim outside the permitted band, or close to its ends. */
    TRIM_BAND("trim-band"),
    /** No trim, because the setting is not given or the type has no scale for it. */
    TRIM_UNKNOWN("trim-unknown"),
    /** The recorded setting differs from the right one by more than the policy tolerates. */
    TRIM_RECORDED("trim-recorded"),
    /** The trim comes from a scale that is only an estimate. */
    TRIM_ESTIMATE("trim-estimate"),
    /** More passengers came or went at the last minute than the policy lets without a new load sheet. */
    LAST_MINUTE_PASSENGERS("last-minute-passengers"),
    /** More traffic load came or went at the last minute than the policy lets. */
    LAST_MINUTE_MASS("last-minute-mass"),
    /** More fuel came or went at the last minute than the policy lets. */
    LAST_MINUTE_FUEL("last-minute-fuel"),
    /** What a last-minute change did. */
    LAST_MINUTE_EFFECT("last-minute-effect"),
    /** Inside a limit on paper, but more likely outside than the policy tolerates. */
    LIKELY_OUTSIDE("likely-outside"),
    /** Totals were shared out among places by the policy's rule. */
    SHARED_LOAD("shared-load"),
    /** A fuel total was shared out among tanks by the type's fill order. */
    SHARED_FUEL("shared-fuel"),
    /** Blank load cells were counted as nothing, though nobody has said that they mean it. */
    BLANK_LOAD("blank-load"),
    /** A state was taken as given; what makes it up is not known and not checked. */
    GIVEN_STATE("given-state");

    private final String code;

    FindingCode(String code) {
        this.code = code;
    }

    /**
     * The kind's short name on outputs.
     *
     * @return lower-case words joined by hyphens
     */
    public String code() {
        return code;
    }
}
