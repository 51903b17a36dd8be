/**
 * The words that all packages share, as records that cannot be built wrong: aircraft type, tail, loading, mass with
 * moment, balance state, envelope, trim scale, finding, input problem.
 *
 * <p>Masses are in kilograms, arms in metres from the datum of the type and positive aft, moments in kilogram metres,
 * trim in units that are positive nose-up. The package uses values of the JDK only and knows no file, clock, locale or
 * library.
 */
package org.steelyard.model;
