package org.steelyard.read.loading;

import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.Slot;

/** Why an item cannot lie where it says, or cannot be what it says. */
final class ItemRefusal extends Exception {

    private static final long serialVersionUID = 1;

    private final Slot slot;
    private final ProblemCode code;
    private final String value;
    private final String expected;

    ItemRefusal(Slot slot, ProblemCode code, String reason, String value, String expected) {
        super(reason, null, false, false);
        this.slot = slot;
        this.code = code;
        this.value = value;
        this.expected = expected;
    }

    Slot slot() {
        return slot;
    }

    ProblemCode code() {
        return code;
    }

    String value() {
        return value;
    }

    String expected() {
        return expected;
    }
}
