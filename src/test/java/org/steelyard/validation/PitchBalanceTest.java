package org.steelyard.validation;

/** The longitudinal moment balance of textbooks: cases that wait for the trim scale from physics. */
class PitchBalanceTest extends PublishedCases {

    PitchBalanceTest() {
        super("pitch-balance", 0, 11);
    }

    @Override
    void answer(Given given, Answers answers) {
        throw new AssertionError("nothing answers these cases yet");
    }
}
