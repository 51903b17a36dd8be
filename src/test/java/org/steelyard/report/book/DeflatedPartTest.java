package org.steelyard.report.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Random;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.api.Test;

class DeflatedPartTest {

    private final Random random = new Random(3);

    private byte[] piece(int length, int signs) {
        byte[] bytes = new byte[length];
        for (int i = 0; i < length; i++) {
            bytes[i] = (byte) random.nextInt(signs);
        }
        return bytes;
    }

    @Test
    void piecesPutTogetherInflateToTheirContentsInOrder() throws IOException {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        ByteArrayOutputStream deflated = new ByteArrayOutputStream();
        int[] lengths = {0, 1, 70_000, 3, 500_000, 12};
        for (int i = 0; i <= lengths.length; i++) {
            boolean last = i == lengths.length;
            byte[] bytes = piece(last ? 9 : lengths[i], i % 2 == 0 ? 5 : 256);
            content.writeBytes(bytes);
            DeflatedPart part = last ? DeflatedPart.last(bytes) : DeflatedPart.of(bytes);
            assertThat(part.length()).isEqualTo(bytes.length);
            int before = deflated.size();
            part.writeTo(deflated);
            assertThat(deflated.size() - before).isEqualTo(part.deflatedLength());
        }
        byte[] whole = new InflaterInputStream(new ByteArrayInputStream(deflated.toByteArray()), new Inflater(true))
                .readAllBytes();
        assertThat(whole).isEqualTo(content.toByteArray());
    }
}
