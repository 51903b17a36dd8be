package org.steelyard.read.row;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.read.text.Blanks;

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

    /** The key of a flight whose row fills some cells. */
    public static FlightKey of(FlightIdent flight, String registration, String cells) {
        MessageDigest digests = sha256();
        return of(flight, registration, digest(digests, cells).getLong(), digests);
    }

    /** The key of a flight whose cells have a digest. */
    public static FlightKey of(FlightIdent flight, String registration, long content) {
        return of(flight, registration, content, sha256());
    }

    private static FlightKey of(FlightIdent flight, String registration, long content, MessageDigest digests) {
        ByteBuffer digest = digest(
                digests, Blanks.fold(flight.flight()) + BETWEEN + flight.date() + BETWEEN + Blanks.fold(registration));
        return new FlightKey(digest.getLong(), digest.getLong(), places(flight, digests), content);
    }

    private static int places(FlightIdent flight, MessageDigest digests) {
        if (flight.from().isBlank() && flight.to().isBlank()) {
            return 0;
        }
        int places = digest(digests, Blanks.fold(flight.from()) + BETWEEN + Blanks.fold(flight.to()))
                .getInt();
        return places == 0 ? 1 : places;
    }

    /** The digest of a text. */
    static ByteBuffer digest(String text) {
        return digest(sha256(), text);
    }

    private static ByteBuffer digest(MessageDigest digests, String text) {
        return ByteBuffer.wrap(digests.digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Whether two flights are the same one as far as their rows tell. */
    public boolean isSameFlight(FlightKey other) {
        return high == other.high && low == other.low && (places == other.places || places == 0 || other.places == 0);
    }
}
