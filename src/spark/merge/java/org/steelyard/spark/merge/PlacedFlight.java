package org.steelyard.spark.merge;

import org.steelyard.check.result.AuditedFlight;

/**
 * A flight of a season of which not all flights are at hand.
 *
 * @param place its place among the flights of the season, from 0
 * @param flight the flight
 */
public record PlacedFlight(long place, AuditedFlight flight) {}
