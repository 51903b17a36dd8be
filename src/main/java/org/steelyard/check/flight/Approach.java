package org.steelyard.check.flight;

import org.steelyard.model.unit.MassMoment;

/**
 * Where a fuel path comes nearest to a limit line, or goes farthest beyond it.
 *
 * @param at mass and moment there
 * @param roomM room to the line in m of arm, negative outside
 */
record Approach(MassMoment at, double roomM) {}
