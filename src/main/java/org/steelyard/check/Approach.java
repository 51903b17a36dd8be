package org.steelyard.check;

import org.steelyard.model.MassMoment;

/**
 * Where a fuel path comes nearest to a limit line, or goes farthest beyond it.
 *
 * @param at mass and moment there
 * @param roomM room to the line in m of arm, negative outside
 */
record Approach(MassMoment at, double roomM) {}
