/**
 * Files of heading maps, policy, marking and pairs of CG and trim.
 *
 * <p>Uses {@code config.source}, {@code config.value}, {@code model.input}, {@code model.policy}, {@code model.type}.
 */
package org.steelyard.config.file;
