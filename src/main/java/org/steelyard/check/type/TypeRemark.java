package org.steelyard.check.type;

/**
 * Something in the description of a type that is no fault, but worth a second look.
 *
 * @param about what it is about, as {@code trim, flaps 5}
 * @param sentence what was noticed, in the units of the type's users
 */
public record TypeRemark(String about, String sentence) {}
