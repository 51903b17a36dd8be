package org.steelyard.read;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.steelyard.model.FlightIdent;

/**
 * By what a flight is known again: flight, date and tail, and the places where both rows give them. All are digests
 * (SHA-256, cut), so that a season's flights can be remembered in little memory; of a million flights, two have the
 * same 128 bits by accident with a chance of 10⁻²⁷.
 *
 * @param high one half of the digest of flight, date and tail
 * @param low the other half
 * @param places digest of departure and destination, 0 where neither is given
 * @param content digest of the cells that the row fills
 */
public record FlightKey(long high, long low, int places, long content) {

    private static final char BETWEEN = '\u0000';

    /** The key of a flight whose cells have a digest. */
    static FlightKey of(FlightIdent flight, String registration, long content) {
        ByteBuffer digest =
                digest(Blanks.fold(flight.flight()) + BETWEEN + flight.date() + BETWEEN + Blanks.fold(registration));
        return new FlightKey(digest.getLong(), digest.getLong(), places(flight), content);
    }

    private static int places(FlightIdent flight) {
        if (flight.from().isBlank() && flight.to().isBlank()) {
            return 0;
        }
        int places = digest(Blanks.fold(flight.from()) + BETWEEN + Blanks.fold(flight.to()))
                .getInt();
        return places == 0 ? 1 : places;
    }

    /** The digest of a text. */
    static ByteBuffer digest(String text) {
        try {
            return ByteBuffer.wrap(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Whether two flights are the same one as far as their rows tell. */
    public boolean isSameFlight(FlightKey other) {
        return high == other.high && low == other.low && (places == other.places || places == 0 || other.places == 0);
    }
}
