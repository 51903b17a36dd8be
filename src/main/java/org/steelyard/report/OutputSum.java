package org.steelyard.report;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * By what an output is known again.
 *
 * @param bytes its size
 * @param sha256 SHA-256 of its bytes in lower-case hexadecimal
 */
record OutputSum(long bytes, String sha256) {

    private static final int CHUNK_BYTES = 1 << 16;

    static OutputSum of(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return of(in, Long.MAX_VALUE);
        }
    }

    /** That of the first bytes. */
    static OutputSum of(InputStream in, long most) throws IOException {
        MessageDigest digest = digest();
        byte[] chunk = new byte[CHUNK_BYTES];
        long bytes = 0;
        while (bytes < most) {
            int n = in.read(chunk, 0, (int) Math.min(chunk.length, most - bytes));
            if (n < 0) {
                break;
            }
            digest.update(chunk, 0, n);
            bytes += n;
        }
        return new OutputSum(bytes, HexFormat.of().formatHex(digest.digest()));
    }

    /** Whether a file is that one, byte for byte. */
    boolean agrees(Path file) throws IOException {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && Files.size(file) == bytes
                && of(file).equals(this);
    }

    /** That of the first bytes of a file. */
    static OutputSum ofFirst(Path file, long most) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            return of(in, most);
        }
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
