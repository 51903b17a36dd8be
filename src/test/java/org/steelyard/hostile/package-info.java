/** What people and programs hand in that they should not: a corpus of hostile inputs, and a seeded fuzzer. */
package org.steelyard.hostile;
