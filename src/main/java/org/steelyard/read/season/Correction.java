package org.steelyard.read.season;

import org.steelyard.model.loading.Origin;

/**
 * What puts a rejected row right.
 *
 * @param place where it stands
 * @param round how many times the row had been rejected when it was written there
 * @param check what the rejected row's cells come to; empty if that is not said
 */
record Correction(Origin place, int round, String check) {}
