package org.steelyard.read.loading;

/**
 * Where an item lies in its type.
 *
 * @param where zone, row, hold, tank, station or anywhere
 * @param index zone, hold, tank or station, from 0 in the type's order; the zone of a row; -1 for anywhere
 * @param row row of the zone, from 0; -1 where it is not known
 * @param kind what the item is, no longer unsaid
 */
record ItemSpot(ItemPlace.Kind where, int index, int row, ItemKind kind) {}
