/**
 * Makes the demo season: a summer of an invented island airline and its flying club, in the three kinds of files that
 * users meet, with planted faults and a key to them. The same configuration gives the same bytes on every machine.
 */
package org.steelyard.demo;
