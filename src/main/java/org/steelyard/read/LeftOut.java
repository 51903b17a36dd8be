package org.steelyard.read;

import org.steelyard.model.SkipKind;

/**
 * Why a row is passed over unread.
 *
 * @param kind kind of reason
 * @param reason in words
 */
record LeftOut(SkipKind kind, String reason) {}
