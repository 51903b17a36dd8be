package org.steelyard.spark;

import java.io.IOException;

/** Something that the user can put right keeps the run from its work. */
final class InputRefused extends IOException {

    private static final long serialVersionUID = 1;

    InputRefused(String message) {
        super(message);
    }
}
