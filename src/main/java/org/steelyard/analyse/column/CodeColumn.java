package org.steelyard.analyse.column;

import java.util.ArrayList;
import java.util.List;

/**
 * A column of small whole numbers that grows, as short as they allow: the lowest byte of all of them, and each higher
 * byte only once a number needs it. In chunks, so that growing copies nothing.
 */
final class CodeColumn {

    private static final int CHUNK = 1 << 13;

    private final List<List<byte[]>> planes = new ArrayList<>();
    private int size;

    void add(int code) {
        if (code < 0) {
            throw new IllegalArgumentException("a code is not negative: " + code);
        }
        int needed = Math.max(1, (32 - Integer.numberOfLeadingZeros(code) + 7) / 8);
        while (planes.size() < needed) {
            planes.add(new ArrayList<>());
        }
        for (int plane = 0; plane < planes.size(); plane++) {
            List<byte[]> chunks = planes.get(plane);
            while (chunks.size() * CHUNK <= size) {
                chunks.add(new byte[CHUNK]);
            }
            chunks.get(size / CHUNK)[size % CHUNK] = (byte) (code >> (8 * plane) & 0xFF);
        }
        size++;
    }

    int get(int index) {
        int code = 0;
        for (int plane = 0; plane < planes.size(); plane++) {
            code |= (planes.get(plane).get(index / CHUNK)[index % CHUNK] & 0xFF) << (8 * plane);
        }
        return code;
    }

    void clear() {
        planes.clear();
        size = 0;
    }

    int size() {
        return size;
    }

    /** How many bytes each number takes. */
    int bytesEach() {
        return planes.size();
    }
}
