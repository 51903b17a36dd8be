/**
 * What each part of a load does to the spread of trim and CG.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.part}, {@code balance}, {@code check.result},
 * {@code model.type}, {@code model.unit}.
 */
package org.steelyard.analyse.part;
