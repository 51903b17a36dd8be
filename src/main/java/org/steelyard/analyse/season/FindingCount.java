package org.steelyard.analyse.season;

import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;

/**
 * How often a kind of finding occurred.
 *
 * @param code kind
 * @param severity how serious
 * @param findings findings of that kind and severity
 * @param flights flights that have at least one of them
 */
public record FindingCount(FindingCode code, Severity severity, long findings, long flights) {}
