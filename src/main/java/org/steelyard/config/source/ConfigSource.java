package org.steelyard.config.source;

/**
 * A file that the configuration was read from.
 *
 * @param path path from the configuration folder, with forward slashes
 * @param sha256 checksum of its bytes, in lower-case hexadecimal digits
 */
public record ConfigSource(String path, String sha256) {}
