/**
 * Turns the files of {@code config/} into the model: aircraft types, fleet, standard masses, policy, heading maps.
 * Every fault is named with its file, place, value and what would be accepted, and several faults are listed in one go.
 *
 * <p>Uses {@code config.file}, {@code config.source}, {@code config.type}, {@code config.value}, {@code model.input},
 * {@code model.policy}, {@code model.type}.
 */
package org.steelyard.config;
