package org.steelyard.read.table;

import org.steelyard.model.input.SkipKind;

/**
 * Why a row is passed over unread.
 *
 * @param kind kind of reason
 * @param reason in words
 */
public record SkipReason(SkipKind kind, String reason) {}
