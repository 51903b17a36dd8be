package org.steelyard.read;

import org.steelyard.model.FormerRow;

/**
 * Where a rejected row stood, and how it was read.
 *
 * @param row the row
 * @param mapName its heading map
 */
record FormerPlace(FormerRow row, String mapName) {}
