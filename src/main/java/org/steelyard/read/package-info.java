/**
 * Reads CSV and XLSX files through heading maps, streaming: each row becomes a loading or a list of problems with the
 * original cells. Rows seen are rows accepted, rejected, blank and skipped. Units end here: what leaves is in SI.
 */
package org.steelyard.read;
