/** Aircraft and loadings that several tests share. */
package org.steelyard.samples;
