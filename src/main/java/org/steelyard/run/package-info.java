/**
 * One audit from a season's files to its reports, without a terminal: the entry point for whoever calls the project as
 * a library. A reading thread makes batches of rows, workers turn them into audited flights, and the calling thread
 * takes them in order, so that the outputs do not depend on the number of threads.
 */
package org.steelyard.run;
