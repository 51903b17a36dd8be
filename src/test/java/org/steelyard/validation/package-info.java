/**
 * The program held against the outside world: published cases, each run through the program's own code, and second
 * computations by general reference libraries.
 */
package org.steelyard.validation;
