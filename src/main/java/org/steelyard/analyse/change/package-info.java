/**
 * What differs between two seasons.
 *
 * <p>Uses {@code analyse.change}, {@code analyse.column}, {@code analyse.figure}, {@code analyse.find},
 * {@code check.result}, {@code check.text}, {@code model.finding}.
 */
package org.steelyard.analyse.change;
