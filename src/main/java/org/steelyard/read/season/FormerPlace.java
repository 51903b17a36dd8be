package org.steelyard.read.season;

import org.steelyard.model.input.FormerRow;

/**
 * Where a rejected row stood, and how it was read.
 *
 * @param row the row
 * @param mapName its heading map
 */
record FormerPlace(FormerRow row, String mapName) {}
