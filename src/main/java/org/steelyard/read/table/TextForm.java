package org.steelyard.read.table;

import java.nio.charset.Charset;

/**
 * How a text file is cut into cells.
 *
 * @param charset how its bytes are characters
 * @param markBytes length of the byte order mark at its beginning
 * @param delimiter what stands between cells
 */
public record TextForm(Charset charset, int markBytes, char delimiter) {}
