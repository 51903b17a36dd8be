/** Units, amounts, tolerances and texts that everything shares. */
package org.steelyard.model.unit;
