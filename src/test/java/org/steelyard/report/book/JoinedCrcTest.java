package org.steelyard.report.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;

/** Held to the checksum of the JDK over both texts together. */
class JoinedCrcTest {

    private static int crc(byte[] bytes, int from, int to) {
        CRC32 crc = new CRC32();
        crc.update(bytes, from, to - from);
        return (int) crc.getValue();
    }

    /** The check value of CRC-32 that catalogues of checksums print. */
    @Test
    void twoPartsOfTheCatalogueTextGiveItsCheckValue() {
        byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
        for (int cut = 0; cut <= digits.length; cut++) {
            assertThat(JoinedCrc.of(crc(digits, 0, cut), crc(digits, cut, digits.length), digits.length - cut))
                    .isEqualTo(0xCBF43926);
        }
    }

    @Test
    void anyTwoPartsGiveTheChecksumOfBoth() {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            byte[] bytes = new byte[random.nextInt(5000)];
            random.nextBytes(bytes);
            int cut = bytes.length == 0 ? 0 : random.nextInt(bytes.length);
            assertThat(JoinedCrc.of(crc(bytes, 0, cut), crc(bytes, cut, bytes.length), bytes.length - cut))
                    .isEqualTo(crc(bytes, 0, bytes.length));
        }
    }
}
