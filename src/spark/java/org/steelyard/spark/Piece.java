package org.steelyard.spark;

import java.io.Serializable;

/**
 * What one worker reads at a time: a file, or a piece of a text with whole records.
 *
 * @param number its place among all pieces in the order of the input
 * @param file the place of its file
 * @param address where the file lies
 * @param name the file's name
 * @param headBytes length of the file's head, which every piece is read behind; 0 for a whole file
 * @param headRows lines of the head
 * @param from first byte behind the head
 * @param to place behind the last byte
 * @param before lines between head and first byte
 * @param records how many records it holds; -1 where that is not known
 */
record Piece(
        int number,
        int file,
        String address,
        String name,
        long headBytes,
        long headRows,
        long from,
        long to,
        long before,
        long records)
        implements Serializable {

    static Piece whole(int file, SeasonFile of) {
        return new Piece(0, file, of.address(), of.name(), 0, 0, 0, of.bytes(), 0, -1);
    }

    /** Whether it holds its file from the beginning. */
    boolean first() {
        return headBytes == 0 || from == headBytes;
    }

    boolean isWhole() {
        return headBytes == 0;
    }

    Piece numbered(int place) {
        return new Piece(place, file, address, name, headBytes, headRows, from, to, before, records);
    }
}
