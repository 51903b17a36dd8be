/** Statistics of a season, on table columns that are filled here and never read from a file by the table library. */
package org.steelyard.analyse;
