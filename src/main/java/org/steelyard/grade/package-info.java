/**
 * Marks load sheets: claimed figures against computed ones, with credit for what follows correctly from an earlier
 * slip, and the cause of each slip named. All of it is pure: the same arguments give the same answer.
 */
package org.steelyard.grade;
