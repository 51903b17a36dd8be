package org.steelyard.run;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The checksum by which an input can be recognised. */
public final class Checksum {

    private static final int CHUNK_BYTES = 1 << 16;

    private Checksum() {}

    /** SHA-256 of a file's bytes in lower-case hexadecimal. */
    static String sha256(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return sha256(in);
        }
    }

    /**
     * SHA-256 of bytes in lower-case hexadecimal.
     *
     * @param in the bytes, read to their end
     * @return the checksum
     * @throws IOException if they cannot be read
     */
    public static String sha256(InputStream in) throws IOException {
        MessageDigest digest = digest();
        byte[] chunk = new byte[CHUNK_BYTES];
        for (int n = in.read(chunk); n >= 0; n = in.read(chunk)) {
            digest.update(chunk, 0, n);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
