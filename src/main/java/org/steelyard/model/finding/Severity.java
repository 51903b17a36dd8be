package org.steelyard.model.finding;

/** How serious a finding is, the most serious last. */
public enum Severity {
    /** Worth knowing; no limit is concerned. */
    NOTE("note"),
    /** Inside a limit, but closer to it than the policy likes. */
    MARGINAL("marginal"),
    /** Outside a limit. */
    BREACH("breach");

    private final String label;

    Severity(String label) {
        this.label = label;
    }

    /**
     * How the severity is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
