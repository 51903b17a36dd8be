/**
 * Writes what a season came to: workbooks with native charts, CSV, HTML and JSON. The same inputs give the same bytes;
 * files are written beside their place and moved there when complete. Units of the user begin here.
 */
package org.steelyard.report;
