package org.steelyard.analyse;

/**
 * Flights of one group (a type, a tail, a route) by status.
 *
 * @param group the group's name
 * @param flights all of them
 * @param clean flights with status clean
 * @param marginal flights with status marginal
 * @param breached flights with status breached
 */
public record StatusCount(String group, long flights, long clean, long marginal, long breached) {}
