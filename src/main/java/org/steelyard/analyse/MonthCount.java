package org.steelyard.analyse;

import java.time.YearMonth;

/**
 * Flights of one type in one month, and what was found on them.
 *
 * @param month month of departure
 * @param typeId type
 * @param flights all of them
 * @param marginal flights with status marginal
 * @param breached flights with status breached
 * @param findings breaches and marginals, notes not counted
 */
public record MonthCount(YearMonth month, String typeId, long flights, long marginal, long breached, long findings) {}
