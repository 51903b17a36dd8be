/**
 * The audit on Apache Spark, for seasons beyond one machine: the same reading, balance, checks and statistics, applied
 * to pieces of files by many workers. This package alone knows Spark, and it is built by the profile {@code spark} only.
 */
package org.steelyard.spark;
