/**
 * The files of a configuration as they are read, and faults found in them.
 *
 * <p>Uses {@code model.unit}.
 */
package org.steelyard.config.source;
