package org.steelyard.report.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * By what a file is known again, input or output.
 *
 * @param bytes its size
 * @param sha256 SHA-256 of its bytes in lower-case hexadecimal
 */
public record FileSum(long bytes, String sha256) implements Serializable {

    private static final int CHUNK_BYTES = 1 << 16;

    /**
     * That of a file.
     *
     * @param file the file
     * @return its size and checksum
     * @throws IOException if it cannot be read
     */
    public static FileSum of(Path file) throws IOException {
        return ofFirst(file, Long.MAX_VALUE);
    }

    /**
     * That of bytes.
     *
     * @param in the bytes, read to their end
     * @return their number and checksum
     * @throws IOException if they cannot be read
     */
    public static FileSum of(InputStream in) throws IOException {
        return ofFirst(in, Long.MAX_VALUE);
    }

    /** That of the first bytes of a file. */
    static FileSum ofFirst(Path file, long most) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return ofFirst(in, most);
        }
    }

    private static FileSum ofFirst(InputStream in, long most) throws IOException {
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
        return new FileSum(bytes, HexFormat.of().formatHex(digest.digest()));
    }

    /** Whether a file is that one, byte for byte. */
    boolean agrees(Path file) throws IOException {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && Files.size(file) == bytes
                && of(file).equals(this);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
